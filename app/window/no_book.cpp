#include "app/window/no_book.h"

#include "app/widgets/empty_state.h"
#include "app/widgets/page_header.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

NoBook::NoBook(QWidget* parent)
    : QWidget(parent), m_header(new PageHeader({}, this)), m_empty(new EmptyState({}, {}, this)),
      m_open(m_empty->addButton({}, true)), m_restore(m_empty->addButton({})),
      m_salvage(m_empty->addButton({})), m_new(m_empty->addButton({}))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 18, Space::kPage, 20);
    column->setSpacing(12);
    column->addWidget(m_header);
    column->addWidget(m_empty, 1);
    connect(m_open, &QPushButton::clicked, this, &NoBook::openBookRequested);
    connect(m_restore, &QPushButton::clicked, this, &NoBook::copiesRequested);
    connect(m_salvage, &QPushButton::clicked, this, &NoBook::salvageRequested);
    connect(m_new, &QPushButton::clicked, this, &NoBook::newBookRequested);
    retranslate();
}

void NoBook::setPage(Page page)
{
    m_page = page;
    m_header->setTitle(pageName(page));
}

QWidget* NoBook::firstForKeys() const { return m_open; }

void NoBook::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

void NoBook::retranslate()
{
    setPage(m_page);
    m_empty->setWords(
        tr("No book is open"),
        tr("Open the one you keep, put a copy in the place of one that is gone or damaged, read "
           "what is left of a damaged one into a new one, or begin an empty one."));
    m_open->setText(tr("Open book…"));
    m_restore->setText(tr("Restore a copy…"));
    m_salvage->setText(tr("Salvage…"));
    m_new->setText(tr("New book…"));
}

} // namespace ullage::app
