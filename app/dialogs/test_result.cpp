#include "app/dialogs/test_result.h"

#include "app/dialogs/strip_form.h"

#include <QComboBox>
#include <QLabel>

namespace ullage::app
{

QComboBox* addTestResult(FieldForm& form)
{
    auto* passed = new QComboBox(&form);
    passed->addItem(StripForm::tr("Passed: fit for film"), 1);
    passed->addItem(StripForm::tr("Failed: to be discarded"), 0);
    passed->addItem(StripForm::tr("Neither: only noted"), -1);
    form.addRow(QStringLiteral("passed"), StripForm::tr("R&esult"), passed);
    return passed;
}

std::optional<bool> testResultOf(const QComboBox& passed)
{
    const int chosen = passed.currentData().toInt();
    return chosen < 0 ? std::nullopt : std::optional(chosen == 1);
}

void showTestResult(QComboBox& passed, std::optional<bool> result)
{
    passed.setCurrentIndex(passed.findData(result ? (*result ? 1 : 0) : -1));
}

void sayJudgement(QLabel& judgement, const QString& text, Tone tone)
{
    judgement.setText(text);
    judgement.setVisible(!text.isEmpty());
    setTone(&judgement, tone);
}

QString failedTestText()
{
    return StripForm::tr("A failed test marks the bottle for discarding; a later pass does not "
                         "undo it, taking the test back does.");
}

} // namespace ullage::app
