// Where the limits of the control strips are from.
#include "app/words/explanations.h"
#include "core/chemistry/process_constants.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Explanations)
};

} // namespace

std::optional<Explanation> explainStripLimits(const ledger::StripRecord& record,
                                              const Wording& wording)
{
    if (!record.next)
        return std::nullopt;
    const QLocale& locale = wording.locale;
    const auto density = [&](double value) { return locale.toString(value, 'f', 3); };
    const chemistry::ControlChart& chart = *record.next;
    Explanation why;
    why.title = Words::tr("Limits of the control strips");
    why.value = Words::tr("%1 – %2").arg(density(chart.lower), density(chart.upper));
    why.equation = Words::tr("Centre = mean of the control strips before it that lay within. "
                             "Limits = centre ± 3 × mean difference of neighbours ÷ 1.128.");
    why.inputs = {{Words::tr("Control strips"), locale.toString(record.readings.size())},
                  {Words::tr("Centre"), density(chart.centre)},
                  {Words::tr("Mean difference of neighbours"), density(chart.meanMovingRange)}};
    why.constants = {
        explained(Words::tr("Limits, in standard deviations"), chemistry::kSigmas, locale),
        explained(Words::tr("Mean difference ÷ standard deviation"), chemistry::kMovingRange,
                  locale),
        explained(Words::tr("Out of control: in a row on one side"), chemistry::kRunOnOneSide,
                  locale)};
    why.notes << Words::tr("A control strip beyond them asks for a cause. What it proposes for the "
                           "time is an assumption, and yours to accept or not.");
    gradeByConstants(why);
    return why;
}

} // namespace ullage::app
