#include "app/words/hazard_statements.h"

#include "app/words/hazards.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

// Every code that a file of lines holds, in whatever text or list of it.
QStringList codesIn(const char* path)
{
    QFile file(QString::fromUtf8(path));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path;
    QStringList codes;
    for (const QByteArray& line : file.readAll().split('\n')) {
        const QJsonObject object = QJsonDocument::fromJson(line).object();
        for (const auto& code : object[QStringLiteral("hazards")].toArray())
            codes << code.toString();
    }
    return codes;
}

} // namespace

TEST(HazardStatements, everyCodeOfStarterAndDemoHasWords)
{
    const QStringList codes = codesIn(ULLAGE_STARTER) + codesIn(ULLAGE_DEMO);
    EXPECT_TRUE(codes.contains(QStringLiteral("H319"))); // something was read
    for (const QString& code : codes)
        EXPECT_GT(hazardStatement(code).size(), code.size()) << code.toStdString();
}

TEST(HazardStatements, everyCodeOfAKnownChemicalHasWords)
{
    formulary::Solution solution;
    solution.chemicals = {"metol",     "hydroquinone", "borax",           "acetic acid",
                          "phenidone", "citric acid",  "sodium carbonate"};
    const auto chemicals = hazardousChemicals(solution);
    EXPECT_EQ(chemicals.size(), 7u);
    for (const HazardousChemical& chemical : chemicals) {
        for (const QString& code : chemical.statements)
            EXPECT_GT(hazardStatement(code).size(), code.size()) << code.toStdString();
    }
    EXPECT_EQ(statementsOf(chemicals).front(), QStringLiteral("H226: flammable liquid and vapour"));
}

// Regulation (EC) No 1272/2008, annex III. The letters behind H360 tell which of two is meant: a
// small one is only suspected.
TEST(HazardStatements, lettersBehindANumberCount)
{
    EXPECT_EQ(hazardStatement(QStringLiteral("H319")), "H319: causes serious eye irritation");
    EXPECT_EQ(hazardStatement(QStringLiteral("H360FD")),
              "H360FD: may damage fertility; may damage the unborn child");
    EXPECT_EQ(hazardStatement(QStringLiteral("H360Fd")),
              "H360Fd: may damage fertility; suspected of damaging the unborn child");
    EXPECT_EQ(hazardStatement(QStringLiteral("h302")), "h302: harmful if swallowed");
    EXPECT_EQ(hazardStatement(QStringLiteral("euh031")),
              "euh031: contact with acids liberates toxic gas");
    EXPECT_EQ(hazardStatement(QStringLiteral("h360fd")), "h360fd"); // it could be any of them
}

TEST(HazardStatements, severalStandForEach)
{
    EXPECT_EQ(hazardStatement(QStringLiteral("H302 + H312")),
              "H302 + H312: harmful if swallowed; harmful in contact with skin");
    EXPECT_EQ(hazardStatement(QStringLiteral("H302+H999")), "H302+H999");
    EXPECT_EQ(hazardStatements({QStringLiteral("stains"), QStringLiteral("H317"),
                                QStringLiteral("H302"), QStringLiteral("H317")}),
              (QStringList{"H302: harmful if swallowed",
                           "H317: may cause an allergic skin reaction", "stains"}));
}

} // namespace ullage::app
