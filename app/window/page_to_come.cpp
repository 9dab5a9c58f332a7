#include "app/window/page_to_come.h"

#include "app/widgets/card.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QVBoxLayout>

namespace ullage::app
{

PageToCome::PageToCome(Page page, QWidget* parent)
    : QWidget(parent), m_page(page), m_header(new PageHeader({}, this)),
      m_empty(new EmptyState({}, {}, this))
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
    m_header->setTitle(pageName(m_page));
    switch (m_page) {
    case Page::Bench:
        m_empty->setWords(
            tr("The run in hand will stand here"),
            tr("Films, tank and thermometer, the baths one after another with their "
               "times, a clock to be read from across the room, and every bottle "
               "logged at the end. Until then, log a run with Run film on the Shelf."));
        return;
    case Page::DayBook:
        m_empty->setWords(tr("Everything that happened will stand here"),
                          tr("Every run, mixing, test and discard, newest first, to be searched, "
                             "printed and taken back. All of it is recorded already; the journal "
                             "(File, Export) holds it in full."));
        return;
    case Page::Cupboard:
        m_empty->setWords(tr("What is not mixed yet will stand here"),
                          tr("Packets with their lot and use-by date, chemicals by weight, and "
                             "what a batch from them will cost."));
        return;
    case Page::Formulary:
        m_empty->setWords(tr("What solutions are will stand here"),
                          tr("How each solution wears and keeps, who says so, and what that means "
                             "for a full or a half-full bottle."));
        return;
    case Page::Shelf:
        return;
    }
}

} // namespace ullage::app
