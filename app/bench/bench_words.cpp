#include "app/bench/bench_words.h"

#include "app/words/cautions.h"
#include "app/words/error_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

using ledger::StepKind;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Bench)
};

QString secondsText(double seconds)
{
    const int whole = static_cast<int>(seconds + 0.5);
    return whole % 60 ? Words::tr("%1 s").arg(whole) : Words::tr("%n min", nullptr, whole / 60);
}

} // namespace

QString stepKindName(StepKind kind)
{
    switch (kind) {
    case StepKind::PreWet:
        return Words::tr("Pre-wet");
    case StepKind::Develop:
        return Words::tr("Develop");
    case StepKind::PourBack:
        return Words::tr("Pour back");
    case StepKind::WaterStop:
        return Words::tr("Water stop");
    case StepKind::AcidStop:
        return Words::tr("Acid stop");
    case StepKind::Fix:
        return Words::tr("Fix");
    case StepKind::SecondFix:
        return Words::tr("Fix in the second bath");
    case StepKind::Rinse:
        return Words::tr("Rinse");
    case StepKind::WashAid:
        return Words::tr("Wash aid");
    case StepKind::Wash:
        return Words::tr("Wash");
    case StepKind::FillAndDump:
        return Words::tr("Fill and dump");
    case StepKind::WettingAgent:
        return Words::tr("Wetting agent");
    }
    return {};
}

QString stepTitle(const ledger::RunStep& step, const QString& bottle)
{
    const bool named = !bottle.isEmpty();
    switch (step.kind) {
    case StepKind::PreWet:
        return Words::tr("Pre-wet, %n change(s) of water", nullptr, step.changes);
    case StepKind::Develop:
        return named ? Words::tr("Develop in %1").arg(bottle) : Words::tr("Develop");
    case StepKind::PourBack:
        return named ? Words::tr("Pour %1 back").arg(bottle) : Words::tr("Pour back");
    case StepKind::WaterStop:
        return Words::tr("Water stop, %n change(s)", nullptr, step.changes);
    case StepKind::AcidStop:
        return named ? Words::tr("Stop in %1").arg(bottle) : Words::tr("Acid stop");
    case StepKind::Fix:
        return named ? Words::tr("Fix in %1").arg(bottle) : Words::tr("Fix");
    case StepKind::SecondFix:
        return named ? Words::tr("Fix in %1, second bath").arg(bottle)
                     : Words::tr("Fix in the second bath");
    case StepKind::Rinse:
        return Words::tr("Rinse, %n change(s)", nullptr, step.changes);
    case StepKind::WashAid:
        if (bottle.startsWith(Words::tr("Wash aid")))
            return bottle; // whose name says what it is
        return named ? Words::tr("Wash aid, %1").arg(bottle) : Words::tr("Wash aid");
    case StepKind::Wash:
        return Words::tr("Wash in running water");
    case StepKind::FillAndDump:
        return Words::tr("Wash, fill and dump %n time(s)", nullptr, step.changes);
    case StepKind::WettingAgent:
        return Words::tr("Wetting agent, then dry");
    }
    return {};
}

QString pourText(const ledger::Pour& pour, std::optional<chemistry::Celsius> temperature,
                 const Wording& wording)
{
    constexpr double kNothing = 0.5; // ml
    QString text = volumeText(pour.stock, wording);
    if (pour.water.value() > kNothing)
        text =
            Words::tr("%1 stock + %2 water", "volumes").arg(text, volumeText(pour.water, wording));
    return temperature ? Words::tr("%1, %2", "what is poured, temperature")
                             .arg(text, shortTemperatureText(*temperature, wording))
                       : text;
}

QString nextText(std::optional<StepKind> next)
{
    if (!next)
        return Words::tr("Finish");
    // Whole: a language may not write the step's name here as it does in a list.
    switch (*next) {
    case StepKind::PreWet:
        return Words::tr("Next: pre-wet");
    case StepKind::Develop:
        return Words::tr("Next: develop");
    case StepKind::PourBack:
        return Words::tr("Next: pour back");
    case StepKind::WaterStop:
        return Words::tr("Next: water stop");
    case StepKind::AcidStop:
        return Words::tr("Next: acid stop");
    case StepKind::Fix:
        return Words::tr("Next: fix");
    case StepKind::SecondFix:
        return Words::tr("Next: fix in the second bath");
    case StepKind::Rinse:
        return Words::tr("Next: rinse");
    case StepKind::WashAid:
        return Words::tr("Next: wash aid");
    case StepKind::Wash:
        return Words::tr("Next: wash");
    case StepKind::FillAndDump:
        return Words::tr("Next: fill and dump");
    case StepKind::WettingAgent:
        return Words::tr("Next: wetting agent");
    }
    return {};
}

QString agitationText(const ledger::Agitation& agitation)
{
    switch (agitation.kind) {
    case ledger::AgitationKind::None:
        return Words::tr("no agitation");
    case ledger::AgitationKind::Continuous:
        return Words::tr("agitate all the time");
    case ledger::AgitationKind::Intervals:
        break;
    }
    const QString each = secondsText(agitation.each.value());
    const QString beat =
        agitation.every.value() == 60
            ? Words::tr("%1 every minute").arg(each)
            : Words::tr("%1 every %2").arg(each, secondsText(agitation.every.value()));
    return agitation.first.value() > 0
               ? Words::tr("first %1, then %2").arg(secondsText(agitation.first.value()), beat)
               : beat;
}

QString fixSourceText(const ledger::FixingFactors& factors, const Wording& wording)
{
    QString text;
    if (factors.clearing) {
        text = Words::tr("Fix time = %1 × clearing time of %2")
                   .arg(numberText(factors.times, 1, wording.locale),
                        clearingText(*factors.clearing, wording.locale));
        text += factors.from == ledger::ClearingFrom::Tests
                    ? Words::tr(", from this bottle's tests")
                    : Words::tr(", the solution's figure when fresh");
    } else {
        text = Words::tr("Fix time is your own figure: no clearing time is known");
    }
    if (factors.raisedTo)
        text = Words::tr("%1, raised to the packet's shortest, %2")
                   .arg(text, timeText(*factors.raisedTo));
    if (factors.baths > 1)
        text = factors.clearing ? Words::tr("%1; half of it in each of the two baths").arg(text)
                                : Words::tr("%1, for each of the two baths").arg(text);
    return factors.cold > 1.0005 ? Words::tr("%1; %2 for the cold")
                                       .arg(text, factorText(factors.cold, wording.locale))
                                 : text;
}

QStringList runCautions(const ledger::RunState& state)
{
    QStringList lines{Cautions::glovesAndEyes()};
    QString developer;
    QString fixer;
    QString second;
    for (const ledger::RunBath& bath : state.baths) {
        if (bath.role == formulary::Role::Developer && !bath.oneShot)
            developer = QString::fromStdString(bath.name);
        if (bath.role == formulary::Role::Fixer && !bath.oneShot)
            (bath.second ? second : fixer) = QString::fromStdString(bath.name);
    }
    if (!fixer.isEmpty() && !second.isEmpty())
        fixer = Words::tr("%1 and %2", "two fixing baths, in the order of their step")
                    .arg(fixer, second);
    lines << (developer.isEmpty() || fixer.isEmpty()
                  ? Cautions::bathsApart()
                  : Words::tr("Developer back to %1, fixer back to %2. Never one into the other.")
                        .arg(developer, fixer));
    return lines << Cautions::noCleaners() << Cautions::noEating() << Cautions::eyes()
                 << Cautions::warmingBath() << Cautions::silver();
}

QString stepCaution(const ledger::RunStep& step, const QString& bottle)
{
    switch (step.caution) {
    case ledger::StepCaution::None:
        return {};
    case ledger::StepCaution::Developer:
        return Words::tr("Developer can make skin allergic for good.");
    case ledger::StepCaution::PourBack:
        return bottle.isEmpty() ? QString() // the list beside it says so
                                : Words::tr("Into %1 and no other bottle.").arg(bottle);
    case ledger::StepCaution::Acid:
        return Cautions::acidAndSulfite();
    case ledger::StepCaution::Fixer:
        return Words::tr("Fixer in the developer spoils it: other funnel, other hand.");
    case ledger::StepCaution::Wetting:
        return Words::tr("Last bath: hang the film up, do not rinse again.");
    }
    return {};
}

QString filmsLine(const std::vector<ledger::RunFilm>& films, const Wording& wording)
{
    QStringList formats;
    int pieces = 0;
    for (const ledger::FilmCount& film : ledger::loadOf(films).films) {
        formats << filmFormatShort(film.format);
        pieces += static_cast<int>(film.count);
    }
    Q_UNUSED(wording);
    return Words::tr("%n film(s), %1", nullptr, pieces).arg(formats.join(QStringLiteral(" + ")));
}

QString laterText(const std::vector<ledger::RunFilm>& films, const Wording& wording)
{
    return Words::tr("Still to come after this run: %1").arg(filmsLine(films, wording));
}

QString filmLine(const ledger::RunFilm& film, const Wording& wording)
{
    QStringList parts{filmFormatShort(film.format)};
    if (film.count > 1)
        parts[0] = Words::tr("%1 × %2").arg(film.count).arg(parts[0]);
    if (film.exposureIndex)
        parts << Words::tr("EI %1").arg(numberText(*film.exposureIndex, 1, wording.locale));
    if (!film.notes.empty())
        parts << QString::fromStdString(film.notes);
    return parts.join(QStringLiteral(" · "));
}

QString templateName(const ledger::RunTemplate& sheet)
{
    if (!sheet.name.empty())
        return QString::fromStdString(sheet.name);
    if (sheet.id == "acid-stop")
        return Words::tr("Acid stop, running wash");
    if (sheet.id == "fill-and-dump")
        return Words::tr("Water stop, wash by fill and dump");
    if (sheet.id == "two-baths")
        return Words::tr("Water stop, two fixing baths, running wash");
    return Words::tr("Water stop, running wash");
}

QString refusalText(const Error& error, const Wording& wording)
{
    if (error.code == ErrorCode::NoFigure)
        return Words::tr("The developing time needs a leaflet time.");
    if (error.code == ErrorCode::OutOfRange && error.unit == "°C" && error.low && error.high)
        return Words::tr("%1 is outside %2 to %3, and no figure entered reaches there.")
            .arg(temperatureText(chemistry::Celsius(error.number.value_or(0)), wording),
                 shortTemperatureText(chemistry::Celsius(*error.low), wording),
                 shortTemperatureText(chemistry::Celsius(*error.high), wording));
    return errorSentence(error, wording);
}

} // namespace ullage::app
