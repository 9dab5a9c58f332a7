// What a machine keeps of how a person likes the window.
#include "app/session/preferences.h"

#include "tests/app/desk.h"

#include <QSettings>

#include <gtest/gtest.h>

namespace ullage::app
{

TEST(Preferences, keepWhatWasSet)
{
    Desk desk;
    const QString file = desk.file("other.ini");
    {
        Preferences preferences(file);
        preferences.setUnits({VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit});
        preferences.setBaseTimes("a/b \"c\"",
                                 {{chemistry::Celsius(20.5), chemistry::Seconds(570.25)}});
        preferences.setLook(Preferences::Look::Dark);
        preferences.setLastBook("/somewhere/home.ullage");
    }
    const Preferences again(file);
    EXPECT_EQ(again.wording().units, (Units{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit}));
    const auto pairs = again.baseTimes("a/b \"c\"");
    ASSERT_EQ(pairs.size(), 1u);
    EXPECT_DOUBLE_EQ(pairs[0].time.value(), 570.25);
    EXPECT_DOUBLE_EQ(pairs[0].temperature.value(), 20.5);
    EXPECT_EQ(again.look(), Preferences::Look::Dark);
    EXPECT_EQ(again.lastBook(), "/somewhere/home.ullage");
    EXPECT_TRUE(again.baseTimes("another").empty());
}

TEST(Preferences, theMachineHasANameThatStays)
{
    Desk desk;
    const QString name = desk.preferences().machine();
    EXPECT_FALSE(name.isEmpty());
    EXPECT_EQ(desk.preferences().machine(), name);
    EXPECT_NE(Preferences(desk.file("other.ini")).machine(), name);
}

TEST(Preferences, timesOfADilutionAreKeptApart)
{
    Desk desk;
    Preferences& preferences = desk.preferences();
    preferences.setBaseTimes("mq", {{chemistry::Celsius(20), chemistry::Seconds(600)}}, 0,
                             {{"Quay 400", 400.0}, {"Harbour", std::nullopt}});
    preferences.setBaseTimes("mq", {{chemistry::Celsius(20), chemistry::Seconds(840)}}, 1);
    EXPECT_EQ(preferences.baseTimes("mq").front().time.value(), 600);
    EXPECT_EQ(preferences.baseTimes("mq", 1).front().time.value(), 840);
    const auto films = preferences.baseTimesFor("mq");
    ASSERT_EQ(films.size(), 2U);
    EXPECT_EQ(films[0], (formulary::FilmWanted{"Quay 400", 400.0}));
    EXPECT_EQ(films[1], (formulary::FilmWanted{"Harbour", std::nullopt}));
    EXPECT_TRUE(preferences.baseTimesFor("mq", 1).empty());
}

TEST(Preferences, figuresSpoiledByHandAreLeftOut)
{
    Desk desk;
    const QString file = desk.file("spoiled.ini");
    {
        QSettings settings(file, QSettings::IniFormat);
        settings.setValue("times/6d71", QStringList{"nine@20", "570@nan", "600@20", "@", ""});
        settings.setValue("last/tank", "inf");
    }
    const Preferences preferences(file);
    EXPECT_EQ(preferences.baseTimes("mq").size(), 1u);
    EXPECT_FALSE(preferences.lastFigure("tank"));
}

} // namespace ullage::app
