#include "app/cupboard/item_card.h"

#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_not.h"

#include <QAction>
#include <QGridLayout>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kLabelWidth = 120;

} // namespace

ItemCard::ItemCard(CupboardActions& actions, QWidget* parent)
    : Card({}, parent), m_actions(&actions), m_place(new QVBoxLayout)
{
    body()->addLayout(m_place);
    body()->addStretch(1);
    auto* buttons = new QWidget(this);
    auto* flow = new FlowLayout(buttons, Space::kSmall);
    const auto add = [&](const QString& words, CupboardAction action, ButtonLook look) {
        auto* button = new QPushButton(words, buttons);
        setButtonLook(button, look);
        followEntry(button, actions.action(action));
        flow->addWidget(button);
    };
    add(tr("Mix it…"), CupboardAction::Mix, ButtonLook::Primary);
    add(tr("Take…"), CupboardAction::Take, ButtonLook::Plain);
    add(tr("Count…"), CupboardAction::Count, ButtonLook::Plain);
    add(tr("Throw away…"), CupboardAction::ThrowAway, ButtonLook::Plain);
    auto* more = new QPushButton(tr("More"), buttons);
    setButtonLook(more, ButtonLook::Plain);
    more->setAccessibleDescription(tr("What else can be done with it"));
    auto* menu = new QMenu(more);
    actions.fill(*menu);
    more->setMenu(menu);
    flow->addWidget(more);
    body()->addWidget(buttons);
    setRow(nullptr);
}

void ItemCard::setRow(const CupboardRow* row)
{
    m_actions->setItem(row ? row->id : QString(), row ? row->refused : RefusedCupboardActions());
    setTitle(row ? row->name : tr("Nothing is chosen"));
    delete m_facts;
    m_facts = new QWidget(this);
    auto* grid = new QGridLayout(m_facts);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(Space::kSmall);
    grid->setHorizontalSpacing(Space::kGap);
    grid->setColumnMinimumWidth(0, kLabelWidth);
    grid->setColumnStretch(1, 1);
    for (const CupboardFact& fact : row ? row->facts : std::vector<CupboardFact>()) {
        const int line = grid->rowCount();
        auto* label = new PlainLabel(fact.label, m_facts);
        setTone(label, Tone::Quiet);
        auto* value = new PlainLabel(fact.value, m_facts);
        value->setWordWrap(true);
        value->setTextInteractionFlags(Qt::TextSelectableByMouse);
        value->setAccessibleName(tr("%1: %2", "what it is, its value").arg(fact.label, fact.value));
        grid->addWidget(label, line, 0, Qt::AlignTop);
        grid->addWidget(value, line, 1, Qt::AlignTop);
    }
    m_place->addWidget(m_facts);
    m_facts->show();
}

} // namespace ullage::app
