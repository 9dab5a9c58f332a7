// Numbers, amounts and dates in words of the user's locale and units. Rounding happens here and
// only here, to what a person can measure or use: whole millilitres, tenths of a degree, seconds.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/quantities.h"

#include <QDate>
#include <QString>

namespace ullage::app
{

/// At most `decimals` places; zeros at the end are left out.
QString numberText(double value, int decimals, const QLocale& locale);

/// "600 ml" to whole millilitres (tenths below 10), "20.3 fl oz" to tenths.
QString volumeText(chemistry::Millilitres volume, const Wording& wording);

/// "20.5 °C" or "68.9 °F", always with one decimal place.
QString temperatureText(chemistry::Celsius temperature, const Wording& wording);
/// "20 °C": without decimals where there are none to show.
QString shortTemperatureText(chemistry::Celsius temperature, const Wording& wording);

/// AtLeastFiveSeconds: up to the step, for what must not fall short, as fixing.
enum class TimeStep { Second, FiveSeconds, AtLeastFiveSeconds };
/// "12:35", from an hour on "1:05:00"; rounded to the step, negative times with a minus.
QString timeText(chemistry::Seconds time, TimeStep step = TimeStep::Second);
/// "121": the seconds that a piece of film takes to clear, up to a whole one, since a fixing time
/// that must not fall short is reckoned from them.
QString clearingNumber(chemistry::Seconds time, const QLocale& locale);
/// "121 s": the same with its unit.
QString clearingText(chemistry::Seconds time, const QLocale& locale);

/// "2⅓": thirds and quarters as fractions, other parts to a tenth.
QString filmCountText(double films, const QLocale& locale);
/// "5 films", "1 film", "⅔ film".
QString filmsText(chemistry::Films films, const Wording& wording);

/// What is left as whole work: down to a quarter of a film, from ten films on to a whole one.
double usableFilms(double films);
/// "4¼ films" of 4.3, "16 films" of 16.6: as filmsText of usableFilms.
QString filmsLeftText(chemistry::Films films, const Wording& wording);

/// "17 %" of a share of 1, to whole percent.
QString percentText(double share, const QLocale& locale);
/// "× 1.32".
QString factorText(double factor, const QLocale& locale);

/// "2 Nov" in the locale's order; with the year where it is not `today`'s and the date lies more
/// than half a year away.
QString dateText(QDate date, QDate today, const QLocale& locale);
/// "2 Nov 2026": the same, always with the year.
QString yearDateText(QDate date, const QLocale& locale);
/// "Nov 2026".
QString monthYearText(QDate date, const QLocale& locale);
/// "about 2 Nov": for dates that a model gives. Where the year stands the day does not: "about
/// Aug 2027", because no model knows that day.
QString aboutDateText(QDate date, QDate today, const QLocale& locale);
/// "2 November 2026" in the locale's order.
QString fullDateText(QDate date, const QLocale& locale);

/// A sentence that ends in a date whose month is abbreviated, or in another abbreviation, has one
/// full stop, not two. Three dots stay.
QString withOneStop(QString sentence);

} // namespace ullage::app
