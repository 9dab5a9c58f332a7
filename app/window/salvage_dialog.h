// What came out of a damaged book, and what is missing.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include "app/window/listing_dialog.h"

#include "app/words/units.h"
#include "core/store/salvage.h"

namespace ullage::app
{

/// Reads nothing and opens nothing by itself.
class SalvageDialog : public ListingDialog
{
    Q_OBJECT

public:
    /// Accepted if the new book at `fresh` is to be opened. `done` is copied as words, moments as
    /// seen from `now`.
    SalvageDialog(const store::Salvaged& done, const QString& fresh, chemistry::Instant now,
                  const Wording& wording, QWidget* parent = nullptr);
};

} // namespace ullage::app
