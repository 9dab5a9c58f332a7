#include "app/cupboard/cupboard_page.h"

#include "app/cupboard/buy_card.h"
#include "app/cupboard/item_card.h"
#include "app/cupboard/item_list.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/page_header.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/widgets/three_columns.h"

#include <QAction>
#include <QMenu>
#include <QPushButton>
#include <QResizeEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

// Cards over one another. It is never lower than their words are at its width, nor narrower than
// what stands in them, so that the page scrolls or folds and nothing in it is squeezed.
class StackedCards : public QWidget
{
public:
    StackedCards(QWidget* upper, QWidget* lower, int least, QWidget* parent)
        : QWidget(parent), m_least(least)
    {
        auto* column = new QVBoxLayout(this);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(Space::kGap);
        column->addWidget(upper);
        column->addWidget(lower, 1);
    }

    [[nodiscard]] QSize minimumSizeHint() const override
    {
        const QSize least = layout()->totalMinimumSize();
        return {std::max(m_least, least.width()),
                std::max(least.height(), layout()->totalHeightForWidth(width()))};
    }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        QWidget::resizeEvent(event);
        if (event->size().width() != event->oldSize().width())
            updateGeometry();
    }

private:
    int m_least;
};

} // namespace

CupboardPage::CupboardPage(QWidget* parent)
    : QWidget(parent), m_actions(new CupboardActions(this)),
      m_header(new PageHeader(tr("Cupboard"), this)), m_stack(new QStackedWidget(this)),
      m_empty(new EmptyState({}, {}, this)), m_unreadable(new PlainLabel(this)),
      m_list(new ItemList(this)), m_card(new ItemCard(*m_actions, this)),
      m_needs(new NeedsCard(this)), m_buy(new BuyCard(this)), m_waste(new WasteCard(this)),
      m_parts(newParts())
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 18, Space::kPage, 20);
    column->setSpacing(Space::kInset);
    m_add = m_header->addButton(tr("Add to the cupboard…"), true);
    column->addWidget(m_header);
    column->addWidget(m_stack, 1);
    m_empty->setWords(tr("Nothing stands in the cupboard yet"),
                      tr("Begin with what you have at hand: packets and concentrates, raw "
                         "chemicals, filters and gloves. Type or scan the code on a packet and it "
                         "is known the next time. What is mixed is then taken from here, and "
                         "what runs out is said in time."));
    auto* first = m_empty->addButton(tr("Add to the cupboard…"), true);
    auto* work = m_empty->addButton(tr("Add work…"));
    auto* can = m_empty->addButton(tr("New can for waste…"));
    auto* calendar = m_empty->addButton(tr("Read a calendar…"));
    m_unreadable->setWordWrap(true);
    m_unreadable->setAlignment(Qt::AlignCenter);
    m_stack->addWidget(m_parts);
    m_stack->addWidget(m_empty);
    m_stack->addWidget(m_unreadable);

    connect(m_add, &QPushButton::clicked, this, &CupboardPage::addRequested);
    connect(first, &QPushButton::clicked, this, &CupboardPage::addRequested);
    connect(work, &QPushButton::clicked, this, [this] { emit workRequested(WorkAction::New, {}); });
    connect(calendar, &QPushButton::clicked, this,
            [this] { emit workRequested(WorkAction::Import, {}); });
    connect(can, &QPushButton::clicked, this, [this] { emit canRequested(CanAction::New, {}); });
    connect(m_waste, &WasteCard::canRequested, this, &CupboardPage::canRequested);
    connect(m_needs, &NeedsCard::workRequested, this, &CupboardPage::workRequested);
    connect(m_needs, &NeedsCard::besideChanged, this, &CupboardPage::planForChanged);
    connect(m_buy, &BuyCard::planForChanged, this, &CupboardPage::planForChanged);
    connect(m_buy, &BuyCard::printRequested, this,
            [this] { emit paperRequested(PaperKind::Shopping); });
    connect(m_waste, &WasteCard::printRequested, this,
            [this] { emit paperRequested(PaperKind::HandOver); });
    connect(m_buy, &BuyCard::tableRequested, this, &CupboardPage::tableOfListRequested);
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

// The list at the left; the weeks and what is chosen in the middle; buying and waste at the right,
// or below where there is no width for three.
QWidget* CupboardPage::newParts()
{
    auto* parts = new ThreeColumns(ThreeColumns::Under::Second, this);
    auto* listCard = new Card(tr("What is here"), parts);
    listCard->setMinimumWidth(290);
    listCard->setMaximumWidth(380);
    listCard->body()->addWidget(m_list);
    parts->addColumn(listCard, 6);
    parts->addColumn(new StackedCards(m_needs, m_card, 430, parts), 9);
    parts->addColumn(new StackedCards(m_buy, m_waste, 260, parts), 5);
    return parts;
}

void CupboardPage::setShown(CupboardShown shown)
{
    m_header->setDetail(shown.summary);
    m_list->setRows(std::move(shown.rows));
    m_needs->setNeeds(shown.needs);
    m_buy->setBuy(shown.needs.buy);
    m_waste->setCans(shown.cans, shown.yearTitle, shown.year, shown.handed);
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

PlanFor CupboardPage::planFor() const
{
    PlanFor planFor = m_buy->planFor();
    planFor.beside = m_needs->beside();
    return planFor;
}

void CupboardPage::setPlanFor(const PlanFor& planFor)
{
    m_buy->setPlanFor(planFor);
    m_needs->setBeside(planFor.beside);
}

QWidget* CupboardPage::firstForKeys() const { return m_list; }

} // namespace ullage::app
