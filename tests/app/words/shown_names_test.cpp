#include "app/words/shown_names.h"

#include "app/words/source_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QRegularExpression>
#include <QTranslator>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

// A language in which the starter's words stand in brackets, and nothing else is other than
// English.
class Brackets : public QTranslator
{
public:
    Brackets() { QCoreApplication::installTranslator(this); }
    ~Brackets() override { QCoreApplication::removeTranslator(this); }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override
    {
        return QLatin1String(context) == QLatin1String("Starter")
                   ? u'[' + QString::fromUtf8(source) + u']'
                   : QString();
    }
};

std::vector<QJsonObject> starter()
{
    QFile file(QStringLiteral(ULLAGE_STARTER));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    std::vector<QJsonObject> lines;
    while (!file.atEnd())
        lines.push_back(QJsonDocument::fromJson(file.readLine()).object());
    EXPECT_GT(lines.size(), 15u);
    return lines;
}

// A language that writes chemicals with a capital letter.
class Capitals : public QTranslator
{
public:
    Capitals() { QCoreApplication::installTranslator(this); }
    ~Capitals() override { QCoreApplication::removeTranslator(this); }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override
    {
        const QString words = QString::fromUtf8(source);
        if (QLatin1String(context) == QLatin1String("Formulas"))
            return u'X' + words.toUpper();
        if (words == QStringLiteral("%1 %2 g per litre"))
            return QStringLiteral("%1 %2 g im Liter");
        return words == QStringLiteral("published formulas") ? QStringLiteral("Druckwerken")
                                                             : QString();
    }
};

} // namespace

TEST(ShownNames, everyNameOfTheStarterIsAWordOfTheProgram)
{
    const Brackets language;
    for (const QJsonObject& line : starter()) {
        const QString name = line[QStringLiteral("name")].toString();
        if (name.isEmpty())
            continue;
        EXPECT_EQ(shownName(name.toStdString()), u'[' + name + u']');
    }
}

TEST(ShownNames, whatAPersonTypedStaysAsItWasTyped)
{
    const Brackets language;
    EXPECT_EQ(shownName("Acid fixer of the club"), "Acid fixer of the club");
    EXPECT_EQ(shownName(""), "");
    EXPECT_EQ(keptName("Acid fixer", shownName("Acid fixer")), "Acid fixer");
    EXPECT_EQ(keptName("Acid fixer", "Fixierbad"), "Fixierbad");
}

// Names of publications and their pages stay as they are printed; what the starter says of their
// figures does not.
TEST(ShownNames, everySourceOfTheStarterIsInTheLanguageOrAPublication)
{
    static const QRegularExpression bracketed(QStringLiteral("\\[[^\\]]*\\]"));
    static const QRegularExpression ours(
        QStringLiteral("\\b(a|as|for|from|in|row|tube|unit|strength|fixers?|films?|sq)\\b"));
    const Brackets language;
    int said = 0;
    for (const QJsonObject& line : starter()) {
        const QJsonObject sources = line[QStringLiteral("sources")].toObject();
        for (const QString& key : sources.keys()) {
            const QString source = sources[key].toString();
            const QString shown = sourceText(source.toStdString());
            const bool published = source.contains(QStringLiteral("Anchell")) ||
                                   source.startsWith(QStringLiteral("Kodak publication")) ||
                                   source.startsWith(QStringLiteral("Replenishing system"));
            EXPECT_TRUE(published || shown.contains(u'['))
                << source.toStdString() << " → " << shown.toStdString();
            EXPECT_FALSE(QString(shown).remove(bracketed).contains(ours))
                << source.toStdString() << " → " << shown.toStdString();
            said += shown.contains(u'[');
        }
    }
    EXPECT_GT(said, 20);
}

TEST(ShownNames, ownTestsAreInTheLanguageWithTheirDay)
{
    const Brackets language;
    const QString day = QLocale().toString(QDate(2026, 11, 25), QLocale::ShortFormat);
    const QString shown = shownSource("own tests, 5 of 9 bottles, to 2026-11-25");
    EXPECT_TRUE(shown.startsWith(u'[')) << shown.toStdString();
    EXPECT_TRUE(shown.contains("5")) << shown.toStdString();
    EXPECT_TRUE(shown.contains(day)) << shown.toStdString();
    EXPECT_EQ(sourceText("own tests, 5 of 9 bottles, to 2026-11-25"), shown) << "not graded";
    for (const char* other :
         {"own tests, 5 of 9 bottles, to 2026-13-25", "own tests, 5 bottles", "own tests"})
        EXPECT_EQ(shownSource(other), other);
}

TEST(ShownNames, aSourceKeepsItsFigures)
{
    EXPECT_EQ(shownSource("from memory of Kodak publication J-78"),
              "from memory of Kodak publication J-78");
    EXPECT_EQ(shownSource("computed from Schumpe 1993, 48, 153, for 100 g/L sodium sulfite"),
              "computed from Schumpe 1993, 48, 153, for 100 g/L sodium sulfite");
    EXPECT_EQ(shownSource("metol 2, sodium sulfite 100, borax 2 g per litre; from memory of "
                          "published formulas"),
              "metol 2, sodium sulfite 100, borax 2 g per litre; from memory of published "
              "formulas");
    EXPECT_EQ(shownSource("my own trials; ask Ada, 3 of them"),
              "my own trials; ask Ada, 3 of them");
    EXPECT_EQ(sourceText("common practice, no source"), "common practice, no source");
    EXPECT_EQ(sourceText("computed: taken as fresh water"), "computed: taken as fresh water");
}

// Hazards and what is weighed out are read from it.
TEST(ShownNames, aCompositionIsKeptInTheWordsThatAreReadAgain)
{
    const std::string kept =
        "metol 2, sodium sulfite 100, hydroquinone 5.5 g per litre; from memory of published "
        "formulas";
    const Capitals language;
    const QString shown = shownSource(QString::fromStdString(kept));
    EXPECT_TRUE(shown.contains("XHYDROQUINONE 5.5 g im Liter")) << shown.toStdString();
    EXPECT_EQ(keptComposition(kept, shown), kept);
    QString changed = shown;
    changed.replace("5.5", "6,5");
    EXPECT_EQ(keptComposition(kept, changed),
              "metol 2, sodium sulfite 100, hydroquinone 6.5 g per litre; from memory of "
              "published formulas");
    EXPECT_EQ(keptComposition("", " xMetol 3, Harbour salt 4 g; mine "),
              "metol 3, Harbour salt 4 g; mine");
    EXPECT_EQ(keptComposition(kept, "Metol 2"), "Metol 2") << "read as it stands";
    EXPECT_EQ(keptComposition(kept, ""), "");
}

} // namespace ullage::app
