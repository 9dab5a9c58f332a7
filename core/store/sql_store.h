// The book on SQLite.
//
// Tables and their rules: resources/schema. Entries are only ever appended; the table of batches is
// derived and says where the fold of a batch's events leaves it. One store is one connection and
// belongs to the thread that opened it; others may write to the same file meanwhile.
#pragma once

#include "core/ledger/store_port.h"
#include "core/store/connection.h"
#include "core/store/schema_steps.h"
#include "core/store/statement.h"

#include <QByteArray>
#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace ullage::store
{

enum class Access {
    Read,   ///< nothing is changed, but for bringing an older schema up to date
    Write,  ///< the book must be there
    Create, ///< made empty if there is none
};

struct StoreOptions {
    Access access = Access::Write;
    int busyTimeoutMs = 5000; ///< how long to wait for another writer
    std::vector<SchemaStep> steps = schemaSteps();
};

class SqlStore final : public ledger::StorePort
{
public:
    /// NotABook if there is none (unless it is to be made), or the file is something else;
    /// NewerBook, untouched, naming the schema it needs.
    static Result<std::unique_ptr<SqlStore>> open(const QString& path,
                                                  const StoreOptions& options = {});
    ~SqlStore() override;

    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] SchemaOutcome outcome() const { return m_outcome; }
    /// For copies and checks.
    [[nodiscard]] Connection& connection() { return *m_connection; }

    Result<void> begin() override;
    Result<void> commit() override;
    void rollback() override;

    Result<std::int64_t> lastEntry() override;
    Result<std::int64_t> put(const ledger::Action& action) override;
    Result<void> put(const ledger::Entry& entry, std::int64_t action) override;
    Result<void> put(const ledger::BatchState& state) override;
    Result<void> dropBatch(const std::string& id) override;
    Result<std::optional<bool>> sameContent(const ledger::Entry& entry) override;
    Result<std::vector<ledger::Entry>> definitions() override;
    Result<std::optional<ledger::Event>> event(const std::string& id) override;
    Result<std::vector<ledger::Event>> eventsOf(const std::string& batch) override;
    Result<std::vector<ledger::Event>> eventsOfAction(std::int64_t action) override;
    Result<std::optional<ledger::FilmRecord>> film(const std::string& id) override;
    Result<std::vector<ledger::FilmMark>> marksOf(const std::string& film) override;
    Result<std::vector<ledger::FilmMark>> marksOfAction(std::int64_t action) override;
    Result<std::optional<ledger::BatchState>> batch(const std::string& id) override;
    Result<std::vector<ledger::BatchState>> batches(chemistry::Instant at, bool ended) override;
    Result<bool> hasPacket(const std::string& id) override;
    Result<bool> hasRun(const std::string& run) override;
    Result<std::vector<ledger::Action>> actions(int count) override;

    /// Every entry's line in order of entry, from one moment's view of the book. Stops at the first
    /// refusal of `take` and returns it.
    Result<void> forEachLine(const std::function<Result<void>(const QByteArray&)>& take);

    /// What the book keeps besides entries, such as the first line of the journal it came from.
    /// Writing only within a transaction.
    Result<std::optional<QByteArray>> note(const std::string& key);
    Result<void> putNote(const std::string& key, const QByteArray& value);

private:
    SqlStore(std::unique_ptr<Connection> connection, QString path);
    Result<std::vector<ledger::Event>> eventsFrom(Result<Rows> rows);
    Result<std::vector<ledger::BatchState>> statesFrom(Result<Rows> rows);

    std::unique_ptr<Connection> m_connection;
    QString m_path;
    SchemaOutcome m_outcome = SchemaOutcome::Current;
    struct Statements;
    std::unique_ptr<Statements> m_statements;
};

} // namespace ullage::store
