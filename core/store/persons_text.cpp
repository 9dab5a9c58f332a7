#include "core/store/persons_text.h"

#include "core/store/journal_codec.h"
#include "core/store/search_words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>

#include <algorithm>

namespace ullage::store
{

namespace
{

bool isWhyCode(const std::string& why)
{
    return std::find(kWhyCodes.begin(), kWhyCodes.end(), why) != kWhyCodes.end();
}

} // namespace

PersonsText personsText(const QByteArray& line)
{
    const QJsonObject object = QJsonDocument::fromJson(line).object();
    const auto text = [&](std::string_view key) {
        return object[QLatin1String(key.data(), qsizetype(key.size()))].toString();
    };
    PersonsText typed;
    QStringList own;
    for (const std::string_view key : kOwnWords) {
        if (QString words = text(key); !words.isEmpty()) {
            own << std::move(words);
        }
    }
    typed.name = text("name").toStdString();
    typed.solution = text("solution").toStdString();
    typed.item = (text("item").isEmpty() ? text("packet") : text("item")).toStdString();
    typed.fault = text("mark").toStdString();
    if (const std::string why = text("why").toStdString(); isWhyCode(why)) {
        typed.why = why;
        own.removeAll(text("why"));
    }
    const QString kind = text("kind");
    typed.takesBack = kind == QLatin1String("voided");
    if (kind == QLatin1String("noted")) {
        // Codes that a book of before kept as notes are told apart where lines are decoded.
        const auto entry = decodeStored(line);
        const ledger::Event* event = entry ? entry->event() : nullptr;
        const auto* note = event ? std::get_if<ledger::Noted>(&event->what) : nullptr;
        const auto* asked = event ? std::get_if<ledger::TestAsked>(&event->what) : nullptr;
        typed.timesOfRun = note && note->times;
        if (asked) {
            typed.testAsked = true;
            typed.fault = ledger::code(asked->mark);
        }
        if (typed.timesOfRun || typed.testAsked) {
            own.removeAll(text("text"));
        }
    } else if (kind == QLatin1String("test-asked")) {
        typed.testAsked = true;
    }
    for (const QJsonValue film : object[QLatin1String("films")].toArray()) {
        own << film[QLatin1String("format")].toString();
    }
    typed.text = folded(own.join(u'\n'));
    return typed;
}

} // namespace ullage::store
