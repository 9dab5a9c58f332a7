#include "core/ledger/entry.h"
#include "core/ledger/line_description.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace ullage::ledger
{
namespace
{

using namespace chemistry;

Event event(Happening what) { return {"e1", "b", {}, std::move(what), {}}; }

std::string refusedField(Event event)
{
    const auto fine = checkFields(event);
    return fine ? "accepted" : fine.error().field;
}
std::string refusedField(Happening what) { return refusedField(event(std::move(what))); }

Mixed mixed(double volume) { return {"dev", "glass", Millilitres(volume), {}, {}, false}; }
Processed processed(Load load) { return {std::move(load), {}, Millilitres(0), false, {}}; }
const Load kRoll{{{"120", 1}}, {}};

TEST(EventFields, idsMustBeThere)
{
    auto noId = event(Opened{});
    noId.id = "";
    EXPECT_EQ(refusedField(noId), "id");
    auto noBatch = event(Opened{});
    noBatch.batch = "";
    EXPECT_EQ(refusedField(noBatch), "batch");
    // A voiding may leave its batch out, a packet has none.
    EXPECT_EQ(refusedField({"e1", "", {}, Voided{"e0", ""}, {}}), "accepted");
    EXPECT_EQ(refusedField({"e1", "", {}, OpenedPacket{"p"}, {}}), "accepted");
    EXPECT_EQ(refusedField(Voided{"", ""}), "voids");
    EXPECT_EQ(refusedField({"e1", "", {}, OpenedPacket{""}, {}}), "item");
}

TEST(EventFields, mixingNeedsSolutionVesselAndVolume)
{
    EXPECT_EQ(refusedField(mixed(1000)), "accepted");
    EXPECT_EQ(refusedField(mixed(0)), "volume_ml");
    EXPECT_EQ(refusedField(mixed(-5)), "volume_ml");
    EXPECT_EQ(refusedField(mixed(NAN)), "volume_ml");
    EXPECT_EQ(refusedField(mixed(INFINITY)), "volume_ml");
    EXPECT_EQ(refusedField(mixed(1'000'001)), "volume_ml");
    auto without = mixed(1000);
    without.solution = "";
    EXPECT_EQ(refusedField(without), "solution");
    without = mixed(1000);
    without.vessel = "";
    EXPECT_EQ(refusedField(without), "vessel");
}

TEST(EventFields, aLoadIsFilmsOrAnArea)
{
    EXPECT_EQ(refusedField(processed(kRoll)), "accepted");
    EXPECT_EQ(refusedField(processed({{}, SquareCentimetres(500)})), "accepted");
    EXPECT_EQ(refusedField(processed({})), "films");
    EXPECT_EQ(refusedField(processed({{{"120", 1}}, SquareCentimetres(500)})), "area_cm2");
    EXPECT_EQ(refusedField(processed({{}, SquareCentimetres(0)})), "area_cm2");
    EXPECT_EQ(refusedField(processed({{{"116", 1}}, {}})), "films.format");
    EXPECT_EQ(refusedField(processed({{{"120", 0}}, {}})), "films.count");
    EXPECT_EQ(refusedField(processed({{{"120", -1}}, {}})), "films.count");
    EXPECT_EQ(refusedField(processed({{{"120", 1.5}}, {}})), "films.count");
    EXPECT_EQ(refusedField(processed({{{"120", 1}, {"4x5", 10'001}}, {}})), "films.count");

    auto run = processed(kRoll);
    run.used = Millilitres(0);
    EXPECT_EQ(refusedField(run), "used_ml");
    run.used = Millilitres(600);
    run.lost = Millilitres(-1);
    EXPECT_EQ(refusedField(run), "lost_ml");
    run.lost = Millilitres(NAN);
    EXPECT_EQ(refusedField(run), "lost_ml");
}

TEST(EventFields, everyOtherFigureHasItsRange)
{
    EXPECT_EQ(refusedField(ToppedUp{Millilitres(0), {}}), "volume_ml");
    EXPECT_EQ(refusedField(Drawn{Millilitres(-1), {}}), "volume_ml");
    EXPECT_EQ(refusedField(Moved{""}), "vessel");
    EXPECT_EQ(refusedField(StoodOpen{Hours(0), SquareCentimetres(500)}), "hours");
    EXPECT_EQ(refusedField(StoodOpen{Hours(1), SquareCentimetres(0)}), "area_cm2");
    EXPECT_EQ(refusedField(StoredAt{Celsius(-0.1)}), "temperature_c");
    EXPECT_EQ(refusedField(StoredAt{Celsius(0)}), "accepted");
    EXPECT_EQ(refusedField(StoredAt{Celsius(45)}), "accepted");
    EXPECT_EQ(refusedField(StoredAt{Celsius(200)}), "temperature_c");
    EXPECT_EQ(refusedField(ClearingTested{Seconds(0), Celsius(20)}), "seconds");
    EXPECT_EQ(refusedField(ClearingTested{Seconds(7201), Celsius(20)}), "seconds");
    EXPECT_EQ(refusedField(ClearingTested{Seconds(60), Celsius(46)}), "temperature_c");
    EXPECT_EQ(refusedField(StripTested{-0.1, {}, {}}), "density");
    EXPECT_EQ(refusedField(StripTested{{}, 11, {}}), "factor");
    EXPECT_EQ(refusedField(StripTested{}), "accepted");
    EXPECT_EQ(refusedField(Noted{""}), "text");
    auto closed = event(Opened{});
    closed.airLeft = Millilitres(-1);
    EXPECT_EQ(refusedField(closed), "air_ml");
}

TEST(EventFields, refusalsNameValueAndRange)
{
    const auto error = checkFields(event(StoredAt{Celsius(200)})).error();
    EXPECT_EQ(error.code, ErrorCode::OutOfRange);
    EXPECT_EQ(error.number, 200);
    EXPECT_EQ(error.low, 0);
    EXPECT_EQ(error.high, 45);
    EXPECT_EQ(error.unit, "°C");
}

TEST(EventKinds, openTheBottleAsTheJournalSays)
{
    for (const Happening& what :
         {Happening(mixed(1000)), Happening(processed(kRoll)), Happening(ToppedUp{}),
          Happening(Drawn{}), Happening(Moved{}), Happening(Opened{}), Happening(StoodOpen{}),
          Happening(ClearingTested{}), Happening(StripTested{})}) {
        EXPECT_TRUE(opens(what)) << kKindCodes[what.index()];
    }
    for (const Happening& what :
         {Happening(StoredAt{}), Happening(Looked{}), Happening(Contaminated{}),
          Happening(Dissolved{}), Happening(Noted{}), Happening(Discarded{}), Happening(Voided{}),
          Happening(OpenedPacket{})}) {
        EXPECT_FALSE(opens(what)) << kKindCodes[what.index()];
    }
    EXPECT_EQ(event(ClearingTested{}).kind(), "clearing-test");
    EXPECT_EQ(event(OpenedPacket{}).kind(), "opened-packet");
    EXPECT_EQ(event(mixed(1)).kind(), "mixed");
}

TEST(Loads, countInFilms)
{
    const Load mixedLoad{{{"135-36", 2}, {"135-24", 3}, {"4x5", 4}, {"220", 1}}, {}};
    EXPECT_DOUBLE_EQ(mixedLoad.units().value(), 2 + 2 + 1 + 2);
    EXPECT_DOUBLE_EQ((Load{{}, SquareCentimetres(1032.256)}).units().value(), 2);
}

TEST(Entries, ofTheCupboardAreChecked)
{
    EXPECT_TRUE(check(FilmRecord{"f", "run", "120", "", 400, ""}));
    EXPECT_EQ(check(FilmRecord{"f", "", "120", "", {}, ""}).error().field, "run");
    EXPECT_EQ(check(FilmRecord{"f", "", "", "", {}, "", "g", true}).error().field, "run");
    EXPECT_EQ(check(FilmRecord{"f", "run", "", "", {}, "", "", true}).error().field, "replaces");
    EXPECT_TRUE(check(FilmRecord{"f", "run", "", "", {}, "", "g", true}));
    EXPECT_EQ(check(FilmRecord{"", "r", "120", "", {}, ""}).error().field, "id");
    EXPECT_EQ(check(FilmRecord{"f", "r", "120", "", 0.0, ""}).error().field, "ei");
    EXPECT_TRUE(check(Packet{"p", "dev", Millilitres(1000)}));
    EXPECT_EQ(check(Packet{"p", "dev", Millilitres(0)}).error().field, "makes_ml");
    EXPECT_EQ(check(Packet{"p", ""}).error().field, "solution");
    Packet dear{"p", "dev"};
    dear.cost = Decimal::from("-1");
    EXPECT_EQ(check(dear).error().field, "cost");
    EXPECT_TRUE(check(Chemical{"c", "sodium sulfite", "7757-83-7", 500}));
    EXPECT_EQ(check(Chemical{"c", "", "", {}}).error().field, "name");
    EXPECT_EQ(check(Chemical{"c", "borax", "", -1}).error().field, "grams");
    EXPECT_EQ((Entry{Packet{"p", "dev"}, {}}).type(), "packet");
    EXPECT_EQ((Entry{event(Opened{}), {}}).type(), "event");
}

} // namespace
} // namespace ullage::ledger
