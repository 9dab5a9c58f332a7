#include "app/words/quantity_words.h"

#include "app/words/number_text.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace ullage::app;
using enum QuantityKind;

namespace
{

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);
const Wording kMetric{{}, kBritish};
const Wording kMetricGerman{{}, kGerman};
const Wording kUs{{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit},
                  QLocale(QLocale::English, QLocale::UnitedStates)};

double read(QuantityKind kind, const char* text, const Wording& wording = kMetric)
{
    return readQuantity(kind, QString::fromUtf8(text), wording).value.value_or(std::nan(""));
}

ReadProblem problem(QuantityKind kind, const char* text, const Wording& wording = kMetric)
{
    const auto result = readQuantity(kind, QString::fromUtf8(text), wording);
    EXPECT_FALSE(result.value) << text;
    return result.problem;
}

} // namespace

TEST(QuantityWords, ReadsTemperatures)
{
    for (const char* text : {"20,5", "20.5", "20.5 C", "20.5 °C", "20,5°c", " 20.5 "}) {
        EXPECT_DOUBLE_EQ(read(Temperature, text), 20.5) << text;
        EXPECT_DOUBLE_EQ(read(Temperature, text, kMetricGerman), 20.5) << text;
    }
    EXPECT_DOUBLE_EQ(read(Temperature, "68F"), 20);
    EXPECT_DOUBLE_EQ(read(Temperature, "68", kUs), 20);
    EXPECT_DOUBLE_EQ(read(Temperature, "20 C", kUs), 20);
    EXPECT_DOUBLE_EQ(read(Temperature, "−3"), -3);
    EXPECT_EQ(problem(Temperature, "20 ml"), ReadProblem::OtherUnit);
}

TEST(QuantityWords, ReadsVolumes)
{
    EXPECT_DOUBLE_EQ(read(Volume, "600"), 600);
    EXPECT_DOUBLE_EQ(read(Volume, "600ml"), 600);
    EXPECT_DOUBLE_EQ(read(Volume, "600 mL", kUs), 600);
    EXPECT_DOUBLE_EQ(read(Volume, "0.6 l"), 600);
    EXPECT_DOUBLE_EQ(read(Volume, "0,6 L", kMetricGerman), 600);
    EXPECT_DOUBLE_EQ(read(Volume, "20 fl oz"), 20 * 29.5735295625);
    EXPECT_DOUBLE_EQ(read(Volume, "20", kUs), 20 * 29.5735295625);
    EXPECT_DOUBLE_EQ(read(Volume, "20 fl. oz."), 20 * 29.5735295625);
}

TEST(QuantityWords, ReadsThousandsAsTheLocaleWritesThem)
{
    EXPECT_DOUBLE_EQ(read(Volume, "1,000 ml"), 1000);
    EXPECT_DOUBLE_EQ(read(Volume, "1.000 ml", kMetricGerman), 1000);
    EXPECT_DOUBLE_EQ(read(Volume, "1,500"), 1500);
    EXPECT_DOUBLE_EQ(read(Volume, "1.500,5", kMetricGerman), 1500.5);
    EXPECT_DOUBLE_EQ(read(Volume, "1 500"), 1500);
    EXPECT_DOUBLE_EQ(read(Volume, "1’500 ml"), 1500);
    EXPECT_DOUBLE_EQ(read(Volume, "0,500"), 0.5) << "no thousands begin with nought";
    EXPECT_DOUBLE_EQ(read(Volume, "1500", kMetricGerman), 1500);
    // Two signs, or one twice, leave no doubt, whatever the locale.
    for (const Wording& wording : {kMetric, kMetricGerman, kUs}) {
        EXPECT_DOUBLE_EQ(read(Volume, "1,500,000 ml", wording), 1'500'000);
        EXPECT_DOUBLE_EQ(read(Volume, "1.500.000 ml", wording), 1'500'000);
        EXPECT_DOUBLE_EQ(read(Volume, "1.500,25 ml", wording), 1500.25);
        EXPECT_DOUBLE_EQ(read(Volume, "1,500.25 ml", wording), 1500.25);
    }
    for (const char* text : {"1,50,000", "1.500.00", "1500,000,5", "1,", "1 50", "1,500 000"})
        EXPECT_FALSE(readQuantity(Volume, QString::fromUtf8(text), kUs).open) << text;
    for (const char* text : {"1,50,000", "1.500.00", "1500,000,5", "1 50", "1,500 000"})
        EXPECT_FALSE(readQuantity(Volume, QString::fromUtf8(text), kMetric).value) << text;
}

TEST(QuantityWords, TellsBothWaysWhereASignCanMeanEither)
{
    const auto sure = readQuantity(Volume, QStringLiteral("1,500"), kMetric);
    EXPECT_EQ(sure.other, 1.5);
    EXPECT_FALSE(sure.open) << "so the locale writes thousands";
    const auto open = readQuantity(Volume, QStringLiteral("1.500 l"), kMetric);
    EXPECT_EQ(open.value, 1500);
    EXPECT_EQ(open.other, 1'500'000);
    EXPECT_TRUE(open.open);
    EXPECT_TRUE(readQuantity(Volume, QStringLiteral("1,500"), kMetricGerman).open);
    for (const char* text : {"1.5", "1.50", "1.5000", "1234.500", "0.500", ".500", "1500"}) {
        const auto one = readQuantity(Volume, QString::fromUtf8(text), kMetric);
        EXPECT_TRUE(one.value && !one.other && !one.open) << text;
    }
}

TEST(QuantityWords, ATimeThatIsANumberAloneCanBeSecondsToo)
{
    const auto alone = readQuantity(Time, QStringLiteral("45"), kMetric);
    EXPECT_EQ(alone.value, 45 * 60);
    EXPECT_EQ(alone.other, 45);
    EXPECT_FALSE(alone.open) << "minutes, as long as they can be";
    for (const char* text : {"45 min", "45 s", "0:45", "45:00"})
        EXPECT_FALSE(readQuantity(Time, QString::fromUtf8(text), kMetric).other) << text;
}

TEST(QuantityWords, ReadsTimes)
{
    for (const char* text :
         {"9:30", "9.5 min", "9,5", "570 s", "9 min 30 s", "9m30", "9:30 min", "9'30"})
        EXPECT_DOUBLE_EQ(read(Time, text), 570) << text;
    EXPECT_DOUBLE_EQ(read(Time, "1:05:00"), 3900);
    EXPECT_DOUBLE_EQ(read(Time, "90:00"), 5400);
    EXPECT_EQ(problem(Time, "9:75"), ReadProblem::NotANumber);
    EXPECT_EQ(problem(Time, "20 ml"), ReadProblem::OtherUnit);
}

// A field shows what it refuses, and what it shows can be read again.
TEST(QuantityWords, ReadsWhatAFieldShowsOfAValueBelowNothing)
{
    EXPECT_DOUBLE_EQ(read(Time, "−5:00"), -300);
    EXPECT_DOUBLE_EQ(read(Time, "-1:00:30"), -3630);
    EXPECT_DOUBLE_EQ(read(Time, "+5:00"), 300);
    const Wording egyptian{{}, QLocale(QLocale::Arabic, QLocale::Egypt)};
    for (const QuantityKind kind : {Time, Volume, Temperature, Count, Number}) {
        const QString shown = editText(kind, -5, egyptian);
        const auto again = readQuantity(kind, shown, egyptian);
        EXPECT_DOUBLE_EQ(again.value.value_or(0), -5) << shown.toStdString();
    }
}

TEST(QuantityWords, ReadsCounts)
{
    EXPECT_DOUBLE_EQ(read(Count, "2"), 2);
    EXPECT_DOUBLE_EQ(read(Count, "2⅓"), 2 + 1.0 / 3);
    EXPECT_DOUBLE_EQ(read(Count, "2 1/3"), 2 + 1.0 / 3);
    EXPECT_DOUBLE_EQ(read(Count, "½"), 0.5);
    EXPECT_EQ(problem(Count, "1/0"), ReadProblem::NotANumber);
}

TEST(QuantityWords, RefusesNonsense)
{
    for (const char* text : {"abc", "--5", "5-", "nan", "inf", "1e400", ".", "°C", "12..5"})
        EXPECT_FALSE(readQuantity(Number, QString::fromUtf8(text), kMetric).value) << text;
    EXPECT_EQ(problem(Volume, "  "), ReadProblem::Empty);
}

TEST(QuantityWords, UnderstandsWhatItWrites)
{
    const Wording egyptian{kUs.units, QLocale(QLocale::Arabic, QLocale::Egypt)};
    for (const Wording& wording : {kMetric, kMetricGerman, kUs, egyptian}) {
        for (const QuantityKind kind : {Volume, Temperature, Time, Area, Count, Number, Hours}) {
            for (const double value : {0.0, 0.5, 1.0, 18.0, 20.5, 600.0, 1030.0, 12345.0}) {
                const QString text = editText(kind, value, wording);
                const auto again = readQuantity(kind, text, wording);
                ASSERT_TRUE(again.value) << text.toStdString();
                EXPECT_EQ(editText(kind, *again.value, wording), text);
            }
        }
        // And what stands on pages and cards, with signs between thousands.
        for (const double value : {0.4, 9.5, 600.0, 1000.0, 1500.0, 29574.0, 1'234'567.0}) {
            const QString volume = volumeText(ullage::chemistry::Millilitres(value), wording);
            const auto again = readQuantity(Volume, volume, wording);
            ASSERT_TRUE(again.value && !again.open) << volume.toStdString();
            EXPECT_EQ(volumeText(ullage::chemistry::Millilitres(*again.value), wording), volume);
            const QString films = filmCountText(value, wording.locale);
            const auto count = readQuantity(Count, films, wording);
            ASSERT_TRUE(count.value && !count.open) << films.toStdString();
            EXPECT_EQ(filmCountText(*count.value, wording.locale), films);
        }
    }
}
