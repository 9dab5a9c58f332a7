// A copy that what a damaged book has lost is filled in from.
#pragma once

#include "core/store/backup.h"
#include "core/store/scratch_file.h"
#include "core/store/wreck.h"

#include <memory>
#include <optional>
#include <vector>

namespace ullage::store
{

/// Read in the same way as the damaged book: it too may have suffered since.
struct SalvageCopy {
    QString path;
    ScratchFile scratch; ///< what its pages are read by; outlives them
    std::unique_ptr<Wreck> pages;
    std::optional<std::int64_t> agreesUntil = std::nullopt; ///< once somebody has asked

    /// Whether what it has under that number stood in the damaged book too. It counts as far as
    /// both have the same entries: a copy of a book that went another way since would fill in what
    /// never stood there. Where nothing of the book can be read (nullptr) there is nothing to
    /// differ from.
    bool agrees(Wreck* damaged, std::int64_t number);
};

/// Those of `copies`, in their order, in which there is anything to read; what they need on disk
/// lies beside `fresh` as long as they live.
std::vector<SalvageCopy> openCopies(const std::vector<Copy>& copies, const QString& fresh);

} // namespace ullage::store
