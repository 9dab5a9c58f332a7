// What the demo's people wrote, in the user's language: the demo is made anew each time it opens.
#pragma once

#include <QJsonObject>

namespace ullage::app
{

/// Puts names, places, notes and reasons of a line of the demo into the language that is installed.
/// Ids, codes and what films are called stay; so do names of the starter, which are put into words
/// wherever they are shown.
void wordDemoLine(QJsonObject& line);

} // namespace ullage::app
