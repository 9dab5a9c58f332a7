// The end of mixing: what was logged, and when a warm bottle is cool enough to use.
#pragma once

#include "app/mixing/bath_clock_box.h"

class QComboBox;

namespace ullage::app
{

class CoolStep : public QWidget
{
    Q_OBJECT

public:
    CoolStep(BathClockBox::Now now, const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    void setWords(const QString& heading, const QString& words);
    /// The batch as it was filled up. One that is no warmer than it is used needs no clock.
    void begin(chemistry::Millilitres volume, chemistry::Celsius bottle);

    [[nodiscard]] QWidget* clock() const { return m_cooling; }
    [[nodiscard]] BathClockBox* box() const { return m_box; }
    [[nodiscard]] QComboBox* surroundings() const { return m_where; }
    [[nodiscard]] QuantityEdit* wanted() const { return m_wanted; }

private:
    void retranslate();

    QLabel* m_heading;
    QLabel* m_words;
    QWidget* m_cooling;
    QLabel* m_coolHeading;
    QLabel* m_whereLabel;
    QComboBox* m_where;
    QLabel* m_wantedLabel;
    QuantityEdit* m_wanted;
    BathClockBox* m_box;
};

} // namespace ullage::app
