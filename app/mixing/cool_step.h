// The end of mixing: what was logged, and when a warm bottle is cool enough to use.
#pragma once

#include "app/mixing/bath_clock_box.h"
#include "app/widgets/quantity_edit.h"

class QLabel;
class QComboBox;

namespace ullage::app
{

/// A bath is taken to be used at 20 °C, and to stand in water of 18 °C or a room of 19 °C; all are
/// edited (common practice, no source).
class CoolStep : public QWidget
{
    Q_OBJECT

public:
    CoolStep(BathClockBox::Now now, const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    void setWords(const QString& heading, const QString& words);
    /// The batch as it was filled up. One of 22 °C or less needs no clock: it is hidden.
    void begin(chemistry::Millilitres volume, chemistry::Celsius bottle);

    /// Everything about cooling, the box among it.
    [[nodiscard]] QWidget* clock() const { return m_cooling; }
    [[nodiscard]] BathClockBox* box() const { return m_box; }
    /// In the order of chemistry::Surroundings.
    [[nodiscard]] QComboBox* surroundings() const { return m_where; }
    /// 0 to 100 °C, required.
    [[nodiscard]] QuantityField<chemistry::Celsius>* wanted() const { return m_wanted; }

private:
    void retranslate();

    QLabel* m_heading;
    QLabel* m_words;
    QWidget* m_cooling;
    QLabel* m_coolHeading;
    QLabel* m_whereLabel;
    QComboBox* m_where;
    QLabel* m_wantedLabel;
    QuantityField<chemistry::Celsius>* m_wanted;
    BathClockBox* m_box;
};

} // namespace ullage::app
