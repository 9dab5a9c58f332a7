// Puts things into the cupboard, or gives one anew with other figures.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QLabel;
class QLineEdit;

namespace ullage::app
{

class ItemForm;

/// A code that is typed or scanned fills the form where it was taught; a new one is taught in the
/// same action. Return in its field only reads it, since scanners end with it.
class AddItemDialog : public DeedDialog
{
    Q_OBJECT

public:
    AddItemDialog(Door& door, const ledger::CupboardState& state, QWidget* parent = nullptr);
    /// Of what stands there: its line is given anew.
    AddItemDialog(Door& door, const ledger::CupboardState& state, const ledger::ItemHere& here,
                  QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit* code() const { return m_code; }
    [[nodiscard]] ItemForm* item() const { return m_item; }
    /// The first of what was entered; empty before.
    [[nodiscard]] QString entered() const { return m_entered; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool restIsFine() override;
    Result<void> act() override;

private:
    void build();
    void readCode();
    [[nodiscard]] const ledger::Barcode* known() const;
    bool fillBy(const ledger::Barcode& code);

    ledger::CupboardState m_state;
    std::string m_replaces; ///< line that is given anew; empty for a new one
    QLineEdit* m_code;
    QLabel* m_says = nullptr;
    bool m_codeFills = false; ///< it is known and what it stands for is
    ItemForm* m_item;
    QString m_entered;
};

} // namespace ullage::app
