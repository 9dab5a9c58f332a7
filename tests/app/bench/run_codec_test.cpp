// What the bench keeps of a run, as a file's text.
#include "app/bench/run_codec.h"

#include "bench_kit.h"

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

using chemistry::Celsius;
using chemistry::Millilitres;
using chemistry::Seconds;

TEST(RunCodec, EveryFieldComesBack)
{
    Bench bench;
    bench.open();
    bench.click("start");
    bench.key(Qt::Key_Space);
    bench.pass(10);
    bench.nextAllTheSame();
    bench.pass(31.25);
    ASSERT_TRUE(bench.page->run()->accept(Celsius(19.5)));
    ledger::RunState state = bench.page->run()->state();
    state.films[0].exposureIndex = 400;
    state.films[0].name = "Hafen “früh”";
    state.loggedAt = state.savedAt;
    const QByteArray json = runToJson(state);
    const auto again = runFromJson(json);
    ASSERT_TRUE(again) << again.error().field;
    EXPECT_EQ(runToJson(*again), json);
    EXPECT_EQ(again->films, state.films);
    EXPECT_EQ(again->tank, state.tank);
    EXPECT_EQ(again->sheet.steps, state.sheet.steps);
    EXPECT_EQ(again->sheet.basis.pairs, state.sheet.basis.pairs);
    EXPECT_EQ(again->savedAt, state.savedAt);
    EXPECT_EQ(again->current, 1u);
    EXPECT_EQ(again->times[1].real, state.times[1].real);
    EXPECT_EQ(again->times[1].target, state.times[1].target);
    EXPECT_EQ(again->readings.size(), 1u);
}

TEST(RunCodec, RefusesWhatIsNotOurs)
{
    EXPECT_FALSE(runFromJson(""));
    EXPECT_FALSE(runFromJson("[1,2"));
    EXPECT_FALSE(runFromJson("{\"type\":\"other\"}"));
    EXPECT_EQ(runFromJson("{\"type\":\"ullage-run\",\"version\":2}").error().code,
              ErrorCode::NewerBook);
    Bench bench;
    bench.open();
    bench.click("start");
    const QByteArray json = runToJson(bench.page->run()->state());
    ASSERT_TRUE(runFromJson(json));
    for (const auto& [from, to] : {std::pair{"\"current\":0", "\"current\":99"},
                                   {"\"current\":0", "\"current\":-1"},
                                   {"\"real_s\":0", "\"real_s\":-5"},
                                   {"\"kind\":\"fix\"", "\"kind\":\"tea\""},
                                   {"\"phase\":\"ready\"", "\"phase\":\"asleep\""}}) {
        QByteArray bad = json;
        bad.replace(from, to);
        ASSERT_NE(bad, json) << from;
        EXPECT_FALSE(runFromJson(bad)) << to;
    }
    for (qsizetype cut = 0; cut < json.size(); cut += 97)
        EXPECT_FALSE(runFromJson(json.left(cut)));
}

TEST(RunFile, AFolderThatCannotBeWrittenIsARefusal)
{
    Bench bench;
    bench.open();
    bench.click("start");
    const RunFile nowhere(bench.folder.filePath(QStringLiteral("no/such/folder/run")));
    EXPECT_EQ(nowhere.save(bench.page->run()->state()).error().code, ErrorCode::StoreFailed);
    EXPECT_TRUE(nowhere.load().has_value());
    EXPECT_FALSE(nowhere.load()->has_value());
}

} // namespace
} // namespace ullage::app
