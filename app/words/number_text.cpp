#include "app/words/number_text.h"

#include "core/ledger/load_times.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

namespace ullage::app
{

namespace
{

// Keeps a number and its unit on one line.
const QString kNoBreak = QStringLiteral("\u00a0");

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

// A piece of a date format: a field (a run of d, M or y) or what stands between fields.
struct FormatPiece {
    QChar field; // null for text between
    QString text;
};

std::vector<FormatPiece> piecesOf(const QString& format)
{
    std::vector<FormatPiece> pieces;
    for (qsizetype i = 0; i < format.size();) {
        const QChar c = format[i];
        qsizetype end = i + 1;
        QChar field;
        if (c == u'\'') {
            end = format.indexOf(u'\'', i + 1);
            end = end < 0 ? format.size() : end + 1;
        } else if (c == u'd' || c == u'M' || c == u'y') {
            while (end < format.size() && format[end] == c)
                ++end;
            field = c == u'd' && end - i > 2 ? QChar(u'w') : c; // ddd and dddd name the weekday
        }
        pieces.push_back({field, format.mid(i, end - i)});
        i = end;
    }
    return pieces;
}

enum class DateParts { DayMonth, DayMonthYear, MonthYear };

bool wanted(QChar field, DateParts parts)
{
    return field == u'M' || (field == u'd' && parts != DateParts::MonthYear) ||
           (field == u'y' && parts != DateParts::DayMonth);
}

// The locale's long format without the day of the week and what else is not wanted: from the first
// wanted field to the last, with what stands between them and what is written close after the last.
QString dateFormat(const QLocale& locale, bool shortMonth, DateParts parts)
{
    const auto pieces = piecesOf(locale.dateFormat(QLocale::LongFormat));
    const auto isWanted = [parts](const FormatPiece& piece) { return wanted(piece.field, parts); };
    const auto first = std::find_if(pieces.begin(), pieces.end(), isWanted);
    const auto last = std::find_if(pieces.rbegin(), pieces.rend(), isWanted).base();
    QString format;
    QString between;
    bool dropped = false; // a field is missing here, and its punctuation goes with it
    for (auto piece = first; piece < last; ++piece) {
        if (isWanted(*piece)) {
            format += dropped ? QStringLiteral(" ") : between;
            format += shortMonth && piece->text == QStringLiteral("MMMM") ? QStringLiteral("MMM")
                                                                          : piece->text;
            between.clear();
            dropped = false;
        } else if (piece->field.isNull()) {
            between += piece->text;
        } else if (piece->field != u'w') {
            dropped = true;
        }
    }
    for (auto piece = last; piece < pieces.end() && piece->field.isNull(); ++piece) {
        if (piece->text.contains(u' ') || piece->text == QStringLiteral(","))
            break;
        format += piece->text;
    }
    return format;
}

// Whether a date is told with its year.
bool needsYear(QDate date, QDate today)
{
    constexpr int kHalfAYear = 183;
    return date.year() != today.year() && std::abs(today.daysTo(date)) > kHalfAYear;
}

} // namespace

QString numberText(double value, int decimals, const QLocale& locale)
{
    const double scale = std::pow(10.0, decimals);
    double rounded = std::round(value * scale) / scale;
    if (rounded == 0)
        rounded = 0; // no "-0"
    int places = decimals;
    while (places > 0) {
        const double shorter = std::pow(10.0, places - 1);
        if (std::abs(std::round(rounded * shorter) / shorter - rounded) > 0.5 / (scale * 10))
            break;
        --places;
    }
    return locale.toString(rounded, 'f', places);
}

QString volumeText(chemistry::Millilitres volume, const Wording& wording)
{
    if (wording.units.volume == VolumeUnit::FluidOunce)
        return Words::tr("%1 fl oz")
            .replace(u' ', kNoBreak)
            .arg(numberText(toFluidOunces(volume.value()), 1, wording.locale));
    const int decimals = std::abs(volume.value()) < 9.95 ? 1 : 0;
    return Words::tr("%1 ml")
        .replace(u' ', kNoBreak)
        .arg(numberText(volume.value(), decimals, wording.locale));
}

namespace
{

QString degrees(chemistry::Celsius temperature, const Wording& wording, bool padded)
{
    const bool fahrenheit = wording.units.temperature == TemperatureUnit::Fahrenheit;
    const double value = fahrenheit ? toFahrenheit(temperature.value()) : temperature.value();
    const QString number = padded ? wording.locale.toString(std::round(value * 10) / 10, 'f', 1)
                                  : numberText(value, 1, wording.locale);
    return number + kNoBreak + (fahrenheit ? QStringLiteral("°F") : QStringLiteral("°C"));
}

} // namespace

QString temperatureText(chemistry::Celsius temperature, const Wording& wording)
{
    return degrees(temperature, wording, true);
}

QString shortTemperatureText(chemistry::Celsius temperature, const Wording& wording)
{
    return degrees(temperature, wording, false);
}

QString timeText(chemistry::Seconds time, TimeStep step)
{
    if (step == TimeStep::FiveSeconds)
        time = ledger::inUse(time);
    else if (step == TimeStep::AtLeastFiveSeconds)
        time = ledger::inUseAtLeast(time);
    const long long total = std::llround(time.value());
    const long long seconds = std::abs(total);
    const auto two = [](long long n) {
        return QStringLiteral("%1").arg(n, 2, 10, QLatin1Char('0'));
    };
    QString text = seconds < 3600 ? QStringLiteral("%1:%2").arg(seconds / 60).arg(two(seconds % 60))
                                  : QStringLiteral("%1:%2:%3")
                                        .arg(seconds / 3600)
                                        .arg(two(seconds / 60 % 60), two(seconds % 60));
    return total < 0 ? QStringLiteral("−") + text : text;
}

QString filmCountText(double films, const QLocale& locale)
{
    static const std::array<std::pair<double, QString>, 5> kParts{{
        {1.0 / 3, QStringLiteral("⅓")},
        {2.0 / 3, QStringLiteral("⅔")},
        {0.25, QStringLiteral("¼")},
        {0.5, QStringLiteral("½")},
        {0.75, QStringLiteral("¾")},
    }};
    constexpr double kSlack = 1e-3;
    const double whole = std::floor(films + kSlack);
    const double part = films - whole;
    if (films >= 0 && part > kSlack) {
        for (const auto& [value, sign] : kParts) {
            if (std::abs(part - value) < kSlack)
                return whole > 0 ? locale.toString(whole, 'f', 0) + sign : sign;
        }
    }
    return numberText(films, 1, locale);
}

QString filmsText(chemistry::Films films, const Wording& wording)
{
    const double count = films.value();
    const double nearest = std::round(count);
    if (std::abs(count - nearest) < 1e-3)
        return Words::tr("%Ln film(s)", nullptr, static_cast<int>(nearest));
    const QString number = filmCountText(count, wording.locale);
    return (count < 1 ? Words::tr("%1 film") : Words::tr("%1 films")).arg(number);
}

double usableFilms(double films)
{
    constexpr double kSlack = 1e-3; // a third added three times is a whole film
    const double parts = films < 10 ? 4 : 1;
    return std::floor((films + kSlack) * parts) / parts;
}

QString filmsLeftText(chemistry::Films films, const Wording& wording)
{
    return filmsText(chemistry::Films(usableFilms(films.value())), wording);
}

QString clearingNumber(chemistry::Seconds time, const QLocale& locale)
{
    constexpr double kSlack = 1e-6; // a whole second that was reckoned is not the next one
    return numberText(std::ceil(time.value() - kSlack), 0, locale);
}

QString clearingText(chemistry::Seconds time, const QLocale& locale)
{
    return Words::tr("%1 s").replace(u' ', kNoBreak).arg(clearingNumber(time, locale));
}

QString percentText(double share, const QLocale& locale)
{
    return Words::tr("%1 %").replace(u' ', kNoBreak).arg(numberText(share * 100, 0, locale));
}

QString factorText(double factor, const QLocale& locale)
{
    return QStringLiteral("×\u00a0") + locale.toString(factor, 'f', 2);
}

QString dateText(QDate date, QDate today, const QLocale& locale)
{
    if (!date.isValid())
        return {};
    const auto parts = needsYear(date, today) ? DateParts::DayMonthYear : DateParts::DayMonth;
    return locale.toString(date, dateFormat(locale, true, parts));
}

QString yearDateText(QDate date, const QLocale& locale)
{
    return locale.toString(date, dateFormat(locale, true, DateParts::DayMonthYear));
}

QString monthYearText(QDate date, const QLocale& locale)
{
    return locale.toString(date, dateFormat(locale, true, DateParts::MonthYear));
}

QString aboutDateText(QDate date, QDate today, const QLocale& locale)
{
    const QString text = date.isValid() && needsYear(date, today) ? monthYearText(date, locale)
                                                                  : dateText(date, today, locale);
    return Words::tr("about %1").arg(text);
}

QString fullDateText(QDate date, const QLocale& locale)
{
    return locale.toString(date, dateFormat(locale, false, DateParts::DayMonthYear));
}

QString withOneStop(QString sentence)
{
    static const QRegularExpression kTwo(QStringLiteral("(?<!\\.)\\.\\.(?!\\.)"));
    return sentence.replace(kTwo, QStringLiteral("."));
}

} // namespace ullage::app
