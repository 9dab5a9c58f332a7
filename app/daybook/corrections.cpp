#include "app/daybook/corrections.h"

#include "app/daybook/correct_dialog.h"
#include "app/daybook/correct_run_dialog.h"
#include "app/daybook/correct_thing_dialog.h"

#include <QCoreApplication>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Corrections)
};

} // namespace

bool canCorrect(const Event& event)
{
    return formOf(event) || isOfThings(event) || std::holds_alternative<Mixed>(event.what) ||
           std::holds_alternative<Processed>(event.what);
}

QString whyNotCorrected(const store::DayEntry& entry, const std::vector<Event>& entered)
{
    if (entry.taken)
        return Words::tr("It is taken back. Bring it back first.");
    return entry.mark || (!entered.empty() && canCorrect(entered.front()))
               ? QString()
               : Words::tr("Take it back, and enter it anew as it was.");
}

QString whyNoRun() { return Words::tr("Its run was taken back. Bring that back first."); }

CorrectingDialog* newCorrection(Door& door, const QString& what, std::vector<Event> entered,
                                QWidget* parent)
{
    if (std::holds_alternative<Processed>(entered.front().what))
        return new CorrectRunDialog(door, what, std::move(entered), parent);
    if (isOfThings(entered.front()))
        return new CorrectThingDialog(door, what, std::move(entered), parent);
    return new CorrectDialog(door, what, std::move(entered), parent);
}

} // namespace ullage::app
