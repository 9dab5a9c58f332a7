#include "app/widgets/choice_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kMostRows = 8; // seen at a time
constexpr int kLeastWidth = 460;

} // namespace

ChoiceDialog::ChoiceDialog(const QString& title, const QString& question, const QStringList& ways,
                           QWidget* parent)
    : QDialog(parent)
{
    setWindowTitle(plainTitle(title));
    QVBoxLayout* whole = dialogColumn(*this);
    auto* asked = new PlainLabel(question, this);
    asked->setWordWrap(true);
    whole->addWidget(asked);

    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kTight);
    QPushButton* first = nullptr;
    for (int i = 0; i < ways.size(); ++i) {
        auto* way = new QPushButton(plainCaption(ways[i]), page);
        way->setAccessibleName(ways[i]);
        way->setAutoDefault(true); // Return takes the one that has the keys
        way->ensurePolished();     // it is as wide as it will be seen
        connect(way, &QPushButton::clicked, this, [this, i] {
            m_chosen = i;
            accept();
        });
        column->addWidget(way);
        first = first ? first : way;
    }
    column->addStretch(1);
    // As high as what it holds, as far as that can be seen at a time.
    QScrollArea* area = readingArea(*this, question);
    area->setWidget(page);
    const int rows = std::min(static_cast<int>(ways.size()), kMostRows);
    const int row = first->sizeHint().height() + column->spacing();
    area->setMinimumHeight(rows * row + 2 * area->frameWidth());
    area->setMinimumWidth(page->sizeHint().width());
    area->setFocusPolicy(Qt::NoFocus);
    area->setFrameShape(QFrame::NoFrame);
    whole->addWidget(area, 1);

    auto* buttons = new QDialogButtonBox(this);
    auto* back = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    back->setAutoDefault(true);
    whole->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    setMinimumWidth(kLeastWidth);
    first->setDefault(true);
    first->setFocus();
}

} // namespace ullage::app
