// The pages of a book, asked for by their kind.
#pragma once

#include "app/paper/papers.h"
#include "core/ledger/book.h"

#include <array>
#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace ullage::app
{

enum class PaperKind { Shelf, Card, Shopping, Month, HandOver };
/// As the command line names them, in the order of the enum.
inline constexpr std::array<std::string_view, 5> kPaperCodes{"shelf", "card", "shopping", "month",
                                                             "handover"};
std::optional<PaperKind> paperFromCode(std::string_view code);

/// What a page may be about besides the book.
struct PaperRequest {
    PaperKind kind = PaperKind::Shelf;
    std::string batch; ///< of a card
    QDate month;       ///< its first day, of a month's report
    cupboard::PlanFor planFor{.weeks = cupboard::kWeeksAhead}; ///< of a shopping list
    /// Told of a month's report, on the thread that makes it, how many of how many batches are
    /// done; false gives up. May be empty.
    std::function<bool(int done, int all)> progress = {};
};

/// Refuses what the book refuses, a card without a batch (Missing `batch`), and what was given up
/// (Cancelled). A shopping list names the bottles that it does without, as cupboard::Needs does;
/// they stand in `leftOut` too.
Result<PaperDocument> paperOf(ledger::Book& book, const PaperRequest& request,
                              const PaperAbout& about,
                              std::vector<ledger::Unread>* leftOut = nullptr);

} // namespace ullage::app
