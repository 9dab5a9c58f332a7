#include "core/ledger/load_doubts.h"

#include "core/chemistry/films.h"

#include <algorithm>

namespace ullage::ledger
{

using chemistry::Films;

LoadDoubts doubtsOf(const FilmRun& run, std::span<const Judged> judged)
{
    LoadDoubts doubts{run.load.units(), {}, false};
    const Films slack(chemistry::kFilmSlack);
    doubts.manyForATank = doubts.load > kMostInATank + slack;
    for (const Bath& bath : run.baths) {
        const auto bottle = std::find_if(judged.begin(), judged.end(), [&](const Judged& one) {
            return one.batch.id == bath.batch;
        });
        if (bath.oneShot || bottle == judged.end() || !bottle->assessment.filmsLeft) {
            continue;
        }
        const Films left = *bottle->assessment.filmsLeft;
        if (feltOf(doubts.load, bath.second) > left + slack) {
            doubts.beyond.push_back({bath.batch, left});
        }
    }
    return doubts;
}

} // namespace ullage::ledger
