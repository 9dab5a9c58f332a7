// Names for new batches, as people write them on tape: "Dev 15" after "Dev 14".
#pragma once

#include "core/formulary/solution.h"

#include <QString>
#include <QStringList>

namespace ullage::app
{

/// "Dev", "Stop", "Fix", "Wash aid", "Wetting", "Bath", in the user's language.
QString namePrefix(formulary::Role role);

/// The prefix and one more than the highest number used with it. `taken` are the names of all
/// batches, ended ones too; names of any other form are passed over, and none is ever proposed
/// twice.
QString nextBatchName(formulary::Role role, const QStringList& taken);

/// Of a part of a batch in a bottle of its own: "Dev 14 b", then "Dev 14 c"; none that is taken.
QString partName(const QString& whole, const QStringList& taken);

} // namespace ullage::app
