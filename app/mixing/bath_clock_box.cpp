#include "app/mixing/bath_clock_box.h"

#include "app/charts/chart_view.h"
#include "app/mixing/mixing_figures.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"
#include "core/chemistry/time_units.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Seconds;
using chemistry::Surroundings;

BathClockBox::BathClockBox(Now now, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_now(std::move(now)), m_wording(wording),
      m_bottleLabel(new PlainLabel(this)),
      m_bottle(new QuantityField<Celsius>(QuantityKind::Temperature, {}, wording, this)),
      m_aroundLabel(new PlainLabel(this)),
      m_around(new QuantityField<Celsius>(QuantityKind::Temperature, {}, wording, this)),
      m_chart(makeChartView(this)), m_reading(new PlainLabel(this)), m_add(new QPushButton(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kSmall);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(Space::kGap);
    grid->setVerticalSpacing(3);
    int at = 0;
    for (const auto& [label, edit] :
         {std::pair(m_bottleLabel, m_bottle), std::pair(m_aroundLabel, m_around)}) {
        edit->setRange(0, 100);
        edit->setRequired(true);
        label->setBuddy(edit);
        setTone(label, Tone::Quiet);
        grid->addWidget(label, 0, at);
        grid->addWidget(edit, 1, at);
        grid->setColumnStretch(at++, 1);
    }
    column->addLayout(grid);
    m_chart->setMinimumHeight(130);
    QSizePolicy place = m_chart->sizePolicy();
    place.setRetainSizeWhenHidden(true);
    m_chart->setSizePolicy(place);
    column->addWidget(m_chart, 1);
    m_reading->setWordWrap(true);
    setTone(m_reading, Tone::Quiet);
    setButtonLook(m_add, ButtonLook::Quiet);
    auto* row = new QHBoxLayout;
    row->addWidget(m_reading, 1);
    row->addWidget(m_add);
    column->addLayout(row);
    connect(m_bottle, &QuantityEdit::valueChanged, this, &BathClockBox::showClock);
    connect(m_around, &QuantityEdit::valueChanged, this, [this] {
        m_readings.clear();
        showClock();
    });
    connect(m_add, &QPushButton::clicked, this, &BathClockBox::addReading);
    retranslate();
}

void BathClockBox::setWording(const Wording& wording)
{
    m_wording = wording;
    m_bottle->setWording(wording);
    m_around->setWording(wording);
    retranslate();
}

void BathClockBox::retranslate()
{
    const QString around =
        m_surroundings == Surroundings::StirredBath ? tr("Bath") : tr("Room air");
    m_bottleLabel->setText(tr("Bottle now"));
    m_bottle->setName(tr("Bottle now"));
    m_aroundLabel->setText(around);
    m_around->setName(around);
    m_add->setText(tr("Add a reading"));
    showClock();
}

void BathClockBox::begin(chemistry::Millilitres volume, Celsius bottle, Celsius around)
{
    m_volume = volume;
    m_readings.clear();
    m_bottle->setQuantity(bottle);
    m_around->setQuantity(around);
    showClock();
}

void BathClockBox::setWanted(std::optional<Celsius> wanted)
{
    m_wanted = wanted;
    showClock();
}

void BathClockBox::setSurroundings(Surroundings surroundings)
{
    m_surroundings = surroundings;
    m_readings.clear();
    retranslate();
}

QString BathClockBox::readingText() const { return m_reading->text(); }

Seconds BathClockBox::timeConstantNow() const
{
    const Seconds usual = chemistry::timeConstant(m_volume, m_surroundings);
    const auto around = m_around->quantity();
    if (m_readings.size() < 2 || !around)
        return usual;
    const Reading& first = m_readings.front();
    const Reading& last = m_readings.back();
    const Seconds between = chemistry::inSeconds(last.at - first.at);
    return chemistry::timeConstantFrom(first.temperature, last.temperature, *around, between)
        .value_or(usual);
}

void BathClockBox::addReading()
{
    if (const auto bottle = m_bottle->quantity())
        m_readings.push_back({m_now(), *bottle});
    showClock();
}

std::optional<BathClock> BathClockBox::clock() const
{
    const auto bottle = m_bottle->quantity();
    const auto around = m_around->quantity();
    if (!bottle || !around || !m_wanted || m_volume.value() <= 0)
        return std::nullopt;
    return BathClock{*bottle, *around, *m_wanted, timeConstantNow(), m_surroundings};
}

std::optional<Explanation> BathClockBox::figure() const
{
    const auto now = clock();
    if (!now)
        return std::nullopt;
    const bool usual = now->constant == chemistry::timeConstant(m_volume, m_surroundings);
    return clockFigure(*now, m_volume, !usual, m_wording);
}

void BathClockBox::showClock()
{
    m_add->setEnabled(m_bottle->quantity() && m_around->quantity());
    const auto now = clock();
    if (!now) {
        m_chart->hide(); // what was drawn for other temperatures says nothing of these
        m_reading->setText(tr("No clock while a temperature is missing."));
        return;
    }
    m_chart->show();
    const Seconds usual = chemistry::timeConstant(m_volume, m_surroundings);
    const Seconds constant = now->constant;
    m_chart->setChart(bathChart(*now, m_wording));
    const auto minutes = [&](Seconds time) {
        return numberText(chemistry::inMinutes(time), 1, m_wording.locale);
    };
    if (m_readings.empty())
        m_reading->setText(tr("Two readings of your own thermometer make this exact."));
    else if (m_readings.size() == 1)
        m_reading->setText(tr("One reading taken. Read the bottle again in a few minutes."));
    else if (constant == usual)
        m_reading->setText(tr("These readings do not come nearer to what is around the bottle; the "
                              "usual pace of %1 min is taken.")
                               .arg(minutes(usual)));
    else
        m_reading->setText(
            tr("By your readings: two thirds of the way in %1 min.").arg(minutes(constant)));
}

} // namespace ullage::app
