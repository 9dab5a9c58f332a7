// One line of the book: a definition or an event.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/decimal.h"
#include "core/ledger/event.h"
#include "core/ledger/film_mark.h"
#include "core/ledger/run_times.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace ullage::ledger
{

/// A film that went through a run. What is empty is not known.
struct FilmRecord {
    std::string id;
    std::string run;    ///< Processed::run of its baths
    std::string format; ///< see chemistry/films.h
    std::string name;
    std::optional<double> exposureIndex; ///< 0.1 to 1 000 000
    std::string notes;
    std::string replaces = {}; ///< id of the film's line before, of the same run, or empty
    bool withdrawn = false;    ///< stands in for `replaces` by taking it out of its run
};

/// A packet in the cupboard. Dates as ISO text, "" for unknown.
struct Packet {
    std::string id;
    std::string solution;                        ///< id of what it makes
    std::optional<chemistry::Millilitres> makes; ///< 1 to 1 000 000 mL; empty: not known
    std::string lot;
    std::string bought;
    std::string useBy;
    std::optional<Decimal> cost; ///< 0 to 1 000 000
    std::string currency;
    /// Powder where it is not said, but for one with a volume (isLiquid()).
    std::optional<formulary::Form> form;
    std::optional<chemistry::Millilitres> volume; ///< of a liquid; 0.1 to 1 000 000 mL
    std::optional<chemistry::Days> keepsOpened;   ///< once opened; 0.01 to 36 525
    std::string place;
    std::string replaces;   ///< id of the packet this one stands in for, or empty
    bool withdrawn = false; ///< stands in for `replaces` by taking it out of the book
};

/// A raw chemical in the cupboard.
struct Chemical {
    std::string id;
    std::string name;
    std::string cas;
    std::optional<double> grams; ///< 0 to 1 000 000
    std::string bought;
    std::string useBy;
    std::optional<Decimal> cost; ///< 0 to 1 000 000
    std::string currency;
    std::string place;
    std::vector<std::string> hazards; ///< hazard statements, as codes or texts
    std::string replaces;
    bool withdrawn = false;
};

/// Whatever else is kept: filters, gloves, labels.
struct Supply {
    std::string id;
    std::string name;
    std::string unit;             ///< "pieces", "m"
    std::optional<double> amount; ///< 0 to 1 000 000, in its unit
    std::string bought;
    std::string useBy;
    std::optional<Decimal> cost; ///< 0 to 1 000 000
    std::string currency;
    std::string place;
    std::string replaces;
    bool withdrawn = false;
};

/// What a code on a packet stands for.
struct Barcode {
    std::string id; ///< the code, if it was given none
    std::string code;
    std::string of;               ///< id of a solution, or of an item that stands for its kind
    std::optional<double> amount; ///< what one of it adds, in the item's unit; above 0
    std::string replaces;
    bool withdrawn = false;
};

/// Film that is known to come.
struct Work {
    std::string id;
    chemistry::Instant at;
    std::string rule;                      ///< how it repeats, as iCalendar writes it, or empty
    std::optional<chemistry::Films> films; ///< each time; 0 to 10 000
    std::string developer;                 ///< id of a solution, or empty
    std::string name;
    std::string replaces;
    bool withdrawn = false;
};

enum class Waste { Developer, Fixer, Stop, Wash, Other };
inline constexpr std::array<std::string_view, 5> kWasteCodes{"developer", "fixer", "stop", "wash",
                                                             "other"};

/// A can for waste.
struct Container {
    std::string id;
    std::string name;
    Waste holds = Waste::Other;
    chemistry::Millilitres capacity; ///< 1 to 1 000 000 mL
    std::string place;
    std::string replaces;
    bool withdrawn = false;
};

struct Entry {
    /// What each says on its line: entry_fields.h, event_fields.h and those of the formulary.
    std::variant<formulary::Solution, formulary::Vessel, FilmRecord, Packet, Chemical, Event,
                 formulary::DevelopmentFigure, FilmMark, RunTimes, Supply, Barcode, Work, Container>
        what;
    /// The line as it was read, with fields this program has no use for; empty for an entry made
    /// here. Opaque to the core: the store keeps it so that nothing is lost on export.
    std::string body;

    [[nodiscard]] const std::string& id() const;
    /// As the journal writes it (line_description.h has them all).
    [[nodiscard]] std::string_view type() const;
    [[nodiscard]] const Event* event() const { return std::get_if<Event>(&what); }
};

/// Refuses empty ids and references (Missing), figures out of range (OutOfRange, NotFinite) and
/// lists too long (OutOfRange); whether what is referred to exists is the Book's business.
Result<void> check(const FilmRecord& film);
Result<void> check(const Packet& packet);
Result<void> check(const Chemical& chemical);

/// The same for an entry of any type, and with NotBuilt one that says what nothing reckons with
/// yet: the field that says it is named.
Result<void> check(const Entry& entry);

} // namespace ullage::ledger
