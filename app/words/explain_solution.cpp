// Where the figures of a solution are from, and what they are used for.
#include "app/words/explanations.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/source_words.h"
#include "core/chemistry/time_units.h"
#include "core/formulary/implied.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

using chemistry::Grade;
using formulary::Figure;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Explanations)
};

QString hours(double value, const QLocale& locale)
{
    return Words::tr("%1 h").arg(numberText(value, value < 10 ? 1 : 0, locale));
}

QString usedFor(Figure figure)
{
    switch (figure) {
    case Figure::Capacity:
        return Words::tr("Films left = (capacity − films per litre done) × litres. At the capacity "
                         "the bottle is to be discarded.");
    case Figure::KeepsFull:
        return Words::tr("A full, closed bottle is spent by standing at this time and never kept "
                         "longer. With the half-full time it fixes the oxygen the solution can "
                         "take and its life by age alone.");
    case Figure::KeepsHalf:
        return Words::tr("A half-full, closed bottle is spent by standing at this time. The "
                         "difference from the full bottle is put down to the air in it.");
    case Figure::KeepsTray:
        return Words::tr("Says how fast the solution takes up oxygen where it stands open: in this "
                         "time a litre in an 8 × 10 in tray has had what it can take.");
    case Figure::Q10:
        return Words::tr("Outside the entered times: time = nearest time × Q10 to the power of "
                         "(degrees colder ÷ 10).");
    case Figure::OxygenFactor:
        return Words::tr("Oxygen dissolved in it = what fresh water holds × this share. Salts push "
                         "oxygen out.");
    case Figure::Silver:
        return Words::tr("Silver in the bath grows by this for every film.");
    case Figure::Bromide:
        return Words::tr("Bromide in the bath, as potassium bromide, grows by this for every "
                         "film.");
    case Figure::FreshClearing:
        return Words::tr("Stands for the fresh clearing time until this batch has a test of its "
                         "own.");
    case Figure::SilverLimit:
        return Words::tr("Above this much silver the bath is to be discarded. Limits in print "
                         "run from 0.2 to 1.5 g per litre and above: it is your choice.");
    case Figure::TabularFactor:
        return Words::tr("Fixing time of films with tabular grains = clearing time × this.");
    case Figure::Replenish:
        break;
    }
    return Words::tr("Topped up with this for every film, the wear settles at 1000 ÷ this many "
                     "millilitres, in films per litre.");
}

} // namespace

QString impliedName(ImpliedFigure figure)
{
    switch (figure) {
    case ImpliedFigure::OxygenLimit:
        return Words::tr("Oxygen it can take");
    case ImpliedFigure::AgeAlone:
        return Words::tr("Age alone");
    case ImpliedFigure::TrayByModel:
        return Words::tr("Open tray, by the model");
    case ImpliedFigure::Saturation:
        break;
    }
    return Words::tr("Oxygen dissolved in it");
}

QString impliedText(ImpliedFigure figure, const formulary::Solution& solution,
                    const Wording& wording)
{
    if (figure == ImpliedFigure::Saturation)
        return Words::tr("%1 mmol per litre")
            .arg(numberText(formulary::saturation(solution).value(), 3, wording.locale));
    const auto limits = formulary::keepingLimits(solution);
    if (!limits)
        return {};
    switch (figure) {
    case ImpliedFigure::OxygenLimit:
        return limits->airCounts() ? oxygenText(limits->oxygen, wording.locale)
                                   : Words::tr("air does not count");
    case ImpliedFigure::AgeAlone: {
        const double days = limits->age.value();
        return days < 3 ? hours(chemistry::inHours(limits->age).value(), wording.locale)
                        : Words::tr("%Ln day(s)", nullptr, static_cast<int>(std::lround(days)));
    }
    case ImpliedFigure::TrayByModel:
        if (const auto time = formulary::trayTime(solution))
            return hours(time->value(), wording.locale);
        break;
    case ImpliedFigure::Saturation:
        break;
    }
    return {};
}

QString impliedSource(ImpliedFigure figure, const formulary::Solution& solution,
                      const Wording& wording)
{
    switch (figure) {
    case ImpliedFigure::OxygenLimit:
        if (solution.keeping.half)
            return Words::tr("computed from the two keeping times");
        if (solution.role != formulary::Role::Developer)
            return Words::tr("only developers are spoilt by air, unless a half-full time says so");
        return Words::tr("taken by the model: no half-full time is known");
    case ImpliedFigure::AgeAlone:
        return solution.keeping.half ? Words::tr("computed from the two keeping times")
                                     : Words::tr("computed from the full-bottle time");
    case ImpliedFigure::TrayByModel:
        if (solution.keeping.tray)
            return Words::tr("computed; the figure entered is %1")
                .arg(figureText(solution, Figure::KeepsTray, wording));
        return Words::tr("computed for a litre in an 8 × 10 in tray");
    case ImpliedFigure::Saturation:
        break;
    }
    return Words::tr("computed for 20 °C from what fresh water holds");
}

Explanation explain(ImpliedFigure figure, const formulary::Solution& solution,
                    const Wording& wording)
{
    const QLocale& locale = wording.locale;
    Explanation why;
    why.title = impliedName(figure);
    why.value = impliedText(figure, solution, wording);
    if (why.value.isEmpty())
        why.value = Words::tr("not known");
    if (figure == ImpliedFigure::Saturation) {
        why.equation = Words::tr("Oxygen that fresh water holds at 20 °C, 9.092 mg/L, × the share "
                                 "that this solution dissolves.");
        why.constants = {{Words::tr("Fresh water at 20 °C"),
                          Words::tr("9.092 mg/L"),
                          {},
                          Words::tr("Benson & Krause 1984, Limnol. Oceanogr. 29, 620"),
                          Grade::Published},
                         explained(solution, Figure::OxygenFactor, wording)};
        gradeByConstants(why);
        return why;
    }
    const auto range = formulary::limitsRange(solution);
    if (!range) {
        why.equation = Words::tr("It is worked out from the keeping time of a full bottle, and "
                                 "none is entered.");
        why.hasGrade = false;
        return why;
    }
    why.constants.push_back(explained(solution, Figure::KeepsFull, wording));
    if (!range->limits.airCounts()) {
        why.equation =
            Words::tr("It is no developer and has no half-full time of its own: air does "
                      "not count, and age alone spends it in the keeping time of a full "
                      "bottle.");
        gradeByConstants(why);
        return why;
    }
    if (solution.keeping.half) {
        why.constants.push_back(explained(solution, Figure::KeepsHalf, wording));
        why.equation =
            Words::tr("The two keeping times are run through the bottle model: a full litre bottle "
                      "of glass, opened when it was filled, and a half-full one, opened once more "
                      "half way. Oxygen and age together spend the solution in both, and only one "
                      "pair of limits does that.");
        why.inputs = {
            {Words::tr("The full bottle takes up"), oxygenText(range->fullTakesUp, locale)},
            {Words::tr("The half-full one"), oxygenText(*range->halfTakesUp, locale)}};
    } else {
        why.equation = Words::tr("Only the full-bottle time is known, so the oxygen it can take is "
                                 "the model's own figure, and age alone has to explain the rest.");
        why.inputs = {
            {Words::tr("The full bottle takes up"), oxygenText(range->fullTakesUp, locale)}};
        why.constants.push_back(
            explained(Words::tr("Oxygen limit"), chemistry::kOxygenLimit, locale));
    }
    why.constants.push_back(
        explained(Words::tr("Air to solution"), chemistry::kBottleExchange, locale));
    why.constants.push_back(explained(Words::tr("Leak of a cap"), chemistry::kCapLeak, locale));
    if (solution.keeping.half) {
        auto openings = chemistry::kHalfOpenings;
        openings.unit = {}; // its name says it
        why.constants.push_back(
            explained(Words::tr("Openings of the half-full bottle"), openings, locale));
    }
    why.constants.push_back(explained(solution, Figure::OxygenFactor, wording));
    const auto span = [&](double low, double high, int decimals) {
        return Words::tr("Range %1 – %2, from the ranges of what it is based on.")
            .arg(numberText(low, decimals, locale), numberText(high, decimals, locale));
    };
    if (figure == ImpliedFigure::OxygenLimit)
        why.notes << span(range->oxygenLow.value(), range->oxygenHigh.value(), 1);
    if (figure == ImpliedFigure::AgeAlone)
        why.notes << span(range->ageLow.value(), range->ageHigh.value(), 0);
    if (figure == ImpliedFigure::TrayByModel) {
        why.equation =
            Words::tr("A litre in a tray of 516 cm² takes oxygen from the open air until "
                      "it has had what it can take.");
        why.constants.push_back(
            explained(Words::tr("Air to solution, open tray"), chemistry::kTrayExchange, locale));
        chemistry::AirConstants slow;
        slow.trayExchange = chemistry::kTrayExchange.low;
        chemistry::AirConstants fast;
        fast.trayExchange = chemistry::kTrayExchange.high;
        why.notes << Words::tr("Range %1 – %2 h, from the range of the exchange alone.")
                         .arg(numberText(formulary::trayTime(solution, fast)->value(), 0, locale),
                              numberText(formulary::trayTime(solution, slow)->value(), 0, locale))
                  << Words::tr(
                         "Here the exchange is that of open water, so that it can be compared "
                         "with an entered tray time. Where one is entered, bottles that stand "
                         "open go by that.");
    } else if (solution.keeping.tray) {
        why.notes << Words::tr("Beside the open tray: %1 by the model, %2 entered.")
                         .arg(impliedText(ImpliedFigure::TrayByModel, solution, wording),
                              figureText(solution, Figure::KeepsTray, wording));
    }
    if (figure != ImpliedFigure::TrayByModel)
        why.notes << Words::tr("Calibrated, not checked: a date from it is good to a factor of "
                               "two.");
    gradeByConstants(why);
    return why;
}

Explanation explain(Figure figure, const formulary::Solution& solution, const Wording& wording)
{
    Explanation why;
    const ExplainedConstant entered = explained(solution, figure, wording);
    why.title = entered.name;
    why.value = entered.value;
    why.equation = usedFor(figure);
    why.hasGrade = formulary::value(solution, figure).has_value();
    why.grade = entered.grade;
    if (why.hasGrade) {
        const QString source = sourceText(formulary::sourceLine(solution, figure));
        why.notes << (source.isEmpty() ? Words::tr("Source: none given.")
                                       : Words::tr("Source: %1").arg(source));
    }
    if (figure == Figure::Q10) {
        const chemistry::Constant& known = formulary::q10Range(solution);
        const QString low = plainNumber(known.low, wording.locale);
        const QString high = plainNumber(known.high, wording.locale);
        why.notes << (known.name == chemistry::kQ10Ascorbate.name
                          ? Words::tr("In print: %1 – %2 for phenidone-ascorbate developers.")
                          : Words::tr("In print: %1 – %2 for metol-hydroquinone developers."))
                         .arg(low, high);
    }
    return why;
}

Explanation explainWear(const formulary::Solution& solution, const Wording& wording)
{
    Explanation why;
    const ExplainedConstant entered = explainedWear(solution, wording);
    why.title = entered.name;
    why.value = entered.value;
    why.grade = entered.grade;
    why.hasGrade = solution.wear.rule != chemistry::WearRule::None || entered.grade;
    switch (solution.wear.rule) {
    case chemistry::WearRule::None:
        why.equation = Words::tr("No development time grows with the film done.");
        why.hasGrade = false;
        break;
    case chemistry::WearRule::PerFilm:
        why.equation = Words::tr("Time = first time × (1 + percent × films per litre done ÷ 100). "
                                 "A load of several films gets one time.");
        break;
    case chemistry::WearRule::Compound:
        why.equation = Words::tr("Time = first time × (1 + percent ÷ 100) to the power of the "
                                 "films per litre done.");
        break;
    case chemistry::WearRule::Steps:
        why.equation = Words::tr("Time = first time × the factor of the last step reached.");
        break;
    }
    if (entered.grade)
        why.notes
            << Words::tr("Source: %1").arg(sourceText(formulary::sourceLine(solution, "wear")));
    return why;
}

} // namespace ullage::app
