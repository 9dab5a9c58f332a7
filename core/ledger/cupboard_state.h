// What stands in the cupboard at a moment, in the cans, and which film is known to come.
#pragma once

#include "core/ledger/book_memory.h"
#include "core/ledger/can_stock.h"
#include "core/ledger/item_stock.h"
#include "core/ledger/store_port.h"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ullage::ledger
{

/// A line that a person may enter about the cupboard.
using CupboardLine = std::variant<Packet, Chemical, Supply, Barcode, Work, Container>;

enum class Keeps {
    Fine,
    EndsSoon, ///< within kEndsSoon
    Past,
};
/// How far ahead a date is warned of (a convention, no source).
inline constexpr chemistry::Days kEndsSoon{30};

/// Until when an item may be used.
struct Shelflife {
    Keeps keeps = Keeps::Fine;
    /// The end of its use-by day, or of its time once opened, whichever comes first; empty if
    /// neither is known.
    std::optional<chemistry::Instant> until;
    bool byOpening = false; ///< it is its time once opened that ends it
};
Shelflife shelflife(const Item& item, const ItemStock& stock, chemistry::Instant at);

/// The line of a thing that is there.
using ItemLine = std::variant<Packet, Chemical, Supply>;

struct ItemHere {
    Item item;
    ItemStock stock;
    Shelflife life;
    ItemLine line;               ///< as it was given last
    std::string bought;          ///< a day as ISO text, or empty
    std::string lot;             ///< of a packet
    std::optional<Decimal> cost; ///< of all of it, as it was bought
    std::string currency;
};

struct CanHere {
    Container can;
    CanStock stock;
};

struct CupboardState {
    std::vector<ItemHere> items; ///< what is there, or may be: packets, chemicals, supplies
    std::vector<CanHere> cans;
    /// Packets that stand, used up or not, in the order in which they came: what they cost.
    std::vector<Packet> packets;
    /// Chemicals and supplies that stand, used up or not, as they were given last: by every id that
    /// they had, since what a code stands for is named by one.
    std::map<std::string, ItemLine> things;
    std::vector<Barcode> barcodes;
    std::vector<Work> works;
    /// Of each of `works` the id that it was first entered under.
    std::map<std::string, std::string> firstIds;
};

/// Reads what is there at `at`. What a mixing used whole, or was thrown away, is passed over
/// without its events being read. Fails with what the store says, or what stockOf() and canStock()
/// refuse of a book that was entered by others. With `leftOut`, a can that canStock() refuses
/// stands there instead, for which nobody can say how full it is.
Result<CupboardState> cupboardState(StorePort& store, chemistry::Instant at,
                                    const BatchThen& batchThen,
                                    std::vector<Unread>* leftOut = nullptr);

/// The end of a day given as ISO text ("2026-01-31"), in UTC; empty for any other text.
std::optional<chemistry::Instant> endOfDay(const std::string& day);

} // namespace ullage::ledger
