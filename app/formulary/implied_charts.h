// The two curves that a solution's figures imply: how long it keeps, and how its time grows.
#pragma once

#include "app/words/units.h"
#include "core/formulary/solution.h"

#include <QWidget>

class QAbstractButton;
class QButtonGroup;
class QLabel;

namespace ullage::app
{

class Card;
class ChartView;
struct ChartSpec;

/// What does not wear (wearChart() without series) has the first curve only, and no switch.
class ImpliedCharts : public QWidget
{
    Q_OBJECT

public:
    enum class Curve { Keeping, Wear };

    explicit ImpliedCharts(QWidget* parent = nullptr);

    /// Checked or not: figures that do not pass their check give no curve.
    void setSolution(const formulary::Solution& solution, const Wording& wording);
    /// Both one above the other, else one at a time with a switch.
    void setBoth(bool both);
    void setCurve(Curve curve);
    [[nodiscard]] ChartView* chart(Curve curve) const;

private:
    void arrange();

    struct Shown {
        Card* card;
        ChartView* chart;
        QLabel* note;
    };
    Shown makeShown();
    void fill(Shown& shown, const ChartSpec& spec, const QString& note);

    Shown m_keeping;
    Shown m_wear;
    QWidget* m_switch;
    QButtonGroup* m_buttons;
    bool m_both = false;
};

} // namespace ullage::app
