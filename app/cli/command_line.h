// The subcommands of `ullage`. Results go to `out`, messages to `err`; no display is needed.
#pragma once

#include "app/cli/arguments.h"
#include "core/ledger/book.h"
#include "core/store/fault_names.h"
#include "core/store/progress.h"
#include "core/store/sql_store.h"

#include <QIODevice>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace ullage::app
{

/// Exit codes, as the journal's document says.
enum ExitCode { kDone = 0, kRefused = 1, kWrongUsage = 2, kStoreFailed = 3 };

/// What a command may touch of the world outside.
struct Surroundings {
    QIODevice* in = nullptr;
    QIODevice* out = nullptr;
    QIODevice* err = nullptr;
    ledger::Clock clock;
    QString usualBook;            ///< the book when --book is not given
    bool usedBefore = false;      ///< the usual book was there: if it no longer is, none is made
    QStringList copyFolders = {}; ///< where copies of books are kept; each is there
    QString lastSeen = {};        ///< folder that remembers how far books had come; empty for none
    /// Shows how far long work has come; false stops it. May be empty.
    std::function<bool(const QString& what, const store::Progress&)> progress = {};
};

/// Runs the subcommand in `arguments` (not the window, not `demo`) and returns its exit code.
int runCommand(const Arguments& arguments, const Surroundings& around);

/// Whether a command makes something to be printed: it needs letters, and so a QGuiApplication.
bool drawsPaper(const QString& command);

/// True for a word that runCommand() knows.
bool isCommand(const QString& word);

/// All commands and options, a line each.
QString usageText();
/// Those of one command; all of them where there is no such command.
QString usageText(const QString& command);

// For the commands themselves ---------------------------------------------------------------------

/// An open book with its store.
struct OpenBook {
    std::unique_ptr<store::SqlStore> store;
    std::unique_ptr<ledger::Book> book;
};

/// One call: its words, its surroundings, and how it answers.
class Call
{
public:
    Call(const Arguments& arguments, const Surroundings& around);

    [[nodiscard]] const Arguments& arguments() const { return m_arguments; }
    [[nodiscard]] const Surroundings& around() const { return m_around; }
    [[nodiscard]] QString bookPath() const;

    /// Opens the book; on failure the error has been told and the exit code is in `code`.
    std::optional<OpenBook> open(store::Access access, int& code) const;

    /// BookItself if the file that a command is to read or write is the book itself, under whatever
    /// name: written over it would be gone, and read it would lose its locks.
    [[nodiscard]] Result<void> isNotTheBook(const QString& file) const;
    /// As open(), without folding or reading what the book says: for one that may be damaged. Null
    /// on failure.
    std::unique_ptr<store::SqlStore> openStore(store::Access access, int& code) const;

    /// For long work, called `what` where its progress is shown.
    [[nodiscard]] store::Watch watch(const QString& what) const;

    /// Refuses options and numbers of operands that the command does not take.
    [[nodiscard]] bool takes(const QStringList& options, qsizetype operands) const;

    /// Data, byte for byte.
    void print(const QByteArray& text) const;
    /// Words for a person; control characters in them are shown, not carried out.
    void printText(const QString& text) const;
    /// Whether everything printed got out; tells the failure if not.
    [[nodiscard]] bool delivered() const;
    /// A message, shown likewise.
    void say(const QString& message) const;
    /// Says what is wrong with the book that `store` has open. What could be read is still printed,
    /// but no command that found damage ends with kDone.
    void tellDamage(const std::vector<Error>& faults, store::SqlStore& store) const;
    /// The same of bottles that are not shown because of it.
    void tellDamage(const std::vector<ledger::Unread>& unread, store::SqlStore& store) const;
    [[nodiscard]] bool foundDamage() const { return !m_damageTold.isEmpty(); }
    /// The fault in a line, named as people know what it is about.
    [[nodiscard]] QString damageLine(const Error& fault, const store::FaultNames& names) const;
    /// Tells it, and usageText() with it; returns kWrongUsage.
    int wrongUsage(const QString& message) const;
    /// Tells the error and returns its exit code: the store's failures are 3, the rest 1. `names`
    /// where it may be about an entry of a book.
    int refused(const Error& error, const store::FaultNames& names = {}) const;

private:
    const Arguments& m_arguments;
    const Surroundings& m_around;
    mutable bool m_outputFailed = false;
    mutable QStringList m_damageTold; ///< errorLine() of each that was said: once is enough
};

// Each returns the exit code, and has told whatever hindered it.
int reportCommand(const Call& call);
int timeCommand(const Call& call);
int importCommand(const Call& call);
int exportCommand(const Call& call);
int calendarCommand(const Call& call);
int labelCommand(const Call& call);
int paperCommand(const Call& call);
int checkCommand(const Call& call);
int backupCommand(const Call& call);
int restoreCommand(const Call& call);
int salvageCommand(const Call& call);

/// Copies the book as it stands, before much of it is changed; says so where that fails.
void copyFirst(const Call& call);

} // namespace ullage::app
