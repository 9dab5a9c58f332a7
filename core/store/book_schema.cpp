#include "core/store/book_schema.h"

#include "core/store/chain.h"
#include "core/store/each_row.h"
#include "core/store/schema_steps.h"

#include <map>

namespace ullage::store
{

namespace
{

using Schema = std::map<std::string, QString>; ///< "trigger entry_stays" → how it was made

// What SQLite makes of the same words differs only in quotes and spaces.
Result<Schema> schemaOf(Connection& connection)
{
    Schema schema;
    Statement rows(connection, QStringLiteral("SELECT type, name, sql FROM sqlite_schema "
                                              "WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"));
    return eachRow(rows.run(),
                   [&](const Rows& row) -> Result<void> {
                       QString sql = QString::fromStdString(row.text(2)).remove('"').simplified();
                       schema[row.text(0) + ' ' + row.text(1)] = std::move(sql);
                       return {};
                   })
        .map([&] { return std::move(schema); });
}

Error about(const char* what, const std::string& name)
{
    Error error = notAsEntered(what);
    error.subject = name;
    return error;
}

} // namespace

Result<std::vector<Error>> compareSchema(Connection& connection)
{
    const auto fresh = Connection::inMemory();
    if (!fresh) {
        return tl::unexpected(fresh.error());
    }
    if (const auto made = bringUpToDate(**fresh, {}, schemaSteps()); !made) {
        return tl::unexpected(made.error());
    }
    const auto own = schemaOf(**fresh);
    const auto here = schemaOf(connection);
    if (!own || !here) {
        return tl::unexpected(own ? here.error() : own.error());
    }
    std::vector<Error> found;
    for (const auto& [name, sql] : *own) {
        const auto same = here->find(name);
        if (same == here->end()) {
            found.push_back(about(damage::kNoTable, name));
        } else if (same->second != sql) {
            found.push_back(about(damage::kTable, name));
        }
    }
    for (const auto& [name, sql] : *here) {
        if (!own->contains(name)) {
            found.push_back(about(damage::kExtra, name));
        }
    }
    return found;
}

} // namespace ullage::store
