#include "app/window/cupboard_deeds.h"

#include "app/cupboard/add_item_dialog.h"
#include "app/cupboard/code_dialog.h"
#include "app/cupboard/item_deed_dialog.h"
#include "app/window/main_window.h"

namespace ullage::app
{

CupboardDeeds::CupboardDeeds(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts)
{
}

std::optional<ledger::CupboardState> CupboardDeeds::state() const
{
    if (!m_parts.door.isOpen())
        return std::nullopt;
    auto state = m_parts.door.cupboard();
    if (state)
        return std::move(*state);
    m_parts.fail(tr("The cupboard cannot be read"), state.error());
    return std::nullopt;
}

void CupboardDeeds::add()
{
    const auto now = state();
    if (!now)
        return;
    auto* dialog = new AddItemDialog(m_parts.door, *now, &m_parts.window);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { emit entered(dialog->entered()); });
    openOnce(dialog);
}

void CupboardDeeds::doWith(CupboardAction action, const QStringList& items)
{
    const auto now = state();
    if (!now)
        return;
    std::vector<ledger::ItemHere> chosen;
    for (const QString& id : items) {
        for (const ledger::ItemHere& here : now->items) {
            if (here.item.id == id.toStdString())
                chosen.push_back(here);
        }
    }
    if (chosen.empty())
        return;
    QWidget* over = &m_parts.window;
    switch (action) {
    case CupboardAction::Mix:
        emit mixRequested(QString::fromStdString(chosen.front().item.id));
        return;
    case CupboardAction::TeachCode:
        return openOnce(new CodeDialog(m_parts.door, *now, chosen.front(), over));
    case CupboardAction::Edit: {
        auto* dialog = new AddItemDialog(m_parts.door, *now, chosen.front(), over);
        connect(dialog, &QDialog::accepted, this,
                [this, dialog] { emit entered(dialog->entered()); });
        return openOnce(dialog);
    }
    default:
        return openOnce(new ItemDeedDialog(action, m_parts.door, std::move(chosen), over));
    }
}

} // namespace ullage::app
