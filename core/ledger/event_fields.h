// What the line of each kind of event says, field by field: one table of all kinds, long because
// they are many, and read best in one place.
#pragma once

#include "core/formulary/described.h"
#include "core/formulary/solution.h"
#include "core/ledger/event.h"

namespace ullage::ledger
{

/// What an event is about.
enum class Subject {
    Batch,
    Item,      ///< of the cupboard
    Container, ///< for waste
    Any,       ///< whatever the event that it names is about; a batch may be given
};

inline constexpr std::array<std::string_view, 1> kHistoryCodes{"unknown"};

/// mL, cm², amounts: beyond any darkroom's bottle.
inline constexpr double kMostAmount = 1'000'000;

} // namespace ullage::ledger

// Every kind has `kind`, `subject` and whether the bottle is `open` during it, so that its air is
// renewed; `built` false means that the line is refused by name as long as nothing reckons with it.
namespace ullage::formulary
{

namespace field
{

constexpr FieldDescription volume()
{
    return positive("volume_ml", ledger::kMostAmount, "ml").required();
}
constexpr FieldDescription item() { return id("item", Refers::Item).required().asSubject(); }
constexpr FieldDescription container()
{
    return id("container", Refers::Container).required().asSubject();
}

} // namespace field

template <>
struct Described<ledger::FilmCount> {
    using FilmCount = ledger::FilmCount;
    static constexpr auto fields = std::tuple(
        bound(&FilmCount::format, field::text("format").required()),
        bound(&FilmCount::count, field::positive("count", 10'000, "").wholeNumber().required()));
    /// The format must be one that is known.
    static Result<void> together(const FilmCount& film);
};

template <>
struct Described<ledger::Load> {
    using Load = ledger::Load;
    static constexpr auto fields =
        std::tuple(bound(&Load::films, field::objects("films", kFieldsOf<ledger::FilmCount>)),
                   bound(&Load::area, field::positive("area_cm2", ledger::kMostAmount, "cm²")));
};

template <>
struct Described<ledger::Mixed> {
    using Mixed = ledger::Mixed;
    static constexpr std::string_view kind = "mixed";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        bound(&Mixed::solution, field::id("solution", Refers::Solution).required()),
        bound(&Mixed::vessel, field::id("vessel", Refers::Vessel).required()),
        bound(&Mixed::volume, field::volume()), bound(&Mixed::name, field::text("name")),
        bound(&Mixed::packet, field::id("packet", Refers::Packet)),
        bound(&Mixed::historyUnknown, field::code("history", ledger::kHistoryCodes).implied()),
        bound(&Mixed::mixedOn, field::moment("mixed_on")),
        bound(&Mixed::assumed, field::number("assumed_films_per_litre", 0, 1000, "films/L")),
        bound(&Mixed::filmsBefore, field::number("films_before", 0, 10'000, "films")),
        bound(&Mixed::from, field::id("from", Refers::Batch)));
    /// What is known of a bottle found goes with an unknown history only, and that not with a
    /// bottle it came from.
    static Result<void> together(const Mixed& mixed);
};

template <>
struct Described<ledger::Processed> {
    using Processed = ledger::Processed;
    static constexpr std::string_view kind = "processed";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        spread(&Processed::load),
        bound(&Processed::used, field::positive("used_ml", ledger::kMostAmount, "ml")),
        bound(&Processed::lost, field::number("lost_ml", 0, ledger::kMostAmount, "ml").implied()),
        bound(&Processed::oneShot, field::truth("one_shot").implied()),
        bound(&Processed::second, field::truth("second").implied()),
        bound(&Processed::run, field::text("run")));
    /// Films or an area, not both and not neither.
    static Result<void> together(const Processed& processed);
};

template <>
struct Described<ledger::ToppedUp> {
    using ToppedUp = ledger::ToppedUp;
    static constexpr std::string_view kind = "topped-up";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&ToppedUp::volume, field::volume()),
                   bound(&ToppedUp::from, field::id("from", Refers::Batch)),
                   bound(&ToppedUp::solution, field::id("solution", Refers::Solution)));
    /// From a batch or of a replenisher, not both.
    static Result<void> together(const ToppedUp& filled);
};

template <>
struct Described<ledger::Drawn> {
    using Drawn = ledger::Drawn;
    static constexpr std::string_view kind = "drawn";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(bound(&Drawn::volume, field::volume()),
                                              bound(&Drawn::to, field::id("to", Refers::Batch)),
                                              bound(&Drawn::why, field::prose("why")));
};

template <>
struct Described<ledger::Moved> {
    static constexpr std::string_view kind = "moved";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&ledger::Moved::vessel, field::id("vessel", Refers::Vessel).required()));
};

template <>
struct Described<ledger::Opened> {
    static constexpr std::string_view kind = "opened";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr std::tuple<> fields{};
};

template <>
struct Described<ledger::StoodOpen> {
    using StoodOpen = ledger::StoodOpen;
    static constexpr std::string_view kind = "stood-open";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&StoodOpen::time, field::positive("hours", 87'600, "h").required()),
                   bound(&StoodOpen::surface,
                         field::positive("area_cm2", ledger::kMostAmount, "cm²").required()));
};

template <>
struct Described<ledger::StoredAt> {
    static constexpr std::string_view kind = "stored-at";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(bound(
        &ledger::StoredAt::temperature, field::number("temperature_c", 0, 45, "°C").required()));
};

template <>
struct Described<ledger::ClearingTested> {
    using ClearingTested = ledger::ClearingTested;
    static constexpr std::string_view kind = "clearing-test";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        bound(&ClearingTested::time, field::number("seconds", 1, 7200, "s").required()),
        bound(&ClearingTested::temperature, field::number("temperature_c", 0, 45, "°C").required()),
        bound(&ClearingTested::film, field::text("film")));
};

template <>
struct Described<ledger::StripTested> {
    using StripTested = ledger::StripTested;
    static constexpr std::string_view kind = "strip-test";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&StripTested::density, field::number("density", 0, 10, "")),
                   bound(&StripTested::factor, field::number("factor", 0.1, 10, "")),
                   bound(&StripTested::passed, field::truth("passed")));
};

template <>
struct Described<ledger::Looked> {
    using Looked = ledger::Looked;
    static constexpr std::string_view kind = "looked";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&Looked::passed, field::truth("passed")),
                   bound(&Looked::what, field::code("what", ledger::kLookedAtCodes)),
                   bound(&Looked::why, field::prose("why")));
};

template <>
struct Described<ledger::Contaminated> {
    static constexpr std::string_view kind = "contaminated";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&ledger::Contaminated::why, field::prose("why")));
};

template <>
struct Described<ledger::Dissolved> {
    static constexpr std::string_view kind = "dissolved";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr std::tuple<> fields{};
};

template <>
struct Described<ledger::Noted> {
    static constexpr std::string_view kind = "noted";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&ledger::Noted::text, field::prose("text").required()));
};

template <>
struct Described<ledger::Discarded> {
    static constexpr std::string_view kind = "discarded";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&ledger::Discarded::how, field::prose("how")),
                   bound(&ledger::Discarded::container, field::id("container", Refers::Container)));
};

template <>
struct Described<ledger::Voided> {
    static constexpr std::string_view kind = "voided";
    static constexpr auto subject = ledger::Subject::Any;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&ledger::Voided::voids, field::id("voids", Refers::Event).required()),
                   bound(&ledger::Voided::why, field::prose("why")));
};

template <>
struct Described<ledger::OpenedPacket> {
    static constexpr std::string_view kind = "opened-packet";
    static constexpr auto subject = ledger::Subject::Item;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&ledger::OpenedPacket::item,
                         field::id("item", Refers::Packet).required().asSubject().once("packet")));
};

template <>
struct Described<ledger::Filtered> {
    static constexpr std::string_view kind = "filtered";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr std::tuple<> fields{};
};

template <>
struct Described<ledger::Measured> {
    using Measured = ledger::Measured;
    static constexpr std::string_view kind = "measured";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = true;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        bound(&Measured::silver, field::number("silver_g_per_litre", 0, 50, "g/L").required()),
        bound(&Measured::method, field::text("method")));
};

template <>
struct Described<ledger::TestAsked> {
    using TestAsked = ledger::TestAsked;
    static constexpr std::string_view kind = "test-asked";
    static constexpr auto subject = ledger::Subject::Batch;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields =
        std::tuple(bound(&TestAsked::mark, field::code("mark", ledger::kFilmFaultCodes).required()),
                   bound(&TestAsked::film, field::id("film", Refers::Film).required()));
};

template <>
struct Described<ledger::Taken> {
    using Taken = ledger::Taken;
    static constexpr std::string_view kind = "taken";
    static constexpr auto subject = ledger::Subject::Item;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        bound(&Taken::item, field::item()),
        bound(&Taken::amount, field::positive("amount", ledger::kMostAmount, "").required()),
        bound(&Taken::forBatch, field::id("for", Refers::Batch)));
};

template <>
struct Described<ledger::Counted> {
    using Counted = ledger::Counted;
    static constexpr std::string_view kind = "counted";
    static constexpr auto subject = ledger::Subject::Item;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        bound(&Counted::item, field::item()),
        bound(&Counted::amount, field::number("amount", 0, ledger::kMostAmount, "").required()));
};

template <>
struct Described<ledger::ThrownAway> {
    using ThrownAway = ledger::ThrownAway;
    static constexpr std::string_view kind = "thrown-away";
    static constexpr auto subject = ledger::Subject::Item;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(bound(&ThrownAway::item, field::item()),
                                              bound(&ThrownAway::why, field::prose("why")));
};

template <>
struct Described<ledger::PouredIn> {
    using PouredIn = ledger::PouredIn;
    static constexpr std::string_view kind = "poured-in";
    static constexpr auto subject = ledger::Subject::Container;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        bound(&PouredIn::container, field::container()), bound(&PouredIn::volume, field::volume()),
        bound(&PouredIn::from, field::id("from", Refers::Batch)));
};

template <>
struct Described<ledger::HandedOver> {
    using HandedOver = ledger::HandedOver;
    static constexpr std::string_view kind = "handed-over";
    static constexpr auto subject = ledger::Subject::Container;
    static constexpr bool open = false;
    static constexpr bool built = true;
    static constexpr auto fields = std::tuple(
        bound(&HandedOver::container, field::container()),
        bound(&HandedOver::to, field::text("to")),
        bound(&HandedOver::volume, field::positive("volume_ml", ledger::kMostAmount, "ml")),
        bound(&HandedOver::document, field::text("document")));
};

} // namespace ullage::formulary

namespace ullage::ledger
{

// What every event says around that.
inline constexpr auto kEventId = formulary::field::text("id").required();
inline constexpr auto kEventKind = formulary::field::text("kind").required();
inline constexpr auto kEventAt = formulary::field::moment("at").required();
inline constexpr auto kEventAir = formulary::field::number("air_ml", 0, kMostAmount, "ml");
inline constexpr auto kEventBy = formulary::field::text("by");

/// The batch of an event of this kind; lines of version 1 could name one beside a packet.
template <class Kind>
constexpr formulary::FieldDescription batchField()
{
    const auto made = formulary::field::id("batch", formulary::Refers::Batch);
    return formulary::Described<Kind>::subject == Subject::Batch ? made.required() : made;
}
template <class Kind>
inline constexpr formulary::FieldDescription kBatchField = batchField<Kind>();
/// Whether a line of this kind may have one.
template <class Kind>
inline constexpr bool kHasBatch =
    formulary::Described<Kind>::subject == Subject::Batch ||
    formulary::Described<Kind>::subject == Subject::Any || std::is_same_v<Kind, OpenedPacket>;

/// Calls f(description, member) for every field of the event in the order in which they stand on
/// its line. Its kind, a text that is not there to be changed, is among them.
template <class E, class F>
void eachEventField(E& event, F&& f)
{
    f(kEventId, event.id);
    std::visit(
        [&](auto& what) {
            using Kind = std::remove_cvref_t<decltype(what)>;
            const auto fields = [&](bool subject) {
                formulary::eachField(what,
                                     [&](const formulary::FieldDescription& is, auto& member) {
                                         if (is.subject == subject) {
                                             f(is, member);
                                         }
                                     });
            };
            fields(true);
            if constexpr (kHasBatch<Kind>) {
                f(kBatchField<Kind>, event.batch);
            }
            f(kEventKind, formulary::Described<Kind>::kind);
            f(kEventAt, event.at);
            fields(false);
        },
        event.what);
    f(kEventAir, event.airLeft);
    f(kEventBy, event.by);
}

} // namespace ullage::ledger
