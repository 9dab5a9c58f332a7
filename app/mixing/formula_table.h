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

/// Where there is no room for all beside one another the forms stand below each salt.
/// For each salt of saltForms() the user may say which form the formula means and which is at hand;
/// other chemicals are only scaled.
class FormulaTable : public QWidget
{
    Q_OBJECT

public:
    explicit FormulaTable(const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    /// A row a chemical, in the order of addition; the forms at hand are those of the formula, and
    /// it makes as much as the formula. Does not emit changed().
    void setFormula(const chemistry::Formula& formula);
    /// The batch; at 0 the weights shown before stay. Does not emit changed().
    void setMakes(chemistry::Millilitres makes);

    /// This form of a row's chemical is at hand; without effect where it has no such form. Does not
    /// emit changed().
    void setAtHand(int row, std::string_view form);

    /// As it is to be weighed: scaled, in the forms at hand, not rounded. Liquids are only scaled.
    [[nodiscard]] chemistry::Formula formula() const;
    /// The choice of forms of a row; null where a chemical has only one.
    [[nodiscard]] QComboBox* inFormula(int row) const;
    [[nodiscard]] QComboBox* atHand(int row) const;
    /// The amount of a row with its unit, rounded to be weighed.
    [[nodiscard]] QString weighed(int row) const;

    /// As narrow as it is with the forms below.
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// The user chose another form.
    void changed();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Row {
        QLabel* name;
        QComboBox* inFormula; ///< null, as atHand, for a chemical of one form
        QComboBox* atHand;
        QLabel* weighed;
        QLabel* meansWords; ///< before the forms where they stand below; null as these
        QLabel* handWords;
    };

    QComboBox* addForms(std::string_view salt, std::string_view chosen);
    QLabel* addWords(QComboBox* buddy);
    void layOut(bool below);
    [[nodiscard]] int widthAbreast() const;
    void retranslate();
    void showAmounts();

    Wording m_wording;
    chemistry::Formula m_formula;
    chemistry::Millilitres m_makes;
    QGridLayout* m_grid;
    std::vector<QLabel*> m_headings;
    std::vector<Row> m_rows;
    bool m_below = false; ///< the forms stand below
};

} // namespace ullage::app
