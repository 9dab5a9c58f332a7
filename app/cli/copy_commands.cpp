// Whole copies of the book: making one, and putting one back.
#include "app/cli/command_line.h"

#include "core/store/backup.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace ullage::app
{

namespace
{

struct CopyCommands {
    Q_DECLARE_TR_FUNCTIONS(CopyCommands)
};

} // namespace

int backupCommand(const Call& call)
{
    if (!call.takes({}, 1)) {
        return kWrongUsage;
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open) {
        return code;
    }
    const QString target = call.arguments().operands.front();
    if (QFileInfo::exists(target)) {
        return call.refused(
            {.code = ErrorCode::IdTaken, .field = "FILE", .text = target.toStdString()});
    }
    const auto done = store::copyVerified(open->store->connection(), target);
    return done ? kDone : call.refused(done.error());
}

int restoreCommand(const Call& call)
{
    const QString replace = QStringLiteral("replace");
    if (!call.takes({replace}, 1)) {
        return kWrongUsage;
    }
    const auto kept = store::restore(call.arguments().operands.front(), call.bookPath(),
                                     call.arguments().has(replace));
    if (!kept) {
        const int code = call.refused(kept.error());
        if (kept.error().code == ErrorCode::IdTaken) {
            call.say(CopyCommands::tr(
                "Say --replace to put the copy in its place; the old book is kept beside it."));
        }
        return code;
    }
    if (!kept->isEmpty()) {
        call.say(CopyCommands::tr("The old book is kept as %1.").arg(*kept));
    }
    return kDone;
}

} // namespace ullage::app
