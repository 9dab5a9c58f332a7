#include "app/daybook/corrections.h"

#include "app/daybook/correct_dialog.h"
#include "app/daybook/correct_run_dialog.h"

#include <QCoreApplication>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Corrections)
};

// How an event without a form is put right.
struct OtherWay {
    QString operator()(const Drawn&) const
    {
        return Words::tr("It went into another bottle: correct the filling of that one, and this "
                         "follows.");
    }
    QString operator()(const TestAsked&) const
    {
        return Words::tr("Take it back, or enter the test that was asked for.");
    }
    // Of things of the cupboard and cans: what they hold is entered where they stand.
    template <class Other>
    QString operator()(const Other&) const
    {
        return Words::tr("Take it back, and enter it anew in the Cupboard.");
    }
};

} // namespace

bool canCorrect(const Event& event)
{
    return formOf(event) || std::holds_alternative<Mixed>(event.what) ||
           std::holds_alternative<Processed>(event.what);
}

QString whyNotCorrected(const store::DayEntry& entry)
{
    if (entry.taken && !entry.mark)
        return Words::tr("It is taken back. Bring it back first.");
    return entry.mark || canCorrect(entry.event) ? QString()
                                                 : std::visit(OtherWay(), entry.event.what);
}

CorrectingDialog* newCorrection(Door& door, const QString& what, std::vector<Event> entered,
                                QWidget* parent)
{
    if (std::holds_alternative<Processed>(entered.front().what))
        return new CorrectRunDialog(door, what, std::move(entered), parent);
    return new CorrectDialog(door, what, std::move(entered), parent);
}

} // namespace ullage::app
