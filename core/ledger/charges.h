// What was paid for things of the cupboard, and which part of it went into which batch.
#pragma once

#include "core/ledger/cupboard.h"
#include "core/ledger/money.h"
#include "core/ledger/store_port.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage::ledger
{

/// An amount, and whether it is all of it.
struct Cost {
    Money money;
    bool whole = true; ///< false: something in it has no known price, `money` is the least

    Cost& operator+=(const Cost& other)
    {
        money += other.money;
        whole = whole && other.whole;
        return *this;
    }
    friend bool operator==(const Cost&, const Cost&) = default;
};

/// One thing as it was bought, used up by now or not.
struct Purchase {
    Item item;
    std::string bought;           ///< a day as ISO text, or empty
    std::optional<Decimal> price; ///< of all of it; empty: not known
    std::string currency;
};
/// Of everything that stands in the cupboard's lines; what was withdrawn was never bought.
std::vector<Purchase> purchasesOf(const Cupboard& cupboard);

/// What a batch got by one taking or mixing.
struct Charge {
    std::string event; ///< the taking, or the mixing that named its packet
    std::string batch;
    chemistry::Instant at;
    Cost cost; ///< not whole where price or amount of the thing are not known
};

/// Of a liquid, a chemical or a supply a batch bears by what was taken for it out of what was
/// bought; of a packet of powder all, and where books of before name one packet at several mixings,
/// each its part by volume. What nothing was taken for stays with the thing: the parts of all
/// batches and of that add up to the price. A mixing that names a liquid and has nothing taken of
/// it is charged with what is not known. `entered`: as stockOf() asks for them; refuses as it does.
Result<std::vector<Charge>> chargesOf(const Purchase& purchase, const std::vector<Event>& entered,
                                      chemistry::Instant until);

Purchase purchaseOf(const Packet& packet);
/// What a mixing of so much from it would be charged with: a packet of powder whole, of a liquid
/// what its solution takes (liquidFor()).
Cost costOfMixing(const Purchase& purchase, chemistry::Millilitres volume);

/// By batch, each by time.
using Charges = std::map<std::string, std::vector<Charge>>;

/// Of a whole book, of which `cupboard` are the lines. Refuses what the store does, and as
/// chargesOf().
Result<Charges> readCharges(StorePort& store, const Cupboard& cupboard, chemistry::Instant until);
/// Of a few batches, without the rest of the book's events being read. `entered`: all of theirs.
Result<Charges> readCharges(StorePort& store, const std::vector<Event>& entered,
                            chemistry::Instant until);

} // namespace ullage::ledger
