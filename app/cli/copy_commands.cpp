// Whole copies of the book: making one, putting one back, and what a damaged book still holds.
#include "app/cli/command_line.h"

#include "app/words/error_words.h"
#include "app/words/printable_text.h"
#include "core/store/restore.h"
#include "core/store/salvage.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct CopyCommands {
    Q_DECLARE_TR_FUNCTIONS(CopyCommands)
};

QString numbers(const store::Missing& missing)
{
    if (missing.first == missing.last) {
        return CopyCommands::tr("entry %1").arg(missing.first);
    }
    return CopyCommands::tr("entries %1 to %2").arg(missing.first).arg(missing.last);
}

QString missingLine(const store::Missing& missing)
{
    const QString what = missing.type.empty()
                             ? numbers(missing)
                             : printable(QString::fromStdString(missing.type)) + u' ' +
                                   printable(QString::fromStdString(missing.id)) +
                                   QStringLiteral(" (%1)").arg(numbers(missing));
    return CopyCommands::tr("missing: %1\n").arg(what);
}

} // namespace

void copyFirst(const Call& call)
{
    for (const QString& folder : call.around().copyFolders) {
        const auto made = store::backUp(call.bookPath(), folder, call.around().clock());
        if (!made) {
            call.say(
                CopyCommands::tr("No copy of the book was made: %1").arg(errorLine(made.error())));
        }
    }
}

int backupCommand(const Call& call)
{
    if (!call.takes({}, 1)) {
        return kWrongUsage;
    }
    const QString target = call.arguments().operands.front();
    const auto made = store::copyTo(call.bookPath(), target, call.around().clock());
    if (!made) {
        return call.refused(made.error());
    }
    if (made->fault) {
        call.say(CopyCommands::tr("The copy was made, but something is wrong in the book, and so "
                                  "in the copy of it. “ullage check” says what; the first:"));
        return call.refused(*made->fault);
    }
    return kDone;
}

int restoreCommand(const Call& call)
{
    const QString replace = QStringLiteral("replace");
    if (!call.takes({replace}, 1)) {
        return kWrongUsage;
    }
    const auto done = store::restore(call.arguments().operands.front(), call.bookPath(),
                                     call.arguments().has(replace), call.around().clock(), {},
                                     call.around().lastSeen);
    if (!done) {
        const int code = call.refused(done.error());
        if (done.error().code == ErrorCode::IdTaken) {
            call.say(CopyCommands::tr(
                "Say --replace to put the copy in its place; the old book is kept beside it."));
        }
        return code;
    }
    call.say(CopyCommands::tr("%n entries restored.", nullptr, static_cast<int>(done->entries)));
    if (!done->kept.isEmpty()) {
        call.say(CopyCommands::tr("The old book is kept as %1.").arg(done->kept));
    }
    return kDone;
}

int salvageCommand(const Call& call)
{
    if (!call.takes({}, 2)) {
        return kWrongUsage;
    }
    const QString damaged = call.arguments().operands.front();
    const QString fresh = call.arguments().operands.back();
    const auto copies =
        store::copies(damaged, store::readCopy(damaged).bookId, call.around().copyFolders);
    const auto done = store::salvage(damaged, fresh, copies, call.around().clock());
    if (!done) {
        return call.refused(done.error());
    }
    if (done->unreadable) {
        call.say(CopyCommands::tr("Nothing of %1 can be read; all there is comes from copies.")
                     .arg(damaged));
    }
    call.printText(
        CopyCommands::tr("%n entries in %1", nullptr, static_cast<int>(done->entries)).arg(fresh) +
        u'\n');
    for (const QString& copy : done->copies) {
        call.printText(CopyCommands::tr("filled in from %1\n").arg(copy));
    }
    for (const store::Missing& missing : done->missing) {
        call.printText(missingLine(missing));
    }
    for (const Error& fault : done->faults) {
        const QString about = printable(QString::fromStdString(fault.subject));
        call.say(about.isEmpty() ? errorLine(fault)
                                 : about + QStringLiteral(": ") + errorLine(fault));
    }
    return kDone;
}

} // namespace ullage::app
