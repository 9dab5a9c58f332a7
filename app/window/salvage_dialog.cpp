#include "app/window/salvage_dialog.h"

#include "app/widgets/theme.h"
#include "app/window/copy_words.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QPushButton>

namespace ullage::app
{

SalvageDialog::SalvageDialog(const store::Salvaged& done, const QString& fresh,
                             chemistry::Instant now, const Wording& wording, QWidget* parent)
    : ListingDialog(tr("Salvaged"), tr("Salvaged"), parent)
{
    addSentence(salvagedText(done), Tone::Ink);
    addSentence(tr("The new book is %1; the damaged one is as it was.")
                    .arg(QDir::toNativeSeparators(fresh)),
                Tone::Quiet);
    const QStringList lines = missingLines(done, now, wording);
    addList(tr("What is missing"), lines);
    addDetails(missingDetails(done, wording));
    QDialogButtonBox* buttons = addButtons();
    auto* open = buttons->addButton(tr("&Open the new book"), QDialogButtonBox::AcceptRole);
    setButtonLook(open, ButtonLook::Primary);
    buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    open->setDefault(true);
    resize(600, lines.isEmpty() ? 220 : 460);
    open->setFocus();
}

} // namespace ullage::app
