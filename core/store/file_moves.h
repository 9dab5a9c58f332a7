// Putting whole files in place so that whenever the program or the power goes, one whole file or
// the other stands there. For files that no connection holds.
#pragma once

#include "core/chemistry/result.h"

#include <QString>

namespace ullage::store
{

/// FileFailed with the system's own message.
Error fileFailure(const QString& file, const QString& message);

/// `wanted`, or the first of `wanted`-2, -3 … that nothing has; a link that leads nowhere counts.
QString freeName(const QString& wanted);

/// Makes an empty file beside `target` under a name that was nobody's, for what becomes `target`.
Result<QString> newPart(const QString& target);
/// Whether a name is one that newPart() gives.
bool isPart(const QString& name);

/// Makes sure that a file is on the disk and not only on its way there.
Result<void> flushFile(const QString& path);
/// The same for what was made, renamed or removed in the folder that `path` is in.
Result<void> flushFolderOf(const QString& path);

/// Renames a file within its folder, and sees to it that this is on the disk; never over another:
/// IdTaken.
Result<void> moveNew(const QString& from, const QString& to);
/// Lets two files of one folder change places at one stroke. `fresh` is then where `old` was, and
/// what was there stands under the name of `fresh`. Where the system has no such stroke, the same
/// in an order in which there is a whole file under the name of `old` at any time.
Result<void> changePlaces(const QString& fresh, const QString& old);

} // namespace ullage::store
