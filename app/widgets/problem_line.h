// What stands in the way, below a field, a step or a form: on as many lines as it takes.
#pragma once

#include <QString>

class QLabel;
class QWidget;

namespace ullage::app
{

/// A line for what is wrong, hidden while nothing is.
QLabel* newProblemLine(QWidget* parent);
/// Shows it there, or hides the line for nothing.
void showIn(QLabel& line, const QString& problem);

} // namespace ullage::app
