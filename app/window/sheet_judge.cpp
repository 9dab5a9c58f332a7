#include "app/window/sheet_judge.h"

#include "app/sheet/sheet_words.h"
#include "app/words/error_words.h"
#include "app/words/merge_words.h"
#include "app/words/shown_names.h"
#include "core/store/journal_reader.h"

#include <QBuffer>
#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct SheetJudge {
    Q_DECLARE_TR_FUNCTIONS(SheetJudge)
};

constexpr std::size_t kRefusedShown = 200;
constexpr int kFirstCells = 3;
enum Choice { Encoding, Delimiter, Decimal, Days };

std::vector<std::string> encodings(const std::string& found)
{
    std::vector<std::string> all(store::kSheetEncodings.begin(), store::kSheetEncodings.end());
    if (std::find(all.begin(), all.end(), found) == all.end()) {
        all.insert(all.begin(), found);
    }
    return all;
}

QStringList solutionNames(const formulary::Formulary& formulary)
{
    QStringList names{SheetJudge::tr("Choose a solution…")};
    for (const auto& solution : formulary.currentSolutions()) {
        names << QString::fromStdString(solution->name);
    }
    return names;
}

// The mapping that answers what nobody decided, and whether it was kept from before. Titles above
// the headings may be more or fewer than they were.
std::pair<SheetGuess, bool> startFrom(const store::SheetTable& table,
                                      const std::vector<SheetMapping>& kept)
{
    SheetGuess guess = guessMapping(table);
    for (SheetMapping one : kept) {
        for (const int row : {one.headingRow, guess.mapping.headingRow}) {
            if (row > 0 && row <= static_cast<int>(table.rows.size()) &&
                fitsHeadings(one, headingsOf(table, row))) {
                one.headingRow = row;
                return {SheetGuess{std::move(one), {}}, true};
            }
        }
    }
    return {std::move(guess), false};
}

// Read as it was before where the sheet itself does not tell how.
store::SheetTable readAsBefore(const QByteArray& sheet, store::SheetTable table,
                               store::SheetAsked asked, const SheetMapping& before)
{
    const store::SheetAsked decided = asked;
    if (table.encodingOpen && !asked.encoding) {
        asked.encoding = before.reading.encoding;
    }
    if (table.delimiterOpen && !asked.delimiter) {
        asked.delimiter = before.reading.delimiter;
    }
    if (asked == decided) {
        return table;
    }
    auto again = store::readTable(sheet, asked);
    const bool fits = again && before.headingRow <= static_cast<int>(again->rows.size()) &&
                      fitsHeadings(before, headingsOf(*again, before.headingRow));
    return fits ? std::move(*again) : table;
}

SheetChoice choice(const QString& label, const QStringList& ways, int chosen, bool open)
{
    return {label, ways, open ? -1 : chosen,
            open ? SheetJudge::tr("The sheet does not say. Please choose.") : QString()};
}

std::vector<SheetChoice> readingOf(const store::SheetTable& table, const SheetMapping& mapping,
                                   const SheetOpen& open)
{
    QStringList names;
    int at = 0;
    for (const std::string& one : encodings(table.encoding)) {
        at = one == table.encoding ? static_cast<int>(names.size()) : at;
        names << QString::fromStdString(one);
    }
    return {choice(SheetJudge::tr("&Encoding"), names, at, open.encoding),
            choice(SheetJudge::tr("Between the &cells"),
                   {SheetJudge::tr("semicolon ( ; )"), SheetJudge::tr("comma ( , )"),
                    SheetJudge::tr("tab"), SheetJudge::tr("bar ( | )")},
                   static_cast<int>(table.delimiter), open.delimiter),
            choice(SheetJudge::tr("Before &decimals"),
                   {SheetJudge::tr("comma: 1,5"), SheetJudge::tr("point: 1.5")},
                   mapping.decimalComma ? 0 : 1, open.decimal),
            choice(SheetJudge::tr("&Order of days"),
                   {SheetJudge::tr("day, month, year"), SheetJudge::tr("month, day, year"),
                    SheetJudge::tr("year, month, day")},
                   static_cast<int>(mapping.order), open.days)};
}

QStringList linesOf(const std::vector<SheetRow>& rows)
{
    QStringList lines;
    for (const SheetRow& one : rows) {
        lines << SheetJudge::tr("Row %1: %2").arg(one.row).arg(one.cells.join(u" · "));
    }
    return lines;
}

void addColumns(SheetView& view, const store::SheetTable& table, const SheetMapping& mapping)
{
    for (std::size_t i = 0; i < kSheetFields; ++i) {
        view.fields << sheetFieldName(static_cast<SheetField>(i));
    }
    for (std::size_t column = 0; column < mapping.columns.size(); ++column) {
        SheetColumn one{
            mapping.columns[column].heading, static_cast<int>(mapping.columns[column].field), {}};
        for (std::size_t row = static_cast<std::size_t>(mapping.headingRow);
             row < table.rows.size() && one.first.size() < kFirstCells; ++row) {
            one.first << table.rows[row].value(static_cast<qsizetype>(column));
        }
        view.columns.push_back(std::move(one));
    }
}

// What only the whole book can refuse, beside what the cells themselves do.
Result<void> askBook(SheetJudged& judged, ledger::Book& book, store::SqlStore& store,
                     const Wording& wording)
{
    QBuffer journal(&judged.coming.journal);
    journal.open(QIODevice::ReadOnly);
    const auto outcome = store::readJournal(book, store, journal, {.settled = {}, .trial = true});
    if (!outcome) {
        return tl::unexpected(outcome.error());
    }
    const auto rowOf = [&](int number) {
        const auto line = static_cast<std::size_t>(std::max(number, 1)) - 1;
        return line < judged.coming.rows.size() ? judged.coming.rows[line] : 0;
    };
    for (const ledger::LikelySame& same : outcome->likelySame) {
        judged.view.doubts << SheetJudge::tr("Row %1: %2")
                                  .arg(QString::number(rowOf(same.line)),
                                       likelySameText(same, book.now(), wording));
    }
    judged.view.refusedCount += outcome->contradictionCount;
    auto& refused = judged.view.refused;
    for (const ledger::Contradiction& one : outcome->contradictions) {
        const int row = rowOf(one.error.line);
        const QString why = one.error.code == ErrorCode::IdTaken
                                ? cameInOtherwise()
                                : contradictionText(one, book.formulary(), book.now(), wording);
        if (!refused.empty() && refused.back().row == row && refused.back().why == why) {
            --judged.view.refusedCount; // of each line that a row makes
        } else {
            refused.push_back({row, {}, {}, why});
        }
    }
    return {};
}

QString notYet(const SheetView& view, const SheetOpen& open, const SheetComing& coming)
{
    if (open.any()) {
        return SheetJudge::tr("Something about how it was read is still open (step 1).");
    }
    if (!coming.noColumn.empty()) {
        return SheetJudge::tr("%1 Say which it is (step 2).", "No column is known to be: Bottle.")
            .arg(noColumnText(coming));
    }
    if (view.refusedCount > 0) {
        return SheetJudge::tr("%n cell(s) are refused. All of the sheet comes in, or nothing: "
                              "correct the sheet, or choose otherwise.",
                              nullptr, view.refusedCount);
    }
    return comingText(coming).isEmpty() ? SheetJudge::tr("Nothing in the sheet can come in.")
                                        : QString();
}

} // namespace

Result<SheetJudged> judgeSheet(const QByteArray& sheet, const SheetDecided& decided,
                               const std::vector<SheetMapping>& kept, ledger::Book& book,
                               store::SqlStore& store, const Wording& wording)
{
    auto table = store::readTable(sheet, decided.reading);
    if (!table) {
        return tl::unexpected(table.error());
    }
    auto [guess, fromKept] = startFrom(*table, kept);
    if (fromKept) {
        *table = readAsBefore(sheet, std::move(*table), decided.reading, guess.mapping);
    }
    SheetJudged judged;
    SheetMapping& mapping = judged.mapping = guess.mapping;
    mapping.reading = {table->encoding, table->delimiter};
    mapping.decimalComma = decided.decimalComma.value_or(mapping.decimalComma);
    mapping.order = decided.order.value_or(mapping.order);
    mapping.solutions.insert(decided.solutions.begin(), decided.solutions.end());
    if (decided.fields.size() == mapping.columns.size()) {
        for (std::size_t i = 0; i < decided.fields.size(); ++i) {
            mapping.columns[i].field = decided.fields[i];
        }
    }
    SheetOpen open = fromKept ? SheetOpen{} : stillOpen(*table, mapping);
    open.encoding &= !decided.reading.encoding;
    open.delimiter &= !decided.reading.delimiter;
    open.decimal &= !decided.decimalComma;
    open.days &= !decided.order;

    const auto known = knownIn(book, store);
    if (!known) {
        return tl::unexpected(known.error());
    }
    judged.coming = entriesOf(*table, mapping, *known);

    SheetView& view = judged.view;
    view.reading = readingOf(*table, mapping, open);
    addColumns(view, *table, mapping);
    view.mapping = fromKept ? SheetJudge::tr("As you mapped a sheet of these headings before.")
                            : SheetJudge::tr("By their headings, as far as those are known.");
    view.solutions = solutionNames(book.formulary());
    for (const QString& name : judged.coming.unknownSolutions) {
        view.unknown.push_back({name, 0});
    }
    for (const auto& [name, ours] : mapping.solutions) {
        view.unknown.push_back({name, std::max(0, static_cast<int>(view.solutions.indexOf(ours)))});
    }
    view.coming = comingText(judged.coming);
    view.bottles = linesOf(judged.coming.bottles);
    view.films = linesOf(judged.coming.films);
    view.tests = linesOf(judged.coming.tests);
    view.passedOver = linesOf(judged.coming.passedOver);
    view.refusedCount = static_cast<int>(judged.coming.refused.size());
    for (const SheetRefusal& one : judged.coming.refused) {
        if (view.refused.size() == kRefusedShown) {
            break;
        }
        view.refused.push_back({one.row, one.column, one.value, errorSentence(one.error, wording)});
    }
    if (view.refusedCount == 0 && judged.coming.noColumn.empty() && !view.coming.isEmpty()) {
        if (const auto fine = askBook(judged, book, store, wording); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    view.notYet = notYet(view, open, judged.coming);
    return judged;
}

SheetDecided decidedBy(const SheetPicks& picks, const SheetView& view, const SheetMapping& mapping,
                       const SheetDecided& before)
{
    SheetDecided decided = before;
    const auto changed = [&](Choice which) -> std::optional<int> {
        const auto at = static_cast<std::size_t>(which);
        if (at >= picks.reading.size() || picks.reading[at] < 0 ||
            picks.reading[at] == view.reading[at].chosen) {
            return std::nullopt;
        }
        return picks.reading[at];
    };
    if (const auto at = changed(Encoding)) {
        decided.reading.encoding = view.reading[Encoding].ways[*at].toStdString();
        decided.fields.clear(); // its headings are others now
    }
    if (const auto at = changed(Delimiter)) {
        decided.reading.delimiter = static_cast<store::SheetDelimiter>(*at);
        decided.fields.clear();
    }
    if (const auto at = changed(Decimal)) {
        decided.decimalComma = *at == 0;
    }
    if (const auto at = changed(Days)) {
        decided.order = static_cast<DayOrder>(*at);
    }
    std::vector<SheetField> fields;
    bool other = false;
    for (std::size_t i = 0; i < picks.fields.size(); ++i) {
        fields.push_back(static_cast<SheetField>(std::max(picks.fields[i], 0)));
        other |= i < mapping.columns.size() && fields.back() != mapping.columns[i].field;
    }
    if (other) {
        decided.fields = fields;
    }
    for (std::size_t i = 0; i < picks.solutions.size() && i < view.unknown.size(); ++i) {
        if (picks.solutions[i] > 0) {
            decided.solutions[view.unknown[i].name] = view.solutions[picks.solutions[i]];
        }
    }
    return decided;
}

Result<int> enterSheet(SheetComing& coming, const QString& name, ledger::Book& book,
                       store::SqlStore& store)
{
    QBuffer journal(&coming.journal);
    journal.open(QIODevice::ReadOnly);
    const auto done = store::readJournal(book, store, journal, {.settled = {}, .undoAs = name});
    if (!done) {
        return tl::unexpected(done.error());
    }
    if (!done->contradictions.empty()) {
        return refuse(done->contradictions.front().error);
    }
    return done->added;
}

} // namespace ullage::app
