// What can happen to a batch. Events are appended, never edited; a batch is the fold of its events.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"

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

/// One load: pieces by format, or an area.
struct Load {
    std::vector<FilmCount> films;
    std::optional<chemistry::SquareCentimetres> area;

    /// In films of 80 sq in; formats must have passed checkFields().
    [[nodiscard]] chemistry::Films units() const;
    friend bool operator==(const Load&, const Load&) = default;
};

struct Mixed {
    std::string solution;
    std::string vessel;
    chemistry::Millilitres volume;
    std::string name;            ///< may be empty: then the batch id names it
    std::string packet;          ///< id of the packet it was made from, or empty
    bool historyUnknown = false; ///< a bottle found
};
struct Processed {
    Load load;
    std::optional<chemistry::Millilitres> used; ///< all of it if empty
    chemistry::Millilitres lost;
    bool oneShot = false;
    std::string run; ///< ties the batches of one tank-load, or empty
};
struct ToppedUp {
    chemistry::Millilitres volume;
    std::string from; ///< batch it came from, or empty. Its bottle is drawn from by its own event.
};
struct Drawn {
    chemistry::Millilitres volume;
    std::string why;
};
struct Moved {
    std::string vessel;
};
struct Opened {
};
struct StoodOpen {
    chemistry::Hours time;
    chemistry::SquareCentimetres surface;
};
struct StoredAt {
    chemistry::Celsius temperature;
};
struct ClearingTested {
    chemistry::Seconds time;
    chemistry::Celsius temperature;
};
struct StripTested {
    std::optional<double> density;
    std::optional<double> factor; ///< on the development time from now on
    std::optional<bool> passed;
};
struct Looked {
    std::optional<bool> passed;
    std::string why;
};
struct Contaminated {
    std::string why;
};
struct Dissolved {
};
struct Noted {
    std::string text;
};
struct Discarded {
    std::string how;
};
/// Takes an event back: it never happened, whatever time one looks at.
struct Voided {
    std::string voids;
    std::string why;
};
/// About the cupboard, not a batch.
struct OpenedPacket {
    std::string packet;
};

using Happening = std::variant<Mixed, Processed, ToppedUp, Drawn, Moved, Opened, StoodOpen,
                               StoredAt, ClearingTested, StripTested, Looked, Contaminated,
                               Dissolved, Noted, Discarded, Voided, OpenedPacket>;

/// Kinds as the journal writes them, in the order of Happening.
inline constexpr std::array<std::string_view, 17> kKindCodes{
    "mixed",      "processed", "topped-up",     "drawn",      "moved",        "opened",
    "stood-open", "stored-at", "clearing-test", "strip-test", "looked",       "contaminated",
    "dissolved",  "noted",     "discarded",     "voided",     "opened-packet"};
static_assert(kKindCodes.size() == std::variant_size_v<Happening>);

struct Event {
    std::string id;
    std::string batch; ///< empty for OpenedPacket, and allowed to be for Voided
    chemistry::Instant at;
    Happening what;
    std::optional<chemistry::Millilitres> airLeft; ///< air left on closing, if the user said
    std::string by;                                ///< who did it, or empty

    [[nodiscard]] std::string_view kind() const { return kKindCodes[what.index()]; }
};

/// True for events during which the bottle is open, so that its air is renewed.
bool opens(const Happening& what);

/// Refuses an event whose fields alone are impossible (range, unknown format, empty id); what is
/// impossible for its batch is refused by the fold. Fields are named as the journal spells them.
Result<void> checkFields(const Event& event);

} // namespace ullage::ledger
