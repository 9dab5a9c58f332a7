#include "tests/app/formulary/starter.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace ullage::app::sample
{

using chemistry::Celsius;
using chemistry::Seconds;

namespace
{

template <class Q>
std::optional<Q> quantity(const QJsonValue& value)
{
    return value.isDouble() ? std::optional(Q(value.toDouble())) : std::nullopt;
}

formulary::Solution solutionOf(const QJsonObject& line)
{
    formulary::Solution solution;
    solution.id = line["id"].toString().toStdString();
    solution.name = line["name"].toString().toStdString();
    solution.role = *formulary::roleFromCode(line["role"].toString().toStdString());
    solution.capacity = quantity<chemistry::FilmsPerLitre>(line["capacity_films_per_litre"]);
    const QJsonObject wear = line["wear"].toObject();
    if (wear["rule"] == QLatin1String("per-film"))
        solution.wear = {chemistry::WearRule::PerFilm, wear["percent"].toDouble(), {}};
    for (const QJsonValue& step : wear["steps"].toArray()) {
        solution.wear.rule = chemistry::WearRule::Steps;
        solution.wear.steps.push_back(
            {chemistry::FilmsPerLitre(step["from_films_per_litre"].toDouble()),
             step["factor"].toDouble()});
    }
    const QJsonObject keeping = line["keeping"].toObject();
    solution.keeping.full = quantity<chemistry::Days>(keeping["full_days"]);
    solution.keeping.half = quantity<chemistry::Days>(keeping["half_days"]);
    solution.keeping.tray = quantity<chemistry::Hours>(keeping["tray_hours"]);
    solution.q10 = line["q10"].toDouble();
    solution.oxygenFactor = line["oxygen_factor"].toDouble();
    solution.silverPerFilm = line["silver_g_per_film"].toDouble();
    solution.bromidePerFilm = line["bromide_mg_per_film"].toDouble();
    const QJsonObject sources = line["sources"].toObject();
    for (auto source = sources.begin(); source != sources.end(); ++source)
        solution.sources[source.key().toStdString()] = source.value().toString().toStdString();
    return solution;
}

formulary::Vessel vesselOf(const QJsonObject& line)
{
    formulary::Vessel vessel;
    vessel.id = line["id"].toString().toStdString();
    vessel.name = line["name"].toString().toStdString();
    vessel.capacity = chemistry::Millilitres(line["capacity_ml"].toDouble());
    vessel.material = *formulary::materialFromCode(line["material"].toString().toStdString());
    vessel.squeezed = line["squeezed"].toBool();
    return vessel;
}

} // namespace

formulary::Formulary starterFormulary()
{
    formulary::Formulary formulary;
    QFile file(QStringLiteral(ULLAGE_STARTER));
    if (!file.open(QIODevice::ReadOnly))
        return formulary;
    while (!file.atEnd()) {
        const QJsonObject line = QJsonDocument::fromJson(file.readLine()).object();
        if (line["type"] == QLatin1String("solution"))
            formulary.add(solutionOf(line));
        else if (line["type"] == QLatin1String("vessel"))
            formulary.add(vesselOf(line));
    }
    return formulary;
}

formulary::Formulary formularyWithTimes()
{
    formulary::Formulary formulary = starterFormulary();
    const auto add = [&](const char* id, const char* film, const char* developer,
                         const char* dilution, double index,
                         std::vector<chemistry::TimeAtTemperature> times, const char* source) {
        formulary::DevelopmentFigure figure;
        figure.id = id;
        figure.film = film;
        figure.developer = developer;
        figure.dilution = dilution;
        figure.exposureIndex = index;
        figure.times = std::move(times);
        figure.source = source;
        formulary.add(figure);
    };
    add("t1", "Breakwater 100", "starter-mq-borax", "stock", 100,
        {{Celsius(18), Seconds(570)}, {Celsius(20), Seconds(480)}, {Celsius(24), Seconds(360)}},
        "the film's leaflet, invented");
    add("t2", "Breakwater 100", "starter-mq-borax", "1+1", 100, {{Celsius(20), Seconds(690)}},
        "the film's leaflet, invented");
    add("t3", "Quay 400", "starter-mq-borax", "stock", 400,
        {{Celsius(20), Seconds(570)}, {Celsius(24), Seconds(420)}}, "from memory of the leaflet");
    add("t4", "Quay 400", "starter-pq-ascorbate", "stock", 800, {{Celsius(20), Seconds(540)}}, "");
    return formulary;
}

} // namespace ullage::app::sample
