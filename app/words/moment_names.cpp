#include "app/words/moment_names.h"

#include <algorithm>

namespace ullage::app
{

// Letter for letter, so that a place in it is a place in what was typed.
QString plainly(const QString& text)
{
    QString plain = text;
    for (QChar& c : plain) {
        if (c.digitValue() >= 0)
            c = QChar(u'0' + c.digitValue());
        else if (c.isSpace() || c.category() == QChar::Other_Format)
            c = u' '; // marks of the direction of writing stand between parts as well
        else
            c = c.toLower();
    }
    return plain;
}

namespace
{

// The locale's names and the English ones, longest first; without the stop of a short form.
template <class NameOf>
std::vector<MomentName> namesUpTo(int count, const QLocale& locale, NameOf nameOf)
{
    std::vector<MomentName> names;
    for (const QLocale& one : {locale, QLocale(QLocale::C)}) {
        for (int i = 1; i <= count; ++i) {
            for (QString name : nameOf(one, i)) {
                name = plainly(name).trimmed();
                while (name.endsWith(u'.'))
                    name.chop(1);
                const bool letters =
                    std::any_of(name.begin(), name.end(), [](QChar c) { return c.isLetter(); });
                if (letters)
                    names.push_back({name, i});
            }
        }
    }
    std::stable_sort(names.begin(), names.end(), [](const MomentName& a, const MomentName& b) {
        return a.text.size() > b.text.size();
    });
    return names;
}

} // namespace

std::vector<MomentName> monthNames(const QLocale& locale)
{
    return namesUpTo(12, locale, [](const QLocale& in, int month) {
        return QStringList{in.monthName(month), in.standaloneMonthName(month),
                           in.monthName(month, QLocale::ShortFormat),
                           in.standaloneMonthName(month, QLocale::ShortFormat)};
    });
}

std::vector<MomentName> weekdayNames(const QLocale& locale)
{
    return namesUpTo(7, locale, [](const QLocale& in, int day) {
        return QStringList{in.dayName(day), in.standaloneDayName(day),
                           in.dayName(day, QLocale::ShortFormat),
                           in.standaloneDayName(day, QLocale::ShortFormat)};
    });
}

} // namespace ullage::app
