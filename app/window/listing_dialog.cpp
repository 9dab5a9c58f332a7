#include "app/window/listing_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QDialogButtonBox>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kLeastHeight = 120; // of a list

QListWidget* listOf(const QString& name, const QStringList& lines, QWidget* parent)
{
    auto* list = new QListWidget(parent);
    list->setAccessibleName(name);
    list->setWordWrap(true);
    list->setMinimumHeight(kLeastHeight);
    list->addItems(lines);
    return list;
}

} // namespace

ListingDialog::ListingDialog(const QString& title, const QString& heading, QWidget* parent)
    : QDialog(parent), m_whole(dialogColumn(*this))
{
    setWindowTitle(plainTitle(title));
    auto* label = new PlainLabel(heading, this);
    label->setFont(Theme::font(TextRole::PageTitle));
    label->setWordWrap(true);
    m_whole->addWidget(label);
}

void ListingDialog::addSentence(const QString& text, Tone tone)
{
    auto* label = new PlainLabel(text, this);
    label->setWordWrap(true);
    setTone(label, tone);
    m_whole->addWidget(label);
}

void ListingDialog::addList(const QString& name, const QStringList& lines)
{
    if (!lines.isEmpty())
        m_whole->addWidget(listOf(name, lines, this), 1);
}

void ListingDialog::addDetails(const QStringList& lines)
{
    if (lines.isEmpty())
        return;
    auto* details = new QPushButton(tr("&Details"), this);
    details->setCheckable(true);
    details->setAutoDefault(false);
    setButtonLook(details, ButtonLook::Quiet);
    auto* list = listOf(tr("Details"), lines, this);
    list->hide();
    connect(details, &QPushButton::toggled, list, &QWidget::setVisible);
    m_whole->addWidget(details, 0, Qt::AlignLeft);
    m_whole->addWidget(list, 1);
}

QDialogButtonBox* ListingDialog::addButtons()
{
    auto* buttons = new QDialogButtonBox(this);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_whole->addWidget(buttons);
    return buttons;
}

} // namespace ullage::app
