#include "app/window/about_dialog.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

AboutDialog::AboutDialog(QWidget* parent) : QDialog(parent)
{
    setWindowTitle(tr("About Ullage"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(Space::kPage, Space::kPage, Space::kPage, Space::kPage);
    whole->setSpacing(Space::kGap);
    const QString version = QCoreApplication::applicationVersion();
    auto* name = new PlainLabel(
        version.isEmpty() ? QStringLiteral("Ullage") : QStringLiteral("Ullage ") + version, this);
    name->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(name);
    auto* words = new PlainLabel(
        tr("Keeps account of darkroom chemistry: what is left in every bottle, how "
           "long the next film takes, and when a bottle has to go.\n\nFree software under the GNU "
           "General Public License, version 3 or later. It comes without any warranty.\n\nThe "
           "packet, its safety data sheet and your local rules come before anything this program "
           "says."),
        this);
    words->setWordWrap(true);
    whole->addWidget(words);

    auto* buttons = new QDialogButtonBox(this);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    close->setDefault(true);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    constexpr int kWidth = 480;
    setFixedSize(kWidth, whole->totalHeightForWidth(kWidth)); // all of its words, in any language
    close->setFocus();
}

} // namespace ullage::app
