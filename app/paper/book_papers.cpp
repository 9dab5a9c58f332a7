#include "app/paper/book_papers.h"

#include "app/words/left_out_words.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "core/cupboard/needs_request.h"
#include "core/formulary/codes.h"
#include "core/ledger/statistics_reader.h"
#include "core/ledger/verdict.h"

#include <algorithm>

namespace ullage::app
{

namespace
{

Result<PaperDocument> shelfOf(ledger::Book& book, const PaperAbout& about)
{
    const auto batches = book.batches(about.now);
    if (!batches)
        return tl::unexpected(batches.error());
    std::vector<ledger::Judged> bottles;
    for (const ledger::Batch& batch : *batches)
        bottles.push_back({batch, ledger::assess(batch)});
    return shelfPaper(bottles, about);
}

Result<PaperDocument> cardOf(ledger::Book& book, const PaperRequest& request,
                             const PaperAbout& about)
{
    if (request.batch.empty())
        return refuse({.code = ErrorCode::Missing, .field = "batch"});
    const auto batch = book.batch(request.batch, about.now);
    if (!batch)
        return tl::unexpected(batch.error());
    auto events = book.events(request.batch);
    if (!events)
        return tl::unexpected(events.error());
    const auto cost = book.cost(request.batch, about.now);
    if (!cost)
        return tl::unexpected(cost.error());
    return cardPaper({*batch, ledger::assess(*batch)}, ledger::happened(std::move(*events)), *cost,
                     book.formulary(), about);
}

Result<PaperDocument> shoppingOf(ledger::Book& book, const cupboard::PlanFor& planFor,
                                 const PaperAbout& about, std::vector<ledger::Unread>* leftOut)
{
    const auto needs = cupboard::readNeeds(book, about.now, planFor, wallClock());
    if (!needs)
        return tl::unexpected(needs.error());
    const auto plan = cupboard::planNeeds(needs->request);
    if (!plan)
        return tl::unexpected(plan.error());
    PaperDocument document = shoppingPaper(*plan, planFor, book.formulary(), about);
    if (!needs->leftOut.empty())
        document.blocks.emplace_back(PaperWords{leftOutText(needs->leftOut, about.wording.locale)});
    if (leftOut)
        *leftOut = needs->leftOut;
    return document;
}

Result<PaperDocument> handOverOf(ledger::Book& book, const PaperAbout& about)
{
    const auto cupboard = book.cupboard(about.now);
    if (!cupboard)
        return tl::unexpected(cupboard.error());
    const auto batches = book.batches(about.now, true);
    if (!batches)
        return tl::unexpected(batches.error());
    std::map<std::string, ledger::Batch> byId;
    for (const ledger::Batch& batch : *batches)
        byId.emplace(batch.id, batch);
    return handOverPaper(cupboard->cans, byId, about);
}

Result<PaperDocument> monthOf(ledger::Book& book, const PaperRequest& request,
                              const PaperAbout& about)
{
    // A month that is over is told as it was at its end.
    const chemistry::Instant next = instantOf(QDateTime(request.month.addMonths(1), QTime(0, 0)));
    const chemistry::Instant at = std::min(about.now, next - std::chrono::milliseconds(1));
    ledger::StatisticsRequest month;
    month.period = periodOf(request.month, request.month.addMonths(1));
    month.calendar = localCalendar();
    month.now = at;
    month.bottles = true;
    month.progress = request.progress;
    const auto so = book.statistics(month);
    if (!so)
        return tl::unexpected(so.error());
    if (!*so)
        return refuse({.code = ErrorCode::Cancelled});
    return monthPaper(**so, book.formulary(), request.month, about);
}

} // namespace

std::optional<PaperKind> paperFromCode(std::string_view code)
{
    return formulary::fromCode<PaperKind>(kPaperCodes, code);
}

Result<PaperDocument> paperOf(ledger::Book& book, const PaperRequest& request,
                              const PaperAbout& about, std::vector<ledger::Unread>* leftOut)
{
    switch (request.kind) {
    case PaperKind::Shelf:
        break;
    case PaperKind::Card:
        return cardOf(book, request, about);
    case PaperKind::Shopping:
        return shoppingOf(book, request.planFor, about, leftOut);
    case PaperKind::Month:
        return monthOf(book, request, about);
    case PaperKind::HandOver:
        return handOverOf(book, about);
    }
    return shelfOf(book, about);
}

} // namespace ullage::app
