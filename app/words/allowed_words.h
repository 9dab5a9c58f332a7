// What the core says may stand in a field, in the user's language.
#pragma once

#include <QString>

#include <string>
#include <vector>

namespace ullage::app
{

/// Every phrase of the core that stands in Error::allowed and is no code, id or number.
const std::vector<const char*>& allowedPhrases();

/// The phrase in the user's language; what is none of them (codes, ids, numbers) as it is.
QString allowedText(const std::string& allowed);

} // namespace ullage::app
