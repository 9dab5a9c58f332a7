#include "app/window/page_to_come.h"

#include "app/widgets/empty_state.h"
#include "app/widgets/page_header.h"
#include "app/widgets/rail.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QVBoxLayout>

namespace ullage::app
{

PageToCome::PageToCome(QWidget* parent)
    : QWidget(parent), m_header(new PageHeader({}, this)), m_empty(new EmptyState({}, {}, this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 18, Space::kPage, 20);
    column->addWidget(m_header);
    column->addWidget(m_empty, 1);
    retranslate();
}

void PageToCome::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

void PageToCome::retranslate()
{
    m_header->setTitle(pageName(Page::Cupboard));
    m_empty->setWords(tr("What is not mixed yet will stand here"),
                      tr("Packets with their lot and use-by date, chemicals by weight, and "
                         "what a batch from them will cost."));
}

} // namespace ullage::app
