// What the database's refusals mean for whoever keeps a book, and what to do about them.
#pragma once

#include "core/chemistry/result.h"

#include <QString>

namespace ullage::app
{

/// Two or three sentences for a StoreFailed: what is wrong, that nothing was changed, what to do,
/// and the database's own message for whoever can use it.
QString storeFailureText(const Error& error);
/// For a BookMoved: what became of the open book or its log, that nothing was entered, what to do.
QString movedBookText(const Error& error);

} // namespace ullage::app
