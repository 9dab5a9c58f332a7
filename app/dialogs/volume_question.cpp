#include "app/dialogs/volume_question.h"

#include "app/widgets/prompts.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

namespace ullage::app
{

namespace
{

constexpr double kHardlyAny = 0.1; // of what the bottle holds

} // namespace

bool VolumeQuestion::sure(QWidget* over, chemistry::Millilitres volume,
                          const formulary::Vessel& vessel, const Wording& wording)
{
    if (volume.value() >= vessel.capacity.value() * kHardlyAny)
        return true;
    const QString amount = volumeText(volume, wording);
    const Question question{
        .title = tr("So little?"),
        .text = tr("Is it really %1?", "volume").arg(amount),
        .detail = vessel.name.empty()
                      ? tr("The bottle holds %1.").arg(volumeText(vessel.capacity, wording))
                      : tr("%1 holds %2.", "bottle, volume")
                            .arg(shownName(vessel.name), volumeText(vessel.capacity, wording)),
        .yes = tr("Yes, %1", "volume").arg(amount),
        .danger = true};
    return confirmOnce(over, question, m_sure);
}

} // namespace ullage::app
