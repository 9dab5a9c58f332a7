#include "app/window/salvage_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/window/copy_words.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

SalvageDialog::SalvageDialog(const store::Salvaged& done, const QString& fresh,
                             const Wording& wording, QWidget* parent)
    : QDialog(parent)
{
    setWindowTitle(tr("Salvaged"));
    QVBoxLayout* whole = dialogColumn(*this);
    auto* heading = new PlainLabel(tr("Salvaged"), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);
    const auto add = [&](const QString& text, Tone tone) {
        auto* label = new PlainLabel(text, this);
        label->setWordWrap(true);
        setTone(label, tone);
        whole->addWidget(label);
    };
    add(salvagedText(done), Tone::Ink);
    add(tr("The new book is %1; the damaged one is as it was.")
            .arg(QDir::toNativeSeparators(fresh)),
        Tone::Quiet);
    const QStringList lines = missingLines(done, wording);
    if (!lines.isEmpty()) {
        auto* list = new QListWidget(this);
        list->setAccessibleName(tr("What is missing"));
        list->setWordWrap(true);
        list->setMinimumHeight(200);
        list->addItems(lines);
        whole->addWidget(list, 1);
    }
    auto* buttons = new QDialogButtonBox(this);
    auto* open = buttons->addButton(tr("&Open the new book"), QDialogButtonBox::AcceptRole);
    setButtonLook(open, ButtonLook::Primary);
    buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    open->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    resize(600, lines.isEmpty() ? 220 : 460);
    open->setFocus();
}

} // namespace ullage::app
