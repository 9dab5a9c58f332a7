#include "app/widgets/page_header.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kHeight = 38;
constexpr int kLeastButton = 124;

} // namespace

PageHeader::PageHeader(const QString& title, QWidget* parent)
    : QWidget(parent), m_title(new PlainLabel(this)), m_detail(new PlainLabel(this)),
      m_row(new QHBoxLayout), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    m_column->addLayout(m_row);
    m_column->addStretch();
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(Space::kGap);
    m_title->setFont(Theme::font(TextRole::PageTitle));
    m_title->setFixedHeight(kHeight);
    QFont detail = Theme::font(TextRole::Body);
    detail.setPixelSize(14);
    m_detail->setFont(detail);
    m_detail->setWordWrap(true);
    m_detail->setContentsMargins(0, 5, 0, 0);
    m_detail->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    setTone(m_detail, Tone::Quiet);
    m_row->addWidget(m_title);
    m_row->addWidget(m_detail, 1);
    m_row->addStretch(); // while nothing stands there
    setTitle(title);
    setFixedHeight(kHeight);
}

void PageHeader::setTitle(const QString& title)
{
    m_title->setText(title);
    setAccessibleName(title);
    arrange();
}

void PageHeader::setDetail(const QString& detail)
{
    m_detail->setText(detail);
    arrange();
}

void PageHeader::setInstead(QWidget* widget)
{
    m_instead = widget;
    // Its words never widen the page.
    m_instead->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    put(m_instead, m_insteadBelow);
    arrange();
}

void PageHeader::put(QWidget* line, bool below)
{
    m_row->removeWidget(line);
    m_column->removeWidget(line);
    if (below)
        m_column->insertWidget(1, line);
    else
        m_row->insertWidget(1, line, 1);
}

// The line stands beside the title while it is one line there; what comes instead also where it
// has to be broken, so that the head is as high with it as without.
void PageHeader::arrange()
{
    const bool instead = m_instead && !m_instead->isHidden();
    if (m_detail->isHidden() != instead)
        m_detail->setVisible(!instead);
    int taken = m_title->sizeHint().width() + 2 * m_row->spacing();
    for (int i = 0; i < m_row->count(); ++i) {
        const QWidget* widget = m_row->itemAt(i)->widget();
        if (widget && widget != m_title && widget != m_detail && widget != m_instead &&
            !widget->isHidden())
            taken +=
                std::max(widget->sizeHint().width(), widget->minimumWidth()) + m_row->spacing();
    }
    const int room = width() - taken;
    const int words =
        static_cast<int>(QFontMetricsF(m_detail->font()).horizontalAdvance(m_detail->text())) + 4;
    const bool below = words > room && !m_detail->text().isEmpty();
    if (below != m_below) {
        m_below = below;
        put(m_detail, below);
        m_detail->setContentsMargins(0, below ? 0 : 5, 0, 0);
    }
    const bool insteadBelow = instead && m_instead->heightForWidth(room) > kHeight;
    if (instead && insteadBelow != m_insteadBelow) {
        m_insteadBelow = insteadBelow;
        put(m_instead, insteadBelow);
        m_instead->setContentsMargins(0, insteadBelow ? Space::kTight : 0, 0, 0);
    }
    const int under = std::max(below ? m_detail->heightForWidth(width()) : 0,
                               insteadBelow ? m_instead->heightForWidth(width()) : 0);
    setFixedHeight(kHeight + under);
}

bool PageHeader::event(QEvent* event)
{
    if (event->type() == QEvent::LayoutRequest)
        arrange();
    return QWidget::event(event);
}

void PageHeader::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void PageHeader::addAtRight(QWidget* widget) { m_row->addWidget(widget, 0, Qt::AlignVCenter); }

QPushButton* PageHeader::addButton(const QString& text, bool primary)
{
    auto* button = new QPushButton(text, this);
    button->setFixedHeight(kHeight);
    QFont font = Theme::font(TextRole::Strong);
    button->setFont(font);
    button->setMinimumWidth(kLeastButton);
    setButtonLook(button, primary ? ButtonLook::Primary : ButtonLook::Plain);
    m_row->addWidget(button);
    return button;
}

} // namespace ullage::app
