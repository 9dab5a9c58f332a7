// Names of the journal's fields as the window says them.
#pragma once

#include <QString>

#include <string>

namespace ullage::app
{

QString fieldName(const std::string& field);

} // namespace ullage::app
