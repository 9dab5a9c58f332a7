#include "core/store/decode_parts.h"

#include <array>

namespace ullage::store
{

using namespace ledger;
using chemistry::Celsius;
using chemistry::Hours;
using chemistry::Millilitres;
using chemistry::Seconds;
using chemistry::SquareCentimetres;

namespace
{

Happening mixed(Fields& fields)
{
    static constexpr std::array<std::string_view, 1> kHistories{"unknown"};
    Mixed what;
    what.solution = fields.text("solution");
    what.vessel = fields.text("vessel");
    what.volume = Millilitres(fields.number("volume_ml"));
    what.name = fields.textIf("name");
    what.packet = fields.textIf("packet");
    if (fields.has("history")) {
        fields.choice("history", kHistories);
        what.historyUnknown = true;
    }
    return what;
}

Happening processed(Fields& fields)
{
    Processed what;
    what.load.area = fields.quantityIf<SquareCentimetres>("area_cm2");
    if (fields.has("films")) {
        const QJsonArray films = fields.list("films");
        for (const auto& film : films) {
            Fields one = fields.element("films", film);
            std::string format = one.text("format");
            what.load.films.push_back({std::move(format), one.number("count")});
        }
    }
    what.used = fields.quantityIf<Millilitres>("used_ml");
    what.lost = fields.quantityIf<Millilitres>("lost_ml").value_or(Millilitres(0));
    what.oneShot = fields.truthIf("one_shot").value_or(false);
    what.run = fields.textIf("run");
    return what;
}

Happening toppedUp(Fields& fields)
{
    return ToppedUp{Millilitres(fields.number("volume_ml")), fields.textIf("from")};
}

Happening drawn(Fields& fields)
{
    return Drawn{Millilitres(fields.number("volume_ml")), fields.textIf("why")};
}

Happening moved(Fields& fields) { return Moved{fields.text("vessel")}; }

Happening opened(Fields&) { return Opened{}; }

Happening stoodOpen(Fields& fields)
{
    return StoodOpen{Hours(fields.number("hours")), SquareCentimetres(fields.number("area_cm2"))};
}

Happening storedAt(Fields& fields) { return StoredAt{Celsius(fields.number("temperature_c"))}; }

Happening clearingTested(Fields& fields)
{
    return ClearingTested{Seconds(fields.number("seconds")),
                          Celsius(fields.number("temperature_c"))};
}

Happening stripTested(Fields& fields)
{
    return StripTested{fields.numberIf("density"), fields.numberIf("factor"),
                       fields.truthIf("passed")};
}

Happening looked(Fields& fields) { return Looked{fields.truthIf("passed"), fields.textIf("why")}; }

Happening contaminated(Fields& fields) { return Contaminated{fields.textIf("why")}; }

Happening dissolved(Fields&) { return Dissolved{}; }

Happening noted(Fields& fields) { return Noted{fields.text("text")}; }

Happening discarded(Fields& fields) { return Discarded{fields.textIf("how")}; }

Happening voided(Fields& fields) { return Voided{fields.text("voids"), fields.textIf("why")}; }

Happening openedPacket(Fields& fields) { return OpenedPacket{fields.text("packet")}; }

using Decoder = Happening (*)(Fields&);
// In the order of kKindCodes.
constexpr std::array<Decoder, kKindCodes.size()> kDecoders{
    mixed,     processed, toppedUp,       drawn,       moved,       opened,
    stoodOpen, storedAt,  clearingTested, stripTested, looked,      contaminated,
    dissolved, noted,     discarded,      voided,      openedPacket};

} // namespace

Event decodeEvent(Fields& fields)
{
    Event event;
    event.id = fields.text("id");
    const std::size_t kind = fields.choice("kind", kKindCodes);
    event.what = kDecoders[kind](fields);
    const bool batchNeeded = !std::holds_alternative<Voided>(event.what) &&
                             !std::holds_alternative<OpenedPacket>(event.what);
    event.batch = batchNeeded ? fields.text("batch") : fields.textIf("batch");
    event.at = fields.moment("at");
    event.airLeft = fields.quantityIf<Millilitres>("air_ml");
    event.by = fields.textIf("by");
    return event;
}

} // namespace ullage::store
