#include "app/dialogs/known_times.h"

#include "app/words/number_text.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(KnownTimes)
};

// As the notebook compares names: without regard to letter case and blanks.
QString plain(const std::string& name)
{
    return QString::fromStdString(name).remove(u' ').toCaseFolded();
}

// 0 for a film wanted at its exposure index, 1 for the film alone, 2 for any other.
int distance(const formulary::DevelopmentFigure& figure, const std::vector<FilmWanted>& films)
{
    int least = 2;
    for (const FilmWanted& film : films) {
        if (film.name.empty() || plain(film.name) != plain(figure.film))
            continue;
        least = std::min(least, film.exposureIndex == figure.exposureIndex ? 0 : 1);
    }
    return least;
}

} // namespace

std::vector<BaseTimesEdit::Known> knownTimes(const formulary::Formulary& formulary,
                                             const std::string& developer,
                                             const std::vector<FilmWanted>& films,
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
            name << dilution;
        found.emplace_back(distance(*figure, films),
                           BaseTimesEdit::Known{name.join(QStringLiteral(" · ")),
                                                QString::fromStdString(figure->source),
                                                figure->times, dilution});
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<BaseTimesEdit::Known> known;
    for (auto& [far, one] : found)
        known.push_back(std::move(one));
    return known;
}

std::optional<int> partsOfDilution(const QString& dilution)
{
    if (dilution.trimmed().compare(QLatin1String("stock"), Qt::CaseInsensitive) == 0)
        return 0;
    static const QRegularExpression form(QStringLiteral("^\\s*1\\s*\\+\\s*(\\d{1,3})\\s*$"));
    const auto match = form.match(dilution);
    return match.hasMatch() ? std::optional(match.captured(1).toInt()) : std::nullopt;
}

} // namespace ullage::app
