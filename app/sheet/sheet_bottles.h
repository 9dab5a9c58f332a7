// Which bottle a row means by a name: of the sheet's and of the book's.
#pragma once

#include "app/sheet/sheet_cells.h"
#include "app/sheet/sheet_known.h"

#include <set>
#include <vector>

namespace ullage::app
{

class SheetBottles
{
public:
    explicit SheetBottles(std::vector<KnownBottle> known) : m_bottles(std::move(known)) {}

    void add(KnownBottle bottle) { m_bottles.push_back(std::move(bottle)); }
    /// One whose row is refused: rows that name it wait for that, and have no fault of their own.
    void addRefused(const QString& name) { m_refused.insert(name.toLower()); }
    [[nodiscard]] bool isRefused(const QString& name) const
    {
        return m_refused.contains(name.toLower());
    }

    /// The one of that name that was mixed last and was there then; null for none.
    [[nodiscard]] const KnownBottle* named(const QString& name, chemistry::Instant at) const;
    /// Why there was none: BeforeMixing, AfterEnd, or UnknownId with the names of some that there
    /// were.
    [[nodiscard]] Error whyNone(const QString& name, chemistry::Instant at) const;
    /// A day without a time, moved to when the bottle of that name was there on it: not before it
    /// was mixed that day, and not after it was discarded.
    [[nodiscard]] SheetMoment within(const QString& name, SheetMoment moment) const;

private:
    std::vector<KnownBottle> m_bottles;
    std::set<QString> m_refused;
};

} // namespace ullage::app
