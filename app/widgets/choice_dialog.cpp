#include "app/widgets/choice_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QDialogButtonBox>
#include <QListWidget>
#include <QPushButton>
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
    : QDialog(parent), m_ways(new QListWidget(this))
{
    setWindowTitle(plainTitle(title));
    QVBoxLayout* whole = dialogColumn(*this);
    auto* asked = new PlainLabel(question, this);
    asked->setWordWrap(true);
    whole->addWidget(asked);

    m_ways->addItems(ways);
    m_ways->setCurrentRow(0);
    m_ways->setWordWrap(true);
    m_ways->setAccessibleName(question);
    const int rows = std::min(static_cast<int>(ways.size()), kMostRows);
    m_ways->setMinimumHeight(rows * m_ways->sizeHintForRow(0) + 2 * m_ways->frameWidth());
    whole->addWidget(m_ways, 1);

    auto* buttons = new QDialogButtonBox(this);
    auto* go = buttons->addButton(tr("&Go on"), QDialogButtonBox::AcceptRole);
    auto* back = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    setButtonLook(go, ButtonLook::Primary);
    go->setDefault(true);
    back->setAutoDefault(false);
    whole->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_ways, &QListWidget::itemDoubleClicked, this, &QDialog::accept);
    setMinimumWidth(kLeastWidth);
    m_ways->setFocus();
}

int ChoiceDialog::chosen() const { return m_ways->currentRow(); }

} // namespace ullage::app
