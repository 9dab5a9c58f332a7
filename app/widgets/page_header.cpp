#include "app/widgets/page_header.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>

namespace ullage::app
{

namespace
{

// A line that ends in an ellipsis where there is no room for all of it.
class ElidedLabel : public PlainLabel
{
public:
    using PlainLabel::PlainLabel;

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setPen(palette().color(foregroundRole()));
        painter.setFont(font());
        painter.drawText(contentsRect(), Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(text(), fontMetrics(), contentsRect().width()));
    }
};

} // namespace

PageHeader::PageHeader(const QString& title, QWidget* parent)
    : QWidget(parent), m_title(new PlainLabel(this)), m_detail(new ElidedLabel(this)),
      m_row(new QHBoxLayout(this))
{
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(Space::kGap);
    m_title->setFont(Theme::font(TextRole::PageTitle));
    QFont detail = Theme::font(TextRole::Body);
    detail.setPixelSize(14);
    m_detail->setFont(detail);
    m_detail->setContentsMargins(0, 5, 0, 0);
    m_detail->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    setTone(m_detail, Tone::Quiet);
    m_row->addWidget(m_title);
    m_row->addWidget(m_detail, 1);
    setTitle(title);
    setFixedHeight(38);
}

void PageHeader::setTitle(const QString& title)
{
    m_title->setText(title);
    setAccessibleName(title);
}

void PageHeader::setDetail(const QString& detail)
{
    m_detail->setText(detail);
    setPlainToolTip(m_detail, detail);
}

QPushButton* PageHeader::addButton(const QString& text, bool primary)
{
    auto* button = new QPushButton(text, this);
    button->setFixedHeight(38);
    QFont font = Theme::font(TextRole::Strong);
    button->setFont(font);
    button->setMinimumWidth(142);
    setButtonLook(button, primary ? ButtonLook::Primary : ButtonLook::Plain);
    m_row->addWidget(button);
    return button;
}

} // namespace ullage::app
