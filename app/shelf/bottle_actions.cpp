#include "app/shelf/bottle_actions.h"

#include "app/widgets/why_not.h"

#include <QMenu>

namespace ullage::app
{

BottleActions::BottleActions(QObject* parent) : QObject(parent)
{
    for (int i = 0; i < kBottleActions; ++i) {
        auto* action = new QAction(this);
        m_actions[static_cast<std::size_t>(i)] = action;
        connect(action, &QAction::triggered, this, [this, i] {
            if (!m_bottle.isEmpty() || static_cast<BottleAction>(i) == BottleAction::RunFilm)
                emit requested(static_cast<BottleAction>(i), m_bottle);
        });
    }
    action(BottleAction::RunFilm)->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_R));
    // A single key: only while the shelf has the keyboard.
    action(BottleAction::OneMore)->setShortcut(QKeySequence(Qt::Key_Plus));
    action(BottleAction::OneMore)->setShortcutContext(Qt::WidgetShortcut);
    action(BottleAction::Bench)->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_B));
    action(BottleAction::TopUp)->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_U));
    action(BottleAction::Test)->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_T));
    action(BottleAction::Note)->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
    action(BottleAction::Films)->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_L));
    action(BottleAction::History)->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_H));
    action(BottleAction::Discard)->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_D));
    retranslate();
    setBottle({});
}

QAction* BottleActions::action(BottleAction which) const
{
    return m_actions[static_cast<std::size_t>(which)];
}

void BottleActions::setBottle(const QString& id, const RefusedActions& refused)
{
    m_bottle = id;
    for (int i = 0; i < kBottleActions; ++i) {
        const auto found = refused.find(static_cast<BottleAction>(i));
        setWhyNot(m_actions[static_cast<std::size_t>(i)], id.isEmpty() ? tr("no bottle is chosen")
                                                          : found != refused.end() ? found->second
                                                                                   : QString());
    }
}

void BottleActions::fill(QMenu& menu) const
{
    for (int i = 0; i < kBottleActions; ++i) {
        const auto which = static_cast<BottleAction>(i);
        if (which == BottleAction::TopUp || which == BottleAction::Test ||
            which == BottleAction::Opened || which == BottleAction::Films ||
            which == BottleAction::ExchangeBaths)
            menu.addSeparator();
        menu.addAction(action(which));
    }
}

void BottleActions::retranslate()
{
    setEntryWords(action(BottleAction::RunFilm), tr("&Log a run…"));
    setEntryWords(action(BottleAction::OneMore), tr("One more film, &just as the last"));
    setEntryWords(action(BottleAction::Bench), tr("Plan a &run…"));
    setEntryWords(action(BottleAction::TopUp), tr("&Top up…"));
    setEntryWords(action(BottleAction::DrawOff), tr("Dra&w off…"));
    setEntryWords(action(BottleAction::Decant), tr("De&cant…"));
    setEntryWords(action(BottleAction::Move), tr("Move to anot&her bottle…"));
    setEntryWords(action(BottleAction::Test), tr("Te&st…"));
    setEntryWords(action(BottleAction::Measured), tr("Meas&ure silver…"));
    setEntryWords(action(BottleAction::Filtered), tr("F&iltered…"));
    setEntryWords(action(BottleAction::Dissolved), tr("All dissol&ved…"));
    setEntryWords(action(BottleAction::Contaminated), tr("Conta&minated…"));
    setEntryWords(action(BottleAction::Note), tr("&Note…"));
    setEntryWords(action(BottleAction::Opened), tr("O&pened…"));
    setEntryWords(action(BottleAction::StoodOpen), tr("St&ood open…"));
    setEntryWords(action(BottleAction::StoredAt), tr("Stored &at…"));
    setEntryWords(action(BottleAction::Films), tr("&Films…"));
    setEntryWords(action(BottleAction::History), tr("Histor&y…"));
    setEntryWords(action(BottleAction::Label), tr("La&bel…"));
    setEntryWords(action(BottleAction::ExchangeBaths), tr("Exchan&ge baths…"));
    setEntryWords(action(BottleAction::Discard), tr("&Discard…"));
}

RefusedActions refuseAll(const QString& reason)
{
    RefusedActions all;
    for (int i = 0; i < kBottleActions; ++i)
        all[static_cast<BottleAction>(i)] = reason;
    return all;
}

} // namespace ullage::app
