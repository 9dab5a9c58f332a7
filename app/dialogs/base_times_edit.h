// Leaflet times: one or more of "so long at such a temperature".
#pragma once

#include "app/widgets/quantity_edit.h"
#include "core/formulary/leaflet_time.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

/// Times of 10 s to 4 h at 5 to 60 °C, as chemistry::baseTime() allows. Whether two stand at one
/// temperature is not looked at.
class BaseTimesEdit : public QWidget
{
    Q_OBJECT

public:
    /// Times that need not be typed, as the notebook holds them.
    struct Known {
        QString name;   ///< "Quay 400 · EI 800 · 1+1"
        QString source; ///< where they are from; may be empty
        std::vector<chemistry::TimeAtTemperature> pairs;
        QString dilution; ///< as the notebook has it; may be empty
        formulary::FilmWanted film{};
    };

    explicit BaseTimesEdit(const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    /// Offers these above the rows; none hides the choice. What stands in the rows stays, and if it
    /// is what one of them says, that one is shown as chosen.
    void setKnown(std::vector<Known> known);
    [[nodiscard]] const std::vector<Known>& known() const { return m_known; }
    /// The one chosen; null once something else is typed. Good until setKnown().
    [[nodiscard]] const Known* chosen() const;

    /// One row without a time if there are none. Emits changed().
    void setPairs(const std::vector<chemistry::TimeAtTemperature>& pairs);
    /// The rows with both figures.
    [[nodiscard]] std::vector<chemistry::TimeAtTemperature> pairs() const;
    /// What is wrong with the first wrong row; a row without a time is not wrong.
    [[nodiscard]] QString problem() const;

signals:
    void changed();
    /// One of the known times was picked; its pairs stand in the rows.
    void knownTaken();

private:
    struct Row {
        QWidget* line;
        QuantityField<chemistry::Seconds>* time;
        QuantityField<chemistry::Celsius>* temperature;
    };
    void addRow(const std::optional<chemistry::TimeAtTemperature>& pair);
    void take(int choice);
    void showChosen();

    Wording m_wording;
    QComboBox* m_choice;
    std::vector<Known> m_known;
    std::vector<Row> m_rows;
    QVBoxLayout* m_lines;
};

} // namespace ullage::app
