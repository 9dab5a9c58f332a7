// Names and sources that a new book begins with, in the user's language. The book keeps them as
// they were entered, in English; whatever a person typed is shown as it was typed.
#pragma once

#include <QString>

#include <string>

namespace ullage::app
{

/// The name of a solution, a bottle or a dilution: a starter name that nobody has changed in the
/// user's language, any other as it is.
QString shownName(const std::string& name);
/// What a field that began with shownName(`kept`) holds now: `kept` while its words are the same.
std::string keptName(const std::string& kept, const QString& field);

/// A source line's words, or a composition: the phrases of the starter in the user's language
/// ("from memory of …", "common practice, no source: …") and what own figures come from, names of
/// publications as they are.
QString shownSource(const QString& words);
/// What a field that began with shownSource(`kept`) of a composition holds now: `kept` while its
/// words are the same; else as it was typed, but with the names, the decimal point and "per litre"
/// that the core reads, since hazards and weighing go by them.
std::string keptComposition(const std::string& kept, const QString& field);

} // namespace ullage::app
