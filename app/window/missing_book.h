// A book that was used before and is not there any more, or is empty: nothing is made in its place
// without asking.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QString>
#include <QStringList>

#include "app/words/units.h"
#include "core/store/copies.h"

#include <vector>

class QWidget;

namespace ullage::app
{

/// Copies of the book at `path` in `folders`, and beside it, that can be restored; newest first,
/// not more than can be asked about at once. Opens each of them.
std::vector<store::Copy> copiesOnOffer(const QString& path, const QStringList& folders);

/// What the user wants instead; Nothing leaves everything as it is.
struct InsteadOfBook {
    enum What { Nothing, Another, Copy, Anew } what = Nothing;
    QString file; ///< of the other book or the copy
};

/// Asks through prompts(), naming the book and what is wrong with it.
InsteadOfBook askInsteadOf(const QString& path, const std::vector<store::Copy>& copies,
                           chemistry::Instant now, const Wording& wording, QWidget* parent);

/// Moves an empty file, and a log that was left without its book, out of the way: renamed, nothing
/// is removed. False if that cannot be done.
bool setRemainsAside(const QString& path);

} // namespace ullage::app
