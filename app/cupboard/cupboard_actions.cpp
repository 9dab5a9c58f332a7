#include "app/cupboard/cupboard_actions.h"

#include "app/widgets/why_not.h"

#include <QAction>
#include <QMenu>

namespace ullage::app
{

CupboardActions::CupboardActions(QObject* parent) : QObject(parent)
{
    for (int i = 0; i < kCupboardActions; ++i) {
        auto* action = new QAction(this);
        m_actions[static_cast<std::size_t>(i)] = action;
        connect(action, &QAction::triggered, this, [this, i] {
            if (!m_item.isEmpty())
                emit requested(static_cast<CupboardAction>(i), m_item);
        });
    }
    setEntryWords(action(CupboardAction::Mix), tr("Mi&x it…"));
    setEntryWords(action(CupboardAction::Open), tr("O&pened…"));
    setEntryWords(action(CupboardAction::Take), tr("&Take…"));
    setEntryWords(action(CupboardAction::Count), tr("&Count…"));
    setEntryWords(action(CupboardAction::ThrowAway), tr("T&hrow away…"));
    setEntryWords(action(CupboardAction::TeachCode), tr("Add a co&de…"));
    setEntryWords(action(CupboardAction::Edit), tr("&Edit…"));
    setEntryWords(action(CupboardAction::Withdraw), tr("Entered by &mistake…"));
    setItem({});
}

QAction* CupboardActions::action(CupboardAction which) const
{
    return m_actions[static_cast<std::size_t>(which)];
}

void CupboardActions::setItem(const QString& id, const RefusedCupboardActions& refused)
{
    m_item = id;
    for (int i = 0; i < kCupboardActions; ++i) {
        const auto found = refused.find(static_cast<CupboardAction>(i));
        setWhyNot(m_actions[static_cast<std::size_t>(i)], id.isEmpty() ? tr("nothing is chosen")
                                                          : found != refused.end() ? found->second
                                                                                   : QString());
    }
}

void CupboardActions::fill(QMenu& menu) const
{
    for (int i = 0; i < kCupboardActions; ++i) {
        const auto which = static_cast<CupboardAction>(i);
        if (which == CupboardAction::Open || which == CupboardAction::TeachCode)
            menu.addSeparator();
        menu.addAction(action(which));
    }
}

} // namespace ullage::app
