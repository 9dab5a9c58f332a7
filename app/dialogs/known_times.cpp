#include "app/dialogs/known_times.h"

#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(KnownTimes)
};

// 0 for a film wanted at its exposure index, 1 for the film alone, 2 for any other.
int distance(const formulary::DevelopmentFigure& figure,
             const std::vector<formulary::FilmWanted>& films)
{
    int least = 2;
    for (const formulary::FilmWanted& film : films) {
        if (film.name.empty() || !formulary::sameFilm(film.name, figure.film))
            continue;
        least = std::min(least, film.exposureIndex == figure.exposureIndex ? 0 : 1);
    }
    return least;
}

} // namespace

std::vector<BaseTimesEdit::Known> knownTimes(const formulary::Formulary& formulary,
                                             const std::string& developer,
                                             const std::vector<formulary::FilmWanted>& films,
                                             const Wording& wording)
{
    const auto family = formulary.family(developer);
    std::vector<std::pair<int, BaseTimesEdit::Known>> found;
    for (const auto& figure : formulary.notebook().current()) {
        if (std::find(family.begin(), family.end(), figure->developer) == family.end())
            continue;
        QStringList name{QString::fromStdString(figure->film)};
        if (figure->exposureIndex)
            name << Words::tr("EI %1", "exposure index")
                        .arg(numberText(*figure->exposureIndex, 1, wording.locale));
        const QString dilution = QString::fromStdString(figure->dilution);
        if (!dilution.isEmpty())
            name << shownName(figure->dilution);
        found.emplace_back(distance(*figure, films),
                           BaseTimesEdit::Known{name.join(QStringLiteral(" · ")),
                                                QString::fromStdString(figure->source),
                                                figure->times,
                                                dilution,
                                                {figure->film, figure->exposureIndex}});
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<BaseTimesEdit::Known> known;
    for (auto& [far, one] : found)
        known.push_back(std::move(one));
    return known;
}

QString dilutionText(double parts, const Wording& wording)
{
    return parts > 0 ? QStringLiteral("1+%1").arg(numberText(parts, 1, wording.locale))
                     : Words::tr("stock");
}

QString timeForText(const formulary::TimeFor& what, const formulary::Formulary& formulary,
                    const Wording& wording)
{
    QStringList films;
    for (const formulary::FilmWanted& film : what.films) {
        if (film.name.empty())
            continue;
        QString text = QString::fromStdString(film.name);
        if (film.exposureIndex)
            text += QStringLiteral(" · ") +
                    Words::tr("EI %1", "exposure index")
                        .arg(numberText(*film.exposureIndex, 1, wording.locale));
        if (!films.contains(text))
            films << text;
    }
    QStringList parts{films.isEmpty() ? Words::tr("a film not named")
                                      : films.join(QStringLiteral(", "))};
    parts << dilutionText(what.parts, wording);
    if (const auto developer = formulary.solution(what.developer))
        parts << shownName(developer->name);
    return parts.join(QStringLiteral(" · "));
}

} // namespace ullage::app
