#include "app/widgets/done_line.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QHBoxLayout>
#include <QPushButton>
#include <QResizeEvent>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

DoneLine::DoneLine(QWidget* parent)
    : QWidget(parent), m_row(new QHBoxLayout(this)), m_text(new PlainLabel(this)),
      m_undo(new QPushButton(this))
{
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(Space::kSmall);
    m_text->setFont(Theme::font(TextRole::Strong));
    setButtonLook(m_undo, ButtonLook::Quiet);
    m_row->addWidget(m_text);
    m_row->addWidget(m_undo);
    m_row->addStretch();
    connect(m_undo, &QPushButton::clicked, this, &DoneLine::undoRequested);
    retranslate();
    hide();
}

void DoneLine::tell(const QString& text, const QString& undo)
{
    m_told = text;
    m_undoes = undo;
    retranslate();
    m_row->removeWidget(m_undo);
    m_row->insertWidget(m_undoes.isEmpty() ? 1 : 0, m_undo);
    m_text->setText(brokenFor(width()).join(u'\n'));
    updateGeometry();
    setVisible(!text.isEmpty());
}

QStringList DoneLine::brokenFor(int width) const
{
    const double room = width - m_undo->sizeHint().width() - Space::kSmall;
    return brokenLines(m_told, QFontMetricsF(m_text->font()), room);
}

QSize DoneLine::sizeHint() const
{
    const int words =
        static_cast<int>(std::ceil(QFontMetricsF(m_text->font()).horizontalAdvance(m_told)));
    const QSize undo = m_undo->sizeHint();
    return {words + Space::kSmall + undo.width(), undo.height()};
}

int DoneLine::heightForWidth(int width) const
{
    const auto lines = static_cast<int>(brokenFor(width).size());
    return contentsMargins().top() +
           std::max(m_undo->sizeHint().height(), lines * m_text->fontMetrics().lineSpacing());
}

void DoneLine::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    const QString text = brokenFor(event->size().width()).join(u'\n');
    if (text != m_text->text())
        m_text->setText(text);
}

void DoneLine::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        tell({}); // said in other words; the menu still takes it back
    QWidget::changeEvent(event);
}

void DoneLine::retranslate()
{
    m_undo->setText(m_undoes.isEmpty() ? tr("Undo") : plainCaption(m_undoes));
    m_undo->setAccessibleName(m_undoes.isEmpty() ? tr("Undo: %1").arg(m_told) : m_undoes);
}

} // namespace ullage::app
