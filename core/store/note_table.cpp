#include "core/store/note_table.h"

#include "core/store/damage.h"
#include "core/store/each_row.h"

namespace ullage::store
{

NoteTable::NoteTable(const Connection& connection, ChainGrowth& growth)
    : m_growth(&growth),
      m_note(connection, QStringLiteral("SELECT CAST(value AS BLOB), sum FROM note WHERE key = ?")),
      m_dropNote(connection, QStringLiteral("DELETE FROM note WHERE key = ?")),
      m_notes(connection, QStringLiteral("SELECT key, value FROM note WHERE instr(key, ?) = 1"))
{
}

Result<std::optional<QByteArray>> NoteTable::note(const std::string& key)
{
    std::optional<QByteArray> value;
    return eachRow(m_note.run(key),
                   [&](const Rows& row) -> Result<void> {
                       value = row.blob(0);
                       const QByteArray name = QByteArray::fromStdString(key);
                       if (!row.isNull(1) && digestFromBytes(row.blob(1)) !=
                                                 noteSum(m_growth->hasher(), name, *value)) {
                           Error fault = notAsEntered(damage::kNote);
                           fault.subject = key;
                           return refuse(std::move(fault));
                       }
                       return {};
                   })
        .map([&] { return value; });
}

Result<void> NoteTable::put(const std::string& key, const QByteArray& value)
{
    return m_growth->putNote(QByteArray::fromStdString(key), value);
}

Result<void> NoteTable::drop(const std::string& key)
{
    return m_dropNote.run(key).map([](const Rows&) {});
}

Result<std::map<std::string, QByteArray>> NoteTable::notes(const std::string& prefix)
{
    std::map<std::string, QByteArray> found;
    const auto take = [&](const Rows& row) -> Result<void> {
        found[row.text(0)] = row.bytes(1);
        return {};
    };
    return eachRow(m_notes.run(prefix), take).map([&] { return std::move(found); });
}

} // namespace ullage::store
