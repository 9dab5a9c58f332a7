#include "app/shelf/bottle_actions.h"

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
    setBottle({}, {});
}

QAction* BottleActions::action(BottleAction which) const
{
    return m_actions[static_cast<std::size_t>(which)];
}

void BottleActions::setBottle(const QString& id, const std::set<BottleAction>& allowed)
{
    m_bottle = id;
    for (int i = 0; i < kBottleActions; ++i)
        m_actions[static_cast<std::size_t>(i)]->setEnabled(
            !id.isEmpty() && allowed.count(static_cast<BottleAction>(i)) > 0);
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
    action(BottleAction::RunFilm)->setText(tr("&Log a run…"));
    action(BottleAction::OneMore)->setText(tr("One more film, &just as the last"));
    action(BottleAction::Bench)->setText(tr("Plan a &run…"));
    action(BottleAction::TopUp)->setText(tr("&Top up…"));
    action(BottleAction::DrawOff)->setText(tr("Draw &off…"));
    action(BottleAction::Decant)->setText(tr("De&cant…"));
    action(BottleAction::Move)->setText(tr("Mo&ve to another bottle…"));
    action(BottleAction::Test)->setText(tr("T&est…"));
    action(BottleAction::Measured)->setText(tr("Meas&ure silver…"));
    action(BottleAction::Filtered)->setText(tr("Fi&ltered…"));
    action(BottleAction::Dissolved)->setText(tr("All d&issolved…"));
    action(BottleAction::Contaminated)->setText(tr("Conta&minated…"));
    action(BottleAction::Note)->setText(tr("&Note…"));
    action(BottleAction::Opened)->setText(tr("O&pened…"));
    action(BottleAction::StoodOpen)->setText(tr("&Stood open…"));
    action(BottleAction::StoredAt)->setText(tr("Stored &at…"));
    action(BottleAction::Films)->setText(tr("&Films…"));
    action(BottleAction::History)->setText(tr("&History…"));
    action(BottleAction::ExchangeBaths)->setText(tr("Exchan&ge baths…"));
    action(BottleAction::Discard)->setText(tr("&Discard…"));
}

std::set<BottleAction> allBottleActions()
{
    std::set<BottleAction> all;
    for (int i = 0; i < kBottleActions; ++i)
        all.insert(static_cast<BottleAction>(i));
    return all;
}

} // namespace ullage::app
