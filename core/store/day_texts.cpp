#include "core/store/day_texts.h"

#include "core/store/each_row.h"
#include "core/store/persons_text.h"

#include <algorithm>

namespace ullage::store
{

namespace
{

constexpr std::size_t kBottlesKept = 50'000;

QString entries(const QString& where)
{
    return QStringLiteral("SELECT ") + kDayRowColumns + QStringLiteral(" FROM entry e WHERE ") +
           where;
}

bool isOneOf(const std::string& code, const std::vector<std::string>& codes)
{
    return std::find(codes.begin(), codes.end(), code) != codes.end();
}

bool isRun(const DayRow& row) { return row.kind == "processed" && !row.run.empty(); }

bool shares(const std::set<std::string>& some, const std::vector<std::string>& others)
{
    return std::any_of(others.begin(), others.end(),
                       [&](const std::string& one) { return some.contains(one); });
}

} // namespace

DayTexts::DayTexts(SqlStore& store)
    : m_voidings(store.connection(), QStringLiteral("SELECT body FROM entry WHERE voids = ?")),
      m_ofRun(store.connection(),
              QStringLiteral("SELECT body, batch FROM entry WHERE run = ? UNION ALL "
                             "SELECT v.body, NULL FROM entry o JOIN entry v ON v.voids = o.id "
                             "WHERE o.run = ? UNION ALL "
                             "SELECT m.body, NULL FROM entry o JOIN entry m ON m.film = o.id "
                             "WHERE o.run = ? AND o.type = 'film'")),
      m_filmOf(store.connection(),
               QStringLiteral("SELECT body FROM entry WHERE type = 'film' AND id = ?")),
      m_item(store.connection(),
             QStringLiteral("SELECT body FROM entry WHERE type IN ('packet', 'chemical', "
                            "'supply') AND id = ?")),
      m_mixings(store.connection(),
                QStringLiteral("SELECT body FROM entry WHERE batch = ? AND kind = 'mixed'")),
      m_solution(store.connection(),
                 QStringLiteral("SELECT body FROM entry WHERE type = 'solution' AND id = ?")),
      // The plus: without it the planner walks an index of all entries of those types.
      m_entries(store.connection(),
                entries("e.seq > ? AND e.seq <= ? AND +e.type IN ('event', 'film', 'film-mark') "
                        "ORDER BY e.seq")),
      m_firstBath(store.connection(),
                  entries("e.run = ? AND e.kind = 'processed' AND NOT " +
                          enteredAnew(QStringLiteral("e")) + " ORDER BY e.seq LIMIT 1")),
      m_voided(store.connection(), entries("e.type = 'event' AND e.id = ?")),
      m_mark(store.connection(), entries("e.type = 'film-mark' AND e.id = ?")),
      m_runOfFilm(store.connection(), entries("e.type = 'film' AND e.id = ?")),
      m_ofBatch(store.connection(), entries("e.batch = ? AND e.seq < ?"))
{
}

Result<QByteArray> DayTexts::solutionName(const std::string& id)
{
    if (const auto known = m_solutions.find(id); known != m_solutions.end()) {
        return known->second;
    }
    QByteArray name;
    return eachRow(m_solution.run(id),
                   [&](const Rows& row) -> Result<void> {
                       name = folded(QString::fromStdString(personsText(row.bytes(0)).name));
                       return {};
                   })
        .map([&] { return m_solutions[id] = name; });
}

Result<const DayTexts::Bottle*> DayTexts::bottle(const std::string& batch)
{
    if (const auto known = m_bottles.find(batch); known != m_bottles.end()) {
        return &known->second;
    }
    Bottle found;
    bool named = false;
    bool unnamed = false;
    auto fine = eachRow(m_mixings.run(batch), [&](const Rows& row) -> Result<void> {
        const PersonsText mixed = personsText(row.bytes(0));
        (mixed.name.empty() ? unnamed : named) = true;
        found.text += folded(QString::fromStdString(mixed.name)) + '\n';
        found.solutions.insert(mixed.solution);
        return {};
    });
    if (!fine) {
        return tl::unexpected(fine.error());
    }
    if (unnamed || !named) {
        found.text += folded(QString::fromStdString(batch)) + '\n'; // what it is then called
    }
    for (const std::string& solution : found.solutions) {
        const auto name = solutionName(solution);
        if (!name) {
            return tl::unexpected(name.error());
        }
        found.text += *name + '\n';
    }
    return &(m_bottles[batch] = std::move(found));
}

Result<DayTexts::Lines> DayTexts::linesOf(const DayRow& row)
{
    Lines lines;
    const auto take = [&](const Rows& one) -> Result<void> {
        lines.bodies.push_back(one.bytes(0));
        return {};
    };
    if (!row.batch.empty()) {
        lines.batches.insert(row.batch);
    }
    if (isRun(row)) {
        return eachRow(m_ofRun.run(row.run, row.run, row.run),
                       [&](const Rows& one) -> Result<void> {
                           if (!one.isNull(1)) {
                               lines.batches.insert(one.text(1));
                           }
                           return take(one);
                       })
            .map([&] { return std::move(lines); });
    }
    lines.bodies.push_back(row.body);
    auto fine = eachRow(m_voidings.run(row.id), take);
    if (fine && !row.film.empty()) {
        fine = eachRow(m_filmOf.run(row.film), take);
    }
    if (fine && (row.body.contains("\"packet\"") || row.body.contains("\"item\""))) {
        fine = eachRow(m_item.run(personsText(row.body).item), take);
    }
    return fine.map([&] { return std::move(lines); });
}

void DayTexts::forgetSome()
{
    if (m_bottles.size() >= kBottlesKept) {
        m_bottles.clear();
    }
}

Result<QByteArray> DayTexts::textOf(const DayRow& row)
{
    forgetSome();
    const auto lines = linesOf(row);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    QByteArray text;
    for (const QByteArray& line : lines->bodies) {
        const PersonsText typed = personsText(line);
        if (typed.timesOfRun) {
            return QByteArray();
        }
        text += typed.text + '\n';
    }
    for (const std::string& batch : lines->batches) {
        const auto known = bottle(batch);
        if (!known) {
            return tl::unexpected(known.error());
        }
        text += (*known)->text;
    }
    return text;
}

// What costs little first: most rows of a book hold nothing of what is looked for.
Result<bool> DayTexts::mayHold(const Lines& lines, const FoldedWord& word)
{
    if (word.word->hasCodes() ||
        std::any_of(lines.bodies.begin(), lines.bodies.end(),
                    [&](const QByteArray& line) { return word.mayStandIn(line); })) {
        return true;
    }
    for (const std::string& batch : lines.batches) {
        const auto known = bottle(batch);
        if (!known) {
            return tl::unexpected(known.error());
        }
        if (word.standsIn((*known)->text)) {
            return true;
        }
    }
    return false;
}

Result<bool> DayTexts::reallyHolds(const DayRow& row, const Lines& lines,
                                   const std::vector<FoldedWord>& words)
{
    std::vector<PersonsText> typed;
    for (const QByteArray& line : lines.bodies) {
        typed.push_back(personsText(line));
    }
    std::vector<const Bottle*> bottles;
    for (const std::string& batch : lines.batches) {
        const auto known = bottle(batch);
        if (!known) {
            return tl::unexpected(known.error());
        }
        bottles.push_back(*known);
    }
    return std::all_of(words.begin(), words.end(), [&](const FoldedWord& word) {
        const DayWord& codes = *word.word;
        return isOneOf(row.kind, codes.kinds) ||
               std::any_of(typed.begin(), typed.end(),
                           [&](const PersonsText& line) {
                               return word.standsIn(line.text) ||
                                      isOneOf(line.fault, codes.faults) ||
                                      isOneOf(line.why, codes.whys) ||
                                      (line.testAsked && isOneOf("test-asked", codes.kinds)) ||
                                      (line.takesBack && isOneOf("voided", codes.kinds));
                           }) ||
               std::any_of(bottles.begin(), bottles.end(), [&](const Bottle* one) {
                   return word.standsIn(one->text) || shares(one->solutions, codes.solutions);
               });
    });
}

Result<bool> DayTexts::holds(const DayRow& row, const std::vector<FoldedWord>& words)
{
    forgetSome();
    const auto lines = linesOf(row);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    for (const FoldedWord& word : words) {
        if (const auto may = mayHold(*lines, word); !may || !*may) {
            return may;
        }
    }
    return reallyHolds(row, *lines, words);
}

Result<std::vector<DayRow>> DayTexts::rowsTouched(std::int64_t after, std::int64_t last)
{
    return rowsTouchedBy(m_entries, {qlonglong{after}, qlonglong{last}});
}

Result<std::vector<DayRow>> DayTexts::rowsTouchedBy(Statement& statement,
                                                    const QVariantList& values, int* count)
{
    std::vector<DayRow> entered;
    RowsBySeq rows;
    auto fine = eachRow(statement.runWith(values), [&](const Rows& row) -> Result<void> {
        entered.push_back(dayRow(row));
        return {};
    });
    for (const DayRow& one : entered) {
        if (fine) {
            fine = touch(one, rows);
        }
    }
    if (count) {
        *count = static_cast<int>(entered.size());
    }
    return fine.map([&] {
        std::vector<DayRow> found;
        for (auto& [seq, row] : rows) {
            found.push_back(std::move(row));
        }
        return found;
    });
}

Result<void> DayTexts::addFirst(Statement& statement, const std::string& of, RowsBySeq& rows)
{
    return eachRow(statement.run(of), [&](const Rows& row) -> Result<void> {
        DayRow found = dayRow(row);
        const std::int64_t seq = found.seq;
        rows.insert_or_assign(seq, std::move(found));
        return {};
    });
}

Result<void> DayTexts::addRowOf(const DayRow& event, RowsBySeq& rows)
{
    if (isRun(event)) {
        return addFirst(m_firstBath, event.run, rows);
    }
    rows.insert_or_assign(event.seq, event);
    return {};
}

Result<void> DayTexts::touch(const DayRow& entry, RowsBySeq& rows)
{
    const auto eachOf = [&](Result<Rows> entries, auto take) {
        std::vector<DayRow> found;
        auto fine = eachRow(std::move(entries), [&](const Rows& row) -> Result<void> {
            found.push_back(dayRow(row));
            return {};
        });
        for (const DayRow& one : found) {
            if (fine) {
                fine = take(one);
            }
        }
        return fine;
    };
    if (entry.kind.empty()) { // a film
        return addFirst(m_firstBath, entry.run, rows);
    }
    if (entry.kind == "film-mark") {
        auto fine =
            entry.voids.empty() ? addRowOf(entry, rows) : addFirst(m_mark, entry.voids, rows);
        return fine ? eachOf(
                          m_runOfFilm.run(entry.film),
                          [&](const DayRow& film) { return addFirst(m_firstBath, film.run, rows); })
                    : fine;
    }
    if (entry.kind == "voided") {
        return eachOf(m_voided.run(entry.voids), [&](const DayRow& event) {
            return event.kind == "voided" ? Result<void>() : addRowOf(event, rows);
        });
    }
    if (entry.kind == "mixed") {
        m_bottles.erase(entry.batch);
        // Usually the first of its bottle; what came before is called by the new name too.
        auto fine = eachOf(m_ofBatch.run(entry.batch, entry.seq), [&](const DayRow& event) {
            return event.kind == "voided" ? Result<void>() : addRowOf(event, rows);
        });
        return fine ? addRowOf(entry, rows) : fine;
    }
    return addRowOf(entry, rows);
}

} // namespace ullage::store
