// A bottle coming to temperature in a bath or in the room: when it is ready, by the usual pace or
// by two readings of one's own thermometer.
#pragma once

#include "app/mixing/mixing_plan.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/explanation.h"

#include <QWidget>

#include <functional>
#include <vector>

class QLabel;
class QPushButton;

namespace ullage::app
{

class ChartView;

/// Both temperatures are 0 to 100 °C and must be there; while one is missing there is no clock, and
/// nothing is drawn.
class BathClockBox : public QWidget
{
    Q_OBJECT

public:
    /// The moment, only to be compared with others of the same clock; see MixingPage.
    using Now = std::function<chemistry::Instant()>;

    BathClockBox(Now now, const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    /// Begins anew, with no reading. `volume` is what the bottle holds; 0 gives no clock.
    void begin(chemistry::Millilitres volume, chemistry::Celsius bottle, chemistry::Celsius around);
    /// Where the bottle is to come to; without it there is no clock.
    void setWanted(std::optional<chemistry::Celsius> wanted);
    /// Other surroundings, another law: readings taken in the old ones are let go, as they are when
    /// the user types another temperature around.
    void setSurroundings(chemistry::Surroundings surroundings);
    /// One's own thermometer: the bottle as it is now. From the second on, the first reading and
    /// the last replace the usual time constant, if they come nearer to what is around.
    void addReading();

    [[nodiscard]] QuantityField<chemistry::Celsius>* bottle() const { return m_bottle; }
    /// The bath's temperature, or the room's.
    [[nodiscard]] QuantityField<chemistry::Celsius>* around() const { return m_around; }
    [[nodiscard]] ChartView* chart() const { return m_chart; }
    /// What it says of the readings taken.
    [[nodiscard]] QString readingText() const;
    /// Where the time is from; empty while a temperature is missing.
    [[nodiscard]] std::optional<Explanation> figure() const;

private:
    struct Reading {
        chemistry::Instant at;
        chemistry::Celsius temperature;
    };

    void retranslate();
    void showClock();
    [[nodiscard]] chemistry::Seconds timeConstantNow() const;
    /// Empty while a temperature is missing.
    [[nodiscard]] std::optional<BathClock> clock() const;

    Now m_now;
    Wording m_wording;
    chemistry::Millilitres m_volume;
    std::optional<chemistry::Celsius> m_wanted;
    chemistry::Surroundings m_surroundings = chemistry::Surroundings::StirredBath;
    QLabel* m_bottleLabel;
    QuantityField<chemistry::Celsius>* m_bottle;
    QLabel* m_aroundLabel;
    QuantityField<chemistry::Celsius>* m_around;
    ChartView* m_chart;
    QLabel* m_reading;
    QPushButton* m_add;
    std::vector<Reading> m_readings;
};

} // namespace ullage::app
