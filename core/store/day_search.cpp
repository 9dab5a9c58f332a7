#include "core/store/day_search.h"

#include "core/store/each_row.h"

#include <QStringList>

#include <algorithm>

namespace ullage::store
{

namespace
{

constexpr std::int64_t kBehind = 2000; // entries that the index may not know yet
constexpr int kMostCoded = 20'000;
constexpr int kCommon = 4000; // documents that make a word a common one
constexpr std::size_t kMostSolutions = 64;

bool newer(const DayKey& a, const DayKey& b)
{
    return std::pair(a.atMs, a.seq) > std::pair(b.atMs, b.seq);
}

void addKeys(const std::vector<DayRow>& rows, std::vector<DayKey>& into)
{
    for (const DayRow& row : rows) {
        into.push_back(row.key());
    }
}

void putInOrder(std::vector<DayKey>& keys)
{
    std::sort(keys.begin(), keys.end(), newer);
    keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
}

// Entries with one of these codes in them.
Query codedEntries(const DayWord& word)
{
    QVariantList values;
    const auto anyOf = [&](const std::vector<std::string>& codes) {
        QStringList marks;
        for (const std::string& code : codes) {
            values << QString::fromStdString(code);
            marks << QStringLiteral("?");
        }
        return u'(' + marks.join(u',') + u')';
    };
    // What cannot be read holds no code.
    const auto field = [](const char* name) {
        return QStringLiteral("CASE WHEN json_valid(e.body) THEN json_extract(e.body, '$.%1') END")
            .arg(QLatin1String(name));
    };
    QStringList either;
    if (!word.faults.empty()) {
        either << QStringLiteral("(e.kind = 'film-mark' AND ") + field("mark") +
                      QStringLiteral(" IN ") + anyOf(word.faults) + u')';
    }
    if (!word.whys.empty()) {
        either << QStringLiteral("(e.kind IN ('voided', 'drawn') AND ") + field("why") +
                      QStringLiteral(" IN ") + anyOf(word.whys) + u')';
    }
    const auto means = [&](const char* kind) {
        return std::find(word.kinds.begin(), word.kinds.end(), kind) != word.kinds.end();
    };
    if (means("voided")) {
        either << QStringLiteral("e.kind = 'voided'");
    }
    if (means("test-asked") || !word.faults.empty()) {
        either << QStringLiteral("e.kind = 'test-asked'");
        either << QStringLiteral("(e.kind = 'noted' AND ") + field("text") +
                      QStringLiteral(" GLOB 'test-asked *')");
    }
    if (either.isEmpty()) {
        return {};
    }
    return {QStringLiteral("SELECT ") + kDayRowColumns + QStringLiteral(" FROM entry e WHERE ") +
                either.join(QLatin1String(" OR ")) + QStringLiteral(" LIMIT %1").arg(kMostCoded),
            values};
}

} // namespace

// The word itself, and the names of the solutions that it means: their bottles' rows hold those.
Result<std::optional<std::vector<FoldedWord>>> DaySearch::lookedFor(DayTexts& texts,
                                                                    const FoldedWord& word)
{
    std::vector<FoldedWord> all{word};
    if (word.word->solutions.size() > kMostSolutions) {
        return std::nullopt;
    }
    for (const std::string& id : word.word->solutions) {
        const auto name = texts.solutionName(id);
        if (!name) {
            return tl::unexpected(name.error());
        }
        if (!name->isEmpty()) {
            all.emplace_back(*name);
        }
    }
    if (std::any_of(all.begin(), all.end(),
                    [](const FoldedWord& one) { return one.trigrams().empty(); })) {
        return std::nullopt;
    }
    return all;
}

Result<std::unique_ptr<DaySearch>> DaySearch::lead(SqlStore& store, DayTexts& texts,
                                                   SearchIndex& index, const DayFilter& filter,
                                                   const std::vector<FoldedWord>& words)
{
    const std::unique_ptr<DaySearch> nobody;
    const auto last = store.lastEntry();
    if (!last) {
        return tl::unexpected(last.error());
    }
    const auto known = index.upTo(store);
    if (!known || *last - *known > kBehind) {
        return std::unique_ptr<DaySearch>();
    }
    std::unique_ptr<DaySearch> search(new DaySearch(store, index));
    const DayWord* rarest = nullptr;
    int fewest = 0;
    for (const FoldedWord& word : words) {
        auto looked = lookedFor(texts, word);
        if (!looked) {
            return tl::unexpected(looked.error());
        }
        const auto count = *looked ? index.count(**looked, kCommon) : std::optional<int>();
        if (!count) {
            continue;
        }
        const int weight = *count + (word.word->kinds.empty() ? 0 : kCommon);
        if (!rarest || weight < fewest) {
            rarest = word.word;
            fewest = weight;
            search->m_words = std::move(**looked);
        }
    }
    if (!rarest) {
        return std::unique_ptr<DaySearch>();
    }
    if (!rarest->kinds.empty()) {
        search->m_kinds = filter;
        search->m_kinds->kinds = rarest->kinds;
    }
    const auto coded = search->addCoded(texts, *rarest);
    if (!coded || !*coded) {
        return coded.map([](bool) { return std::unique_ptr<DaySearch>(); });
    }
    const auto late = texts.rowsTouched(*known, *last);
    if (!late) {
        return tl::unexpected(late.error());
    }
    addKeys(*late, search->m_others);
    putInOrder(search->m_others);
    return search;
}

// False if there are too many.
Result<bool> DaySearch::addCoded(DayTexts& texts, const DayWord& word)
{
    const Query query = codedEntries(word);
    if (query.sql.isEmpty()) {
        return true;
    }
    Statement statement(m_store.connection(), query.sql);
    int entries = 0;
    const auto rows = texts.rowsTouchedBy(statement, query.values, &entries);
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    addKeys(*rows, m_others);
    return entries < kMostCoded;
}

Result<DaySearch::Some> DaySearch::ofKinds(const std::optional<DayKey>& after, int wanted)
{
    Some some;
    const Query query = dayRows(*m_kinds, after, wanted);
    Statement statement(m_store.connection(), query.sql);
    return eachRow(statement.runWith(query.values),
                   [&](const Rows& row) -> Result<void> {
                       some.keys.push_back(dayRow(row).key());
                       return {};
                   })
        .map([&] {
            some.all = static_cast<int>(some.keys.size()) < wanted;
            return std::move(some);
        });
}

Result<std::optional<DaySearch::Some>> DaySearch::next(const std::optional<DayKey>& after,
                                                       int wanted)
{
    const auto found = m_index.newest(m_words, after, wanted);
    if (!found) {
        return std::nullopt;
    }
    Some some{found->keys, {}, found->all};
    std::optional<DayKey> known; // down to here nothing is left out
    if (!found->all) {
        known = found->keys.back();
    }
    if (m_kinds) {
        const auto ofKind = ofKinds(after, wanted);
        if (!ofKind) {
            return tl::unexpected(ofKind.error());
        }
        some.keys.insert(some.keys.end(), ofKind->keys.begin(), ofKind->keys.end());
        some.all = some.all && ofKind->all;
        if (!ofKind->all && (!known || newer(ofKind->keys.back(), *known))) {
            known = ofKind->keys.back();
        }
    }
    for (const DayKey& key : m_others) {
        if (!after || newer(*after, key)) {
            some.keys.push_back(key);
        }
    }
    putInOrder(some.keys);
    if (known) {
        std::erase_if(some.keys, [&](const DayKey& key) { return newer(*known, key); });
    }
    if (static_cast<int>(some.keys.size()) > wanted) {
        some.keys.resize(static_cast<std::size_t>(wanted));
        some.all = false;
    }
    if (!some.keys.empty()) {
        some.on = some.keys.back();
    }
    return some;
}

} // namespace ullage::store
