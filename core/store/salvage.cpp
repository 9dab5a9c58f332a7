#include "core/store/salvage.h"

#include "core/ledger/book.h"
#include "core/store/chain.h"
#include "core/store/file_moves.h"
#include "core/store/integrity.h"
#include "core/store/page_copy.h"
#include "core/store/salvage_copy.h"
#include "core/store/scratch_file.h"
#include "core/store/sql_store.h"
#include "core/store/wreck.h"

#include <QFileInfo>

#include <set>

namespace ullage::store
{

namespace
{

constexpr std::int64_t kApart = static_cast<int>(ledger::ActionMode::Apart);

struct Lost {
    std::int64_t number = 0;
    Between between;
};

class Salvage
{
public:
    Salvage(QString damaged, const std::vector<Copy>& copies, const StepWatch& watch)
        : m_damaged(std::move(damaged)), m_copies(copies), m_watch(watch)
    {
    }

    Result<Salvaged> into(const QString& fresh, chemistry::Instant now)
    {
        auto scratch = scratchFor(fresh);
        if (!scratch) {
            return tl::unexpected(scratch.error());
        }
        m_watch("read");
        auto wreck = Wreck::open(m_damaged, scratch->path());
        if (!wreck && !saysDamaged(wreck.error())) {
            return tl::unexpected(wreck.error());
        }
        if (wreck) {
            m_wreck = std::move(*wreck);
        } else {
            m_done.unreadable = wreck.error();
        }
        m_sources = openCopies(m_copies, fresh);
        if (!m_wreck && m_sources.empty()) {
            return refuse(*m_done.unreadable);
        }
        auto part = scratchFor(fresh);
        if (!part) {
            return tl::unexpected(part.error());
        }
        m_watch("write");
        if (auto fine = write(part->path(), now); !fine) {
            return tl::unexpected(fine.error());
        }
        nameMissing();
        if (auto fine = flushFile(part->path()); !fine) {
            return tl::unexpected(fine.error());
        }
        m_watch("rename");
        if (auto fine = moveNew(part->path(), fresh); !fine) {
            return tl::unexpected(fine.error());
        }
        part->keep();
        m_watch("done");
        return std::move(m_done);
    }

private:
    Result<void> write(const QString& path, chemistry::Instant now)
    {
        // Its log is no use to a file that nobody else knows of, and it must end as one file.
        auto store = SqlStore::open(path, {.access = Access::Create});
        if (!store) {
            return tl::unexpected(store.error());
        }
        m_store = store->get();
        if (auto fine = m_store->begin(); !fine) {
            return fine;
        }
        auto fine = notes().and_then([this] { return entries(); });
        if (!fine) {
            m_store->rollback();
            return fine;
        }
        if (fine = states(now); !fine) {
            m_store->rollback();
            return fine;
        }
        if (fine = m_store->commit(); !fine) {
            return fine;
        }
        const auto check = checkBook(*m_store);
        if (!check) {
            return tl::unexpected(check.error());
        }
        m_done.faults = check->findings;
        m_done.names = namesFor(m_store->connection(), m_done.faults);
        m_store = nullptr;
        store->reset();
        return asOneFile(path);
    }

    static Result<void> asOneFile(const QString& path)
    {
        constexpr int kPatience = 5000;
        const auto file = Connection::open(path, FileMode::Write, kPatience);
        if (!file) {
            return tl::unexpected(file.error());
        }
        const auto mode = (*file)->text(QStringLiteral("PRAGMA journal_mode = DELETE"));
        return mode ? Result<void>{} : tl::unexpected(mode.error());
    }

    Result<void> notes()
    {
        std::set<QByteArray> known;
        const auto take = [&](Wreck& from) -> Result<void> {
            for (const auto& [key, value] : from.notes()) {
                // The new book has a chain of its own.
                const bool ofChain = key == kHeadNote || key == kFaultyNote;
                if (!ofChain && known.insert(key).second) {
                    if (auto fine = m_store->putNote(key.toStdString(), value); !fine) {
                        return fine;
                    }
                }
            }
            return {};
        };
        if (m_wreck) {
            return take(*m_wreck);
        }
        return take(*m_sources.front().pages);
    }

    Result<void> entries()
    {
        if (m_wreck) {
            auto fine = m_wreck->forEach([this](std::int64_t number, StoredEntry* found) {
                if (found) {
                    pass(found->entry);
                    return enter(*found, *m_wreck);
                }
                return fillIn(number);
            });
            if (!fine) {
                return fine;
            }
        }
        // What stood at the end, if not even an index tells of it.
        const std::int64_t known = m_wreck ? m_wreck->last() : 0;
        for (SalvageCopy& source : m_sources) {
            if (source.pages->last() <= known || !source.agrees(m_wreck.get(), known + 1)) {
                continue;
            }
            for (std::int64_t number = known + 1; number <= source.pages->last(); ++number) {
                if (auto found = source.pages->entry(number)) {
                    if (auto fine = enterFrom(source, *found); !fine) {
                        return fine;
                    }
                }
            }
        }
        return {};
    }

    Result<void> enter(const StoredEntry& found, Wreck& from)
    {
        const std::string key = std::string(found.entry.type()) + '\n' + found.entry.id();
        if (!m_entered.insert(key).second) {
            return {}; // the damage has doubled it
        }
        const auto action = actionFor(found.action, from);
        if (!action) {
            return tl::unexpected(action.error());
        }
        if (auto fine = m_store->put(found.entry, *action); !fine) {
            return fine;
        }
        ++m_done.entries;
        if (const ledger::Event* event = found.entry.event(); event && !event->batch.empty()) {
            m_batches.insert(event->batch);
        }
        return {};
    }

    Result<void> enterFrom(SalvageCopy& source, const StoredEntry& found)
    {
        const auto before = m_done.entries;
        auto fine = enter(found, *source.pages);
        if (m_done.entries > before) {
            ++m_done.fromCopy;
            if (!m_done.copies.contains(source.path)) {
                m_done.copies += source.path;
            }
        }
        return fine;
    }

    Result<void> fillIn(std::int64_t number)
    {
        for (SalvageCopy& source : m_sources) {
            if (number > source.pages->last() || !source.agrees(m_wreck.get(), number)) {
                continue;
            }
            if (auto found = source.pages->entry(number)) {
                pass(found->entry);
                return enterFrom(source, *found);
            }
        }
        m_lost.push_back({number, {m_passed, std::nullopt}});
        return {};
    }

    // The moments next to what is lost: all that a person can know it by.
    void pass(const ledger::Entry& entry)
    {
        const ledger::Event* event = entry.event();
        if (!event) {
            return;
        }
        m_passed = event->at;
        for (; m_closed < m_lost.size(); ++m_closed) {
            m_lost[m_closed].between.to = event->at;
        }
    }

    // What the user did in one go stays together, and undo goes on where it was.
    Result<std::int64_t> actionFor(std::int64_t id, Wreck& from)
    {
        if (m_actions.contains(id)) {
            return id;
        }
        auto action = from.action(id);
        for (auto source = m_sources.begin(); !action && source != m_sources.end(); ++source) {
            action = source->pages->action(id);
        }
        if (!action) {
            action = StoredAction{id, kApart, "import", "", std::nullopt, std::nullopt};
        }
        if (action->of && !m_actions.contains(*action->of)) {
            action->of.reset();
            action->mode = kApart;
        }
        Statement put(m_store->connection(),
                      QStringLiteral("INSERT INTO action (id, mode, what, subject, of, seat) "
                                     "VALUES (?, ?, ?, ?, ?, ?)"));
        if (auto done =
                put.run(id, action->mode, action->what, action->subject, action->of, action->seat);
            !done) {
            return tl::unexpected(done.error());
        }
        m_actions.insert(id);
        return id;
    }

    // Where each batch stands. One that cannot be reckoned because of what is missing has no state,
    // and so does not keep the others from being shown.
    Result<void> states(chemistry::Instant now)
    {
        auto book = ledger::Book::open(
            *m_store, [now] { return now; }, [] { return std::string(); });
        if (!book) {
            m_done.faults.push_back(book.error());
            return {};
        }
        constexpr auto kLater = std::chrono::hours(24 * 366);
        for (const std::string& id : m_batches) {
            const auto batch = (*book)->batch(id, now + kLater);
            if (!batch) {
                continue; // checkBook() tells why
            }
            if (auto fine = m_store->put(
                    {id, batch->name, batch->solution->id, batch->mixedAt, batch->endedAt});
                !fine) {
                return fine;
            }
        }
        return {};
    }

    void nameMissing()
    {
        if (m_lost.empty()) {
            return;
        }
        std::vector<std::int64_t> numbers;
        for (const Lost& lost : m_lost) {
            numbers.push_back(lost.number);
        }
        const auto& names = m_wreck->named(numbers);
        for (const auto& [number, between] : m_lost) {
            const auto name = names.find(number);
            if (name != names.end()) {
                const std::string type = name->second.type.toStdString();
                const std::string id = name->second.id.toStdString();
                if (!m_entered.contains(type + '\n' + id)) {
                    m_done.missing.push_back({number, number, type, id, between});
                }
            } else if (!m_done.missing.empty() && m_done.missing.back().type.empty() &&
                       m_done.missing.back().last + 1 == number) {
                m_done.missing.back().last = number;
            } else {
                m_done.missing.push_back({number, number, {}, {}, between});
            }
        }
    }

    QString m_damaged;
    const std::vector<Copy>& m_copies;
    const StepWatch& m_watch;
    std::unique_ptr<Wreck> m_wreck;
    std::vector<SalvageCopy> m_sources;
    SqlStore* m_store = nullptr;
    std::set<std::string> m_entered; ///< type and id
    std::set<std::int64_t> m_actions;
    std::set<std::string> m_batches;
    std::vector<Lost> m_lost;
    std::size_t m_closed = 0;                   ///< of them, those after which something was found
    std::optional<chemistry::Instant> m_passed; ///< moment of the event found last
    Salvaged m_done;
};

} // namespace

std::vector<Gap> gapsOf(const std::vector<Missing>& missing)
{
    std::vector<Gap> gaps;
    for (const Missing& part : missing) {
        if (gaps.empty() || gaps.back().last + 1 != part.first) {
            gaps.push_back({part.first, part.last, part.between, {}});
        }
        gaps.back().last = part.last;
        gaps.back().parts.push_back(part);
    }
    return gaps;
}

Result<Salvaged> salvage(const QString& damaged, const QString& fresh,
                         const std::vector<Copy>& copies, chemistry::Instant now,
                         const StepWatch& watch)
{
    const StepWatch told = watch ? watch : [](const char*) {};
    const QFileInfo from(damaged);
    if (!from.isFile() || from.size() == 0) {
        return refuse({.code = ErrorCode::NotABook,
                       .text = !from.exists() ? "missing"
                               : from.isDir() ? "folder"
                                              : "empty",
                       .file = damaged.toStdString()});
    }
    const QFileInfo to(fresh);
    if (to.exists() || to.isSymLink()) {
        return refuse({.code = ErrorCode::IdTaken, .field = "file", .text = fresh.toStdString()});
    }
    return Salvage(damaged, copies, told).into(fresh, now);
}

} // namespace ullage::store
