// Of a solution, what is no figure with a range of models behind it: how it comes, what kind of
// fixer it is, how it is used and what it is replenished with.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QWidget>

#include "app/widgets/quantity_edit.h"
#include "app/words/units.h"
#include "core/formulary/solution.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;

namespace ullage::app
{

class SourceEdit;

class SolutionKind : public QWidget
{
    Q_OBJECT

public:
    explicit SolutionKind(const Wording& wording, QWidget* parent = nullptr);

    /// Solutions that it can be replenished with, by id and name.
    void setOthers(const std::vector<std::pair<std::string, std::string>>& others);
    void setSolution(const formulary::Solution& solution);
    /// Fields are for this role from now on; what it has no use for is hidden and left out.
    void setRole(formulary::Role role);
    /// Writes what stands in the fields; a figure that cannot be read is left out.
    void put(formulary::Solution& solution) const;

    /// The first thing wrong with a field or its source, in words, and the field as the journal
    /// spells it; empty if nothing is.
    [[nodiscard]] QString problem(std::string& field) const;
    /// Below its field, and below no other; for a field of another form none.
    void showProblem(const std::string& field, const QString& problem);

    [[nodiscard]] QComboBox* form() const { return m_form; }
    [[nodiscard]] QComboBox* replenisher() const { return m_replenisher; }

signals:
    void changed();

private:
    struct Row {
        std::string field;
        QLabel* label = nullptr;
        QWidget* edit = nullptr;
        SourceEdit* source = nullptr; ///< null where the field is no figure
        QLabel* problem = nullptr;
    };

    void addRow(const std::string& field, const QString& name, QWidget* edit, bool sourced);
    [[nodiscard]] bool isFor(const std::string& field) const;

    Wording m_wording;
    QGridLayout* m_grid;
    formulary::Role m_role = formulary::Role::Other;
    std::string m_self; ///< the solution that is shown, which cannot replenish itself
    std::vector<std::pair<std::string, std::string>> m_others;
    std::optional<formulary::Form> m_given; ///< as it was set
    std::optional<formulary::FixerKind> m_givenKind;
    QComboBox* m_form;
    QComboBox* m_fixerKind;
    QuantityField<chemistry::Seconds>* m_fixMin;
    QuantityField<chemistry::Millilitres>* m_oneShot;
    QComboBox* m_replenisher;
    QuantityEdit* m_turnovers;
    std::vector<Row> m_rows;
};

} // namespace ullage::app
