#include "app/window/cautions_dialog.h"

#include "app/widgets/caution_box.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ullage::app
{

CautionsDialog::CautionsDialog(QWidget* parent) : QDialog(parent)
{
    setWindowTitle(tr("Cautions"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(Space::kPage, Space::kPage, Space::kPage, Space::kPage);
    whole->setSpacing(Space::kGap);
    auto* heading = new PlainLabel(tr("Cautions"), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);

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
