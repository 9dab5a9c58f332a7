// Books for tests of faults.
#pragma once

#include "core/store/schema_steps.h"
#include "tests/core/store/temp_book.h"

namespace ullage::faults
{

/// A journal's lines that say what happened to batch "b": mixed, then `deeds` draughts.
QByteArray journalOfDraughts(int deeds);

/// A journal of this many lines about chemicals, ids beginning with `mark`.
QByteArray journalOfChemicals(const QByteArray& mark, int lines);

/// Makes a book at `path` (which must not exist) as a program with the first `version` steps left
/// it, with what `journal` says.
void makeOlderBook(const QString& path, int version, const QByteArray& journal);

/// The book's lines in order, read by nothing but SQL; empty where it cannot be read.
QStringList linesOf(const QString& path);

/// What the check of the whole book finds; "sound" or the first finding.
std::string soundness(const QString& path);

} // namespace ullage::faults
