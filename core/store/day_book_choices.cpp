// What goes with the day book's rows: who is named in it, bottles to choose, journal lines.
#include "core/store/day_book.h"

#include "core/ledger/film_lines.h"
#include "core/store/batch_table.h"
#include "core/store/each_row.h"

#include <algorithm>
#include <map>

namespace ullage::store
{

using namespace ledger;

Result<std::vector<std::string>> DayBook::people() { return firstTexts(m_people.run()); }

Result<std::vector<BatchState>> DayBook::bottles(int most)
{
    return batchStates(m_bottles.run(most));
}

Result<std::vector<DayBook::NumberedLine>> DayBook::lines(const DayEntry& entry)
{
    std::vector<std::pair<std::string, std::string>> wanted; // type, id
    const auto want = [&](const std::string& event, const std::optional<TakenBack>& taken) {
        wanted.emplace_back("event", event);
        if (taken) {
            wanted.emplace_back("event", taken->voiding);
        }
    };
    if (entry.mark) {
        wanted.emplace_back("film-mark", entry.mark->id);
        if (entry.taken) {
            wanted.emplace_back("film-mark", entry.taken->voiding);
        }
    } else if (entry.baths.empty()) {
        want(entry.event.id, entry.taken);
    }
    for (const DayBath& bath : entry.baths) {
        want(bath.event, bath.taken);
    }
    if (entry.times) {
        wanted.emplace_back("run-times", entry.times->id);
    }
    // With lines that others took the place of: by their first ids the marks name them.
    const auto lines = entry.films.empty() ? Result<std::vector<FilmRecord>>()
                                           : m_store.filmLines(entry.films.front().run);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    const auto ofMark =
        entry.mark ? filmNow(*lines, entry.mark->film).ids : std::vector<std::string>();
    for (const FilmRecord& film : *lines) {
        if (entry.mark && std::find(ofMark.begin(), ofMark.end(), film.id) == ofMark.end()) {
            continue;
        }
        wanted.emplace_back("film", film.id);
        const auto marks = entry.mark ? Result<std::vector<FilmMark>>() : m_store.marksOf(film.id);
        if (!marks) {
            return tl::unexpected(marks.error());
        }
        for (const FilmMark& mark : *marks) {
            wanted.emplace_back("film-mark", mark.id);
        }
    }
    std::map<std::int64_t, QByteArray> found; // by order of entry
    for (const auto& [type, id] : wanted) {
        auto fine = eachRow(m_lines.run(type, id), [&](const Rows& row) -> Result<void> {
            found[row.number(0)] = row.bytes(1);
            return {};
        });
        if (!fine) {
            return tl::unexpected(fine.error());
        }
    }
    return std::vector<NumberedLine>(found.begin(), found.end());
}

} // namespace ullage::store
