// The sheet by which a batch is weighed out of raw chemicals.
#pragma once

#include "app/paper/papers.h"
#include "core/cupboard/weighing.h"

#include <memory>

namespace ullage::app
{

/// The batch that it is for. Solution and vessel must be there.
struct WeighingSheet {
    QString name; ///< of the batch to be
    std::shared_ptr<const formulary::Solution> solution;
    std::shared_ptr<const formulary::Vessel> vessel;
    chemistry::Millilitres makes;
    cupboard::WeighOut out;
};

/// Each chemical with a box to tick, in the order of addition; what the cupboard has of it and
/// lacks, where it is kept for raw chemicals; the cautions; and lines to sign on.
PaperDocument weighingPaper(const WeighingSheet& sheet, const PaperAbout& about);

} // namespace ullage::app
