#include "app/cupboard/code_dialog.h"

#include "app/cupboard/cupboard_words.h"
#include "app/widgets/plain_text.h"
#include "core/cupboard/barcode.h"
#include "core/formulary/field_of.h"
#include "core/ledger/entry_fields.h"

#include <QLineEdit>

namespace ullage::app
{

CodeDialog::CodeDialog(Door& door, const ledger::CupboardState& state, const ledger::ItemHere& here,
                       QWidget* parent)
    : DeedDialog(door, tr("A code on the packet"), parent), m_known(state.barcodes), m_item(here),
      m_code(new QLineEdit(this))
{
    m_code->setMaxLength(static_cast<int>(formulary::fieldOf(&ledger::Barcode::code).longest));
    addRow(QStringLiteral("code"),
           tr("This &code is for %1")
               .arg(plainCaption(itemName(here.item, *door.formulary(), door.wording()))),
           m_code);
    addText(tr(
        "Typed, or from a scanner that types. The next time it fills in the form for what is added "
        "to the cupboard. A code that stood for something else stands for this from now on."));
    setDeed(tr("Save"));
    m_code->setFocus();
}

bool CodeDialog::restIsFine()
{
    const std::string code = m_code->text().toStdString();
    if (cupboard::bareCode(code).empty()) {
        showProblem(QStringLiteral("code"), tr("Code: a code is needed."));
        return false;
    }
    if (cupboard::formOf(code) == cupboard::CodeForm::WrongDigit) {
        showProblem(QStringLiteral("code"), tr("Code: the last digit of “%1” does not agree with "
                                               "the others. It was read or typed wrong.")
                                                .arg(m_code->text().trimmed()));
        return false;
    }
    return true;
}

Result<void> CodeDialog::act()
{
    ledger::Barcode taught;
    taught.id = door().newId();
    taught.code = cupboard::bareCode(m_code->text().toStdString());
    taught.of = m_item.item.solution.empty() ? m_item.item.id : m_item.item.solution;
    taught.amount = m_item.item.bought;
    if (taught.amount && *taught.amount <= 0)
        taught.amount.reset();
    if (const ledger::Barcode* before = cupboard::kindOf(m_known, taught.code))
        taught.replaces = before->id;
    return door().add(std::vector<ledger::CupboardLine>{std::move(taught)}).map([](auto&&) {});
}

} // namespace ullage::app
