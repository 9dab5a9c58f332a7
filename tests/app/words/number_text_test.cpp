#include "app/words/number_text.h"

#include <gtest/gtest.h>

using namespace ullage::app;
using namespace ullage::chemistry;

namespace
{

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kAmerican(QLocale::English, QLocale::UnitedStates);
const QLocale kGerman(QLocale::German, QLocale::Germany);
const Units kUs{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit};

// Tests read better without the no-break spaces.
std::string plain(QString text) { return text.replace(QChar(0xa0), u' ').toStdString(); }

} // namespace

TEST(NumberText, Volume)
{
    EXPECT_EQ(plain(volumeText(Millilitres(600), {{}, kBritish})), "600 ml");
    EXPECT_EQ(plain(volumeText(Millilitres(1000.4), {{}, kBritish})), "1,000 ml");
    EXPECT_EQ(plain(volumeText(Millilitres(2.55), {{}, kGerman})), "2,6 ml");
    EXPECT_EQ(plain(volumeText(Millilitres(600), {kUs, kAmerican})), "20.3 fl oz");
}

TEST(NumberText, Temperature)
{
    EXPECT_EQ(plain(temperatureText(Celsius(20), {{}, kBritish})), "20.0 °C");
    EXPECT_EQ(plain(temperatureText(Celsius(20.5), {{}, kGerman})), "20,5 °C");
    EXPECT_EQ(plain(temperatureText(Celsius(20), {kUs, kAmerican})), "68.0 °F");
    EXPECT_EQ(plain(shortTemperatureText(Celsius(20), {{}, kBritish})), "20 °C");
}

TEST(NumberText, AClearingTimeIsInWholeSecondsAndNeverTooShort)
{
    const QLocale british("en_GB");
    EXPECT_EQ(clearingText(Seconds(121), british), "121\u00a0s");
    EXPECT_EQ(clearingText(Seconds(75.3), british), "76\u00a0s");
    EXPECT_EQ(clearingText(Seconds(60 + 1e-9), british), "60\u00a0s");
}

TEST(NumberText, Time)
{
    EXPECT_EQ(timeText(Seconds(755)), "12:35");
    EXPECT_EQ(timeText(Seconds(753), TimeStep::FiveSeconds), "12:35");
    EXPECT_EQ(timeText(Seconds(752.4), TimeStep::FiveSeconds), "12:30");
    EXPECT_EQ(timeText(Seconds(752.4), TimeStep::AtLeastFiveSeconds), "12:35");
    EXPECT_EQ(timeText(Seconds(599.6)), "10:00");
    EXPECT_EQ(timeText(Seconds(3900)), "1:05:00");
    EXPECT_EQ(timeText(Seconds(0)), "0:00");
}

TEST(NumberText, Films)
{
    EXPECT_EQ(filmCountText(2 + 1.0 / 3, kBritish), QStringLiteral("2⅓"));
    EXPECT_EQ(filmCountText(2.0 / 3, kBritish), QStringLiteral("⅔"));
    EXPECT_EQ(filmCountText(1.0 / 3 + 1.0 / 3 + 1.0 / 3, kBritish), QStringLiteral("1"));
    EXPECT_EQ(filmCountText(0.4375, kGerman), QStringLiteral("0,4"));
    EXPECT_EQ(filmsText(Films(2.25), {{}, kBritish}), QStringLiteral("2¼ films"));
    EXPECT_EQ(filmsText(Films(0.5), {{}, kBritish}), QStringLiteral("½ film"));
}

TEST(NumberText, WhatIsLeftIsNeverRoundedUp)
{
    const Wording wording{{}, kBritish};
    EXPECT_EQ(filmsLeftText(Films(4.3), wording), QStringLiteral("4¼ films"));
    EXPECT_EQ(filmsLeftText(Films(0.99), wording), QStringLiteral("¾ film"));
    EXPECT_EQ(usableFilms(16.9), 16);
    EXPECT_EQ(usableFilms(1.0 / 3 + 1.0 / 3 + 1.0 / 3), 1);
}

TEST(NumberText, ModelsGiveNoDayFarAway)
{
    const QDate today(2026, 1, 14);
    EXPECT_EQ(aboutDateText({2027, 8, 9}, today, kBritish), "about Aug 2027");
    EXPECT_EQ(aboutDateText({2027, 8, 9}, today, kAmerican), "about Aug 2027");
    EXPECT_EQ(aboutDateText({2027, 8, 9}, today, kGerman), "about Aug. 2027");
    EXPECT_EQ(aboutDateText({2026, 8, 9}, today, kBritish), "about 9 Aug");
}

TEST(NumberText, ASentenceEndsInOneStop)
{
    EXPECT_EQ(withOneStop("Haltbar bis 2. Dez.."), "Haltbar bis 2. Dez.");
    EXPECT_EQ(withOneStop("Keeps until 2 Dec."), "Keeps until 2 Dec.");
    EXPECT_EQ(withOneStop("Bis 2. Dez.. Then."), "Bis 2. Dez. Then.");
    EXPECT_EQ(withOneStop("and so on ..."), "and so on ...");
}

TEST(NumberText, DatesFollowTheLocale)
{
    const QDate today(2026, 11, 14);
    EXPECT_EQ(dateText({2026, 11, 2}, today, kBritish), "2 Nov");
    EXPECT_EQ(dateText({2026, 11, 2}, today, kAmerican), "Nov 2");
    EXPECT_EQ(dateText({2026, 11, 2}, today, kGerman), "2. Nov.");
    EXPECT_EQ(dateText({2027, 5, 1}, today, kBritish), "1 May");
    EXPECT_EQ(dateText({2025, 3, 1}, today, kBritish), "1 Mar 2025");
    EXPECT_EQ(aboutDateText({2026, 12, 9}, today, kBritish), "about 9 Dec");
    EXPECT_EQ(fullDateText({2026, 12, 9}, kGerman), "9. Dezember 2026");
    EXPECT_EQ(fullDateText({2026, 12, 9}, kAmerican), "December 9, 2026");
}

TEST(NumberText, DatesKeepDayAndMonthInEveryLocale)
{
    for (const auto& locale :
         QLocale::matchingLocales(QLocale::AnyLanguage, QLocale::AnyScript, QLocale::AnyCountry)) {
        const QString text = dateText({2026, 11, 2}, {2026, 11, 14}, locale);
        EXPECT_FALSE(text.isEmpty()) << locale.name().toStdString();
        EXPECT_FALSE(text.contains(QStringLiteral("2026"))) << locale.name().toStdString();
    }
}

TEST(NumberText, SharesAndFactors)
{
    EXPECT_EQ(plain(percentText(0.168, kBritish)), "17 %");
    EXPECT_EQ(plain(factorText(1.32, kGerman)), "× 1,32");
    EXPECT_EQ(numberText(-0.04, 1, kBritish), "0");
    EXPECT_EQ(numberText(20.10, 2, kBritish), "20.1");
    EXPECT_EQ(numberText(20.0, 2, kBritish), "20");
}
