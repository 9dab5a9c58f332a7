// What the codes of hazard statements say: the one place for their words.
#pragma once

#include <QString>
#include <QStringList>

namespace ullage::app
{

/// What a statement says, "H302: harmful if swallowed"; several joined by + ("H302+H312") are said
/// one after another. What is no code known here is given back as it is: a cupboard takes texts
/// too.
QString hazardStatement(const QString& code);

/// Of several, each once, in the order of their codes.
QStringList hazardStatements(QStringList codes);

} // namespace ullage::app
