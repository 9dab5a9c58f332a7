// A journal into the book, from a file or from what another program says.
#include "app/calendar/calendar_offer.h"
#include "app/cli/command_line.h"
#include "app/cli/sheet_import.h"
#include "app/sheet/sheet_words.h"
#include "app/words/error_words.h"
#include "app/words/merge_words.h"
#include "app/words/moment_text.h"
#include "core/store/calendar_reader.h"
#include "core/store/journal_reader.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QTemporaryFile>

namespace ullage::app
{

namespace
{

struct FileCommands {
    Q_DECLARE_TR_FUNCTIONS(FileCommands)
};

const QString kStandard = QStringLiteral("-");
const QString kAllEvents = QStringLiteral("all");
constexpr std::size_t kMostListed = 200;
constexpr qint64 kPiece = 64 * 1024;

Error fileError(const QString& file, const QString& message)
{
    return {.code = ErrorCode::FileFailed,
            .field = "FILE",
            .text = (file + QStringLiteral(": ") + message).toStdString()};
}

bool isCalendarName(const QString& name) { return name.endsWith(u".ics", Qt::CaseInsensitive); }

// What comes in bit by bit is waited for before the book is opened: nobody else need wait with us.
Result<void> takeWhole(QIODevice& from, QTemporaryFile& into)
{
    if (!into.open()) {
        return refuse(fileError(into.fileTemplate(), into.errorString()));
    }
    while (true) {
        QByteArray piece = from.read(kPiece);
        while (piece.isEmpty() && from.waitForReadyRead(-1)) {
            piece = from.read(kPiece);
        }
        if (piece.isEmpty()) {
            break;
        }
        if (into.write(piece) != piece.size()) {
            return refuse(fileError(into.fileName(), into.errorString()));
        }
    }
    return into.flush() && into.seek(0) ? Result<void>{}
                                        : refuse(fileError(into.fileName(), into.errorString()));
}

void tell(const Call& call, const store::ImportOutcome& outcome)
{
    const std::size_t listed = std::min(kMostListed, outcome.contradictions.size());
    for (std::size_t i = 0; i < listed; ++i) {
        call.say(contradictionLine(outcome.contradictions[i]));
    }
    const int more = outcome.contradictionCount - static_cast<int>(listed);
    if (more > 0) {
        call.say(FileCommands::tr("%n more lines contradict.", nullptr, more));
    }
    call.say(FileCommands::tr("Nothing was imported."));
}

} // namespace

static QString workLine(const ledger::Work& work, chemistry::Instant now)
{
    const QString name = work.name.empty() ? FileCommands::tr("work without a name")
                                           : QString::fromStdString(work.name);
    return QStringLiteral("  ") + name + QStringLiteral(", ") + momentText(work.at, now, QLocale());
}

static void listWork(const Call& call, const QString& heading,
                     const std::vector<ledger::Work>& works)
{
    if (works.empty()) {
        return;
    }
    call.say(heading);
    const std::size_t listed = std::min(kMostListed, works.size());
    for (std::size_t i = 0; i < listed; ++i) {
        call.say(workLine(works[i], call.around().clock()));
    }
    if (works.size() > listed) {
        call.say(
            FileCommands::tr("  and %n more", nullptr, static_cast<int>(works.size() - listed)));
    }
}

// Known work: what names films or a solution, or everything.
static int importCalendar(const Call& call, const OpenBook& open, QIODevice& device)
{
    std::vector<Error> notRead;
    const auto events = store::readCalendar(device.readAll(), &notRead);
    if (!events) {
        return call.refused(events.error());
    }
    const auto cupboard = open.book->cupboard(call.around().clock());
    if (!cupboard) {
        return call.refused(cupboard.error());
    }
    const bool all = call.arguments().has(kAllEvents);
    std::vector<ledger::Work> taken;
    std::vector<ledger::Work> left;
    for (OfferedWork& one :
         offeredWork(*events, *cupboard, open.book->formulary(), call.around().clock())) {
        (all || one.likely ? taken : left).push_back(std::move(one.work));
    }
    const std::vector<ledger::CupboardLine> lines(taken.begin(), taken.end());
    if (!lines.empty()) {
        if (const auto added = open.book->add(lines); !added) {
            return call.refused(added.error());
        }
    }
    call.say(FileCommands::tr("%n entries read", nullptr, static_cast<int>(events->size())) +
             QStringLiteral(", ") +
             FileCommands::tr("%n of them new", nullptr, static_cast<int>(taken.size())) +
             QStringLiteral("."));
    listWork(call, FileCommands::tr("Taken as known work:"), taken);
    listWork(
        call,
        FileCommands::tr("Left, as they name neither films nor a solution (--all takes them too):"),
        left);
    if (!notRead.empty()) {
        call.say(notReadText(notRead, QLocale()));
    }
    return kDone;
}

int importCommand(const Call& call)
{
    const bool sheet =
        !call.arguments().operands.isEmpty() && isSheetName(call.arguments().operands.front());
    const bool calendar =
        !call.arguments().operands.isEmpty() && isCalendarName(call.arguments().operands.front());
    QStringList options;
    if (sheet) {
        options << QStringLiteral("mapping") << QStringLiteral("try");
    } else if (calendar) {
        options << kAllEvents;
    }
    if (!call.takes(options, 1)) {
        return kWrongUsage;
    }
    const QString name = call.arguments().operands.front();
    QFile file(name);
    QTemporaryFile whole;
    QIODevice* device = call.around().in;
    if (name != kStandard) {
        if (const auto fine = call.isNotTheBook(name); !fine) {
            return call.refused(fine.error());
        }
        if (!file.open(QIODevice::ReadOnly)) {
            call.say(errorLine(fileError(name, file.errorString())));
            return kRefused; // the store is not at fault
        }
        device = &file;
    }
    if (device->isSequential()) {
        if (const auto fine = takeWhole(*device, whole); !fine) {
            return call.refused(fine.error());
        }
        device = &whole;
    }
    int code = kDone;
    // A book that was used before is not made anew because it is missing just now.
    const bool mustBeThere =
        call.around().usedBefore && !call.arguments().has(QStringLiteral("book"));
    auto open = call.open(mustBeThere ? store::Access::Write : store::Access::Create, code);
    if (!open) {
        return code;
    }
    if (open->store->lastEntry().value_or(1) > 0) {
        copyFirst(call);
    }
    if (sheet || calendar) {
        code =
            sheet ? importSheet(call, *open, *device, name) : importCalendar(call, *open, *device);
        if (code != kDone) {
            open->book.reset();
            store::SqlStore::takeAway(std::move(open->store));
        }
        return code;
    }
    const auto done =
        store::readJournal(*open->book, *open->store, *device, {.name = name, .settled = {}});
    if (!done || !done->entered) {
        if (done) {
            tell(call, *done);
            code = kRefused;
        } else {
            code = call.refused(done.error());
        }
        open->book.reset();
        store::SqlStore::takeAway(std::move(open->store)); // what was made for nothing
        return code;
    }
    for (const ledger::LikelySame& same : done->likelySame) {
        call.say(likelySameLine(same, name));
    }
    call.say(FileCommands::tr("%n entries read", nullptr, done->lines) + QStringLiteral(", ") +
             FileCommands::tr("%n of them new", nullptr, done->added) + u'.');
    return kDone;
}

} // namespace ullage::app
