#include "app/words/quantity_words.h"

#include "app/words/number_reading.h"
#include "app/words/number_text.h"

#include <QRegularExpression>

#include <cmath>
#include <utility>

namespace ullage::app
{

namespace
{

constexpr double kSquareCentimetresPerSquareInch = 2.54 * 2.54;

bool oneOf(const QString& unit, std::initializer_list<const char*> names)
{
    for (const char* name : names) {
        if (unit == QString::fromUtf8(name))
            return true;
    }
    return false;
}

ReadQuantity quantityOf(const ReadNumber& number)
{
    if (!number.value)
        return {std::nullopt, ReadProblem::NotANumber};
    return {number.value, {}, number.other, number.open};
}

// The same in another unit: `change` of every reading; what is too large there is no number.
template <class Change>
ReadQuantity changed(ReadQuantity read, const Change& change)
{
    const auto finite = [&](double n) {
        const double made = change(n);
        return std::isfinite(made) ? std::optional(made) : std::nullopt;
    };
    read.value = finite(*read.value);
    if (!read.value)
        return {std::nullopt, ReadProblem::NotANumber};
    if (read.other)
        read.other = finite(*read.other);
    read.open = read.open && read.other;
    return read;
}

// "2⅓", "2 1/3", "1/3" as well as plain numbers.
ReadQuantity readCount(const QString& text, const QLocale& locale)
{
    static const QRegularExpression fraction(
        QStringLiteral("^(?:(\\d+)\\s+)?(\\d+)\\s*/\\s*(\\d+)$"));
    if (const auto match = fraction.match(text); match.hasMatch()) {
        const double below = match.captured(3).toDouble();
        if (below == 0)
            return {std::nullopt, ReadProblem::NotANumber};
        return {match.captured(1).toDouble() + match.captured(2).toDouble() / below, {}};
    }
    static const std::pair<char16_t, double> kSigns[]{
        {u'⅓', 1.0 / 3}, {u'⅔', 2.0 / 3}, {u'¼', 0.25}, {u'½', 0.5}, {u'¾', 0.75}};
    for (const auto& [sign, part] : kSigns) {
        if (!text.endsWith(QChar(sign)))
            continue;
        const QString whole = text.chopped(1).trimmed();
        if (whole.isEmpty())
            return {part, {}};
        const ReadQuantity read = quantityOf(readNumber(whole, locale));
        return read.value ? changed(read, [part = part](double n) { return n + part; }) : read;
    }
    return quantityOf(readNumber(text, locale));
}

ReadQuantity readTime(const QString& text, const QLocale& locale)
{
    static const QRegularExpression clock(
        QStringLiteral("^([-−+])?(?:(\\d{1,3}):)?(\\d{1,4}):([0-5]\\d)(?:\\s*(?:min|h))?$"));
    if (const auto match = clock.match(text); match.hasMatch()) {
        // A field refuses a time below 0, but shows what it refuses.
        const bool below = match.captured(1) == u"-" || match.captured(1) == u"−";
        const double seconds = match.captured(2).toDouble() * 3600 +
                               match.captured(3).toDouble() * 60 + match.captured(4).toDouble();
        return {below ? -seconds : seconds, {}};
    }
    static const QRegularExpression both(
        QStringLiteral("^(\\d+)\\s*(?:min|m|')\\s*([0-5]?\\d)\\s*(?:sec|sek|s|\"|'')?$"));
    if (const auto match = both.match(text); match.hasMatch())
        return {match.captured(1).toDouble() * 60 + match.captured(2).toDouble(), {}};
    static const QRegularExpression single(QStringLiteral("^([^a-z'\"]+)([a-z'\"]*)$"));
    const auto match = single.match(text);
    if (!match.hasMatch())
        return {std::nullopt, ReadProblem::NotANumber};
    const ReadQuantity read = quantityOf(readNumber(match.captured(1).trimmed(), locale));
    if (!read.value)
        return read;
    const QString unit = match.captured(2);
    const auto times = [&](double seconds) {
        return changed(read, [seconds](double n) { return n * seconds; });
    };
    if (unit.isEmpty()) {
        ReadQuantity minutes = times(60);
        if (minutes.value && !minutes.open) // a number alone is minutes, as long as it can be
            minutes.other = read.value;
        return minutes;
    }
    if (oneOf(unit, {"min", "mins", "m", "minute", "minutes", "minuten", "'"}))
        return times(60);
    if (oneOf(unit, {"h", "hour", "hours", "std"}))
        return times(3600);
    if (oneOf(unit, {"s", "sec", "secs", "sek", "second", "seconds", "\""}))
        return read;
    return {std::nullopt, ReadProblem::OtherUnit};
}

// The stored value of a number with its unit, or none for a unit that does not belong here.
std::optional<double> stored(QuantityKind kind, double n, const QString& unit, const Units& units)
{
    switch (kind) {
    case QuantityKind::Volume:
        if (oneOf(unit, {"floz", "oz", "ozfl"}) ||
            (unit.isEmpty() && units.volume == VolumeUnit::FluidOunce))
            return fromFluidOunces(n);
        if (unit.isEmpty() || oneOf(unit, {"ml", "cc", "cm³", "cm3"}))
            return n;
        if (oneOf(unit, {"l", "litre", "litres", "liter", "liters"}))
            return n * 1000;
        return std::nullopt;
    case QuantityKind::Temperature:
        if (oneOf(unit, {"°f", "f", "ºf"}) ||
            (oneOf(unit, {"", "°"}) && units.temperature == TemperatureUnit::Fahrenheit))
            return fromFahrenheit(n);
        if (oneOf(unit, {"", "°", "°c", "c", "ºc"}))
            return n;
        return std::nullopt;
    case QuantityKind::Area:
        if (oneOf(unit, {"in²", "in2", "sqin", "\"²"}))
            return n * kSquareCentimetresPerSquareInch;
        if (oneOf(unit, {"", "cm²", "cm2", "sqcm"}))
            return n;
        return std::nullopt;
    case QuantityKind::Hours:
        if (oneOf(unit, {"min", "m"}))
            return n / 60;
        if (oneOf(unit, {"d", "day", "days"}))
            return n * 24;
        if (oneOf(unit, {"", "h", "hour", "hours", "std"}))
            return n;
        return std::nullopt;
    case QuantityKind::Number:
        return unit.isEmpty() ? std::optional(n) : std::nullopt;
    case QuantityKind::Count:
    case QuantityKind::Time:
        break;
    }
    return std::nullopt;
}

} // namespace

ReadQuantity readQuantity(QuantityKind kind, const QString& typed, const Wording& wording)
{
    QString text = typed;
    for (const char16_t space : {u'\u00a0', u'\u202f', u'\u2009'})
        text.replace(QChar(space), u' ');
    // Marks of the direction of writing, which some locales put before a minus sign.
    for (const char16_t mark : {u'\u061c', u'\u200e', u'\u200f'})
        text.remove(QChar(mark));
    text = text.trimmed().toLower();
    if (text.isEmpty())
        return {std::nullopt, ReadProblem::Empty};
    if (kind == QuantityKind::Time)
        return readTime(text, wording.locale);
    if (kind == QuantityKind::Count)
        return readCount(text, wording.locale);

    qsizetype end = 0;
    while (end < text.size() && belongsToNumber(text[end]))
        ++end;
    const ReadQuantity number = quantityOf(readNumber(text.left(end), wording.locale));
    if (!number.value)
        return number;
    QString unit = text.mid(end).simplified().remove(u' ');
    unit.remove(u'.');
    if (!stored(kind, *number.value, unit, wording.units))
        return {std::nullopt, ReadProblem::OtherUnit};
    return changed(number, [&](double n) { return *stored(kind, n, unit, wording.units); });
}

QuantityKind quantityKind(const formulary::FieldDescription& is)
{
    if (is.unit == "ml")
        return QuantityKind::Volume;
    if (is.unit == "°C")
        return QuantityKind::Temperature;
    if (is.unit == "s")
        return QuantityKind::Time;
    if (is.unit == "cm²")
        return QuantityKind::Area;
    if (is.unit == "h")
        return QuantityKind::Hours;
    return is.whole ? QuantityKind::Count : QuantityKind::Number;
}

QString unitText(QuantityKind kind, const Wording& wording)
{
    switch (kind) {
    case QuantityKind::Volume:
        return wording.units.volume == VolumeUnit::FluidOunce ? QStringLiteral("fl oz")
                                                              : QStringLiteral("ml");
    case QuantityKind::Temperature:
        return wording.units.temperature == TemperatureUnit::Fahrenheit ? QStringLiteral("°F")
                                                                        : QStringLiteral("°C");
    case QuantityKind::Area:
        return QStringLiteral("cm²");
    case QuantityKind::Hours:
        return QStringLiteral("h");
    case QuantityKind::Time:
    case QuantityKind::Count:
    case QuantityKind::Number:
        break;
    }
    return {};
}

namespace
{

QString fieldText(QuantityKind kind, double value, const Wording& wording, const QLocale& locale)
{
    if (!std::isfinite(value))
        return {};
    const auto number = [&](double n, int decimals) { return numberText(n, decimals, locale); };
    const auto amount = [&](double n) { return number(n, std::abs(n) < 0.95 ? 3 : 1); };
    QString text;
    switch (kind) {
    case QuantityKind::Time:
        return timeText(chemistry::Seconds(value));
    case QuantityKind::Count:
        return filmCountText(value, locale);
    case QuantityKind::Volume:
        text = wording.units.volume == VolumeUnit::FluidOunce ? number(toFluidOunces(value), 2)
                                                              : amount(value);
        break;
    case QuantityKind::Temperature:
        text = wording.units.temperature == TemperatureUnit::Fahrenheit
                   ? number(toFahrenheit(value), 1)
                   : number(value, 1);
        break;
    case QuantityKind::Area:
    case QuantityKind::Hours:
        text = amount(value);
        break;
    case QuantityKind::Number:
        text = number(value, 2);
        break;
    }
    const QString unit = unitText(kind, wording);
    return unit.isEmpty() ? text : text + u' ' + unit;
}

} // namespace

QString editText(QuantityKind kind, double value, const Wording& wording)
{
    QLocale locale = wording.locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return fieldText(kind, value, wording, locale);
}

QString restText(QuantityKind kind, double value, const Wording& wording)
{
    const bool grouped = kind == QuantityKind::Volume || kind == QuantityKind::Area;
    return grouped ? fieldText(kind, value, wording, wording.locale)
                   : editText(kind, value, wording);
}

} // namespace ullage::app
