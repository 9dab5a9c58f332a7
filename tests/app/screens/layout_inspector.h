// What a person would see wrong at a glance: words and figures that are cut, controls that lie over
// one another or out of reach, lists of a few rows that show half of one.
#pragma once

#include <QString>
#include <QStringList>

class QWidget;

namespace ullage::app
{

/// What a person would call `widget`: its accessible name, its words, else its kind.
QString nameOf(const QWidget& widget);

/// One sentence for each fault of what `root`, laid out and shown, holds.
QStringList layoutFaults(const QWidget& root);

/// Where Tab goes up or back within what it goes through, and controls that neither Tab nor a key
/// reaches.
QStringList tabFaults(QWidget& root);

} // namespace ullage::app
