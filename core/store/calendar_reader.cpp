#include "core/store/calendar_reader.h"

#include <QDateTime>
#include <QTimeZone>

#include <optional>

namespace ullage::store
{

namespace
{

/// "DTSTART;TZID=Europe/Berlin:20261208T190000", unfolded.
struct Property {
    QByteArray name;                                           ///< in capitals
    std::vector<std::pair<QByteArray, QByteArray>> parameters; ///< names in capitals
    QByteArray value;
    int line = 0;

    [[nodiscard]] QByteArray parameter(const char* wanted) const
    {
        for (const auto& [key, text] : parameters) {
            if (key == wanted) {
                return text;
            }
        }
        return {};
    }
};

// Lines that begin with a blank go on with the one before.
std::vector<std::pair<int, QByteArray>> unfolded(const QByteArray& text)
{
    std::vector<std::pair<int, QByteArray>> lines;
    int number = 0;
    for (QByteArray line : text.split('\n')) {
        ++number;
        if (line.endsWith('\r')) {
            line.chop(1);
        }
        if ((line.startsWith(' ') || line.startsWith('\t')) && !lines.empty()) {
            lines.back().second += line.mid(1);
        } else if (!line.isEmpty()) {
            lines.emplace_back(number, line);
        }
    }
    return lines;
}

Property propertyOf(const QByteArray& line, int number)
{
    Property found;
    found.line = number;
    bool quoted = false;
    qsizetype begin = 0;
    std::vector<QByteArray> pieces; // name and parameters
    for (qsizetype at = 0; at < line.size(); ++at) {
        const char c = line[at];
        if (c == '"') {
            quoted = !quoted;
        } else if (!quoted && (c == ';' || c == ':')) {
            pieces.push_back(line.mid(begin, at - begin));
            begin = at + 1;
            if (c == ':') {
                found.value = line.mid(begin);
                break;
            }
        }
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (i == 0) {
            found.name = pieces[i].toUpper();
            continue;
        }
        const qsizetype equals = pieces[i].indexOf('=');
        QByteArray value = equals < 0 ? QByteArray() : pieces[i].mid(equals + 1);
        if (value.size() >= 2 && value.startsWith('"') && value.endsWith('"')) {
            value = value.mid(1, value.size() - 2);
        }
        found.parameters.emplace_back(pieces[i].left(equals).toUpper(), value);
    }
    return found;
}

QString plain(const QByteArray& value)
{
    const QString text = QString::fromUtf8(value);
    QString read;
    for (qsizetype at = 0; at < text.size(); ++at) {
        if (text[at] != u'\\' || at + 1 == text.size()) {
            read += text[at];
            continue;
        }
        const QChar next = text[++at];
        read += next == u'n' || next == u'N' ? QChar(u'\n') : next;
    }
    return read;
}

tl::unexpected<Error> refusal(ErrorCode code, const char* field, const QByteArray& value, int line)
{
    return refuse(
        {.code = code, .field = field, .text = value.left(200).toStdString(), .line = line});
}

Result<void> readStart(CalendarEvent& event, const Property& property)
{
    const QByteArray& value = property.value;
    const auto bad = [&] { return refusal(ErrorCode::Malformed, "DTSTART", value, property.line); };
    const auto of = [](const QDateTime& time) {
        return chemistry::Instant(std::chrono::milliseconds(time.toMSecsSinceEpoch()));
    };
    const QDate date =
        QDate::fromString(QString::fromLatin1(value.left(8)), QStringLiteral("yyyyMMdd"));
    if (!date.isValid() || date.year() < 1900 || date.year() > 2200) {
        return bad();
    }
    if (value.size() == 8) {
        event.wholeDay = true;
        event.at = of(date.startOfDay());
        return {};
    }
    const bool inUtc = value.endsWith('Z');
    const QTime time =
        QTime::fromString(QString::fromLatin1(value.mid(9, 6)), QStringLiteral("HHmmss"));
    if (value[8] != 'T' || value.size() != (inUtc ? 16 : 15) || !time.isValid()) {
        return bad();
    }
    const QByteArray zone = property.parameter("TZID");
    if (inUtc) {
        event.at = of(QDateTime(date, time, Qt::UTC));
    } else if (zone.isEmpty()) {
        event.at = of(QDateTime(date, time));
    } else if (const QTimeZone named(zone); named.isValid()) {
        event.at = of(QDateTime(date, time, named));
    } else {
        return refusal(ErrorCode::Malformed, "DTSTART", zone, property.line);
    }
    return {};
}

Result<void> take(CalendarEvent& event, bool& hasStart, const Property& property)
{
    const QByteArray& name = property.name;
    if (name == "UID") {
        event.uid = plain(property.value).toStdString();
    } else if (name == "DTSTART") {
        hasStart = true;
        return readStart(event, property);
    } else if (name == "RRULE") {
        event.rule = property.value.toUpper().toStdString();
    } else if (name == "SUMMARY") {
        event.summary = plain(property.value);
    } else if (name == "DESCRIPTION") {
        event.description = plain(property.value);
    } else if (name == kFilmsField) {
        bool fine = false;
        const double films = property.value.toDouble(&fine);
        if (fine && films >= 0 && films <= 10'000) {
            event.films = films;
        }
    } else if (name == "RDATE" || name == "EXDATE" || name == "RECURRENCE-ID" || name == "EXRULE") {
        return refusal(ErrorCode::NotSuitable, name.constData(), property.value, property.line);
    }
    return {};
}

} // namespace

Result<std::vector<CalendarEvent>> readCalendar(const QByteArray& text, std::vector<Error>* leftOut)
{
    std::vector<CalendarEvent> found;
    std::vector<QByteArray> inside; // parts that have begun
    bool hasStart = false;
    bool begun = false;
    std::optional<Error> wrong; // with the event in hand
    int number = 0;
    for (const auto& [line, content] : unfolded(text)) {
        number = line;
        const Property property = propertyOf(content, line);
        const QByteArray part = property.value.trimmed().toUpper();
        if (property.name == "BEGIN") {
            if (inside.empty() && part != "VCALENDAR") {
                break;
            }
            begun = true;
            inside.push_back(part);
            if (part == "VEVENT") {
                found.emplace_back();
                hasStart = false;
                wrong.reset();
            }
        } else if (inside.empty()) {
            return refusal(ErrorCode::Malformed, "VCALENDAR", content, line);
        } else if (property.name == "END") {
            if (inside.back() != part) {
                return refusal(ErrorCode::Malformed, "VCALENDAR", content, line);
            }
            inside.pop_back();
            if (part != "VEVENT") {
                continue;
            }
            if (!wrong && (found.back().uid.empty() || !hasStart)) {
                wrong = refusal(ErrorCode::Missing, hasStart ? "UID" : "DTSTART", {}, line).value();
            }
            if (wrong && !leftOut) {
                return tl::unexpected(*wrong);
            }
            if (wrong) {
                wrong->subject = found.back().summary.toStdString();
                leftOut->push_back(std::move(*wrong));
                found.pop_back();
            }
        } else if (inside.back() == "VEVENT") { // not what is within it, such as an alarm
            if (auto fine = take(found.back(), hasStart, property); !fine && !wrong) {
                wrong = fine.error();
            }
        }
    }
    if (!inside.empty() || !begun) {
        return refusal(ErrorCode::Malformed, "VCALENDAR", {}, number);
    }
    return found;
}

} // namespace ullage::store
