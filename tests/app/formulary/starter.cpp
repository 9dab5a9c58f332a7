#include "tests/app/formulary/starter.h"

#include "core/store/journal_codec.h"

#include <QFile>

#include <variant>

namespace ullage::app::sample
{

using chemistry::Celsius;
using chemistry::Seconds;

formulary::Formulary starterFormulary()
{
    formulary::Formulary formulary;
    QFile file(QStringLiteral(ULLAGE_STARTER));
    if (!file.open(QIODevice::ReadOnly))
        return formulary;
    while (!file.atEnd()) {
        const auto line = store::decodeLine(file.readLine().trimmed());
        const auto* entry = line ? std::get_if<ledger::Entry>(&*line) : nullptr;
        if (!entry)
            continue;
        if (const auto* solution = std::get_if<formulary::Solution>(&entry->what))
            formulary.add(*solution);
        else if (const auto* vessel = std::get_if<formulary::Vessel>(&entry->what))
            formulary.add(*vessel);
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
