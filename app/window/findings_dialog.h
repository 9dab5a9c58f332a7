// All that a check found wrong in a book.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include "app/window/listing_dialog.h"

#include "app/words/units.h"
#include "core/store/integrity.h"

namespace ullage::app
{

/// Reads nothing and opens nothing by itself.
class FindingsDialog : public ListingDialog
{
    Q_OBJECT

public:
    /// `check` has findings; it is copied as words, moments as seen from `now`.
    FindingsDialog(const store::BookCheck& check, chemistry::Instant now, const Wording& wording,
                   QWidget* parent = nullptr);

signals:
    void copiesRequested();
    void salvageRequested();
};

} // namespace ullage::app
