// The schema in numbered steps. A book is brought up to date step by step, each step in a
// transaction of its own that ends by writing the step's number.
#pragma once

#include "core/chemistry/result.h"
#include "core/store/connection.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace ullage::store
{

struct SchemaStep {
    int version = 0;
    /// Statements parted by lines that say "-- next". A part that ends with a line "-- call NAME"
    /// runs a function of ours instead: see stepFunction().
    QString sql;
};

/// The steps of this program, from its resources, rising without a gap from 1.
std::vector<SchemaStep> schemaSteps();

/// The statements of a step. Parts that are only comments or blank are left out; of one that calls
/// a function only that line is left.
QStringList splitStatements(const QString& sql);

/// What a step may do that SQL cannot. It runs in the step's transaction and on its tables as they
/// are then.
using StepFunction = Result<void> (*)(Connection&);
/// The function of that name; null if there is none.
StepFunction stepFunction(QStringView name);

enum class SchemaOutcome { Current, Created, Upgraded };

/// Brings the file open on `connection`, a book or empty, to the last step; a new book in a single
/// transaction, and Created only for the one program that made it. A book that is there is copied
/// beside itself first, and the copy checked. NewerBook, naming the version it needs, if
/// the book knows more steps; StoreFailed if a step fails, which leaves the steps before it done.
Result<SchemaOutcome> bringUpToDate(Connection& connection, const QString& path,
                                    const std::vector<SchemaStep>& steps);

/// NewerBook for a version beyond the last step.
Result<void> checkVersion(int version, const std::vector<SchemaStep>& steps, const QString& path);

} // namespace ullage::store
