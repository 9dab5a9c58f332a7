#include "app/cupboard/cupboard_page.h"

#include "app/cupboard/item_card.h"
#include "app/cupboard/item_list.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/page_header.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QAction>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ullage::app
{

CupboardPage::CupboardPage(QWidget* parent)
    : QWidget(parent), m_actions(new CupboardActions(this)),
      m_header(new PageHeader(tr("Cupboard"), this)), m_stack(new QStackedWidget(this)),
      m_parts(new QWidget(this)), m_empty(new EmptyState({}, {}, this)),
      m_unreadable(new PlainLabel(this)), m_list(new ItemList(this)),
      m_card(new ItemCard(*m_actions, this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 18, Space::kPage, 20);
    column->setSpacing(Space::kInset);
    m_add = m_header->addButton(tr("Add to the cupboard…"), true);
    column->addWidget(m_header);
    column->addWidget(m_stack, 1);

    auto* row = new QHBoxLayout(m_parts);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(Space::kGap);
    auto* listCard = new Card(tr("What is here"), m_parts);
    listCard->setMinimumWidth(250);
    listCard->setMaximumWidth(380);
    listCard->body()->addWidget(m_list);
    row->addWidget(listCard, 5);
    row->addWidget(m_card, 9);

    m_empty->setWords(tr("Nothing stands in the cupboard yet"),
                      tr("Begin with what you have at hand: packets and concentrates, raw "
                         "chemicals, filters and gloves. Type or scan the code on a packet and it "
                         "is known the next time. What is mixed is then taken from here, and "
                         "what runs out is said in time."));
    auto* first = m_empty->addButton(tr("Add to the cupboard…"), true);
    m_unreadable->setWordWrap(true);
    m_unreadable->setAlignment(Qt::AlignCenter);
    m_stack->addWidget(m_parts);
    m_stack->addWidget(m_empty);
    m_stack->addWidget(m_unreadable);

    connect(m_add, &QPushButton::clicked, this, &CupboardPage::addRequested);
    connect(first, &QPushButton::clicked, this, &CupboardPage::addRequested);
    connect(m_actions, &CupboardActions::requested, this, [this](CupboardAction action) {
        QStringList items;
        for (const std::string& one : m_list->chosen()->items)
            items << QString::fromStdString(one);
        emit actionRequested(action, items);
    });
    connect(m_list, &ItemList::rowChosen, this, [this] { m_card->setRow(m_list->chosen()); });
    connect(m_list, &ItemList::menuWanted, this, [this](const QPoint& at) {
        QMenu menu(this);
        m_actions->fill(menu);
        menu.exec(at);
    });
    // Return does what is done most.
    connect(m_list, &QListView::activated, m_actions->action(CupboardAction::Take),
            &QAction::trigger);
}

void CupboardPage::setShown(CupboardShown shown)
{
    m_header->setDetail(shown.summary);
    m_list->setRows(std::move(shown.rows));
    m_add->setVisible(!shown.empty); // there it stands in the middle
    m_stack->setCurrentWidget(shown.empty ? static_cast<QWidget*>(m_empty) : m_parts);
}

void CupboardPage::setUnreadable(const QString& why)
{
    m_header->setDetail({});
    m_unreadable->setText(why);
    m_stack->setCurrentWidget(m_unreadable);
}

QString CupboardPage::chosen() const
{
    const CupboardRow* row = m_list->chosen();
    return row ? row->id : QString();
}

bool CupboardPage::choose(const QString& item) { return m_list->choose(item); }

QWidget* CupboardPage::firstForKeys() const { return m_list; }

} // namespace ullage::app
