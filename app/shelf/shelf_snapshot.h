// All that the shelf shows, made in one pass from what the book held at one moment: pure functions,
// fit for any thread.
#pragma once

#include "app/shelf/selected_bottle.h"
#include "app/shelf/shelf_views.h"
#include "app/widgets/bottle_view.h"
#include "core/ledger/charges.h"
#include "core/ledger/event.h"
#include "core/ledger/run_plan.h"
#include "core/ledger/strip_record.h"

#include <memory>
#include <optional>
#include <vector>

namespace ullage::app
{

/// One of which nothing is shown, because it is not what was entered.
struct UnreadBottle {
    QString id;
    QString name;
    QString solution; ///< its name
};

/// The bottles in use, each as it is now.
struct ShelfSnapshot {
    std::vector<ledger::Judged> bottles;
    std::optional<chemistry::Instant> newest; ///< of any entry, also where it lies after now
    chemistry::Instant now;
    std::vector<UnreadBottle> unread = {};
};

struct ShelfShown {
    std::vector<BottleView> bottles; ///< in the order of the snapshot, the unread ones last
    QString summary; ///< or that the clock stands before the newest entry; empty for no bottle
};

ShelfShown shelfShown(const ShelfSnapshot& shelf, const Wording& wording);

/// What is said of an unread bottle; `why` is what is wrong, in a sentence.
SelectedBottle unreadBottle(const UnreadBottle& bottle, const QString& why);
/// What is said of one that the book holds and that could not be read just now.
SelectedBottle unreachedBottle(const UnreadBottle& bottle, const QString& why);

/// One bottle with its history.
struct BottleSnapshot {
    ledger::Judged bottle;
    std::vector<ledger::Event> events; ///< as entered, with those of the bottles connected with it
    std::vector<ledger::StripReading> strips; ///< of its developer; not looked at for others
    std::vector<std::shared_ptr<const formulary::Vessel>> freeVessels;
    KnownTimes times;
    chemistry::Celsius temperature;        ///< of the next bath
    QString secondBath = {};               ///< of a first fixing bath the one after it; or empty
    std::optional<ledger::Cost> cost = {}; ///< so far; empty where it could not be reckoned
};

/// Everything that is said of it: the next time, the reasons, the charts, what would help.
SelectedBottle selectedBottle(const BottleSnapshot& snapshot, const formulary::Formulary& formulary,
                              const Wording& wording);

/// Its states at pastMoments(), each folded on from the one before; those that cannot be folded are
/// left out. `entered` are its events and those of all bottles it is connected with by filling.
std::vector<ledger::Batch> pastOf(const ledger::Batch& batch, std::vector<ledger::Event> entered,
                                  const formulary::Formulary& formulary);

} // namespace ullage::app
