#include "app/films/film_views.h"

#include "app/words/film_words.h"
#include "app/words/formulary_words.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/verdict_words.h"
#include "core/ledger/costs.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Films)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

QString dot() { return QStringLiteral(" · "); }

QString whenAndWho(chemistry::Instant at, const std::string& by, chemistry::Instant now,
                   const Wording& wording)
{
    const QString when = momentText(at, now, wording.locale);
    return by.empty() ? when : Words::tr("%1, by %2", "moment, person").arg(when, utf8(by));
}

FilmBottleView bottleView(const ledger::FilmBath& bath, const Wording& wording)
{
    const ledger::Batch& batch = bath.before.batch;
    const ledger::Assessment& so = bath.before.assessment;
    FilmBottleView view{utf8(batch.id), utf8(batch.name), {}, {}, {}};
    QStringList parts{shownName(batch.solution->name)};
    const chemistry::Films wear(batch.wear.value());
    QString done = wear.value() > 0 ? Words::tr("%1 a litre before").arg(filmsText(wear, wording))
                                    : Words::tr("no film before");
    if (batch.solution->role == formulary::Role::Developer)
        done = Words::tr("%1, time %2", "films before, factor")
                   .arg(done, factorText(so.wearFactor, wording.locale));
    parts << done;
    if (so.standingUsed)
        parts << Words::tr("standing %1 used").arg(percentText(*so.standingUsed, wording.locale));
    if (bath.load.oneShot)
        parts << Words::tr("used once and thrown away");
    view.then = parts.join(dot());
    view.verdict = so.shown;
    view.verdictText = Words::tr("Then: %1", "verdict").arg(verdictWord(so.shown));
    return view;
}

ledger::Cost sumOf(chemistry::Films film, const std::vector<FilmBottleCost>& bottles)
{
    ledger::Cost sum;
    for (const FilmBottleCost& bottle : bottles)
        sum += ledger::costOfFilm(bottle.cost, film, bottle.done);
    return sum;
}

bool anyInUse(const std::vector<FilmBottleCost>& bottles)
{
    return std::any_of(bottles.begin(), bottles.end(), [](const auto& one) { return one.inUse; });
}

} // namespace

FilmView filmView(const ledger::FilmTrace& film, chemistry::Instant now, const Wording& wording)
{
    FilmView view;
    view.id = utf8(film.film.id);
    view.name = film.film.name.empty() ? Words::tr("A film") : utf8(film.film.name);
    ledger::FilmRecord rest = film.film;
    rest.name.clear();
    view.detail = rest.format.empty() && !rest.exposureIndex && rest.notes.empty()
                      ? QString()
                      : filmText(rest, wording.locale);
    view.run = film.baths.empty() ? Words::tr("its run was taken back")
                                  : whenAndWho(film.at, film.by, now, wording);
    QStringList faults;
    for (const ledger::FilmMark& mark : film.marks) {
        if (const QString name = filmFaultName(*mark.fault); !faults.contains(name))
            faults << name;
        QString text = filmMarkText(mark);
        text[0] = text[0].toUpper();
        view.standing.push_back({mark, text, whenAndWho(mark.at, mark.by, now, wording)});
    }
    view.marks = faults.join(QStringLiteral(", "));
    for (const ledger::FilmBath& bath : film.baths)
        view.bottles.push_back(bottleView(bath, wording));
    if (!film.times)
        return view;
    for (const ledger::StepDone& step : film.times->steps)
        view.times.push_back({stepCodeName(step.kind),
                              Words::tr("%1 → %2", "planned and real time")
                                  .arg(timeText(step.planned), timeText(step.real)),
                              false});
    QStringList conditions;
    if (film.times->temperature)
        conditions << temperatureText(*film.times->temperature, wording);
    if (!film.times->tank.empty())
        conditions << Words::tr("tank “%1”").arg(utf8(film.times->tank));
    view.conditions = conditions.join(dot());
    return view;
}

QString filmCostText(chemistry::Films film, const std::vector<FilmBottleCost>& bottles,
                     const QLocale& locale)
{
    const ledger::Cost cost = sumOf(film, bottles);
    if (cost.money.empty())
        return {};
    const QString known = costText(cost, locale);
    return anyInUse(bottles) ? Words::tr("Its chemistry cost %1 so far.", "of a film").arg(known)
                             : Words::tr("Its chemistry cost %1.", "of a film").arg(known);
}

Explanation explainFilmCost(chemistry::Films film, const std::vector<FilmBottleCost>& bottles,
                            const Wording& wording)
{
    Explanation why;
    const ledger::Cost cost = sumOf(film, bottles);
    why.title = Words::tr("Chemistry for this film");
    why.value = costText(cost, wording.locale);
    why.equation = Words::tr("What each bottle that it went through cost so far × this film ÷ the "
                             "films that the bottle has done so far.");
    why.inputs.push_back({Words::tr("This film"), filmsText(film, wording)});
    for (const FilmBottleCost& bottle : bottles) {
        const QString paid = costText(bottle.cost, wording.locale);
        why.inputs.push_back({bottle.name, Words::tr("%1 for %2", "money, films")
                                               .arg(paid.isEmpty() ? Words::tr("nothing") : paid,
                                                    filmsText(bottle.done, wording))});
    }
    if (anyInUse(bottles))
        why.notes << Words::tr("A bottle in use will do more film: then less of it falls to this "
                               "one.");
    if (!cost.whole)
        why.notes << Words::tr("Not all that went in has a price in the cupboard.");
    why.hasGrade = false;
    return why;
}

} // namespace ullage::app
