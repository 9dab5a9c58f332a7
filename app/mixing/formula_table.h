// What to weigh from raw chemicals: the formula scaled to the batch, for the hydrates at hand.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/formula.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;

namespace ullage::app
{

class FormulaTable : public QWidget
{
    Q_OBJECT

public:
    explicit FormulaTable(const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    /// A row a chemical, in the order of addition; the forms at hand are those of the formula.
    void setFormula(const chemistry::Formula& formula);
    void setMakes(chemistry::Millilitres makes);

    /// As it is to be weighed: scaled, in the forms at hand.
    [[nodiscard]] chemistry::Formula formula() const;
    /// The choice of forms of a row; null where a chemical has only one.
    [[nodiscard]] QComboBox* inFormula(int row) const;
    [[nodiscard]] QComboBox* atHand(int row) const;
    [[nodiscard]] QString weighed(int row) const;

signals:
    void changed();

private:
    struct Row {
        QLabel* name;
        QComboBox* inFormula; ///< null, as atHand, for a chemical of one form
        QComboBox* atHand;
        QLabel* weighed;
    };

    QComboBox* addForms(std::string_view salt, std::string_view chosen, int row, int column);
    void retranslate();
    void showAmounts();

    Wording m_wording;
    chemistry::Formula m_formula;
    chemistry::Millilitres m_makes;
    QGridLayout* m_grid;
    std::vector<QLabel*> m_headings;
    std::vector<Row> m_rows;
};

} // namespace ullage::app
