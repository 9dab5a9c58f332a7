// What the Book asks of an entry before it is entered that one line cannot show by itself: is what
// it names there, did it happen by now, does what it takes back stand.
#pragma once

#include "core/formulary/field.h"
#include "core/ledger/book_memory.h"
#include "core/ledger/clock.h"

#include <functional>
#include <string>
#include <string_view>

namespace ullage::ledger
{

class EntryCheck
{
public:
    /// Both must outlive it.
    EntryCheck(StorePort& store, BookMemory& memory, Clock clock);

    /// Takes what an entry names but the book does not (yet) know.
    using Later =
        std::function<void(const formulary::FieldDescription& field, const std::string& id)>;
    /// UnknownId for what an entry names and the book does not know, unless `later` takes it.
    Result<void> references(const Entry& entry, const Later& later = {}) const;
    /// Whether the book knows what a field of a line of this type names.
    [[nodiscard]] Result<bool> knows(const formulary::FieldDescription& field,
                                     const std::string& id, std::string_view type) const;
    /// InFuture for what lies more than a day ahead: clocks of machines differ.
    [[nodiscard]] Result<void> notLater(chemistry::Instant at) const;
    /// Moment, and what is taken back, of a mark.
    [[nodiscard]] Result<void> mark(const FilmMark& mark) const;
    /// Looks up what a voiding takes back and gives it that one's batch. UnknownId, or Conflict if
    /// it names another batch.
    Result<void> findTaken(Event& voiding) const;

private:
    StorePort* m_store;
    BookMemory* m_memory;
    Clock m_clock;
};

} // namespace ullage::ledger
