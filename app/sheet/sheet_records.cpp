#include "app/sheet/sheet_records.h"

#include "app/words/formulary_words.h"
#include "app/words/shown_names.h"
#include "core/chemistry/films.h"
#include "core/formulary/field_of.h"
#include "core/formulary/vessel_fields.h"
#include "core/ledger/entry_fields.h"
#include "core/ledger/event_fields.h"

#include <QUuid>

#include <algorithm>

namespace ullage::app
{

namespace
{

using formulary::fieldOf;
using ledger::Event;

// Times of day where the sheet has none, so that what belongs to one day stands in its order.
const QTime kMorning(8, 0);
const QTime kNoon(12, 0);
const QTime kEvening(18, 0);
const QTime kNight(22, 0);
constexpr int kMostRecords = 100; // of a row: films that get a line each
const QUuid kRows(QStringLiteral("{2b1c9a50-6d55-4f0e-9d3c-0f6a3f1f7a11}"));

// Bottles are often called by what is in them, in one column.
SheetField nameColumn(const SheetCells& cells)
{
    return cells.hasColumn(SheetField::BottleName) ? SheetField::BottleName : SheetField::Solution;
}
SheetField solutionColumn(const SheetCells& cells)
{
    return cells.hasColumn(SheetField::Solution) ? SheetField::Solution : SheetField::BottleName;
}
QString nameOf(const SheetCells& cells) { return cells.text(nameColumn(cells)); }

std::string formatOf(SheetCells& cells)
{
    const QString said = cells.text(SheetField::Format);
    std::string format = sheetFormatFrom(said);
    if (format.empty()) {
        QStringList known;
        for (const chemistry::FilmFormat& one : chemistry::usualFormats()) {
            known << QString::fromUtf8(one.code.data(), static_cast<qsizetype>(one.code.size()));
        }
        cells.refuse(SheetField::Format, {.code = ErrorCode::UnknownKind,
                                          .field = "format",
                                          .text = said.toStdString(),
                                          .allowed = known.join(u", ").toStdString()});
    }
    return format;
}

} // namespace

std::vector<ledger::Entry> SheetRecords::read(SheetCells& cells, RowKind kind, const QString& key)
{
    m_key = key;
    m_round = roundOf(kind);
    m_lines.clear();
    switch (kind) {
    case RowKind::BottleRow:
        bottle(cells);
        if (!cells.fine()) {
            m_bottles.addRefused(nameOf(cells));
        }
        break;
    case RowKind::FilmRow:
        film(cells);
        break;
    case RowKind::TestRow:
        test(cells);
        break;
    }
    return std::move(m_lines);
}

std::string SheetRecords::id(const char* what, int round) const
{
    const QString again = round > 0 ? QChar(0x1c) + QString::number(round) : QString();
    return QUuid::createUuidV5(kRows, QString(QLatin1String(what)) + QChar(0x1d) + m_key + again)
        .toString(QUuid::WithoutBraces)
        .toStdString();
}

// How often the row came in and was undone.
int SheetRecords::roundOf(RowKind kind) const
{
    const auto undone = [&](int round) {
        const auto was = [&](const char* what) { return m_known.undone(id(what, round)); };
        switch (kind) {
        case RowKind::BottleRow:
            return was("mixed");
        case RowKind::FilmRow:
            return was("processed");
        case RowKind::TestRow:
            return was("clearing") || was("strip") || was("looked");
        }
        return false;
    };
    int round = 0;
    while (undone(round)) {
        ++round;
    }
    return round;
}

void SheetRecords::event(const SheetCells& cells, const char* what, const std::string& batch,
                         chemistry::Instant at, ledger::Happening happening)
{
    Event made{id(what), batch, at, std::move(happening), {}};
    made.by = cells.text(SheetField::By).toStdString();
    m_lines.push_back({std::move(made)});
}

// Where no column says it, that is told once and not of every row.
void SheetRecords::missing(SheetCells& cells, SheetField field)
{
    if (cells.hasColumn(field)) {
        cells.refuse(field, {.code = ErrorCode::Missing, .field = std::string(sheetCode(field))});
        return;
    }
    cells.wait();
    if (std::find(m_coming.noColumn.begin(), m_coming.noColumn.end(), field) ==
        m_coming.noColumn.end()) {
        m_coming.noColumn.push_back(field);
    }
}

std::optional<std::string> SheetRecords::solutionOf(SheetCells& cells)
{
    const QString said = cells.text(solutionColumn(cells));
    const auto decided =
        std::find_if(m_mapping.solutions.begin(), m_mapping.solutions.end(), [&](const auto& one) {
            return one.first.compare(said, Qt::CaseInsensitive) == 0;
        });
    const QString name = decided == m_mapping.solutions.end() ? said : decided->second;
    for (const auto& solution : m_known.formulary.currentSolutions()) {
        if (name.compare(QString::fromStdString(solution->name), Qt::CaseInsensitive) == 0 ||
            name.compare(shownName(solution->name), Qt::CaseInsensitive) == 0) {
            return solution->id;
        }
    }
    if (!m_coming.unknownSolutions.contains(said, Qt::CaseInsensitive)) {
        m_coming.unknownSolutions << said;
    }
    cells.refuse(solutionColumn(cells),
                 {.code = ErrorCode::UnknownId, .field = "solution", .text = said.toStdString()});
    return std::nullopt;
}

void SheetRecords::bottle(SheetCells& cells)
{
    using F = SheetField;
    if (nameOf(cells).isEmpty()) {
        missing(cells, F::BottleName);
    }
    if (cells.text(solutionColumn(cells)).isEmpty()) {
        missing(cells, F::Solution);
    }
    if (!cells.has(F::Date)) {
        missing(cells, F::Date);
    }
    if (!cells.fine()) {
        return;
    }
    const auto solution = solutionOf(cells);
    const auto at = cells.moment(F::Date, kMorning);
    const auto capacity = cells.number(F::Capacity, fieldOf(&formulary::Vessel::capacity));
    const auto volume = cells.number(F::Volume, fieldOf(&ledger::Mixed::volume));
    const auto before = cells.number(F::FilmsBefore, fieldOf(&ledger::Mixed::filmsBefore));
    const auto ended = cells.moment(F::Discarded, kNight);
    if (cells.fine() && !volume && !capacity) {
        missing(cells, F::Volume);
    }
    if (!cells.fine()) {
        return;
    }
    const std::string name = nameOf(cells).toStdString();
    const std::string batch = id("bottle");
    ledger::Mixed mixed;
    mixed.solution = *solution;
    mixed.vessel = vesselFor(cells, capacity, volume.value_or(capacity.value_or(0)));
    mixed.volume = chemistry::Millilitres(volume ? *volume : *capacity);
    mixed.name = name;
    if (before) {
        mixed.filmsBefore = chemistry::Films(*before);
    }
    event(cells, "mixed", batch, at->at, mixed);
    event(cells, "dissolved", batch, at->at, ledger::Dissolved{}); // it was in use
    note(cells, batch, at->at);
    std::optional<chemistry::Instant> end;
    if (ended) {
        end = std::max(ended->at, at->at);
        event(cells, "discarded", batch, *end, ledger::Discarded{});
    }
    m_bottles.add({batch, nameOf(cells), at->at, end});
}

void SheetRecords::note(const SheetCells& cells, const std::string& batch, chemistry::Instant at)
{
    const QString said = cells.text(SheetField::Notes);
    if (!said.isEmpty()) {
        event(cells, "note", batch, at, ledger::Noted{said.toStdString(), {}});
    }
}

// One of the book's by its name, else one made for it.
std::string SheetRecords::vesselFor(const SheetCells& cells, std::optional<double> capacity,
                                    double volume)
{
    const QString said = cells.text(SheetField::Vessel);
    for (const auto& vessel : m_known.formulary.currentVessels()) {
        if (!said.isEmpty() &&
            (said.compare(QString::fromStdString(vessel->name), Qt::CaseInsensitive) == 0 ||
             said.compare(shownName(vessel->name), Qt::CaseInsensitive) == 0)) {
            return vessel->id;
        }
    }
    if (const auto before = m_vessels.find(said.toLower()); before != m_vessels.end()) {
        return before->second;
    }
    formulary::Vessel made;
    made.id = id("vessel");
    made.name = (said.isEmpty() ? nameOf(cells) : said).toStdString();
    made.capacity = chemistry::Millilitres(capacity.value_or(volume));
    // One in which another bottle stood when the sheet was undone has stayed.
    for (int round = 0; round < m_round; ++round) {
        const auto there = m_known.formulary.vesselNow(id("vessel", round));
        if (there && there->name == made.name && there->capacity == made.capacity) {
            return there->id;
        }
    }
    m_lines.push_back({made});
    if (!said.isEmpty()) {
        m_vessels[said.toLower()] = made.id;
    }
    return made.id;
}

const KnownBottle* SheetRecords::bottleOf(SheetCells& cells, SheetField field,
                                          chemistry::Instant at) const
{
    const QString name = cells.text(field);
    const KnownBottle* found = m_bottles.named(name, at);
    if (m_bottles.isRefused(name)) {
        cells.wait();
    } else if (!found) {
        Error error = m_bottles.whyNone(name, at);
        error.field = std::string(sheetCode(field));
        cells.refuse(field, std::move(error));
    }
    return found;
}

// When a film's row or a test's was, given the bottles that it names.
std::optional<chemistry::Instant> SheetRecords::momentWith(SheetCells& cells, QTime usual) const
{
    auto moment = cells.moment(SheetField::Date, usual);
    for (const SheetField bath : {SheetField::BottleName, SheetField::Fixer}) {
        if (moment && cells.has(bath)) {
            moment = m_bottles.within(cells.text(bath), *moment);
        }
    }
    return moment ? std::optional(moment->at) : std::nullopt;
}

void SheetRecords::film(SheetCells& cells)
{
    using F = SheetField;
    if (!cells.has(F::Date)) {
        missing(cells, F::Date);
    }
    if (!cells.has(F::BottleName) && !cells.has(F::Fixer)) {
        missing(cells, F::BottleName);
    }
    const auto at = momentWith(cells, kNoon);
    const auto count = cells.number(F::Films, fieldOf(&ledger::FilmCount::count));
    const auto index = cells.number(F::ExposureIndex, fieldOf(&ledger::FilmRecord::exposureIndex));
    std::string format = kUsualSheetFormat;
    if (cells.has(F::Format)) {
        format = formatOf(cells);
    } else {
        m_coming.formatAssumed = true;
    }
    std::vector<const KnownBottle*> baths;
    for (const F bath : {F::BottleName, F::Fixer}) {
        if (at && cells.has(bath)) {
            baths.push_back(bottleOf(cells, bath, *at));
        }
    }
    const TestFigures figures = figuresOf(cells);
    if (!cells.fine()) {
        return;
    }
    const double films = count.value_or(1);
    const std::string run = id("run");
    ledger::Processed processed;
    processed.load.films = {{format, films}};
    processed.run = run;
    for (std::size_t i = 0; i < baths.size(); ++i) {
        event(cells, i == 0 ? "processed" : "processed-second", baths[i]->id, *at, processed);
    }
    QStringList notes{cells.text(F::Notes), cells.text(F::Passed)};
    notes.removeAll(QString());
    for (int i = 0; i < std::min(kMostRecords, static_cast<int>(films)); ++i) {
        ledger::FilmRecord record;
        record.id = id(("film-" + std::to_string(i)).c_str());
        record.run = run;
        record.format = format;
        record.name = cells.text(F::Film).toStdString();
        record.exposureIndex = index;
        record.notes = notes.join(QStringLiteral(" · ")).toStdString();
        m_lines.push_back({record});
    }
    tested(cells, figures, baths.back()->id, baths.front()->id, *at);
}

SheetRecords::TestFigures SheetRecords::figuresOf(SheetCells& cells)
{
    using F = SheetField;
    if (cells.has(F::Seconds) && !cells.has(F::Temperature)) {
        missing(cells, F::Temperature);
    }
    return {cells.number(F::Seconds, fieldOf(&ledger::ClearingTested::time)),
            cells.has(F::Seconds)
                ? cells.number(F::Temperature, fieldOf(&ledger::ClearingTested::temperature))
                : std::nullopt,
            cells.number(F::Density, fieldOf(&ledger::StripTested::density)),
            cells.number(F::Factor, fieldOf(&ledger::StripTested::factor))};
}

// What the figures say of the bottle that clears and of the one that develops.
void SheetRecords::tested(const SheetCells& cells, const TestFigures& figures,
                          const std::string& clearing, const std::string& developing,
                          chemistry::Instant at, std::optional<bool> passed)
{
    if (figures.seconds) {
        event(cells, "clearing", clearing, at,
              ledger::ClearingTested{chemistry::Seconds(*figures.seconds),
                                     chemistry::Celsius(*figures.warm),
                                     cells.text(SheetField::Film).toStdString()});
    }
    if (figures.density || figures.factor) {
        event(cells, "strip", developing, at,
              ledger::StripTested{figures.density, figures.factor, passed});
    }
}

void SheetRecords::test(SheetCells& cells)
{
    using F = SheetField;
    for (const F needed : {F::Date, F::BottleName}) {
        if (!cells.has(needed)) {
            missing(cells, needed);
        }
    }
    const auto at = momentWith(cells, kEvening);
    const TestFigures figures = figuresOf(cells);
    const auto passed = cells.truth(F::Passed);
    if (!cells.hasFigures() && !cells.has(F::Passed)) {
        missing(cells, cells.hasColumn(F::Passed) ? F::Passed : F::Seconds);
    }
    const KnownBottle* bottle =
        at && cells.has(F::BottleName) ? bottleOf(cells, F::BottleName, *at) : nullptr;
    if (!cells.fine()) {
        return;
    }
    tested(cells, figures, bottle->id, bottle->id, *at, passed);
    if (passed && !figures.density && !figures.factor) {
        event(cells, "looked", bottle->id, *at,
              ledger::Looked{passed, cells.text(F::Notes).toStdString(), {}});
    } else {
        note(cells, bottle->id, *at);
    }
}

} // namespace ullage::app
