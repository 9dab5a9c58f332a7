#include "app/words/figure_words.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using chemistry::Grade;
using formulary::Figure;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Figures)
};

} // namespace

QString gradeName(MaybeGrade grade)
{
    if (!grade)
        return Words::tr("not graded");
    switch (*grade) {
    case Grade::Published:
        return Words::tr("published");
    case Grade::Computed:
        return Words::tr("computed");
    case Grade::CommonPractice:
        return Words::tr("common practice");
    case Grade::FromMemory:
        break;
    }
    return Words::tr("from memory");
}

QString gradeMeaning(MaybeGrade grade)
{
    if (!grade)
        return Words::tr("Not graded: it is not said what kind of source this figure is from.");
    switch (*grade) {
    case Grade::Published:
        return Words::tr("Published: read in the source named.");
    case Grade::Computed:
        return Words::tr("Computed: worked out from published figures.");
    case Grade::CommonPractice:
        return Words::tr("Common practice: what people do; no published source.");
    case Grade::FromMemory:
        break;
    }
    return Words::tr("From memory: recalled from the source named and not read again.");
}

QString figureName(Figure figure)
{
    switch (figure) {
    case Figure::Capacity:
        return Words::tr("Capacity");
    case Figure::KeepsFull:
        return Words::tr("Keeps, full bottle");
    case Figure::KeepsHalf:
        return Words::tr("Keeps, half full");
    case Figure::KeepsTray:
        return Words::tr("Keeps, open tray");
    case Figure::Q10:
        return Words::tr("Temperature, Q10");
    case Figure::OxygenFactor:
        return Words::tr("Oxygen it dissolves");
    case Figure::Silver:
        return Words::tr("Silver from a film");
    case Figure::Bromide:
        return Words::tr("Bromide from a film");
    case Figure::FreshClearing:
        return Words::tr("Clearing time, fresh");
    case Figure::SilverLimit:
        return Words::tr("Limit of silver");
    case Figure::TabularFactor:
        return Words::tr("Fixing, tabular grains");
    case Figure::Replenish:
        break;
    }
    return Words::tr("Top-up for a film");
}

QString wearName() { return Words::tr("Time for each film"); }

QString plainNumber(double value, const QLocale& locale)
{
    const double size = std::abs(value);
    const int whole = size < 1e-12 ? 1 : static_cast<int>(std::floor(std::log10(size))) + 1;
    return numberText(value, std::clamp(3 - whole, 0, 6), locale);
}

QString figureText(Figure figure, double value, const Wording& wording)
{
    const QLocale& locale = wording.locale;
    switch (figure) {
    case Figure::Capacity:
        return Words::tr("%1 per litre", "films").arg(filmsText(chemistry::Films(value), wording));
    case Figure::KeepsFull:
    case Figure::KeepsHalf:
        return keepingText(chemistry::Days(value), locale);
    case Figure::KeepsTray:
        return Words::tr("%1 h").arg(numberText(value, 1, locale));
    case Figure::Q10:
        return plainNumber(value, locale);
    case Figure::OxygenFactor:
        return Words::tr("%1 of what water does").arg(percentText(value, locale));
    case Figure::Silver:
        return Words::tr("%1 g").arg(plainNumber(value, locale));
    case Figure::Bromide:
        return Words::tr("%1 mg").arg(plainNumber(value, locale));
    case Figure::FreshClearing:
        return Words::tr("%1 at %2", "time, temperature")
            .arg(timeText(chemistry::Seconds(value)),
                 shortTemperatureText(chemistry::Celsius(20), wording));
    case Figure::SilverLimit:
        return Words::tr("%1 g per litre").arg(plainNumber(value, locale));
    case Figure::TabularFactor:
        return Words::tr("%1 times the clearing time").arg(plainNumber(value, locale));
    case Figure::Replenish:
        break;
    }
    return volumeText(chemistry::Millilitres(value), wording);
}

QString figureText(const formulary::Solution& solution, Figure figure, const Wording& wording)
{
    const auto value = formulary::value(solution, figure);
    return value ? figureText(figure, *value, wording) : QString();
}

QString wearText(const chemistry::Wear& wear, const Wording& wording)
{
    const QString percent = numberText(wear.percent, 1, wording.locale);
    switch (wear.rule) {
    case chemistry::WearRule::None:
        break;
    case chemistry::WearRule::PerFilm:
        return Words::tr("+ %1 % per film, on the first time").arg(percent);
    case chemistry::WearRule::Compound:
        return Words::tr("+ %1 % per film, on the time before").arg(percent);
    case chemistry::WearRule::Steps: {
        QStringList steps;
        for (const chemistry::WearStep& step : wear.steps)
            steps << Words::tr("%1 from %2 films per litre", "factor, wear")
                         .arg(factorText(step.factor, wording.locale),
                              numberText(step.from.value(), 1, wording.locale));
        return steps.join(QStringLiteral("; "));
    }
    }
    return Words::tr("the same for every film");
}

QString oxygenText(chemistry::MillimolesPerLitre oxygen, const QLocale& locale)
{
    return Words::tr("%1 mmol per litre").arg(numberText(oxygen.value(), 1, locale));
}

} // namespace ullage::app
