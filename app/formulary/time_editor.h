// Makes an entry of the development-time notebook, in place of another or new.
#pragma once

#include "app/session/door.h"
#include "app/widgets/form_dialog.h"
#include "app/widgets/quantity_edit.h"

#include <vector>

class QComboBox;
class QGridLayout;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace ullage::app
{

class ChartView;
class SourceEdit;

/// Up to 20 times of 10 s to 4 h at 5 to 60 °C. Only developers that none replaced are offered.
class TimeEditor : public FormDialog
{
    Q_OBJECT

public:
    /// `start` with an id is edited: what is saved replaces it. `formulary` is read only while the
    /// editor is made.
    TimeEditor(const formulary::DevelopmentFigure& start, const formulary::Formulary& formulary,
               Door& door, const Wording& wording, QWidget* parent = nullptr);

    /// What stands in the fields, without an id. Pairs that lack one of the two are left out.
    [[nodiscard]] formulary::DevelopmentFigure figure() const;
    /// The first thing wrong, as a sentence; empty if core's check passes and the source is well.
    [[nodiscard]] QString problem() const;

    [[nodiscard]] QLineEdit* film() const { return m_film; }
    [[nodiscard]] QComboBox* developer() const { return m_developer; }
    [[nodiscard]] QLineEdit* dilution() const { return m_dilution; }
    [[nodiscard]] SourceEdit* source() const { return m_source; }
    /// Temperature and time of a pair, from 0; there are three at the least.
    [[nodiscard]] QuantityEdit* temperature(int pair) const;
    [[nodiscard]] QuantityEdit* time(int pair) const;
    [[nodiscard]] QPushButton* saveButton() const { return deedButton(); }
    /// Id of what was saved; empty before.
    [[nodiscard]] QString saved() const { return m_saved; }

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;
    void showError(const Error& error) override;

private:
    struct Pair {
        QuantityField<chemistry::Celsius>* temperature;
        QuantityField<chemistry::Seconds>* time;
    };

    void fillDevelopers(const formulary::Formulary& formulary, const std::string& chosen);
    void addPair();
    void setPairs(const std::vector<chemistry::TimeAtTemperature>& times);
    void showState();

    std::string m_replaces;
    Door* m_door;
    QLineEdit* m_film;
    QComboBox* m_developer;
    QLineEdit* m_dilution;
    QuantityEdit* m_index;
    QGridLayout* m_grid;
    std::vector<Pair> m_pairs;
    QPushButton* m_more;
    SourceEdit* m_source;
    QPlainTextEdit* m_notes;
    ChartView* m_chart;
    std::vector<double> m_q10; ///< of the developers, in the order of their box
    QString m_saved;
};

} // namespace ullage::app
