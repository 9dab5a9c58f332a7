// What is asked of a thing that comes into the cupboard, by its kind.
#pragma once

#include "app/dialogs/field_form.h"
#include "app/session/door.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

class CountBox;
class MomentField;

enum class ShelvedKind { Powder, Concentrate, Chemical, Supply };

class ItemForm : public FieldForm
{
    Q_OBJECT

public:
    /// `state` is the cupboard as it is now: what was bought last is offered again.
    ItemForm(Door& door, const ledger::CupboardState& state, QWidget* parent = nullptr);

    [[nodiscard]] ShelvedKind kind() const;
    void setKind(ShelvedKind kind);
    /// Shows a line to be given anew, or one of the same kind to be bought again.
    void setLine(const ledger::ItemLine& line, bool again);
    /// Of packets and concentrates; nothing for one that the formulary has not.
    void setSolution(const std::string& solution);
    /// What one of them holds, in its own unit: ml of a concentrate, g, or a supply's.
    void setAmount(double amount);
    /// How many are entered at once.
    [[nodiscard]] int count() const;
    void hideCount();
    /// What stands in the fields, without an id.
    [[nodiscard]] ledger::ItemLine line() const;
    /// Of what a code on it stands for: the solution's id; empty for what has none.
    [[nodiscard]] std::string solution() const;
    [[nodiscard]] std::optional<double> amount() const;
    /// Beyond figures: says under a field what is wrong.
    bool restIsFine();
    /// Where the keyboard goes once a code was read.
    [[nodiscard]] QWidget* countField() const;

signals:
    void kindChanged();

private:
    void showKind();
    void offerLast();
    MomentField* addDay(const formulary::FieldDescription& is, const QString& label);
    [[nodiscard]] std::optional<ledger::Decimal> cost() const;
    template <class Line>
    void take(Line& line) const;
    template <class Line>
    void show(const Line& line, bool again);

    Door& m_door;
    const ledger::CupboardState m_state;
    QComboBox* m_kind;
    QComboBox* m_solution;
    QLineEdit* m_name = nullptr;
    QLineEdit* m_cas = nullptr;
    QLineEdit* m_hazards = nullptr;
    QLineEdit* m_unit = nullptr;
    QuantityField<chemistry::Millilitres>* m_volume = nullptr;
    QuantityField<chemistry::Millilitres>* m_makes = nullptr;
    QuantityField<chemistry::Days>* m_keepsOpened = nullptr;
    QuantityEdit* m_grams = nullptr;
    QuantityEdit* m_amount = nullptr;
    CountBox* m_count;
    MomentField* m_useBy = nullptr;
    MomentField* m_bought = nullptr;
    QLineEdit* m_lot = nullptr;
    QLineEdit* m_cost = nullptr;
    QLineEdit* m_currency = nullptr;
    QLineEdit* m_place = nullptr;
    bool m_countHidden = false;
};

} // namespace ullage::app
