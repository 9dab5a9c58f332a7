#include "app/films/compare_words.h"

#include "app/words/film_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

using formulary::Role;
using ledger::FilmTrait;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FilmCompare)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

// Sentences are whole for each bath: a language may not put its name in the middle of one.
QString bottleText(Role role, const QString& name)
{
    switch (role) {
    case Role::Developer:
        return Words::tr("Developed in %1").arg(name);
    case Role::Stop:
        return Words::tr("Stopped in %1").arg(name);
    case Role::Fixer:
        return Words::tr("Fixed in %1").arg(name);
    case Role::WashAid:
    case Role::WettingAgent:
    case Role::Other:
        break;
    }
    return Words::tr("Went through %1").arg(name);
}

QString wearText(Role role, const QString& films)
{
    switch (role) {
    case Role::Developer:
        return Words::tr("The developer had done %1 a litre or more").arg(films);
    case Role::Stop:
        return Words::tr("The stop bath had done %1 a litre or more").arg(films);
    case Role::Fixer:
        return Words::tr("The fixer had done %1 a litre or more").arg(films);
    case Role::WashAid:
        return Words::tr("The wash aid had done %1 a litre or more").arg(films);
    case Role::WettingAgent:
    case Role::Other:
        break;
    }
    return Words::tr("A later bath had done %1 a litre or more").arg(films);
}

QString standingText(Role role, const QString& share)
{
    switch (role) {
    case Role::Developer:
        return Words::tr("Standing had used %1 of the developer's life or more").arg(share);
    case Role::Stop:
        return Words::tr("Standing had used %1 of the stop bath's life or more").arg(share);
    case Role::Fixer:
        return Words::tr("Standing had used %1 of the fixer's life or more").arg(share);
    case Role::WashAid:
    case Role::WettingAgent:
    case Role::Other:
        break;
    }
    return Words::tr("Standing had used %1 of a later bath's life or more").arg(share);
}

QString verdictText(Role role)
{
    switch (role) {
    case Role::Developer:
        return Words::tr("The developer was to be tested first or discarded");
    case Role::Stop:
        return Words::tr("The stop bath was to be tested first or discarded");
    case Role::Fixer:
        return Words::tr("The fixer was to be tested first or discarded");
    case Role::WashAid:
    case Role::WettingAgent:
    case Role::Other:
        break;
    }
    return Words::tr("A later bath was to be tested first or discarded");
}

QString noCauseText(ledger::NoCause why)
{
    switch (why) {
    case ledger::NoCause::AfterImage:
        return Words::tr("it comes after the image is developed and takes nothing of it");
    case ledger::NoCause::NoFixing:
        return Words::tr("it has no part in dissolving what was not developed");
    case ledger::NoCause::Later:
        return Words::tr("it comes when the image is made and cleared");
    case ledger::NoCause::OtherWay:
        return Words::tr("it does the opposite");
    case ledger::NoCause::Enough:
        return Words::tr("more than enough of it changes nothing");
    case ledger::NoCause::AllAlike:
        return Words::tr("it does the same to the whole film");
    case ledger::NoCause::NeverSpoilt:
        return Words::tr("standing does not spoil it");
    case ledger::NoCause::PlainWater:
        return Words::tr("water before the developer neither adds density nor takes it");
    case ledger::NoCause::ExposureOnly:
        break;
    }
    return Words::tr("exposure changes density and nothing else");
}

} // namespace

QString traitText(const ledger::TraitFound& found, const BottleName& bottle, const Wording& wording)
{
    const Role role = found.role.value_or(Role::Other);
    const QString subject = utf8(found.subject);
    const auto share = [&] { return percentText(std::abs(found.number), wording.locale); };
    switch (found.trait) {
    case FilmTrait::Bottle:
        return bottleText(role, bottle(found.subject));
    case FilmTrait::WearOver:
        return wearText(role, filmsText(chemistry::Films(found.number), wording));
    case FilmTrait::StandingOver:
        return standingText(role, share());
    case FilmTrait::BeyondVerdict:
        return verdictText(role);
    case FilmTrait::StepLonger:
        return Words::tr("%1: %2 or more over its time", "step, share")
            .arg(stepCodeName(found.subject), share());
    case FilmTrait::StepShorter:
        return Words::tr("%1: %2 or more short of its time", "step, share")
            .arg(stepCodeName(found.subject), share());
    case FilmTrait::Warmer:
        return Words::tr("Developed at %1 or warmer")
            .arg(temperatureText(chemistry::Celsius(found.number), wording));
    case FilmTrait::Colder:
        return Words::tr("Developed at %1 or colder")
            .arg(temperatureText(chemistry::Celsius(found.number), wording));
    case FilmTrait::OneRun:
        return Words::tr("Together in one run");
    case FilmTrait::Film:
        return Words::tr("Film: %1").arg(subject);
    case FilmTrait::Format:
        return Words::tr("Format: %1").arg(filmFormatShort(found.subject));
    case FilmTrait::ExposureIndex:
        return Words::tr("Exposed at EI %1").arg(numberText(found.number, 1, wording.locale));
    case FilmTrait::Tank:
        return Words::tr("Tank: %1").arg(subject);
    case FilmTrait::Person:
        return Words::tr("Run by %1", "person").arg(subject);
    }
    return subject;
}

QString offPlanText(const ledger::OffPlan& off)
{
    return Words::tr("%1: %2 of %3", "step, time it took, time planned")
        .arg(stepCodeName(off.step), timeText(off.real), timeText(off.planned));
}

QString offPlanCounts(const ledger::OffPlan& off)
{
    return Words::tr("%1 of %2 marked").arg(off.marked.with).arg(off.marked.known);
}

QString traitCounts(const ledger::TraitFound& found)
{
    const QString marked =
        Words::tr("%1 of %2 marked").arg(found.marked.with).arg(found.marked.known);
    if (found.good.known == 0)
        return Words::tr("%1 · not known of a good one", "so many marked").arg(marked);
    return Words::tr("%1 · %2 of %3 good", "so many marked, so many good")
        .arg(marked)
        .arg(found.good.with)
        .arg(found.good.known);
}

QString ruledOutText(const ledger::RuledOut& ruledOut)
{
    return Words::tr("Not the reason for “%1”: %2.", "what is wrong with negatives, reason")
        .arg(filmFaultName(ruledOut.fault), noCauseText(ruledOut.why));
}

QString comparedText(const ledger::FilmComparison& compared)
{
    const QString marked = Words::tr("%n film(s) marked", nullptr, compared.marked);
    return Words::tr("%1, %2.", "films marked, good ones")
        .arg(marked, Words::tr("%n good one(s)", nullptr, compared.good));
}

} // namespace ullage::app
