#include "core/store/journal_writer.h"

#include "core/store/csv_cell.h"
#include "core/store/event_columns.h"
#include "core/store/instant_text.h"
#include "core/store/journal_codec.h"
#include "core/store/journal_reader.h"
#include "core/store/line_writer.h"

#include <QFileDevice>

namespace ullage::store
{

namespace
{

Result<void> write(QIODevice& device, const QByteArray& text)
{
    if (device.write(text) == text.size()) {
        return {};
    }
    return refuse({.code = ErrorCode::FileFailed, .text = device.errorString().toStdString()});
}

Result<void> flush(QIODevice& device)
{
    auto* file = qobject_cast<QFileDevice*>(&device);
    if (!file || file->flush()) {
        return {};
    }
    return refuse({.code = ErrorCode::FileFailed, .text = file->errorString().toStdString()});
}

QByteArray csvTextIf(const std::optional<std::string>& text)
{
    return csvText(QByteArray::fromStdString(text.value_or(std::string())));
}

QByteArray csvNumber(std::optional<double> number)
{
    return number ? numberText(*number) : QByteArray();
}

} // namespace

Result<int> exportJournal(SqlStore& store, QIODevice& device, std::vector<Error>* faults)
{
    auto kept = store.note(kHeaderNote);
    if (!kept && faults && kept.error().code == ErrorCode::NotAsEntered) {
        faults->push_back(kept.error());
        kept = std::optional<QByteArray>();
    }
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    const auto unpaired = store.hasUnpaired();
    if (!unpaired) {
        return tl::unexpected(unpaired.error());
    }
    const QByteArray header = currentHeader(*kept ? **kept : defaultHeader(), *unpaired);
    if (auto fine = write(device, header + '\n'); !fine) {
        return tl::unexpected(fine.error());
    }
    int count = 0;
    return store
        .forEachLine(
            [&](const QByteArray& line) {
                ++count;
                return write(device, line + '\n');
            },
            faults)
        .and_then([&] { return flush(device); })
        .map([&] { return count; });
}

Result<int> exportEventsCsv(SqlStore& store, QIODevice& device, std::vector<Error>* faults)
{
    if (auto fine = write(device, "id,batch,kind,at,volume_ml,films,run,voids\r\n"); !fine) {
        return tl::unexpected(fine.error());
    }
    int count = 0;
    return store
        .forEachLine(
            [&](const QByteArray& line) -> Result<void> {
                const auto entry = decodeStored(line);
                if (!entry && faults) {
                    faults->push_back(entry.error()); // faulty from the first
                    return {};
                }
                if (!entry) {
                    return tl::unexpected(entry.error());
                }
                const auto* event = entry->event();
                if (!event) {
                    return {};
                }
                ++count;
                const EventColumns columns = eventColumns(*entry);
                const QByteArrayList cells{
                    csvTextIf(event->id),      csvTextIf(columns.batch),
                    csvTextIf(columns.kind),   instantText(event->at).toUtf8(),
                    csvNumber(columns.volume), csvNumber(columns.films),
                    csvTextIf(columns.run),    csvTextIf(columns.voids)};
                return write(device, cells.join(',') + "\r\n");
            },
            faults)
        .and_then([&] { return flush(device); })
        .map([&] { return count; });
}

} // namespace ullage::store
