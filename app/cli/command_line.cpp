#include "app/cli/command_line.h"

#include "app/words/error_words.h"
#include "app/words/fault_words.h"
#include "app/words/printable_text.h"
#include "core/store/file_identity.h"

#include <QCoreApplication>
#include <QFileDevice>
#include <QUuid>

#include <array>

namespace ullage::app
{

namespace
{

struct CommandLine {
    Q_DECLARE_TR_FUNCTIONS(CommandLine)
};

struct Command {
    const char* name;
    int (*run)(const Call&);
};

constexpr std::array kCommands{
    Command{"report", reportCommand},     Command{"time", timeCommand},
    Command{"import", importCommand},     Command{"export", exportCommand},
    Command{"calendar", calendarCommand}, Command{"label", labelCommand},
    Command{"paper", paperCommand},       Command{"check", checkCommand},
    Command{"backup", backupCommand},     Command{"restore", restoreCommand},
    Command{"salvage", salvageCommand}};

std::string newId() { return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString(); }

// A journal is the user's input even where it needs a newer program; a book is the store.
bool storesFault(const Error& error)
{
    const ErrorCode code = error.code;
    return code == ErrorCode::StoreFailed || code == ErrorCode::NotABook ||
           code == ErrorCode::Busy || code == ErrorCode::BookMoved ||
           code == ErrorCode::BookDamaged || code == ErrorCode::ReadOnly ||
           code == ErrorCode::NotAsEntered || error.entry > 0 ||
           (error.line == 0 && (code == ErrorCode::NewerBook || code == ErrorCode::FileFailed));
}

} // namespace

bool drawsPaper(const QString& command) { return command == u"label" || command == u"paper"; }

bool isCommand(const QString& word)
{
    return std::any_of(kCommands.begin(), kCommands.end(),
                       [&](const Command& command) { return word == QLatin1String(command.name); });
}

QString usageText()
{
    return CommandLine::tr(
        "ullage [--book FILE]                         open the window\n"
        "ullage report [--at TIME] [--all] [--json]   every bottle in use\n"
        "ullage time --batch ID --base M:SS@T[,M:SS@T…] --temperature T [--films N] [--json]\n"
        "                                             development time of the next load\n"
        "ullage import FILE                           a journal (.jsonl) into the book; - is "
        "standard "
        "input;\n"
        "                                             known work from a calendar (.ics): what "
        "names "
        "films\n"
        "                                             or a solution, with --all everything in it\n"
        "ullage import FILE.csv [--mapping FILE] [--try]\n"
        "                                             bottles, films and tests from a spreadsheet; "
        "--try:\n"
        "                                             only say what would come in\n"
        "ullage export FILE                           the book as a journal (.jsonl) or its events "
        "as .csv\n"
        "ullage calendar FILE                         dates to discard, test, mix and buy, and the "
        "known\n"
        "                                             work, as iCalendar (.ics); - is standard "
        "output\n"
        "ullage label [--batch ID] [--sheet SIZE] [--first N] FILE\n"
        "                                             a bottle's label, or those of all in use, as "
        ".pdf;\n"
        "                                             SIZE is 70x36 or one of a sheet (a4-70x36), "
        "N "
        "its\n"
        "                                             first free label\n"
        "ullage paper KIND FILE                       a page as .pdf: shelf, card (--batch ID), "
        "shopping,\n"
        "                                             month (--month YYYY-MM) or handover; --size "
        "A4|Letter\n"
        "ullage check [--accept]                      read the whole book and say what is wrong;\n"
        "                                             --accept: take it as it is, even if "
        "something\n"
        "                                             is missing\n"
        "ullage backup FILE                           a whole copy of the book\n"
        "ullage restore FILE [--replace]              a copy back in the book's place\n"
        "ullage salvage DAMAGED NEW                   what can still be read, in a new book\n"
        "ullage demo                                  a year of invented work, then the window\n"
        "ullage --version                             which program this is\n"
        "Every command takes --book FILE and --help. TIME is RFC 3339, or a date.\n");
}

QString usageText(const QString& command)
{
    const QStringList lines = usageText().split(u'\n', Qt::SkipEmptyParts);
    QStringList own;
    bool is = false;
    for (const QString& line : lines) {
        if (!line.startsWith(u' '))
            is = line.section(u' ', 0, 1) == QStringLiteral("ullage ") + command;
        if (is)
            own << line;
    }
    return own.isEmpty() ? usageText() : (own << lines.last() << QString()).join(u'\n');
}

int runCommand(const Arguments& arguments, const Surroundings& around)
{
    const Call call(arguments, around);
    for (const Command& command : kCommands) {
        if (arguments.command == QLatin1String(command.name)) {
            if (arguments.has(QStringLiteral("help"))) {
                call.print(usageText(arguments.command).toUtf8());
                return kDone;
            }
            const int code = command.run(call);
            const bool whole = call.delivered() && !(code == kDone && call.foundDamage());
            return whole ? code : kStoreFailed;
        }
    }
    return call.wrongUsage(CommandLine::tr("There is no command “%1”.").arg(arguments.command));
}

Call::Call(const Arguments& arguments, const Surroundings& around)
    : m_arguments(arguments), m_around(around)
{
}

QString Call::bookPath() const
{
    const QString book = QStringLiteral("book");
    return m_arguments.has(book) ? m_arguments.value(book) : m_around.usualBook;
}

Result<void> Call::isNotTheBook(const QString& file) const
{
    const auto book = store::identityOf(bookPath());
    return book && book == store::identityOf(file)
               ? refuse({.code = ErrorCode::BookItself, .file = file.toStdString()})
               : Result<void>{};
}

std::unique_ptr<store::SqlStore> Call::openStore(store::Access access, int& code) const
{
    const QString path = bookPath();
    if (path.startsWith(u"postgresql:")) {
        code = wrongUsage(
            CommandLine::tr("This program keeps books in SQLite files; it cannot open %1.")
                .arg(path));
        return nullptr;
    }
    store::StoreOptions options;
    options.access = access;
    options.lastSeen = m_around.lastSeen;
    auto store = store::SqlStore::open(path, options);
    if (!store) {
        Error error = store.error();
        error.file = error.file.empty() ? path.toStdString() : error.file;
        code = refused(error);
        return nullptr;
    }
    return std::move(*store);
}

std::optional<OpenBook> Call::open(store::Access access, int& code) const
{
    auto store = openStore(access, code);
    if (!store) {
        return std::nullopt;
    }
    if (access != store::Access::Read) {
        if (const auto sound = store->quickCheck(); !sound) {
            code = refused(sound.error());
            return std::nullopt;
        }
    }
    auto book = ledger::Book::open(*store, m_around.clock, newId);
    if (!book) {
        code = refused(book.error());
        return std::nullopt;
    }
    tellDamage(store->faults(), *store);
    return OpenBook{std::move(store), std::move(*book)};
}

store::Watch Call::watch(const QString& what) const
{
    if (!m_around.progress) {
        return {};
    }
    return
        [this, what](const store::Progress& progress) { return m_around.progress(what, progress); };
}

bool Call::takes(const QStringList& options, qsizetype operands) const
{
    for (const auto& [option, value] : m_arguments.options) {
        if (option != u"book" && !options.contains(option)) {
            wrongUsage(
                CommandLine::tr("“%1” does not take --%2.").arg(m_arguments.command, option));
            return false;
        }
    }
    if (m_arguments.operands.size() != operands) {
        const QString sentence = operands == 0   ? CommandLine::tr("“%1” takes no file.")
                                 : operands == 1 ? CommandLine::tr("“%1” takes one file.")
                                                 : CommandLine::tr("“%1” takes two files.");
        wrongUsage(sentence.arg(m_arguments.command));
        return false;
    }
    return true;
}

void Call::print(const QByteArray& text) const
{
    if (m_around.out->write(text) != text.size()) {
        m_outputFailed = true;
    }
}

bool Call::delivered() const
{
    // A full disk may show only when what was printed leaves the buffer.
    auto* file = qobject_cast<QFileDevice*>(m_around.out);
    if (!m_outputFailed && (!file || file->flush())) {
        return true;
    }
    say(errorLine({.code = ErrorCode::FileFailed,
                   .field = "-",
                   .text = m_around.out->errorString().toStdString()}));
    return false;
}

void Call::printText(const QString& text) const { print(printableLines(text).toUtf8()); }

void Call::say(const QString& message) const
{
    m_around.err->write(printableLines(message).toUtf8() + '\n');
}

int Call::wrongUsage(const QString& message) const
{
    say(message);
    m_around.err->write(usageText(m_arguments.command).toUtf8());
    return kWrongUsage;
}

QString Call::damageLine(const Error& fault, const store::FaultNames& names) const
{
    return faultLine(fault, names, m_around.clock(), QLocale());
}

void Call::tellDamage(const std::vector<Error>& faults, store::SqlStore& store) const
{
    const store::FaultNames names = store::namesFor(store.connection(), faults);
    for (const Error& fault : faults) {
        const QString line = errorLine(fault);
        if (!m_damageTold.contains(line)) {
            say(damageLine(fault, names));
            m_damageTold += line;
        }
    }
}

void Call::tellDamage(const std::vector<ledger::Unread>& unread, store::SqlStore& store) const
{
    std::vector<Error> why;
    for (const ledger::Unread& one : unread) {
        why.push_back(one.why);
    }
    tellDamage(why, store);
}

int Call::refused(const Error& error, const store::FaultNames& names) const
{
    if (!m_damageTold.contains(errorLine(error))) {
        say(faultLine(error, names, m_around.clock(), QLocale()));
    }
    return storesFault(error) ? kStoreFailed : kRefused;
}

} // namespace ullage::app
