// What the forms of a test share: what it came to, and the words that judge it.
#pragma once

#include "app/dialogs/field_form.h"
#include "app/widgets/theme.h"

#include <optional>

class QComboBox;
class QLabel;

namespace ullage::app
{

/// Adds the row of what a test came to; a failed one condemns the bottle.
QComboBox* addTestResult(FieldForm& form);
/// Empty where it is only noted.
std::optional<bool> testResultOf(const QComboBox& passed);
void showTestResult(QComboBox& passed, std::optional<bool> result);

/// Hidden while there is nothing to say.
void sayJudgement(QLabel& judgement, const QString& text, Tone tone);
/// What a failed test does.
QString failedTestText();

} // namespace ullage::app
