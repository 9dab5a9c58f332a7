// What happens to a thing of the cupboard: opened, taken from, counted, thrown away; and taking out
// of the book what was entered by mistake.
#pragma once

#include "app/cupboard/cupboard_actions.h"
#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

class ItemDeedDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `items`: at least one, of one kind; where there are more it is asked which. `deed` is one of
    /// Open, Take, Count, ThrowAway and Withdraw.
    ItemDeedDialog(CupboardAction deed, Door& door, std::vector<ledger::ItemHere> items,
                   QWidget* parent = nullptr);

    [[nodiscard]] QuantityEdit* amount() const { return m_amount; }

protected:
    Result<void> act() override;

private:
    void addWhich();
    void addAmount(const QString& label);
    void addBatch();
    [[nodiscard]] const ledger::ItemHere& item() const;
    [[nodiscard]] QString unit() const;
    [[nodiscard]] Result<void> withdraw();

    CupboardAction m_deed;
    std::vector<ledger::ItemHere> m_items;
    QComboBox* m_which = nullptr;
    QuantityEdit* m_amount = nullptr;
    QComboBox* m_batch = nullptr;
    QLineEdit* m_why = nullptr;
};

} // namespace ullage::app
