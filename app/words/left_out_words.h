// Bottles and cans that a list or a plan does without, because they cannot be read.
#pragma once

#include "core/ledger/book_memory.h"

#include <QLocale>
#include <QString>

#include <vector>

namespace ullage::app
{

/// "Left out, because it cannot be read as it was entered: Dev 1"; empty for none.
QString leftOutText(const std::vector<ledger::Unread>& leftOut, const QLocale& locale);

} // namespace ullage::app
