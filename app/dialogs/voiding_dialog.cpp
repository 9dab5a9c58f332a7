#include "app/dialogs/voiding_dialog.h"

#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"
#include "core/ledger/fillings.h"

#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace ullage::app
{

namespace
{

using Events = std::vector<ledger::Event>;

const ledger::Event* withId(const Events& entered, const std::string& id)
{
    const auto found = std::find_if(entered.begin(), entered.end(),
                                    [&](const auto& event) { return event.id == id; });
    return found == entered.end() ? nullptr : &*found;
}

// The voiding that keeps an event taken back; null for none.
const ledger::Event* standingVoid(const Events& entered,
                                  const std::unordered_set<std::string>& taken,
                                  const std::string& of)
{
    const auto found = std::find_if(entered.begin(), entered.end(), [&](const auto& event) {
        const auto* voided = std::get_if<ledger::Voided>(&event.what);
        return voided && voided->voids == of && !taken.contains(event.id);
    });
    return found == entered.end() ? nullptr : &*found;
}

// What has to go along with taking `one` back; null for nothing.
const ledger::Event* goesAlong(const Events& entered, const TakingBack& one)
{
    const auto taken = ledger::takenBack(entered);
    const ledger::Event* event = withId(entered, one.event);
    if (!event)
        return nullptr;
    const auto* voided = std::get_if<ledger::Voided>(&event->what);
    if (!voided)
        return ledger::otherHalf(entered, *event, taken);
    // Brought back: the other half is, too, if it was taken back by name.
    const ledger::Event* half = withId(entered, voided->voids);
    const ledger::Event* other = half ? ledger::otherHalf(entered, *half, {}) : nullptr;
    return other ? standingVoid(entered, taken, other->id) : nullptr;
}

} // namespace

VoidingDialog::VoidingDialog(Door& door, const QString& title, QWidget* parent)
    : DeedDialog(door, title, parent)
{
}

QLineEdit* VoidingDialog::addWhy(const QString& label)
{
    m_why = new QLineEdit(this);
    m_why->setMaxLength(static_cast<int>(formulary::fieldOf(&ledger::Voided::why).longest));
    m_why->setPlaceholderText(tr("wrong bottle, counted twice…"));
    addRow(QStringLiteral("why"), label, m_why);
    return m_why;
}

std::vector<TakingBack> VoidingDialog::allEvents() const
{
    auto all = events();
    const std::size_t named = all.size();
    for (std::size_t i = 0; i < named; ++i) {
        if (all[i].batch.empty())
            continue;
        const auto entered = door().connectedEvents(all[i].batch);
        const ledger::Event* other = entered ? goesAlong(*entered, all[i]) : nullptr;
        const bool there = other && std::any_of(all.begin(), all.end(), [&](const auto& one) {
                               return one.event == other->id;
                           });
        if (other && !there)
            all.push_back({other->id, other->batch});
    }
    return all;
}

std::optional<std::vector<ledger::Event>> VoidingDialog::wouldEnter() const
{
    const auto taken = allEvents();
    if (taken.empty())
        return std::nullopt;
    std::vector<ledger::Event> entries;
    const auto newId = wouldBeIds();
    for (const TakingBack& one : taken)
        entries.push_back({newId(), one.batch, moment(), ledger::Voided{one.event, {}}, {}, {}});
    return entries;
}

bool VoidingDialog::restIsFine()
{
    if (!m_why->text().trimmed().isEmpty())
        return true;
    showProblem(QStringLiteral("why"), tr("Why: a few words are needed, for whoever wonders."));
    return false;
}

void VoidingDialog::followed(const std::optional<Error>& refused)
{
    deedButton()->setEnabled(!refused && !door().readOnly());
}

Result<void> VoidingDialog::act()
{
    std::vector<std::string> ids;
    for (const TakingBack& one : allEvents())
        ids.push_back(one.event);
    return door().voidEvents(ids, m_why->text().trimmed().toStdString());
}

} // namespace ullage::app
