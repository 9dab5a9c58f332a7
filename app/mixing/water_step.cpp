#include "app/mixing/water_step.h"

#include "app/mixing/blend_bar.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Seconds;

namespace
{

constexpr double kUsualHot = 60;
constexpr double kUsualCold = 15;
constexpr double kUsualRoom = 20;
constexpr double kBathAbove = 2; // a bath a little warmer than wanted gets it there

QGridLayout* fields(const std::vector<QuantityEdit*>& edits,
                    std::vector<std::pair<QLabel*, QuantityEdit*>>& labels, QWidget* parent)
{
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(Space::kGap);
    grid->setVerticalSpacing(3);
    int column = 0;
    for (QuantityEdit* edit : edits) {
        auto* label = new QLabel(parent);
        label->setBuddy(edit);
        setTone(label, Tone::Quiet);
        labels.emplace_back(label, edit);
        grid->addWidget(label, 0, column);
        grid->addWidget(edit, 1, column);
        grid->setColumnStretch(column++, 1);
    }
    return grid;
}

std::optional<Celsius> degrees(const QuantityEdit* edit)
{
    const auto value = edit->value();
    return value ? std::optional(Celsius(*value)) : std::nullopt;
}

} // namespace

WaterStep::WaterStep(Now now, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_now(std::move(now)), m_wording(wording), m_headline(new QLabel(this)),
      m_note(new QLabel(this)), m_orBath(new QLabel(this)),
      m_hot(new QuantityEdit(QuantityKind::Temperature, tr("Hot water"), wording, this)),
      m_cold(new QuantityEdit(QuantityKind::Temperature, tr("Cold water"), wording, this)),
      m_wanted(new QuantityEdit(QuantityKind::Temperature, tr("Wanted"), wording, this)),
      m_bar(new BlendBar(this)),
      m_bottle(new QuantityEdit(QuantityKind::Temperature, tr("Bottle now"), wording, this)),
      m_bath(new QuantityEdit(QuantityKind::Temperature, tr("Bath"), wording, this)),
      m_chart(makeChartView(this)), m_reading(new QLabel(this)), m_add(new QPushButton(this))
{
    m_headline->setFont(Theme::font(TextRole::Hero));
    for (QLabel* label : {m_note, m_reading}) {
        label->setWordWrap(true);
        setTone(label, Tone::Quiet);
    }
    for (QuantityEdit* edit : {m_hot, m_cold, m_wanted, m_bottle, m_bath}) {
        edit->setRange(0, 100);
        edit->setRequired(true);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kSmall);
    column->addWidget(m_headline);
    column->addWidget(m_note);
    column->addSpacing(Space::kSmall);
    column->addLayout(fields({m_hot, m_cold, m_wanted}, m_labels, this));
    column->addSpacing(Space::kSmall);
    column->addWidget(m_bar);
    column->addSpacing(Space::kSmall);
    m_orBath->setFont(Theme::font(TextRole::Strong));
    column->addWidget(m_orBath);
    column->addLayout(fields({m_bottle, m_bath}, m_labels, this));
    m_chart->setMinimumHeight(130);
    column->addWidget(m_chart, 1);
    auto* row = new QHBoxLayout;
    row->addWidget(m_reading, 1);
    row->addWidget(m_add);
    column->addLayout(row);
    setButtonLook(m_add, ButtonLook::Quiet);
    for (QuantityEdit* edit : {m_hot, m_cold, m_wanted})
        connect(edit, &QuantityEdit::valueChanged, this, &WaterStep::showBlend);
    for (QuantityEdit* edit : {m_wanted, m_bottle, m_bath})
        connect(edit, &QuantityEdit::valueChanged, this, &WaterStep::showBath);
    connect(m_bath, &QuantityEdit::valueChanged, this, [this] {
        // Another bath, another cooling law: what was read in the old one tells nothing.
        m_readings.clear();
        showBath();
    });
    connect(m_add, &QPushButton::clicked, this, &WaterStep::addReading);
    retranslate();
}

void WaterStep::setWording(const Wording& wording)
{
    m_wording = wording;
    for (const auto& [label, edit] : m_labels)
        edit->setWording(wording);
    retranslate();
}

void WaterStep::retranslate()
{
    const QString words[] = {tr("Hot water"), tr("Cold water"), tr("Wanted"), tr("Bottle now"),
                             tr("Bath")};
    for (std::size_t i = 0; i < m_labels.size(); ++i) {
        m_labels[i].first->setText(words[i]);
        m_labels[i].second->setName(words[i]);
    }
    m_orBath->setText(tr("or warm it in a bath"));
    m_add->setText(tr("Add a reading"));
    if (!m_plan.isComplete())
        return;
    showNote();
    showBlend();
    showBath();
}

void WaterStep::showNote()
{
    const auto start = m_plan.start();
    m_note->setText(start ? startNote(m_plan, *start, m_wording) : QString());
}

void WaterStep::setPlan(const MixingPlan& plan)
{
    m_plan = plan;
    m_readings.clear();
    if (!plan.isComplete())
        return;
    const auto start = plan.start();
    m_start = start ? start->advised : plan.makes;
    showNote();
    const UsualWater usual = usualWater(plan.solution->role);
    m_hot->setValue(kUsualHot);
    m_cold->setValue(kUsualCold);
    m_wanted->setValue(usual.start.value());
    m_bottle->setValue(kUsualRoom);
    m_bath->setValue(usual.start.value() + kBathAbove);
    showBlend();
    showBath();
}

QString WaterStep::headline() const { return m_headline->text(); }

QString WaterStep::readingText() const { return m_reading->text(); }

void WaterStep::showBlend()
{
    const auto hot = degrees(m_hot);
    const auto cold = degrees(m_cold);
    const auto wanted = degrees(m_wanted);
    m_headline->setText(
        wanted ? tr("%1 at %2", "volume, temperature")
                     .arg(volumeText(m_start, m_wording), shortTemperatureText(*wanted, m_wording))
               : volumeText(m_start, m_wording));
    if (!hot || !cold || !wanted) {
        m_bar->setBlend(std::nullopt, m_wording, tr("three temperatures are needed"));
        return;
    }
    const auto blend = chemistry::blend(m_start, *wanted, *hot, *cold);
    m_bar->setBlend(blend ? std::optional(*blend) : std::nullopt, m_wording,
                    tr("%1 is not between the cold and the hot water")
                        .arg(shortTemperatureText(*wanted, m_wording)));
}

Seconds WaterStep::timeConstantNow() const
{
    const Seconds usual = chemistry::timeConstant(m_start, chemistry::Surroundings::StirredBath);
    const auto bath = degrees(m_bath);
    if (m_readings.size() < 2 || !bath)
        return usual;
    const Reading& first = m_readings.front();
    const Reading& last = m_readings.back();
    const Seconds between(static_cast<double>((last.at - first.at).count()) / 1000);
    const auto measured =
        chemistry::timeConstantFrom(first.temperature, last.temperature, *bath, between);
    return measured ? *measured : usual;
}

void WaterStep::addReading()
{
    if (const auto bottle = degrees(m_bottle))
        m_readings.push_back({m_now(), *bottle});
    showBath();
}

void WaterStep::showBath()
{
    const auto bottle = degrees(m_bottle);
    const auto bath = degrees(m_bath);
    const auto wanted = degrees(m_wanted);
    m_add->setEnabled(bottle && bath);
    if (!bottle || !bath || !wanted || m_start.value() <= 0)
        return;
    const Seconds usual = chemistry::timeConstant(m_start, chemistry::Surroundings::StirredBath);
    const Seconds constant = timeConstantNow();
    m_chart->setChart(bathChart({*bottle, *bath, *wanted, constant}, m_wording));
    const auto minutes = [&](Seconds time) {
        return numberText(time.value() / 60, 1, m_wording.locale);
    };
    if (m_readings.empty())
        m_reading->setText(tr("Two readings of your own thermometer make this exact."));
    else if (m_readings.size() == 1)
        m_reading->setText(tr("One reading taken. Read the bottle again in a few minutes."));
    else if (constant == usual)
        m_reading->setText(tr("These readings do not come nearer to the bath; the usual pace of "
                              "%1 min is taken.")
                               .arg(minutes(usual)));
    else
        m_reading->setText(
            tr("By your readings: two thirds of the way in %1 min.").arg(minutes(constant)));
}

} // namespace ullage::app
