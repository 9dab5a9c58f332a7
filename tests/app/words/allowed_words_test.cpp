// What the core says is allowed must be known to the words, or a German would read English.
#include "app/words/allowed_words.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

QString unescaped(QString literal) { return literal.replace(R"(\")", "\"").replace(R"(\\)", "\\"); }

// The texts of the expression that begins at `at` of a C++ source; adjacent literals are one.
QStringList literalsFrom(const QString& source, qsizetype at)
{
    static const QRegularExpression kPart(
        QStringLiteral(
            R"re(\G(?:(?<space>\s+)|R"\((?<raw>.*?)\)"|"(?<plain>(?:[^"\\]|\\.)*)"|(?<other>[^"\s,;}])))re"),
        QRegularExpression::DotMatchesEverythingOption);
    QStringList found;
    bool adjacent = false;
    for (auto part = kPart.match(source, at); part.hasMatch(); part = kPart.match(source, at)) {
        at = part.capturedEnd();
        if (part.hasCaptured("space"))
            continue;
        if (part.hasCaptured("other")) {
            adjacent = false;
            continue;
        }
        const QString text =
            part.hasCaptured("raw") ? part.captured("raw") : unescaped(part.captured("plain"));
        if (adjacent)
            found.back() += text;
        else
            found << text;
        adjacent = true;
    }
    return found;
}

QStringList phrasesOfTheCore()
{
    static const QRegularExpression kPlaces(
        QStringLiteral(R"((?:\ballowed =|\bmalformed\(|\bk\w+Form =|\bkTextToKeep =)\s*)"));
    QStringList found;
    QDirIterator files(QStringLiteral(ULLAGE_CORE), {"*.cpp", "*.h"}, QDir::Files,
                       QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        const QString source = QString::fromUtf8(file.readAll());
        for (const auto& place : kPlaces.globalMatch(source))
            found << literalsFrom(source, place.capturedEnd());
    }
    found.removeDuplicates();
    return found;
}

// Codes and encodings are the same in every language.
bool isCode(const QString& text)
{
    static const QStringList kCodes{"UTF-8", "true, false", "developer", "", ", "};
    return kCodes.contains(text);
}

} // namespace

TEST(AllowedWords, EveryPhraseOfTheCoreCanBeTranslated)
{
    QStringList known;
    for (const char* phrase : allowedPhrases())
        known << QString::fromUtf8(phrase);
    const QStringList said = phrasesOfTheCore();
    EXPECT_GT(said.size(), 30) << "the sources are not found or written another way";
    for (const QString& phrase : said)
        EXPECT_TRUE(isCode(phrase) || known.contains(phrase)) << phrase.toStdString();
    for (const QString& phrase : known)
        EXPECT_TRUE(said.contains(phrase)) << "no longer said: " << phrase.toStdString();
}

TEST(AllowedWords, WhatIsNoPhraseStaysAsItIs)
{
    EXPECT_EQ(allowedText("135-36, 120"), "135-36, 120");
    EXPECT_EQ(allowedText(""), "");
}

} // namespace ullage::app
