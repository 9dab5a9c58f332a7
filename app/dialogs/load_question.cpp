#include "app/dialogs/load_question.h"

#include "app/widgets/prompts.h"
#include "app/words/number_text.h"

#include <algorithm>

namespace ullage::app
{

bool LoadQuestion::sure(QWidget* over, const ledger::FilmRun& run,
                        std::span<const ledger::Judged> judged, const Wording& wording)
{
    const ledger::LoadDoubts doubts = ledger::doubtsOf(run, judged);
    if (!doubts.any())
        return true;
    const QString load = filmsText(doubts.load, wording);
    QStringList why;
    for (const ledger::LoadDoubts::Beyond& one : doubts.beyond) {
        const auto bottle = std::find_if(judged.begin(), judged.end(), [&](const auto& other) {
            return other.batch.id == one.batch;
        });
        why << tr("%1 can do %2 more.", "bottle, films")
                   .arg(QString::fromStdString(bottle->batch.name),
                        filmsLeftText(one.left, wording));
    }
    if (doubts.manyForATank)
        why << tr("A tank hardly takes more than %1 at once.")
                   .arg(filmsText(ledger::kMostInATank, wording));
    const Question question{.title = tr("So much film?"),
                            .text = tr("Is it really %1 in one load?", "films").arg(load),
                            .detail = why.join(u'\n'),
                            .yes = tr("Yes, %1", "films").arg(load),
                            .danger = true};
    return confirmOnce(over, question, m_sure);
}

} // namespace ullage::app
