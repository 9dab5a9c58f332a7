// Whether a book's tables, indexes and triggers are those that the program makes.
#pragma once

#include "core/store/connection.h"

#include <vector>

namespace ullage::store
{

/// Compares them with those of an empty book made by this program's steps: what is missing, what
/// was changed, and what is none of ours, each NotAsEntered with the name as its subject.
Result<std::vector<Error>> compareSchema(Connection& connection);

} // namespace ullage::store
