// What a book knows that a spreadsheet's rows may mean.
#pragma once

#include "core/ledger/book.h"
#include "core/store/sql_store.h"

#include <QString>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage::app
{

/// A bottle that the book has, by the name a row may mean it by.
struct KnownBottle {
    std::string id;
    QString name;
    chemistry::Instant mixed;
    std::optional<chemistry::Instant> ended;
};

struct SheetKnown {
    const formulary::Formulary& formulary;
    std::vector<KnownBottle> bottles;
    chemistry::Instant now;
    /// Whether an event was entered and then undone, not taken back for another reason: what it was
    /// made of may come in anew.
    std::function<bool(const std::string& event)> undone = [](const std::string&) { return false; };
};

/// Of the bottles all, the discarded too. `store` must be the one `book` was opened on; both must
/// outlive it.
Result<SheetKnown> knownIn(ledger::Book& book, store::SqlStore& store);

} // namespace ullage::app
