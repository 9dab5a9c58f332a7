// What can happen to a batch. Events are appended, never edited; a batch is the fold of its events.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"
#include "core/ledger/film_mark.h"
#include "core/ledger/run_times.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace ullage::ledger
{

/// Film put through a bath: pieces of a format.
struct FilmCount {
    std::string format; ///< see chemistry/films.h
    double count = 0;   ///< whole, 1 to 10 000
    friend bool operator==(const FilmCount&, const FilmCount&) = default;
};

/// One load: pieces by format, or an area, never both (Conflict) and never neither (Missing).
struct Load {
    std::vector<FilmCount> films;
    std::optional<chemistry::SquareCentimetres> area; ///< above 0, to 1 000 000

    /// In films of 80 sq in; formats must have passed checkFields().
    [[nodiscard]] chemistry::Films units() const;
    friend bool operator==(const Load&, const Load&) = default;
};

// What each refuses of its own fields is in checkFields(); volumes are above 0, to 1 000 000 mL.

struct Mixed {
    std::string solution; ///< its id
    std::string vessel;   ///< its id
    chemistry::Millilitres volume;
    std::string name;            ///< may be empty: then the batch id names it
    std::string packet;          ///< id of the packet it was made from, or empty
    bool historyUnknown = false; ///< a bottle found
    std::string from;            ///< batch it was decanted from, or empty
    /// Of a bottle found: when it was mixed, and what it had done by then, where that is known.
    std::optional<chemistry::Instant> mixedOn;
    std::optional<chemistry::FilmsPerLitre> assumed; ///< 0 to 1000 films/L
    std::optional<chemistry::Films> filmsBefore;     ///< done before the book; 0 to 10 000
};
struct Processed {
    Load load;
    std::optional<chemistry::Millilitres> used; ///< all of it if empty
    chemistry::Millilitres lost;                ///< carried out or spilled; 0 or more
    bool oneShot = false;                       ///< `used` is thrown away, not poured back
    std::string run;                            ///< ties the batches of one tank-load, or empty
    bool second = false;                        ///< the second of two fixing baths
};
struct ToppedUp {
    chemistry::Millilitres volume;
    std::string from; ///< batch it came from, or empty. Its bottle is drawn from by its own event.
    std::string solution; ///< the replenisher it was, or empty
};
struct Drawn {
    chemistry::Millilitres volume;
    std::string why;
    std::string to; ///< batch it went into, or empty
};
/// All of it, into another vessel that must hold it.
struct Moved {
    std::string vessel; ///< its id
};
/// Opened and closed again, which renews the air.
struct Opened {
};
struct StoodOpen {
    chemistry::Hours time;                ///< above 0, to 87 600
    chemistry::SquareCentimetres surface; ///< above 0, to 1 000 000
};
/// Where it stands from then on.
struct StoredAt {
    chemistry::Celsius temperature; ///< 0 to 45
};
struct ClearingTested {
    chemistry::Seconds time;        ///< until the film was clear; 1 to 7200
    chemistry::Celsius temperature; ///< of the bath; 0 to 45
    std::string film;               ///< what it was made with, as the user names it, or empty
};
struct StripTested {
    std::optional<double> density; ///< 0 to 10
    std::optional<double> factor;  ///< on the development time from now on; 0.1 to 10
    std::optional<bool> passed;    ///< empty: only noted
};
enum class LookedAt { Colour, Smell, Precipitate, Leader, Indicator };
inline constexpr std::array<std::string_view, 5> kLookedAtCodes{"colour", "smell", "precipitate",
                                                                "leader", "indicator"};
struct Looked {
    std::optional<bool> passed; ///< empty: only noted
    std::string why;
    std::optional<LookedAt> what;
};
/// Something got in; the bottle is to be discarded.
struct Contaminated {
    std::string why;
};
/// All of it is dissolved and clear.
struct Dissolved {
};
struct Noted {
    std::string text;
    /// Books of before kept the times of a run in a note on its first bottle (coded_notes.h).
    std::optional<RunTimes> times;
};
/// The end of a batch.
struct Discarded {
    std::string how;
    std::string container; ///< for waste, into which all that was left went; or empty
};
/// Takes an event back: it never happened, whatever time one looks at.
struct Voided {
    std::string voids; ///< id of an event, a voiding too
    std::string why;   ///< may be empty
};
/// About an item of the cupboard, not a batch, as are those below it.
struct OpenedPacket {
    std::string item;
};
/// Takes back what was seen of a precipitate.
struct Filtered {
};
/// What there is, by analysis or test paper.
struct Measured {
    chemistry::GramsPerLitre silver; ///< 0 to 50
    std::string method;
};
/// Somebody wants the bottle tested before its next film, because negatives came out wrong.
struct TestAsked {
    FilmFault mark{};
    std::string film; ///< id of one of the films
    /// Kept as a note by a book of before: the line is of kind "noted".
    bool asNote = false;
};
struct Taken {
    std::string item;
    double amount = 0;    ///< in the item's unit
    std::string forBatch; ///< or empty
};
struct Counted {
    std::string item;
    double amount = 0; ///< what is there now
};
struct ThrownAway {
    std::string item;
    std::string why;
};
/// About a container for waste, as is the one below it.
struct PouredIn {
    std::string container;
    chemistry::Millilitres volume;
    std::string from; ///< batch it was, or empty
};
struct HandedOver {
    std::string container;
    std::string to; ///< who took it
    std::optional<chemistry::Millilitres> volume;
    std::string document;
};

/// What each says on its line: event_fields.h.
using Happening =
    std::variant<Mixed, Processed, ToppedUp, Drawn, Moved, Opened, StoodOpen, StoredAt,
                 ClearingTested, StripTested, Looked, Contaminated, Dissolved, Noted, Discarded,
                 Voided, OpenedPacket, Filtered, Measured, TestAsked, Taken, Counted, ThrownAway,
                 PouredIn, HandedOver>;

struct Event {
    std::string id;
    std::string batch; ///< empty for what is not about one, and allowed to be for Voided
    chemistry::Instant at;
    Happening what;
    std::optional<chemistry::Millilitres> airLeft; ///< on closing, if the user said; 0 to 1 000 000
    std::string by;                                ///< who did it, or empty
    /// Number of its entry in the book, which brings events of several batches into their order; 0
    /// as long as it has none: then it comes after all that have.
    std::int64_t entry = 0;

    /// As the journal writes it (line_description.h has them all).
    [[nodiscard]] std::string_view kind() const;
};

/// True for events during which the bottle is open, so that its air is renewed.
bool opens(const Happening& what);

/// Refuses an event whose fields alone are impossible: missing or empty (Missing), out of range
/// (OutOfRange, NotFinite), an unknown format (UnknownKind), fields that exclude each other
/// (Conflict); and with NotBuilt one that says what nothing reckons with yet. What is impossible
/// for its batch is refused by the fold. Fields are named as the journal spells them.
Result<void> checkFields(const Event& event);

} // namespace ullage::ledger
