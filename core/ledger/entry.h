// One line of the book: a definition or an event.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/event.h"
#include "core/ledger/film_mark.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace ullage::ledger
{

/// A film that went through a run.
struct FilmRecord {
    std::string id;
    std::string run;
    std::string format;
    std::string name;
    std::optional<double> exposureIndex; ///< 0.1 to 1 000 000
    std::string notes;
};

/// A packet in the cupboard. Dates as ISO text, "" for unknown.
struct Packet {
    std::string id;
    std::string solution;
    std::optional<chemistry::Millilitres> makes; ///< 1 to 1 000 000 mL
    std::string lot;
    std::string bought;
    std::string useBy;
    std::optional<double> cost; ///< 0 to 1 000 000
    std::string currency;
};

/// A raw chemical in the cupboard.
struct Chemical {
    std::string id;
    std::string name;
    std::string cas;
    std::optional<double> grams; ///< 0 to 1 000 000
};

struct Entry {
    std::variant<formulary::Solution, formulary::Vessel, FilmRecord, Packet, Chemical, Event,
                 formulary::DevelopmentFigure, FilmMark>
        what;
    /// The line as it was read, with fields this program has no use for; empty for an entry made
    /// here. Opaque to the core: the store keeps it so that nothing is lost on export.
    std::string body;

    [[nodiscard]] const std::string& id() const;
    /// "solution", "vessel", "film", "packet", "chemical", "event", "development-time" or
    /// "film-mark".
    [[nodiscard]] std::string_view type() const;
    [[nodiscard]] const Event* event() const { return std::get_if<Event>(&what); }
};

/// Refuses empty ids and figures out of range; references are the Book's business.
Result<void> check(const FilmRecord& film);
Result<void> check(const Packet& packet);
Result<void> check(const Chemical& chemical);

} // namespace ullage::ledger
