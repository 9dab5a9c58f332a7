#include "core/store/instant_text.h"

#include <QRegularExpression>

namespace ullage::store
{

using chemistry::Instant;
using std::chrono::milliseconds;

namespace
{

constexpr int kFirstYear = 1900;
constexpr int kLastYear = 2200;

std::optional<std::chrono::sys_days> dayOf(int year, int month, int day)
{
    const std::chrono::year_month_day date{std::chrono::year(year),
                                           std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok()) {
        return std::nullopt;
    }
    return std::chrono::sys_days(date);
}

std::chrono::year_month_day dateOf(Instant at)
{
    return std::chrono::year_month_day{std::chrono::floor<std::chrono::days>(at)};
}

bool inRange(Instant at)
{
    const int year = static_cast<int>(dateOf(at).year());
    return year >= kFirstYear && year <= kLastYear;
}

QString padded(qint64 number, int digits)
{
    return QString::number(number).rightJustified(digits, '0');
}

} // namespace

std::optional<Instant> instantFromText(const QString& text)
{
    static const QRegularExpression form(
        QStringLiteral("\\A([0-9]{4})-([0-9]{2})-([0-9]{2})[Tt]([0-9]{2}):([0-9]{2}):([0-9]{2})"
                       "(?:\\.([0-9]{1,30}))?(?:[Zz]|([+-])([0-9]{2}):([0-9]{2}))\\z"));
    const auto match = form.match(text);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const auto number = [&match](int group) { return match.captured(group).toInt(); };
    const auto day = dayOf(number(1), number(2), number(3));
    if (!day || number(4) > 23 || number(5) > 59 || number(6) > 59 || number(9) > 23 ||
        number(10) > 59) {
        return std::nullopt;
    }
    const auto fraction = match.captured(7).leftJustified(3, '0').left(3).toInt();
    const auto offset = std::chrono::minutes(number(9) * 60 + number(10));
    const auto local = Instant(*day) + std::chrono::hours(number(4)) +
                       std::chrono::minutes(number(5)) + std::chrono::seconds(number(6)) +
                       milliseconds(fraction);
    const auto at = match.captured(8) == QLatin1String("-") ? local + offset : local - offset;
    return inRange(at) ? std::optional(at) : std::nullopt;
}

QString dateText(Instant at)
{
    const auto date = dateOf(at);
    return padded(static_cast<int>(date.year()), 4) + '-' +
           padded(static_cast<unsigned>(date.month()), 2) + '-' +
           padded(static_cast<unsigned>(date.day()), 2);
}

QString instantText(Instant at)
{
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const qint64 ms = (at - day).count();
    QString text = dateText(at) + 'T' + padded(ms / 3'600'000, 2) + ':' +
                   padded(ms / 60'000 % 60, 2) + ':' + padded(ms / 1000 % 60, 2);
    if (ms % 1000 != 0) {
        text += '.' + padded(ms % 1000, 3);
    }
    return text + 'Z';
}

std::optional<Instant> dateFromText(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("\\A([0-9]{4})-([0-9]{2})-([0-9]{2})\\z"));
    const auto match = form.match(text);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const auto day =
        dayOf(match.captured(1).toInt(), match.captured(2).toInt(), match.captured(3).toInt());
    if (!day || !inRange(Instant(*day))) {
        return std::nullopt;
    }
    return Instant(*day);
}

} // namespace ullage::store
