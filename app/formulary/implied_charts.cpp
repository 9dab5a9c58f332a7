#include "app/formulary/implied_charts.h"

#include "app/charts/chart.h"
#include "app/charts/chart_view.h"
#include "app/formulary/formulary_charts.h"
#include "app/widgets/card.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

ImpliedCharts::ImpliedCharts(QWidget* parent)
    : QWidget(parent), m_keeping(makeShown()), m_wear(makeShown()), m_switch(new QWidget(this)),
      m_buttons(new QButtonGroup(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    column->addWidget(m_keeping.card, 3);
    column->addWidget(m_wear.card, 3);
    auto* row = new QHBoxLayout(m_switch);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    const std::pair<Curve, QString> curves[] = {{Curve::Keeping, tr("Keeping")},
                                                {Curve::Wear, tr("Wear")}};
    for (const auto& [curve, name] : curves) {
        auto* button = new QPushButton(name, m_switch);
        setButtonLook(button, ButtonLook::Chip);
        button->setCheckable(true);
        m_buttons->addButton(button, static_cast<int>(curve));
        row->addWidget(button);
    }
    row->addStretch();
    m_buttons->button(0)->setChecked(true);
    connect(m_buttons, &QButtonGroup::idClicked, this, &ImpliedCharts::arrange);
    arrange();
}

ImpliedCharts::Shown ImpliedCharts::makeShown()
{
    Shown shown{new Card({}, this), makeChartView(), new PlainLabel};
    shown.note->setWordWrap(true);
    shown.note->setFont(Theme::font(TextRole::Small));
    setTone(shown.note, Tone::Quiet);
    shown.chart->setMinimumHeight(210);
    shown.card->body()->addWidget(shown.chart, 1);
    shown.card->body()->addWidget(shown.note);
    return shown;
}

void ImpliedCharts::fill(Shown& shown, const ChartSpec& spec, const QString& note)
{
    shown.card->setTitle(spec.title);
    shown.chart->setChart(spec);
    shown.chart->setVisible(!spec.series.empty());
    shown.note->setText(note.isEmpty() ? spec.summary : note);
    shown.note->setAlignment(spec.series.empty() ? Qt::AlignCenter : Qt::AlignLeft);
    QSizePolicy policy = shown.note->sizePolicy(); // which goes by the width as well
    policy.setVerticalPolicy(spec.series.empty() ? QSizePolicy::Expanding : QSizePolicy::Preferred);
    shown.note->setSizePolicy(policy);
}

void ImpliedCharts::setSolution(const formulary::Solution& solution, const Wording& wording)
{
    fill(m_keeping, keepingChart(solution, wording), keepingCaution(solution));
    const ChartSpec wear = wearChart(solution, wording);
    fill(m_wear, wear, wear.summary);
    arrange();
}

void ImpliedCharts::setBoth(bool both)
{
    if (both == m_both)
        return;
    m_both = both;
    arrange();
}

void ImpliedCharts::setCurve(Curve curve)
{
    m_buttons->button(static_cast<int>(curve))->setChecked(true);
    arrange();
}

ChartView* ImpliedCharts::chart(Curve curve) const
{
    return curve == Curve::Keeping ? m_keeping.chart : m_wear.chart;
}

void ImpliedCharts::arrange()
{
    // What does not wear has one curve, and nothing to switch to.
    const bool wears = !m_wear.chart->chart().series.empty();
    const auto chosen = wears ? static_cast<Curve>(m_buttons->checkedId()) : Curve::Keeping;
    m_switch->setVisible(!m_both && wears);
    m_keeping.card->setVisible(m_both || chosen == Curve::Keeping);
    m_wear.card->setVisible(m_both ? wears : chosen == Curve::Wear);
    // The switch stands in the card that is shown.
    Shown& shown = chosen == Curve::Keeping ? m_keeping : m_wear;
    if (!m_both)
        shown.card->body()->insertWidget(0, m_switch);
}

} // namespace ullage::app
