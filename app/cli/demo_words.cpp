#include "app/cli/demo_words.h"

#include "app/words/known_phrase.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QString>

#include <array>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Demo)
};

// Fields that a person fills in; "to" of a filling is an id, which is no phrase of these.
constexpr std::array kFields{"name",  "notes", "note",     "text",   "why",  "how",
                             "place", "to",    "document", "method", "unit", "tank"};

constexpr std::array kPhrases{
    // Bottles, cans and what stands in the cupboard.
    QT_TRANSLATE_NOOP("Demo", "Harbour replenisher"),
    QT_TRANSLATE_NOOP("Demo", "Harbour developer, topped up"),
    QT_TRANSLATE_NOOP("Demo", "Harbour developer, used once"),
    QT_TRANSLATE_NOOP("Demo", "Clear jug"),
    QT_TRANSLATE_NOOP("Demo", "Bellows"),
    QT_TRANSLATE_NOOP("Demo", "Developer can"),
    QT_TRANSLATE_NOOP("Demo", "Fixer can"),
    QT_TRANSLATE_NOOP("Demo", "Sodium sulfite, dry"),
    QT_TRANSLATE_NOOP("Demo", "Borax"),
    QT_TRANSLATE_NOOP("Demo", "Hydroquinone"),
    QT_TRANSLATE_NOOP("Demo", "Citric acid"),
    QT_TRANSLATE_NOOP("Demo", "Paper filters"),
    QT_TRANSLATE_NOOP("Demo", "Nitrile gloves"),
    QT_TRANSLATE_NOOP("Demo", "Labels 70 × 36 mm"),
    QT_TRANSLATE_NOOP("Demo", "pieces"),
    QT_TRANSLATE_NOOP("Demo", "pairs"),
    QT_TRANSLATE_NOOP("Demo", "upper shelf, left"),
    QT_TRANSLATE_NOOP("Demo", "upper shelf, right"),
    QT_TRANSLATE_NOOP("Demo", "cool cupboard"),
    QT_TRANSLATE_NOOP("Demo", "locked drawer"),
    QT_TRANSLATE_NOOP("Demo", "drawer by the sink"),
    QT_TRANSLATE_NOOP("Demo", "under the sink"),
    // What batches are called.
    QT_TRANSLATE_NOOP("Demo", "Winter rest"),
    QT_TRANSLATE_NOOP("Demo", "Summer rest"),
    QT_TRANSLATE_NOOP("Demo", "First bath"),
    QT_TRANSLATE_NOOP("Demo", "Second bath"),
    QT_TRANSLATE_NOOP("Demo", "Third bath"),
    QT_TRANSLATE_NOOP("Demo", "Packet of October"),
    // Work, tanks, and what is on the films.
    QT_TRANSLATE_NOOP("Demo", "Evening course"),
    QT_TRANSLATE_NOOP("Demo", "Open evening"),
    QT_TRANSLATE_NOOP("Demo", "Two reels"),
    QT_TRANSLATE_NOOP("Demo", "One reel"),
    QT_TRANSLATE_NOOP("Demo", "Ferry"),
    QT_TRANSLATE_NOOP("Demo", "Harbour, dawn"),
    QT_TRANSLATE_NOOP("Demo", "Nets"),
    QT_TRANSLATE_NOOP("Demo", "Slipway"),
    QT_TRANSLATE_NOOP("Demo", "Regatta"),
    QT_TRANSLATE_NOOP("Demo", "Rope walk"),
    QT_TRANSLATE_NOOP("Demo", "Fish market"),
    QT_TRANSLATE_NOOP("Demo", "Fog bank"),
    QT_TRANSLATE_NOOP("Demo", "Lighthouse"),
    QT_TRANSLATE_NOOP("Demo", "Winter berths"),
    QT_TRANSLATE_NOOP("Demo", "Crane no. 3"),
    QT_TRANSLATE_NOOP("Demo", "Gulls"),
    // Reasons and notes.
    QT_TRANSLATE_NOOP("Demo", "poured into the collection can"),
    QT_TRANSLATE_NOOP("Demo", "to the silver can"),
    QT_TRANSLATE_NOOP("Demo", "rinsed away with much water, as our works allow"),
    QT_TRANSLATE_NOOP("Demo", "the town's collection point"),
    QT_TRANSLATE_NOOP("Demo", "test paper"),
    QT_TRANSLATE_NOOP("Demo", "one reel was empty"),
    QT_TRANSLATE_NOOP("Demo", "colour"),
    QT_TRANSLATE_NOOP("Demo", "black in two minutes"),
    QT_TRANSLATE_NOOP("Demo", "grey after four minutes"),
    QT_TRANSLATE_NOOP("Demo", "turned purple"),
    QT_TRANSLATE_NOOP("Demo", "fine needles at the foot"),
    QT_TRANSLATE_NOOP("Demo", "colour of weak tea, no sediment"),
    QT_TRANSLATE_NOOP("Demo", "smells as it should"),
    QT_TRANSLATE_NOOP("Demo", "label renewed"),
    QT_TRANSLATE_NOOP("Demo", "control strip too thin: bath was two degrees colder than the "
                              "thermometer said; no factor taken"),
    QT_TRANSLATE_NOOP("Demo", "found behind the sink, label says only \"MQ\""),
    QT_TRANSLATE_NOOP("Demo", "milky in the shadows, cleared by fixing again"),
    QT_TRANSLATE_NOOP("Demo", "little in the shadows"),
};

// What stands before a number: "Dev 12", "Amber 2", "slip 214".
constexpr std::array kNumbered{
    QT_TRANSLATE_NOOP("Demo", "Dev"),     QT_TRANSLATE_NOOP("Demo", "Fix"),
    QT_TRANSLATE_NOOP("Demo", "Stop"),    QT_TRANSLATE_NOOP("Demo", "Wash aid"),
    QT_TRANSLATE_NOOP("Demo", "Wetting"), QT_TRANSLATE_NOOP("Demo", "Amber"),
    QT_TRANSLATE_NOOP("Demo", "Clear"),   QT_TRANSLATE_NOOP("Demo", "White"),
    QT_TRANSLATE_NOOP("Demo", "Small"),   QT_TRANSLATE_NOOP("Demo", "Flip-top"),
    QT_TRANSLATE_NOOP("Demo", "Jug"),     QT_TRANSLATE_NOOP("Demo", "slip"),
};

QString worded(const QString& text)
{
    if (const QString phrase = knownPhrase<Words>(kPhrases, text); !phrase.isEmpty())
        return phrase;
    static const QRegularExpression number(QStringLiteral("^(.+) ([0-9]+)$"));
    const auto match = number.match(text);
    const QString before =
        match.hasMatch() ? knownPhrase<Words>(kNumbered, match.captured(1)) : QString();
    return before.isEmpty() ? text : before + u' ' + match.captured(2);
}

} // namespace

void wordDemoLine(QJsonObject& line)
{
    for (const char* field : kFields) {
        const auto found = line.find(QLatin1String(field));
        if (found != line.end() && found->isString())
            *found = worded(found->toString());
    }
}

} // namespace ullage::app
