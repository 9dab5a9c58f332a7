// Names of months and weekdays as they may stand in what people write.
#pragma once

#include <QLocale>
#include <QString>

#include <vector>

namespace ullage::app
{

/// In small letters and plain digits, letter for letter: a place in it is a place in what was
/// typed.
QString plainly(const QString& text);

struct MomentName {
    QString text;
    int number; ///< from 1
};
/// The locale's names, long and short, and the English ones, written plainly(), longest first;
/// without the stop of a short form.
std::vector<MomentName> monthNames(const QLocale& locale);
std::vector<MomentName> weekdayNames(const QLocale& locale);

} // namespace ullage::app
