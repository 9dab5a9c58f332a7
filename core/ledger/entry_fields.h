// What each type of line says that is neither an event nor of the formulary, field by field.
#pragma once

#include "core/formulary/described.h"
#include "core/ledger/entry.h"
#include "core/ledger/event_fields.h"

namespace ullage::formulary
{

namespace field
{

constexpr FieldDescription cost() { return decimal("cost", 0, 1'000'000); }
/// What stands in for another line of its type.
constexpr FieldDescription replaces() { return id("replaces", Refers::Same); }
constexpr FieldDescription withdrawn() { return truth("withdrawn").implied(); }

} // namespace field

template <>
struct Described<ledger::FilmRecord> {
    using FilmRecord = ledger::FilmRecord;
    static constexpr std::string_view type = "film";
    static constexpr auto fields =
        std::tuple(bound(&FilmRecord::id, field::text("id").required()),
                   bound(&FilmRecord::run, field::id("run", Refers::Run).required()),
                   bound(&FilmRecord::format, field::text("format")),
                   bound(&FilmRecord::name, field::text("name")),
                   bound(&FilmRecord::exposureIndex, field::number("ei", 0.1, 1'000'000, "")),
                   bound(&FilmRecord::notes, field::prose("notes")),
                   bound(&FilmRecord::replaces, field::replaces()),
                   bound(&FilmRecord::withdrawn, field::withdrawn()));
    /// Missing for one that is withdrawn without saying of which run.
    static Result<void> together(const FilmRecord& film);
};

template <>
struct Described<ledger::Packet> {
    using Packet = ledger::Packet;
    static constexpr std::string_view type = "packet";
    static constexpr auto fields = std::tuple(
        bound(&Packet::id, field::text("id").required()),
        bound(&Packet::solution, field::id("solution", Refers::Solution).required()),
        bound(&Packet::form, field::code("form", kFormCodes).means("powder")),
        bound(&Packet::makes, field::number("makes_ml", 1, ledger::kMostAmount, "ml")),
        bound(&Packet::volume, field::number("volume_ml", 0.1, ledger::kMostAmount, "ml")),
        bound(&Packet::keepsOpened, field::number("opened_days", 0.01, 36'525, "days")),
        bound(&Packet::lot, field::text("lot")), bound(&Packet::bought, field::date("bought")),
        bound(&Packet::useBy, field::date("use_by")), bound(&Packet::cost, field::cost()),
        bound(&Packet::currency, field::text("currency")),
        bound(&Packet::place, field::text("place")), bound(&Packet::replaces, field::replaces()),
        bound(&Packet::withdrawn, field::withdrawn()));
    /// Conflict for a volume of what is said to be no liquid: powder is counted by packets.
    static Result<void> together(const Packet& packet);
};

template <>
struct Described<ledger::Chemical> {
    using Chemical = ledger::Chemical;
    static constexpr std::string_view type = "chemical";
    static constexpr auto idFrom = &Chemical::name;
    static constexpr auto fields = std::tuple(
        bound(&Chemical::id, field::text("id").required()),
        bound(&Chemical::name, field::text("name").required()),
        bound(&Chemical::cas, field::text("cas")),
        bound(&Chemical::grams, field::number("grams", 0, ledger::kMostAmount, "g")),
        bound(&Chemical::bought, field::date("bought")),
        bound(&Chemical::useBy, field::date("use_by")), bound(&Chemical::cost, field::cost()),
        bound(&Chemical::currency, field::text("currency")),
        bound(&Chemical::place, field::text("place")),
        bound(&Chemical::hazards, field::texts("hazards").atMost(100)),
        bound(&Chemical::replaces, field::replaces()),
        bound(&Chemical::withdrawn, field::withdrawn()));
};

template <>
struct Described<ledger::FilmMark> {
    using FilmMark = ledger::FilmMark;
    static constexpr std::string_view type = "film-mark";
    static constexpr auto fields = std::tuple(
        bound(&FilmMark::id, field::text("id").required()),
        bound(&FilmMark::film, field::id("film", Refers::Film).required()),
        bound(&FilmMark::at, field::moment("at").required()),
        bound(&FilmMark::fault, field::code("mark", ledger::kFilmFaultCodes)),
        bound(&FilmMark::takesBack, field::id("takes_back", Refers::FilmMark)),
        bound(&FilmMark::note, field::prose("note")), bound(&FilmMark::by, field::text("by")));
    /// A mark or the taking back of one, not both and not neither.
    static Result<void> together(const FilmMark& mark);
};

template <>
struct Described<ledger::StepDone> {
    using StepDone = ledger::StepDone;
    static constexpr auto fields =
        std::tuple(bound(&StepDone::kind, field::text("step").required()),
                   bound(&StepDone::planned, field::number("planned_s", 0, 1e9, "s").required()),
                   bound(&StepDone::real, field::number("real_s", 0, 1e9, "s").required()));
};

template <>
struct Described<ledger::RunTimes> {
    using RunTimes = ledger::RunTimes;
    static constexpr std::string_view type = "run-times";
    static constexpr auto idFrom = &RunTimes::run;
    static constexpr auto fields = std::tuple(
        bound(&RunTimes::id, field::text("id").required()),
        bound(&RunTimes::run, field::id("run", Refers::Run).required()),
        bound(&RunTimes::tank, field::text("tank")),
        bound(&RunTimes::tankVolume, field::number("tank_ml", 1, ledger::kMostAmount, "ml")),
        bound(&RunTimes::temperature, field::number("temperature_c", 0, 100, "°C")),
        bound(&RunTimes::steps,
              field::objects("steps", kFieldsOf<ledger::StepDone>).atMost(1000).required()));
};

template <>
struct Described<ledger::Supply> {
    using Supply = ledger::Supply;
    static constexpr std::string_view type = "supply";
    static constexpr auto fields = std::tuple(
        bound(&Supply::id, field::text("id").required()),
        bound(&Supply::name, field::text("name").required()),
        bound(&Supply::unit, field::text("unit")),
        bound(&Supply::amount, field::number("amount", 0, ledger::kMostAmount, "")),
        bound(&Supply::bought, field::date("bought")), bound(&Supply::useBy, field::date("use_by")),
        bound(&Supply::cost, field::cost()), bound(&Supply::currency, field::text("currency")),
        bound(&Supply::place, field::text("place")), bound(&Supply::replaces, field::replaces()),
        bound(&Supply::withdrawn, field::withdrawn()));
};

template <>
struct Described<ledger::Barcode> {
    using Barcode = ledger::Barcode;
    static constexpr std::string_view type = "barcode";
    static constexpr auto idFrom = &Barcode::code;
    static constexpr auto fields =
        std::tuple(bound(&Barcode::id, field::text("id").required()),
                   bound(&Barcode::code, field::text("code").required()),
                   bound(&Barcode::of, field::id("of", Refers::Kind).required()),
                   bound(&Barcode::amount, field::positive("amount", ledger::kMostAmount, "")),
                   bound(&Barcode::replaces, field::replaces()),
                   bound(&Barcode::withdrawn, field::withdrawn()));
};

template <>
struct Described<ledger::Work> {
    using Work = ledger::Work;
    static constexpr std::string_view type = "work";
    static constexpr auto fields = std::tuple(
        bound(&Work::id, field::text("id").required()),
        bound(&Work::at, field::moment("at").required()), bound(&Work::rule, field::text("rule")),
        bound(&Work::films, field::number("films", 0, 10'000, "films")),
        bound(&Work::developer, field::id("developer", Refers::Solution)),
        bound(&Work::name, field::text("name")), bound(&Work::replaces, field::replaces()),
        bound(&Work::withdrawn, field::withdrawn()));
};

template <>
struct Described<ledger::Container> {
    using Container = ledger::Container;
    static constexpr std::string_view type = "container";
    static constexpr auto fields =
        std::tuple(bound(&Container::id, field::text("id").required()),
                   bound(&Container::name, field::text("name").required()),
                   bound(&Container::holds, field::code("holds", ledger::kWasteCodes).required()),
                   bound(&Container::capacity,
                         field::number("capacity_ml", 1, ledger::kMostAmount, "ml").required()),
                   bound(&Container::place, field::text("place")),
                   bound(&Container::replaces, field::replaces()),
                   bound(&Container::withdrawn, field::withdrawn()));
};

/// Events have one description a kind.
template <>
struct Described<ledger::Event> {
    static constexpr std::string_view type = "event";
};

} // namespace ullage::formulary
