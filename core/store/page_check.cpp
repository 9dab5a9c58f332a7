#include "core/store/page_check.h"

#include "core/store/book_file.h"
#include "core/store/interruptibly.h"

namespace ullage::store
{

Result<void> checkPages(Connection& connection, const QString& path, const Watch& watch)
{
    Result<QString> found;
    const auto asked = interruptibly(connection, watch, [&]() -> Result<void> {
        found = connection.text(QStringLiteral("PRAGMA quick_check(1)"));
        return {};
    });
    if (!asked) {
        return asked;
    }
    if (!found && !saysDamaged(found.error())) {
        return tl::unexpected(found.error());
    }
    if (found && *found == QLatin1String("ok")) {
        return {};
    }
    return refuse({.code = ErrorCode::BookDamaged,
                   .text = found ? found->toStdString() : found.error().text,
                   .file = path.toStdString()});
}

} // namespace ullage::store
