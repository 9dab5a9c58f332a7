// The book on SQLite.
//
// Tables and their rules: resources/schema. Entries are only ever appended; the table of batches is
// derived and says where the fold of a batch's events leaves it. One store is one connection and
// belongs to the thread that opened it; others may write to the same file meanwhile.
#pragma once

#include "core/ledger/store_port.h"
#include "core/store/book_place.h"
#include "core/store/connection.h"
#include "core/store/progress.h"
#include "core/store/sound_lines.h"
#include "core/store/store_options.h"

#include <QByteArray>
#include <QString>

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>

class QTemporaryDir;

namespace ullage::store
{

class SqlStore final : public ledger::StorePort
{
public:
    /// NotABook if there is none (unless it is to be made), the file is something else, or only a
    /// book's log is there; NewerBook, untouched, naming the schema it needs.
    static Result<std::unique_ptr<SqlStore>> open(const QString& name,
                                                  const StoreOptions& options = {});
    ~SqlStore() override;

    /// The file's one name (bookPath()).
    [[nodiscard]] const QString& path() const { return m_place.path(); }
    [[nodiscard]] SchemaOutcome outcome() const { return m_outcome; }
    /// For copies and checks.
    [[nodiscard]] Connection& connection() { return *m_connection; }

    /// What was found wrong with the book at opening and since, each NotAsEntered: the book is read
    /// as far as it is sound, and nothing more is entered.
    [[nodiscard]] std::vector<Error> faults() const;
    /// Takes the book as it is now for what was seen last, on the user's word: fewer entries than
    /// before are no fault any more. StoreFailed or NotAsEntered if the book is not sound in
    /// itself.
    Result<void> acceptAsSeen();

    /// BookMoved, before anything is entered or confirmed, if the file at path() is not the one
    /// that was opened, or its log is not; Busy, naming the writer, if the lock cannot be had.
    Result<void> begin() override;
    Result<void> commit() override;
    void rollback() override;
    /// begin() for what can be put off: Busy at once.
    Result<void> beginAtOnce();

    /// Whether what is entered goes to a log beside the book first (journal_mode.h); false for a
    /// book that was opened for reading.
    [[nodiscard]] bool usesLog() const { return m_place.hasLog(); }
    /// BookMoved as begin() would say it.
    [[nodiscard]] Result<void> inPlace() const { return m_place.inPlace(); }
    /// Puts what stands in the log into the file, so that the file alone is the book. Does not wait
    /// for others; false if some of the log must stay because they still read it.
    Result<bool> foldLog();
    /// Looks at how the pages fit together: BookDamaged with the first finding if they do not.
    /// Takes about as long as reading the file; Cancelled soon after `watch` says so.
    Result<void> quickCheck(const Watch& watch = {});
    /// Removes the book again, file and all, if this store made it, nothing was ever entered and
    /// nobody else has it open; true if so.
    static bool takeAway(std::unique_ptr<SqlStore> store);

    Result<ledger::Newest> newest() override;
    Result<std::int64_t> put(const ledger::Action& action) override;
    Result<void> put(const ledger::Entry& entry, std::int64_t action) override;
    Result<void> put(const ledger::BatchState& state) override;
    Result<void> dropBatch(const std::string& id) override;
    Result<std::optional<bool>> sameContent(const ledger::Entry& entry) override;
    Result<std::vector<ledger::Entry>> definitions() override;
    Result<std::optional<ledger::Event>> event(const std::string& id) override;
    Result<std::vector<ledger::Event>> eventsOf(const std::string& batch) override;
    Result<std::vector<std::string>> filledWith(const std::string& batch) override;
    Result<std::vector<ledger::Entry>> cupboard() override;
    Result<std::vector<ledger::Event>> eventsOnItem(const std::string& item) override;
    Result<std::vector<ledger::Event>> eventsOnItems() override;
    Result<std::vector<std::string>> itemsTakenFor(const std::string& batch) override;
    Result<std::vector<ledger::Event>> eventsOnContainer(const std::string& container) override;
    Result<std::vector<std::string>> itemsEnded(chemistry::Instant at) override;
    Result<std::vector<ledger::Event>> eventsOfAction(std::int64_t action) override;
    Result<std::vector<ledger::Entry>> cupboardOfAction(std::int64_t action) override;
    Result<std::vector<formulary::Vessel>> vesselsOfAction(std::int64_t action) override;
    Result<std::vector<ledger::Event>> eventsWith(const std::string& event) override;
    Result<std::optional<ledger::FilmRecord>> film(const std::string& id) override;
    Result<std::vector<ledger::FilmRecord>> filmLines(const std::string& run) override;
    Result<std::vector<ledger::FilmRecord>> filmsOfAction(std::int64_t action) override;
    Result<std::vector<ledger::FilmMark>> marksOf(const std::string& film) override;
    Result<std::vector<ledger::FilmMark>> marksOfAction(std::int64_t action) override;
    Result<std::optional<ledger::BatchState>> batch(const std::string& id) override;
    Result<std::vector<ledger::BatchState>> batches(chemistry::Instant at, bool ended) override;
    Result<std::vector<ledger::Event>> mixings(chemistry::Instant from,
                                               chemistry::Instant to) override;
    Result<bool> has(std::string_view type, const std::string& id) override;
    Result<bool> hasRun(const std::string& run) override;
    Result<std::vector<ledger::Action>> actions(int count) override;

    /// Every entry's line in order of entry, as forEachSoundLine() hands them out.
    Result<void> forEachLine(const TakeSoundLine& take, std::vector<Error>* faults = nullptr);

    /// Whether it holds fillings that stand on one side only, as version 1 of the journal wrote
    /// them.
    Result<bool> hasUnpaired();

    /// What the book keeps besides entries, such as the first line of the journal it came from.
    /// Writing only within a transaction.
    Result<std::optional<QByteArray>> note(const std::string& key);
    Result<void> putNote(const std::string& key, const QByteArray& value);
    Result<void> dropNote(const std::string& key);
    /// Those whose keys begin with `prefix`, by key.
    Result<std::map<std::string, QByteArray>> notes(const std::string& prefix);

private:
    struct Tables;

    SqlStore(std::unique_ptr<Connection> connection, QString path, const StoreOptions& options);
    static Result<std::unique_ptr<SqlStore>> openAside(const QString& path, bool outOfDate,
                                                       const StoreOptions& options);
    static Result<std::unique_ptr<SqlStore>> lookedAt(std::unique_ptr<SqlStore> store,
                                                      const StoreOptions& options);
    Result<void> makeReady(const StoreOptions& options, Volume place);
    Result<void> stayPut();
    [[nodiscard]] Error waitedFor(Error error) const;

    std::unique_ptr<QTemporaryDir> m_aside; ///< of a copy that is read in the book's place
    std::unique_ptr<Connection> m_connection;
    BookPlace m_place;
    int m_patienceMs;
    SchemaOutcome m_outcome = SchemaOutcome::Current;
    std::unique_ptr<Tables> m_tables;
};

} // namespace ullage::store
