// Source lines as they are read: the grade in the user's language, the rest as it was entered.
#pragma once

#include <QString>

#include <string>

namespace ullage::app
{

/// "Allgemeine Praxis: zehn bis fünfzehn Filme"; a published source without its grade. Empty for
/// an empty line.
QString sourceText(const std::string& line);
/// The same without the grade, for where that stands beside it; empty if there is nothing else.
QString sourceOnly(const std::string& line);

} // namespace ullage::app
