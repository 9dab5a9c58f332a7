// Teaches which kind of thing a code stands for.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QLineEdit;

namespace ullage::app
{

class CodeDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `here` is of the kind.
    CodeDialog(Door& door, const ledger::CupboardState& state, const ledger::ItemHere& here,
               QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit* code() const { return m_code; }

protected:
    bool restIsFine() override;
    Result<void> act() override;

private:
    std::vector<ledger::Barcode> m_known;
    ledger::ItemHere m_item;
    QLineEdit* m_code;
};

} // namespace ullage::app
