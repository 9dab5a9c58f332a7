// Third step of mixing: so much water, so warm; from hot and cold, or warmed in a bath.
#pragma once

#include "app/mixing/bath_clock_box.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/explanation.h"

class QLabel;

namespace ullage::app
{

class BlendBar;

/// Nothing here is logged; every field is 0 to 100 °C and required.
class WaterStep : public QWidget
{
    Q_OBJECT

public:
    WaterStep(BathClockBox::Now now, const Wording& wording, QWidget* parent = nullptr);

    /// The language or the units changed; what is typed and read stays.
    void setWording(const Wording& wording);
    /// Begins anew with the water usual for the plan: hot 60, cold 15, a bottle of 20 °C in a bath
    /// 2 °C warmer than wanted (all common practice, no source). An incomplete plan is only kept.
    void setPlan(const MixingPlan& plan);
    [[nodiscard]] const MixingPlan& plan() const { return m_plan; }
    [[nodiscard]] QuantityField<chemistry::Celsius>* hot() const { return m_hot; }
    [[nodiscard]] QuantityField<chemistry::Celsius>* cold() const { return m_cold; }
    [[nodiscard]] QuantityField<chemistry::Celsius>* wanted() const { return m_wanted; }
    [[nodiscard]] BathClockBox* clock() const { return m_clock; }
    [[nodiscard]] BlendBar* bar() const { return m_bar; }
    /// What the bottle will be at when it is filled up with the cold water: the mean by volume,
    /// without what the powder adds or dissolving takes. A field that cannot be read counts as 20
    /// or 15 °C.
    [[nodiscard]] chemistry::Celsius filledUp() const;
    /// Where these figures are from.
    [[nodiscard]] std::vector<Explanation> figures() const;
    /// "500 ml at 40 °C".
    [[nodiscard]] QString headline() const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitHeadline();
    void retranslate();
    void showNote();
    void showBlend();

    Wording m_wording;
    MixingPlan m_plan;
    chemistry::Millilitres m_start;
    QLabel* m_headline;
    QLabel* m_note;
    QLabel* m_orBath;
    std::vector<std::pair<QLabel*, QuantityEdit*>> m_labels; ///< of the fields, in reading order
    QuantityField<chemistry::Celsius>* m_hot;
    QuantityField<chemistry::Celsius>* m_cold;
    QuantityField<chemistry::Celsius>* m_wanted;
    BlendBar* m_bar;
    BathClockBox* m_clock;
};

} // namespace ullage::app
