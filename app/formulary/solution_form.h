// The fields of a solution: every figure with its unit and, beside it, where it is from.
#pragma once

#include "app/words/units.h"
#include "core/formulary/figures.h"

#include <QWidget>

#include <map>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace ullage::app
{

class DaysEdit;
class QuantityEdit;
class SolutionKind;
class SourceEdit;

/// Ranges are those of formulary::bounds(). Fields of the line that have no place here (chemicals)
/// are kept as they were set.
class SolutionForm : public QWidget
{
    Q_OBJECT

public:
    explicit SolutionForm(const Wording& wording, QWidget* parent = nullptr);

    /// Shows it; fields that are not touched keep their exact values, sources of figures that have
    /// no field are kept too.
    void setSolution(const formulary::Solution& solution);
    /// What stands in the fields, with `id` and `replaces` as they were set, unchecked: a figure
    /// that cannot be read is left out, or is its default where there must be one.
    [[nodiscard]] formulary::Solution solution() const;

    /// The first thing wrong, as a sentence; empty if core's own check passes. `id` is not looked
    /// at. Marks the field it is about. Sources are looked at last (SourceEdit::problem()).
    QString showProblem();

    [[nodiscard]] QLineEdit* name() const { return m_name; }
    /// How it comes and is used, and what replenishes it.
    [[nodiscard]] SolutionKind* kind() const { return m_kind; }
    /// The field of any figure; of a bottle's keeping time that of its number.
    [[nodiscard]] QuantityEdit* figure(formulary::Figure figure) const;
    /// Null for what is no bottle's keeping time.
    [[nodiscard]] DaysEdit* days(formulary::Figure figure) const;
    /// The source under a key of Solution::sources that has a field; throws std::out_of_range for
    /// another.
    [[nodiscard]] SourceEdit* source(const std::string& key) const;

signals:
    /// The user changed something; not told by setSolution().
    void changed();

private:
    struct Row {
        formulary::Figure figure;
        QuantityEdit* quantity = nullptr; ///< either this
        DaysEdit* days = nullptr;         ///< or this
    };

    SourceEdit* addSource(QGridLayout* grid, int row, const std::string& key, const QString& name);
    QLabel* addProblem(QGridLayout* grid, int row, const std::string& field);
    void addFigure(QGridLayout* grid, int& row, formulary::Figure figure);
    void addWear(QGridLayout* grid, int& row);
    void showWearFields();
    [[nodiscard]] chemistry::Wear wear() const;
    [[nodiscard]] QString fieldProblem(std::string& field) const;
    [[nodiscard]] QString sourceProblem(std::string& field) const;

    Wording m_wording;
    formulary::Solution m_start;
    QLineEdit* m_name;
    QComboBox* m_role;
    SolutionKind* m_kind;
    QComboBox* m_rule = nullptr;
    QuantityEdit* m_percent = nullptr;
    QLineEdit* m_steps = nullptr;
    std::vector<Row> m_rows;
    QLineEdit* m_composition;
    std::map<std::string, SourceEdit*> m_sources;
    std::map<std::string, QLabel*> m_problems;
};

/// "5: 1.15; 10: 1.3" (films per litre: factor, in the user's way of writing numbers) to steps and
/// back. Nothing for words of another form; ranges and order are not looked at. The words round, to
/// two and three decimals.
std::optional<std::vector<chemistry::WearStep>> readSteps(const QString& text,
                                                          const Wording& wording);
QString stepsText(const std::vector<chemistry::WearStep>& steps, const Wording& wording);

} // namespace ullage::app
