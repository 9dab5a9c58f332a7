#include "app/sheet/sheet_entries.h"

#include "app/sheet/sheet_cells.h"
#include "app/words/formulary_words.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/formulary/vessel_fields.h"
#include "core/ledger/entry_fields.h"
#include "core/ledger/event_fields.h"
#include "core/store/journal_codec.h"

#include <QUuid>

#include <algorithm>
#include <map>

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

enum class RowKind { Bottle, Film, Test };

class Rows
{
public:
    Rows(const store::SheetTable& table, const SheetMapping& mapping, const SheetKnown& known)
        : m_table(table), m_mapping(mapping), m_known(known), m_bottles(known.bottles)
    {
    }

    SheetComing read()
    {
        m_coming.journal = store::defaultHeader() + '\n';
        m_coming.rows = {0};
        eachRow(true);
        eachRow(false);
        std::stable_sort(
            m_coming.refused.begin(), m_coming.refused.end(),
            [](const SheetRefusal& a, const SheetRefusal& b) { return a.row < b.row; });
        return std::move(m_coming);
    }

private:
    // Bottles first: a film's row may stand above that of its bottle.
    void eachRow(bool bottles)
    {
        m_seen.clear();
        for (std::size_t i = static_cast<std::size_t>(m_mapping.headingRow);
             i < m_table.rows.size(); ++i) {
            SheetCells cells(m_table.rows[i], static_cast<int>(i) + 1, m_mapping, m_known.now);
            const QStringList used = cells.used();
            if (used.isEmpty()) {
                continue;
            }
            if (isSum(cells, m_table.rows[i])) {
                if (bottles) {
                    m_coming.sums.push_back(cells.row());
                }
                continue;
            }
            // The same words twice are two rows.
            const QString said = m_table.rows[i].join(QChar(0x1f));
            m_key = said + QChar(0x1e) + QString::number(m_seen[said]++);
            const auto kind = kindOf(cells);
            if (kind && (*kind == RowKind::Bottle) == bottles) {
                m_lines.clear();
                m_round = roundOf(*kind);
                switch (*kind) {
                case RowKind::Bottle:
                    bottle(cells);
                    break;
                case RowKind::Film:
                    film(cells);
                    break;
                case RowKind::Test:
                    test(cells);
                    break;
                }
                take(cells, *kind, used);
            } else if (!kind && bottles) {
                take(cells, RowKind::Bottle, used);
            }
        }
    }

    // "Sum" somewhere in it, and no bottle, fixer or day beside that.
    static bool isSum(const SheetCells& cells, const QStringList& row)
    {
        using F = SheetField;
        const auto says = [](const QString& cell) {
            return saysOneOf(cell, {"sum", "total", "totals", "together", "summe", "summen",
                                    "gesamt", "insgesamt", "zusammen"});
        };
        for (const F field : {F::BottleName, F::Fixer, F::Date}) {
            if (const QString said = cells.text(field); !said.isEmpty() && !says(said)) {
                return false;
            }
        }
        return std::any_of(row.begin(), row.end(), says);
    }

    void take(const SheetCells& cells, RowKind kind, const QStringList& used)
    {
        if (!cells.fine()) {
            m_coming.refused.insert(m_coming.refused.end(), cells.refused().begin(),
                                    cells.refused().end());
            return;
        }
        for (const ledger::Entry& entry : m_lines) {
            m_coming.journal += store::encode(entry) + '\n';
            m_coming.rows.push_back(cells.row());
        }
        auto& list = kind == RowKind::Bottle ? m_coming.bottles
                     : kind == RowKind::Film ? m_coming.films
                                             : m_coming.tests;
        list.push_back({cells.row(), used});
    }

    static std::optional<RowKind> kindOf(SheetCells& cells)
    {
        using F = SheetField;
        const QString said = cells.text(F::Kind);
        if (!said.isEmpty()) {
            if (saysOneOf(said,
                          {"bottle", "mix", "mixed", "batch", "flasche", "ansatz", "angesetzt"})) {
                return RowKind::Bottle;
            }
            if (saysOneOf(said, {"film", "films", "roll", "rolls", "run", "developed", "filme",
                                 "durchgang", "entwickelt"})) {
                return RowKind::Film;
            }
            if (saysOneOf(said, {"test", "clearing test", "strip", "control strip", "probe",
                                 "klärprobe", "kontrollstreifen"})) {
                return RowKind::Test;
            }
            cells.refuse(F::Kind, {.code = ErrorCode::UnknownKind,
                                   .field = "kind",
                                   .text = said.toStdString(),
                                   .allowed = "bottle, film, test"});
            return std::nullopt;
        }
        if (cells.has(F::Seconds) || cells.has(F::Density) || cells.has(F::Factor) ||
            cells.has(F::Passed)) {
            return RowKind::Test;
        }
        if (cells.has(F::Films) || cells.has(F::Format) || cells.has(F::Film)) {
            return RowKind::Film;
        }
        return RowKind::Bottle;
    }

    [[nodiscard]] std::string id(const char* what) const { return id(what, m_round); }
    [[nodiscard]] std::string id(const char* what, int round) const
    {
        const QString again = round > 0 ? QChar(0x1c) + QString::number(round) : QString();
        return QUuid::createUuidV5(kRows,
                                   QString(QLatin1String(what)) + QChar(0x1d) + m_key + again)
            .toString(QUuid::WithoutBraces)
            .toStdString();
    }

    // How often the row came in and was undone.
    [[nodiscard]] int roundOf(RowKind kind) const
    {
        const auto undone = [&](int round) {
            const auto was = [&](const char* what) { return m_known.undone(id(what, round)); };
            switch (kind) {
            case RowKind::Bottle:
                return was("mixed");
            case RowKind::Film:
                return was("processed");
            case RowKind::Test:
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

    void event(const SheetCells& cells, const char* what, const std::string& batch,
               chemistry::Instant at, ledger::Happening happening)
    {
        Event made{id(what), batch, at, std::move(happening), {}};
        made.by = cells.text(SheetField::By).toStdString();
        m_lines.push_back({std::move(made)});
    }

    static void missing(SheetCells& cells, SheetField field)
    {
        cells.refuse(field, {.code = ErrorCode::Missing, .field = std::string(sheetCode(field))});
    }

    std::optional<std::string> solutionOf(SheetCells& cells)
    {
        const QString said = cells.text(SheetField::Solution);
        const auto decided = std::find_if(
            m_mapping.solutions.begin(), m_mapping.solutions.end(),
            [&](const auto& one) { return one.first.compare(said, Qt::CaseInsensitive) == 0; });
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
        cells.refuse(
            SheetField::Solution,
            {.code = ErrorCode::UnknownId, .field = "solution", .text = said.toStdString()});
        return std::nullopt;
    }

    void bottle(SheetCells& cells)
    {
        using F = SheetField;
        for (const F needed : {F::BottleName, F::Solution, F::Date}) {
            if (!cells.has(needed)) {
                missing(cells, needed);
            }
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
        const std::string name = cells.text(F::BottleName).toStdString();
        const std::string batch = id("bottle");
        ledger::Mixed mixed;
        mixed.solution = *solution;
        mixed.vessel = vesselFor(cells, capacity, volume.value_or(capacity.value_or(0)));
        mixed.volume = chemistry::Millilitres(volume ? *volume : *capacity);
        mixed.name = name;
        if (before) {
            mixed.filmsBefore = chemistry::Films(*before);
        }
        event(cells, "mixed", batch, *at, mixed);
        event(cells, "dissolved", batch, *at, ledger::Dissolved{}); // it was in use
        if (cells.has(F::Notes)) {
            event(cells, "note", batch, *at, ledger::Noted{cells.text(F::Notes).toStdString(), {}});
        }
        if (ended) {
            event(cells, "discarded", batch, *ended, ledger::Discarded{});
        }
        m_bottles.push_back({batch, cells.text(F::BottleName), *at, ended});
    }

    // One of the book's by its name, else one made for it.
    std::string vesselFor(const SheetCells& cells, std::optional<double> capacity, double volume)
    {
        const QString said = cells.text(SheetField::Vessel);
        for (const auto& vessel : m_known.formulary.currentVessels()) {
            if (!said.isEmpty() &&
                (said.compare(QString::fromStdString(vessel->name), Qt::CaseInsensitive) == 0 ||
                 said.compare(shownName(vessel->name), Qt::CaseInsensitive) == 0)) {
                return vessel->id;
            }
        }
        formulary::Vessel made;
        made.id = id("vessel");
        made.name = (said.isEmpty() ? cells.text(SheetField::BottleName) : said).toStdString();
        made.capacity = chemistry::Millilitres(capacity.value_or(volume));
        for (int round = 0; round < m_round; ++round) { // undoing takes no vessel back
            const auto there = m_known.formulary.vessel(id("vessel", round));
            if (there && there->name == made.name && there->capacity == made.capacity) {
                return there->id;
            }
        }
        m_lines.push_back({made});
        return made.id;
    }

    const KnownBottle* bottleNamed(const QString& name, chemistry::Instant at) const
    {
        const KnownBottle* best = nullptr;
        for (const KnownBottle& one : m_bottles) {
            const bool there = one.mixed <= at && (!one.ended || at <= *one.ended);
            if (there && one.name.simplified().compare(name, Qt::CaseInsensitive) == 0 &&
                (!best || one.mixed >= best->mixed)) {
                best = &one;
            }
        }
        return best;
    }

    const KnownBottle* bottleOf(SheetCells& cells, SheetField field, chemistry::Instant at) const
    {
        const KnownBottle* found = bottleNamed(cells.text(field), at);
        if (!found) {
            cells.refuse(field, {.code = ErrorCode::UnknownId,
                                 .field = std::string(sheetCode(field)),
                                 .text = cells.text(field).toStdString()});
        }
        return found;
    }

    void film(SheetCells& cells)
    {
        using F = SheetField;
        if (!cells.has(F::Date)) {
            missing(cells, F::Date);
        }
        if (!cells.has(F::BottleName) && !cells.has(F::Fixer)) {
            missing(cells, F::BottleName);
        }
        const auto at = cells.moment(F::Date, kNoon);
        const auto count = cells.number(F::Films, fieldOf(&ledger::FilmCount::count));
        const auto index =
            cells.number(F::ExposureIndex, fieldOf(&ledger::FilmRecord::exposureIndex));
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
        for (int i = 0; i < std::min(kMostRecords, static_cast<int>(films)); ++i) {
            ledger::FilmRecord record;
            record.id = id(("film-" + std::to_string(i)).c_str());
            record.run = run;
            record.format = format;
            record.name = cells.text(F::Film).toStdString();
            record.exposureIndex = index;
            record.notes = cells.text(F::Notes).toStdString();
            m_lines.push_back({record});
        }
    }

    static std::string formatOf(SheetCells& cells)
    {
        const QString said = cells.text(SheetField::Format);
        std::string format = readFilmFormat(said);
        if (saysOneOf(said, {"135", "35", "35mm", "35 mm", "kb", "kleinbild"})) {
            format = kUsualSheetFormat; // as most of them are
        }
        if (!chemistry::filmsInOne(format)) {
            QStringList known;
            for (const chemistry::FilmFormat& one : chemistry::usualFormats()) {
                known << QString::fromUtf8(one.code.data(),
                                           static_cast<qsizetype>(one.code.size()));
            }
            cells.refuse(SheetField::Format, {.code = ErrorCode::UnknownKind,
                                              .field = "format",
                                              .text = said.toStdString(),
                                              .allowed = known.join(u", ").toStdString()});
        }
        return format;
    }

    void test(SheetCells& cells)
    {
        using F = SheetField;
        for (const F needed : {F::Date, F::BottleName}) {
            if (!cells.has(needed)) {
                missing(cells, needed);
            }
        }
        const auto at = cells.moment(F::Date, kEvening);
        const auto seconds = cells.number(F::Seconds, fieldOf(&ledger::ClearingTested::time));
        const auto warm =
            cells.number(F::Temperature, fieldOf(&ledger::ClearingTested::temperature));
        const auto density = cells.number(F::Density, fieldOf(&ledger::StripTested::density));
        const auto factor = cells.number(F::Factor, fieldOf(&ledger::StripTested::factor));
        const auto passed = cells.truth(F::Passed);
        if (cells.has(F::Seconds) && !cells.has(F::Temperature)) {
            missing(cells, F::Temperature);
        }
        const KnownBottle* bottle =
            at && cells.has(F::BottleName) ? bottleOf(cells, F::BottleName, *at) : nullptr;
        if (!cells.fine()) {
            return;
        }
        if (seconds) {
            event(cells, "clearing", bottle->id, *at,
                  ledger::ClearingTested{chemistry::Seconds(*seconds), chemistry::Celsius(*warm),
                                         cells.text(F::Film).toStdString()});
        }
        if (density || factor) {
            event(cells, "strip", bottle->id, *at, ledger::StripTested{density, factor, passed});
        } else if (passed) {
            // A clearing test has no result of its own: what was thought of it is a look.
            event(cells, "looked", bottle->id, *at,
                  ledger::Looked{passed, cells.text(F::Notes).toStdString(), {}});
        } else if (!seconds) {
            missing(cells, F::Seconds);
        }
        const bool strip = density || factor;
        if ((strip || (seconds && !passed)) && cells.has(F::Notes)) {
            event(cells, "noted", bottle->id, *at,
                  ledger::Noted{cells.text(F::Notes).toStdString(), {}});
        }
    }

    const store::SheetTable& m_table;
    const SheetMapping& m_mapping;
    const SheetKnown& m_known;
    std::vector<KnownBottle> m_bottles; ///< the book's and the sheet's
    std::map<QString, int> m_seen;
    QString m_key;   ///< of the row: what it says, and how often that stood before it
    int m_round = 0; ///< of the row
    std::vector<ledger::Entry> m_lines;
    SheetComing m_coming;
};

} // namespace

SheetComing entriesOf(const store::SheetTable& table, const SheetMapping& mapping,
                      const SheetKnown& known)
{
    return Rows(table, mapping, known).read();
}

} // namespace ullage::app
