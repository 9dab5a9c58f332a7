// Third step of mixing: so much water, so warm; from hot and cold, or warmed in a bath.
#pragma once

#include "app/mixing/mixing_plan.h"

#include <QWidget>

#include <functional>
#include <vector>

class QLabel;
class QPushButton;

namespace ullage::app
{

class BlendBar;
class ChartView;
class QuantityEdit;

class WaterStep : public QWidget
{
    Q_OBJECT

public:
    using Now = std::function<chemistry::Instant()>;

    WaterStep(Now now, const Wording& wording, QWidget* parent = nullptr);

    /// The language or the units changed; what is typed and read stays.
    void setWording(const Wording& wording);
    /// Begins anew with the water usual for the plan.
    void setPlan(const MixingPlan& plan);
    [[nodiscard]] const MixingPlan& plan() const { return m_plan; }
    /// One's own thermometer: the bottle as it is now. From the second on, the readings replace the
    /// usual time constant.
    void addReading();

    [[nodiscard]] QuantityEdit* hot() const { return m_hot; }
    [[nodiscard]] QuantityEdit* cold() const { return m_cold; }
    [[nodiscard]] QuantityEdit* wanted() const { return m_wanted; }
    [[nodiscard]] QuantityEdit* bottle() const { return m_bottle; }
    [[nodiscard]] QuantityEdit* bath() const { return m_bath; }
    [[nodiscard]] BlendBar* bar() const { return m_bar; }
    [[nodiscard]] ChartView* chart() const { return m_chart; }
    [[nodiscard]] QString readingText() const;
    /// "500 ml at 40 °C".
    [[nodiscard]] QString headline() const;

private:
    struct Reading {
        chemistry::Instant at;
        chemistry::Celsius temperature;
    };

    void retranslate();
    void showNote();
    void showBlend();
    void showBath();
    [[nodiscard]] chemistry::Seconds timeConstantNow() const;

    Now m_now;
    Wording m_wording;
    MixingPlan m_plan;
    chemistry::Millilitres m_start;
    QLabel* m_headline;
    QLabel* m_note;
    QLabel* m_orBath;
    std::vector<std::pair<QLabel*, QuantityEdit*>> m_labels; ///< of the fields, in reading order
    QuantityEdit* m_hot;
    QuantityEdit* m_cold;
    QuantityEdit* m_wanted;
    BlendBar* m_bar;
    QuantityEdit* m_bottle;
    QuantityEdit* m_bath;
    ChartView* m_chart;
    QLabel* m_reading;
    QPushButton* m_add;
    std::vector<Reading> m_readings;
};

} // namespace ullage::app
