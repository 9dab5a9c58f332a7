#include "app/bench/tank_side.h"

#include "app/bench/bench_words.h"
#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QScrollArea>
#include <QVBoxLayout>

namespace ullage::app
{

TankSide::TankSide(QWidget* parent)
    : QWidget(parent), m_films(new PlainLabel), m_factors(new FactorRows),
      m_cautions(new CautionBox(tr("Before you pour")))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    auto* card = new Card(tr("In the tank"));
    m_films->setWordWrap(true);
    m_films->setTextFormat(Qt::RichText);
    m_films->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    card->body()->addWidget(m_films);
    card->body()->addSpacing(Space::kSmall);
    card->body()->addWidget(m_factors);
    column->addWidget(card);
    column->addWidget(m_cautions, 1);
}

void TankSide::setRun(const ledger::RunState& state, const Wording& wording)
{
    QString films;
    int number = 0;
    constexpr int kShown = 4; // more names would push the factors out of sight
    for (const ledger::RunFilm& film : state.films) {
        ++number;
        if (number > kShown) {
            films += tr("and %n more", nullptr, int(state.films.size()) - kShown);
            break;
        }
        const QString name =
            film.name.empty() ? tr("Film %1").arg(number) : QString::fromStdString(film.name);
        films += QStringLiteral("<p style='margin:0 0 6px 0'><b>%1</b><br>"
                                "<span style='color:%3;font-size:12px'>%2</span></p>")
                     .arg(name.toHtmlEscaped(), filmLine(film, wording).toHtmlEscaped(),
                          colours().quiet.name());
    }
    m_films->setText(films);

    std::vector<FactorRow> rows;
    rows.push_back({tr("Thermometer"), temperatureText(state.temperature, wording), false});
    if (const auto f = ledger::developingNow(state)) {
        rows.push_back(
            {tr("Leaflet time, %1").arg(shortTemperatureText(f->nearest.temperature, wording)),
             timeText(f->nearest.time), false});
        rows.push_back({tr("Temperature"), factorText(f->temperature, wording.locale), false});
        double wear = 0;
        for (const ledger::RunBath& bath : state.baths)
            if (bath.role == formulary::Role::Developer)
                wear = bath.wearBefore;
        rows.push_back({wear > 0 ? tr("Wear, %1 films/L").arg(numberText(wear, 1, wording.locale))
                                 : tr("Wear, none yet"),
                        factorText(f->wear, wording.locale), false});
        rows.push_back({tr("Control strip"), factorText(f->strip, wording.locale), false});
    }
    for (std::size_t i = 0; i < state.sheet.steps.size(); ++i) {
        const ledger::RunStep& step = state.sheet.steps[i];
        if (step.rule() != ledger::TemperatureRule::None)
            rows.push_back({stepKindName(step.kind), timeText(state.times[i].target), true});
    }
    m_factors->setRows(rows);
    m_cautions->setLines(runCautions(state));
}

} // namespace ullage::app
