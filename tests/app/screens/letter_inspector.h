// Letters that are underlined to be pressed with Alt, or alone in a menu: where two things answer
// to one, it only goes from the one to the other.
#pragma once

#include <QStringList>

class QWidget;

namespace ullage::app
{

/// One sentence for each letter that two things of `root`, as it is shown, or two entries of one of
/// its menus answer to.
QStringList letterFaults(const QWidget& root);

} // namespace ullage::app
