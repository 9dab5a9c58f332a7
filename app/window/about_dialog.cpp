#include "app/window/about_dialog.h"

#include "app/widgets/card.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
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
    auto* name = new QLabel(
        version.isEmpty() ? QStringLiteral("Ullage") : QStringLiteral("Ullage ") + version, this);
    name->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(name);
    auto* words = new QLabel(
        tr("Keeps account of darkroom chemistry: what is left in every bottle, how "
           "long the next film takes, and when a bottle has to go.\n\nFree software under the GNU "
           "General Public License, version 3 or later. It comes without any warranty."),
        this);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    whole->addWidget(words);

    auto* area = new QScrollArea(this);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, Space::kSmall, 0);
    column->setSpacing(Space::kGap);
    for (const CautionGroup& group : allCautions()) {
        auto* box = new CautionBox(group.title, page);
        box->setLines(group.cautions);
        column->addWidget(box);
    }
    area->setWidget(page);
    area->setWidgetResizable(true);
    area->setAccessibleName(tr("Cautions"));
    whole->addWidget(area, 1);

    auto* buttons = new QDialogButtonBox(this);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    close->setDefault(true);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    resize(560, 640);
    close->setFocus();
}

} // namespace ullage::app
