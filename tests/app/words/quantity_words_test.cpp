#include "app/words/quantity_words.h"

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

TEST(QuantityWords, RefusesWhatCanBeReadTwoWays)
{
    EXPECT_EQ(problem(Volume, "1.500", kMetricGerman), ReadProblem::Ambiguous);
    EXPECT_EQ(problem(Volume, "1,500"), ReadProblem::Ambiguous);
    EXPECT_EQ(problem(Volume, "1,500,000"), ReadProblem::Ambiguous);
    EXPECT_EQ(problem(Volume, "1.500,5", kMetricGerman), ReadProblem::Ambiguous);
    EXPECT_EQ(problem(Volume, "1 500"), ReadProblem::Ambiguous);
    EXPECT_DOUBLE_EQ(read(Volume, "1.500"), 1.5) << "a point is never a group sign there";
    EXPECT_DOUBLE_EQ(read(Volume, "0,500"), 0.5) << "no group begins with nought";
    EXPECT_DOUBLE_EQ(read(Volume, "1500", kMetricGerman), 1500);
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
    for (const Wording& wording : {kMetric, kMetricGerman, kUs}) {
        for (const QuantityKind kind : {Volume, Temperature, Time, Area, Count, Number, Hours}) {
            for (const double value : {0.0, 0.5, 1.0, 18.0, 20.5, 600.0, 1030.0, 12345.0}) {
                const QString text = editText(kind, value, wording);
                const auto again = readQuantity(kind, text, wording);
                ASSERT_TRUE(again.value) << text.toStdString();
                EXPECT_EQ(editText(kind, *again.value, wording), text);
            }
        }
    }
}
