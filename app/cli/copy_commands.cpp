// Whole copies of the book: making one, putting one back, and what a damaged book still holds.
#include "app/cli/command_line.h"

#include "app/words/error_words.h"
#include "app/words/fault_words.h"
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

// "missing: entry 732 (event e498)", beside what people know it by (fault_words.h).
QString missingLine(const store::Missing& missing)
{
    const QString what = printable(QString::fromStdString(missing.type)) + u' ' +
                         printable(QString::fromStdString(missing.id));
    return CopyCommands::tr("missing: entry %1 (%2)\n").arg(missing.first).arg(what);
}

// What is missing, gap by gap, and under each what an index still tells of it.
void tellMissing(const Call& call, const store::Salvaged& done)
{
    for (const store::Gap& gap : store::gapsOf(done.missing)) {
        call.printText(
            missingText(gap.last - gap.first + 1, gap.between, call.around().clock(), QLocale()) +
            u'\n');
        for (const store::Missing& missing : gap.parts) {
            if (!missing.type.empty()) {
                call.printText(missingLine(missing));
            }
        }
    }
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
        return call.refused(*made->fault, store::namesIn(call.bookPath(), {&*made->fault, 1}));
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
        const QString copy = call.arguments().operands.front();
        const int code = call.refused(done.error(), store::namesIn(copy, {&done.error(), 1}));
        if (done.error().code == ErrorCode::IdTaken) {
            call.say(CopyCommands::tr(
                "Use --replace to put the copy in its place; the old book is kept beside it."));
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
    tellMissing(call, *done);
    for (const Error& fault : done->faults) {
        call.say(call.damageLine(fault, done->names));
    }
    return kDone;
}

} // namespace ullage::app
