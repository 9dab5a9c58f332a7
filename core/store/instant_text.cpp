#include "core/store/instant_text.h"

#include <QStringView>

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

// Reads what a moment is made of, piece by piece.
class Pieces
{
public:
    explicit Pieces(QStringView text) : m_text(text) {}

    /// As many digits as asked for; -1 if there are others or fewer.
    int digits(int count)
    {
        int number = 0;
        for (int i = 0; i < count; ++i, ++m_at) {
            if (!isDigit(m_at)) {
                return -1;
            }
            number = number * 10 + (m_text[m_at].unicode() - '0');
        }
        return number;
    }
    /// Any of `these`, which is given back; 0 if it is another.
    char16_t one(QStringView these)
    {
        if (m_at >= m_text.size() || !these.contains(m_text[m_at])) {
            return 0;
        }
        return m_text[m_at++].unicode();
    }
    /// Digits after a point to the millisecond, 1 to 30 of them; 0 without a point, -1 for a point
    /// alone or too many digits.
    int fraction()
    {
        if (!one(u".")) {
            return 0;
        }
        int number = 0;
        int read = 0;
        for (; isDigit(m_at); ++m_at, ++read) {
            if (read < 3) {
                number = number * 10 + (m_text[m_at].unicode() - '0');
            }
        }
        for (int i = read; i < 3; ++i) {
            number *= 10;
        }
        return read >= 1 && read <= 30 ? number : -1;
    }
    [[nodiscard]] bool atEnd() const { return m_at == m_text.size(); }

private:
    [[nodiscard]] bool isDigit(qsizetype at) const
    {
        return at < m_text.size() && m_text[at] >= u'0' && m_text[at] <= u'9';
    }

    QStringView m_text;
    qsizetype m_at = 0;
};

// "2026-06-01"; its pieces are -1 where they are not there.
std::optional<std::chrono::sys_days> date(Pieces& pieces)
{
    const int year = pieces.digits(4);
    const bool first = pieces.one(u"-") != 0;
    const int month = pieces.digits(2);
    const bool second = pieces.one(u"-") != 0;
    const int day = pieces.digits(2);
    return first && second && year >= 0 && month >= 0 && day >= 0 ? dayOf(year, month, day)
                                                                  : std::nullopt;
}

// `number` is not negative.
void append(QString& text, qint64 number, int digits)
{
    for (qint64 power = digits == 4 ? 1000 : digits == 3 ? 100 : 10; power > 0; power /= 10) {
        text += QChar(u'0' + static_cast<char16_t>(number / power % 10));
    }
}

} // namespace

std::optional<Instant> instantFromText(const QString& text)
{
    Pieces pieces(text);
    const auto day = date(pieces);
    const bool dayEnds = pieces.one(u"Tt") != 0;
    const int hour = pieces.digits(2);
    const bool hourEnds = pieces.one(u":") != 0;
    const int minute = pieces.digits(2);
    const bool minuteEnds = pieces.one(u":") != 0;
    const int second = pieces.digits(2);
    const int fraction = pieces.fraction();
    const char16_t zone = pieces.one(u"Zz+-");
    int offsetHours = 0;
    int offsetMinutes = 0;
    if (zone == u'+' || zone == u'-') {
        offsetHours = pieces.digits(2);
        offsetMinutes = pieces.one(u":") ? pieces.digits(2) : -1;
    }
    const bool formed = day && dayEnds && hourEnds && minuteEnds && zone != 0 && pieces.atEnd();
    const bool there = hour >= 0 && minute >= 0 && second >= 0 && fraction >= 0 &&
                       offsetHours >= 0 && offsetMinutes >= 0;
    if (!formed || !there || hour > 23 || minute > 59 || second > 59 || offsetHours > 23 ||
        offsetMinutes > 59) {
        return std::nullopt;
    }
    const auto offset = std::chrono::minutes(offsetHours * 60 + offsetMinutes);
    const auto local = Instant(*day) + std::chrono::hours(hour) + std::chrono::minutes(minute) +
                       std::chrono::seconds(second) + milliseconds(fraction);
    const auto at = zone == u'-' ? local + offset : local - offset;
    return inRange(at) ? std::optional(at) : std::nullopt;
}

QString dateText(Instant at)
{
    const auto date = dateOf(at);
    QString text;
    append(text, static_cast<int>(date.year()), 4);
    text += u'-';
    append(text, static_cast<unsigned>(date.month()), 2);
    text += u'-';
    append(text, static_cast<unsigned>(date.day()), 2);
    return text;
}

QString instantText(Instant at)
{
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const qint64 ms = (at - day).count();
    QString text = dateText(at);
    text += u'T';
    append(text, ms / 3'600'000, 2);
    text += u':';
    append(text, ms / 60'000 % 60, 2);
    text += u':';
    append(text, ms / 1000 % 60, 2);
    if (ms % 1000 != 0) {
        text += u'.';
        append(text, ms % 1000, 3);
    }
    text += u'Z';
    return text;
}

std::optional<Instant> dateFromText(const QString& text)
{
    Pieces pieces(text);
    const auto day = date(pieces);
    return day && pieces.atEnd() && inRange(Instant(*day)) ? std::optional(Instant(*day))
                                                           : std::nullopt;
}

} // namespace ullage::store
