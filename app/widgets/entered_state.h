// What stands in the fields of a form, to know whether somebody has changed it.
#pragma once

#include <QStringList>

class QWidget;

namespace ullage::app
{

/// What stands in all fields within that can be seen, in a fixed order: equal to what it was before
/// exactly where nothing was changed, or was changed back.
QStringList enteredIn(const QWidget& within);

/// Whether the user lets go of what was filled in, asked over the form `title`.
bool letsGoOf(QWidget& form, const QString& title);

} // namespace ullage::app
