// Windows stay on their screen: no larger than it, their titles and edges in sight.
#pragma once

#include <QSize>

class QWidget;

namespace ullage::app
{

/// What a window can be at most, its title and frame left out; before it has any, room is kept for
/// them.
QSize roomOnScreen(const QWidget& window);

/// Makes it smaller where it is larger than that, and moves it where it reaches past an edge. Left
/// alone while it fills the screen.
void keepOnScreen(QWidget& window);

} // namespace ullage::app
