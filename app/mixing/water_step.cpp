#include "app/mixing/water_step.h"

#include "app/mixing/blend_bar.h"
#include "app/mixing/mixing_figures.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QGridLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

using chemistry::Celsius;

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
        auto* label = new PlainLabel(parent);
        label->setBuddy(edit);
        setTone(label, Tone::Quiet);
        labels.emplace_back(label, edit);
        grid->addWidget(label, 0, column);
        grid->addWidget(edit, 1, column);
        grid->setColumnStretch(column++, 1);
    }
    return grid;
}

} // namespace

WaterStep::WaterStep(BathClockBox::Now now, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_headline(new PlainLabel(this)),
      m_note(new PlainLabel(this)), m_orBath(new PlainLabel(this)),
      m_hot(new QuantityField<Celsius>(QuantityKind::Temperature, tr("Hot water"), wording, this)),
      m_cold(
          new QuantityField<Celsius>(QuantityKind::Temperature, tr("Cold water"), wording, this)),
      m_wanted(new QuantityField<Celsius>(QuantityKind::Temperature, tr("Wanted"), wording, this)),
      m_bar(new BlendBar(this)), m_clock(new BathClockBox(std::move(now), wording, this))
{
    m_headline->setFont(Theme::font(TextRole::Hero));
    m_headline->setMinimumWidth(1); // fitHeadline() sees to the rest
    m_note->setWordWrap(true);
    setTone(m_note, Tone::Quiet);
    for (QuantityEdit* edit : {m_hot, m_cold, m_wanted}) {
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
    column->addWidget(m_clock, 1);
    for (QuantityEdit* edit : {m_hot, m_cold, m_wanted})
        connect(edit, &QuantityEdit::valueChanged, this, &WaterStep::showBlend);
    connect(m_wanted, &QuantityEdit::valueChanged, this,
            [this] { m_clock->setWanted(m_wanted->quantity()); });
    retranslate();
}

void WaterStep::setWording(const Wording& wording)
{
    m_wording = wording;
    for (const auto& [label, edit] : m_labels)
        edit->setWording(wording);
    m_clock->setWording(wording);
    retranslate();
}

void WaterStep::retranslate()
{
    const QString words[] = {tr("Hot water"), tr("Cold water"), tr("Wanted")};
    for (std::size_t i = 0; i < m_labels.size(); ++i) {
        m_labels[i].first->setText(words[i]);
        m_labels[i].second->setName(words[i]);
    }
    m_orBath->setText(tr("or warm it in a bath"));
    if (!m_plan.isComplete())
        return;
    showNote();
    showBlend();
}

void WaterStep::showNote()
{
    const auto start = m_plan.start();
    m_note->setText(start ? startNote(m_plan, *start, m_wording) : QString());
}

void WaterStep::setPlan(const MixingPlan& plan)
{
    m_plan = plan;
    if (!plan.isComplete())
        return;
    const auto start = plan.start();
    m_start = start ? start->advised : plan.makes;
    showNote();
    const UsualWater usual = usualWater(plan.solution->role, plan.liquid.has_value());
    m_hot->setValue(kUsualHot);
    m_cold->setValue(kUsualCold);
    m_wanted->setQuantity(usual.start);
    m_clock->setWanted(usual.start);
    m_clock->begin(m_start, Celsius(kUsualRoom), Celsius(usual.start.value() + kBathAbove));
    showBlend();
}

// The figure whole, in the largest type that it has room for.
void WaterStep::fitHeadline()
{
    QFont font = Theme::font(TextRole::Hero);
    for (const int pixels : {font.pixelSize(), 38, 30, 24}) {
        font.setPixelSize(pixels);
        if (QFontMetricsF(font).horizontalAdvance(m_headline->text()) <= width())
            break;
    }
    m_headline->setFont(font);
}

void WaterStep::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitHeadline();
}

QString WaterStep::headline() const { return m_headline->text(); }

std::vector<Explanation> WaterStep::figures() const
{
    auto all = waterFigures(
        m_plan, {m_start, m_hot->quantity(), m_cold->quantity(), m_wanted->quantity()}, m_wording);
    if (const auto clock = m_clock->figure())
        all.push_back(*clock);
    return all;
}

Celsius WaterStep::filledUp() const
{
    const double share = std::min(1.0, m_start / m_plan.makes);
    const double warm = m_wanted->value().value_or(kUsualRoom);
    const double cold = m_cold->value().value_or(kUsualCold);
    return Celsius(share * warm + (1 - share) * cold);
}

void WaterStep::showBlend()
{
    const auto hot = m_hot->quantity();
    const auto cold = m_cold->quantity();
    const auto wanted = m_wanted->quantity();
    m_headline->setText(
        wanted ? tr("%1 at %2", "volume, temperature")
                     .arg(volumeText(m_start, m_wording), shortTemperatureText(*wanted, m_wording))
               : volumeText(m_start, m_wording));
    fitHeadline();
    if (!hot || !cold || !wanted) {
        m_bar->setBlend(std::nullopt, m_wording, tr("three temperatures are needed"));
        return;
    }
    const auto blend = chemistry::blend(m_start, *wanted, *hot, *cold);
    m_bar->setBlend(blend ? std::optional(*blend) : std::nullopt, m_wording,
                    tr("%1 is not between the cold and the hot water")
                        .arg(shortTemperatureText(*wanted, m_wording)));
}

} // namespace ullage::app
