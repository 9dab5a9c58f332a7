#include "core/ledger/contradiction.h"

namespace ullage::ledger
{

std::vector<WayOut> waysOut(const Contradiction& contradiction)
{
    if (contradiction.error.line == 0) {
        return {};
    }
    std::vector<WayOut> ways{WayOut::LeaveOut};
    switch (contradiction.error.code) {
    case ErrorCode::NotEnough:
    case ErrorCode::TooMuch:
    case ErrorCode::BeforeMixing:
    case ErrorCode::AfterEnd:
    case ErrorCode::InFuture:
        break;
    default:
        return ways;
    }
    const Event* event = contradiction.entry ? contradiction.entry->event() : nullptr;
    if (event && !std::holds_alternative<Voided>(event->what)) {
        ways.push_back(WayOut::ChangeTime);
    }
    const Event* ours = contradiction.againstOurs && contradiction.against
                            ? contradiction.against->event()
                            : nullptr;
    if (ours && !std::holds_alternative<Mixed>(ours->what)) {
        ways.push_back(WayOut::TakeBack);
    }
    return ways;
}

} // namespace ullage::ledger
