#include "app/widgets/done_line.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>

namespace ullage::app
{

DoneLine::DoneLine(QWidget* parent)
    : QWidget(parent), m_text(new PlainLabel(this)), m_undo(new QPushButton(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(Space::kSmall);
    m_text->setFont(Theme::font(TextRole::Strong));
    setButtonLook(m_undo, ButtonLook::Quiet);
    row->addWidget(m_text);
    row->addWidget(m_undo);
    row->addStretch();
    connect(m_undo, &QPushButton::clicked, this, &DoneLine::undoRequested);
    retranslate();
    hide();
}

void DoneLine::tell(const QString& text)
{
    m_text->setText(text);
    retranslate();
    setVisible(!text.isEmpty());
}

QString DoneLine::text() const { return m_text->text(); }

void DoneLine::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        tell({}); // said in other words; the menu still takes it back
    QWidget::changeEvent(event);
}

void DoneLine::retranslate()
{
    m_undo->setText(tr("Undo"));
    m_undo->setAccessibleName(tr("Undo: %1").arg(m_text->text()));
}

} // namespace ullage::app
