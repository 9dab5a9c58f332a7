#include "core/store/report_json.h"

#include "core/store/instant_text.h"
#include "core/store/line_writer.h"

#include <QByteArrayList>

namespace ullage::store
{

using namespace chemistry;
using namespace ledger;

namespace
{

const QByteArray kNull("null");

QByteArray orNull(std::optional<double> number) { return number ? numberText(*number) : kNull; }

template <class Q>
QByteArray orNull(const std::optional<Q>& quantity)
{
    return quantity ? numberText(quantity->value()) : kNull;
}

QByteArray listOf(const QByteArrayList& values) { return '[' + values.join(',') + ']'; }

QByteArray reasonsText(const std::vector<Reason>& reasons)
{
    QByteArrayList texts;
    for (const Reason& reason : reasons) {
        LineWriter one;
        one.text("code", code(reason.code));
        for (const auto& [name, number] : reason.numbers) {
            one.number(name, number);
        }
        texts += one.object();
    }
    return listOf(texts);
}

QByteArray lastFilmText(const std::optional<LastFilm>& last)
{
    if (!last) {
        return kNull;
    }
    return LineWriter()
        .number("early_days", last->early.value())
        .number("median_days", last->median.value())
        .number("late_days", last->late.value())
        .raw("chance_films_first", orNull(last->chanceFilmsFirst))
        .object();
}

QByteArray clearingText(const std::optional<Clearing>& clearing)
{
    if (!clearing) {
        return kNull;
    }
    return LineWriter()
        .number("now_s", clearing->now.value())
        .raw("fresh_s", orNull(clearing->fresh))
        .raw("doubles_at_films_per_litre", orNull(clearing->doubles.at))
        .raw("low", orNull(clearing->doubles.low))
        .raw("high", orNull(clearing->doubles.high))
        .object();
}

// By the bottle's own tests only: others would take a solution's figure for a measured one.
QByteArray fixText(const Batch& batch, const Assessment& so)
{
    const auto fixing = nextLoadIn({batch, so}, {}, Celsius(20)).fixing;
    return fixing && fixing->from == ClearingFrom::Tests ? numberText(fixing->time.value()) : kNull;
}

QByteArray batchText(const Batch& batch)
{
    const Assessment so = assess(batch);
    const bool airCounts = batch.limits && batch.limits->airCounts();
    LineWriter one;
    one.text("batch", batch.id)
        .text("name", batch.name)
        .text("solution", batch.solution->id)
        .number("volume_ml", batch.volume.value())
        .number("films_done", batch.filmsDone.value())
        .number("wear_films_per_litre", batch.wear.value())
        .raw("films_left", orNull(so.filmsLeft))
        .number("wear_factor", so.wearFactor)
        .number("age_days", so.age.value())
        .number("oxygen_mmol_per_litre", batch.standing.taken.total().value())
        .raw("oxygen_limit_mmol_per_litre",
             airCounts ? numberText(batch.limits->oxygen.value()) : kNull)
        .raw("age_part", orNull(so.agePart))
        .raw("air_part", orNull(so.airPart))
        .raw("standing_used", orNull(so.standingUsed))
        .number("silver_g_per_litre", batch.silver.value())
        .number("bromide_mg_per_litre", batch.bromide.value())
        .number("openings", batch.openings)
        .number("air_ml", batch.standing.air.volume.value())
        .raw("discard_by",
             so.discardBy ? store::jsonText(dateText(*so.discardBy).toStdString()) : kNull)
        .text("verdict", code(so.verdict))
        .raw("reasons", reasonsText(so.reasons))
        .raw("last_film", lastFilmText(so.lastFilm))
        .raw("clearing", clearingText(so.clearing))
        .raw("fix_s", fixText(batch, so));
    return one.object();
}

// The same keys, so that whoever reads them finds them all.
QByteArray unreadText(const Unread& unread)
{
    LineWriter reason;
    reason.text("code", "not-as-entered");
    if (unread.why.entry > 0) {
        reason.raw("entry", QByteArray::number(qlonglong{unread.why.entry}));
    }
    LineWriter one;
    one.text("batch", unread.batch).text("name", unread.name).text("solution", unread.solution);
    for (const char* figure :
         {"volume_ml", "films_done", "wear_films_per_litre", "films_left", "wear_factor",
          "age_days", "oxygen_mmol_per_litre", "oxygen_limit_mmol_per_litre", "age_part",
          "air_part", "standing_used", "silver_g_per_litre", "bromide_mg_per_litre", "openings",
          "air_ml", "discard_by", "verdict"}) {
        one.raw(figure, kNull);
    }
    one.raw("reasons", listOf({reason.object()}));
    for (const char* figure : {"last_film", "clearing", "fix_s"}) {
        one.raw(figure, kNull);
    }
    return one.object();
}

} // namespace

QByteArray reportJson(std::span<const Batch> batches, std::span<const Unread> unread)
{
    QByteArrayList texts;
    auto next = unread.begin();
    for (std::size_t place = 0; place <= batches.size(); ++place) {
        for (; next != unread.end() && next->place <= place; ++next) {
            texts += unreadText(*next);
        }
        if (place < batches.size()) {
            texts += batchText(batches[place]);
        }
    }
    return texts.isEmpty() ? QByteArray("[]\n") : "[\n" + texts.join(",\n") + "\n]\n";
}

Result<NextTime> nextTime(const Batch& batch, std::span<const TimeAtTemperature> pairs,
                          Celsius temperature, Films films)
{
    if (!batch.inUse()) {
        return refuse({.code = ErrorCode::AfterEnd, .field = "batch", .text = batch.id});
    }
    if (batch.solution->role != formulary::Role::Developer) {
        return refuse({.code = ErrorCode::NotSuitable,
                       .field = "batch",
                       .text = batch.id,
                       .allowed = "developer"});
    }
    const NextLoad load = nextLoadIn({batch, assess(batch)}, pairs, temperature, films);
    const auto& factors = load.developing;
    if (!factors) {
        return tl::unexpected(factors.error());
    }
    NextTime next;
    next.base = factors->base.time;
    next.wear = factors->wear;
    next.strip = factors->strip;
    next.temperature = temperature;
    next.time = factors->time;
    next.carried = factors->carried;
    for (const TimeWarning warning : factors->base.warnings) {
        next.warnings.push_back(warning == TimeWarning::OutsideUsualRange ? "outside-usual-range"
                                                                          : "extrapolated");
    }
    if (load.plan.has(PlanProblemCode::CapacityShort)) {
        next.warnings.push_back("not-enough-films-left");
    }
    for (const auto& [problem, verdict] :
         {std::pair(PlanProblemCode::TestFirst, Verdict::TestFirst),
          std::pair(PlanProblemCode::Discard, Verdict::Discard)}) {
        if (load.plan.has(problem)) {
            next.warnings.push_back(code(verdict));
        }
    }
    return next;
}

QByteArray timeJson(const NextTime& time)
{
    QByteArrayList warnings;
    for (const std::string_view warning : time.warnings) {
        warnings += store::jsonText(warning);
    }
    return LineWriter()
               .number("base_s", time.base.value())
               .number("wear", time.wear)
               .number("strip", time.strip)
               .number("temperature_c", time.temperature.value())
               .number("seconds", time.time.value())
               .raw("warnings", listOf(warnings))
               .object() +
           '\n';
}

} // namespace ullage::store
