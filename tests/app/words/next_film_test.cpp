#include "app/words/next_film.h"
#include "tests/app/words/sample_batches.h"

namespace ullage::app
{

using namespace sample;

namespace
{

const std::vector<chemistry::TimeAtTemperature> kNineThirty{
    {chemistry::Celsius(20), chemistry::Seconds(570)}};

} // namespace

TEST(NextFilm, multipliesWhatItShows)
{
    const auto batch = Bottle().films(1, 4).at(day(10));
    const auto so = ledger::assess(batch);
    const auto next = nextFilm(batch, so, kNineThirty, chemistry::Celsius(20), english());
    EXPECT_EQ(next.time, "13:20"); // 9:30 × 1.40 = 798 s
    ASSERT_EQ(next.rows.size(), 4u);
    EXPECT_EQ(next.rows[0].value, "9:30");
    EXPECT_EQ(next.rows[2].value.simplified(), QString::fromUtf8("× 1.40"));
}

TEST(NextFilm, withoutTheMakersTimeThereIsNone)
{
    const auto batch = Bottle().films(1, 4).at(day(10));
    const auto next = nextFilm(batch, ledger::assess(batch), {}, chemistry::Celsius(20), english());
    EXPECT_EQ(next.time.simplified(), QString::fromUtf8("× 1.40"));
    const auto cold =
        nextFilm(batch, ledger::assess(batch), kNineThirty, chemistry::Celsius(5), english());
    EXPECT_FALSE(cold.time.contains(u':'));
    EXPECT_TRUE(cold.note.contains("no time"));
}

TEST(NextFilm, OfACarriedTimeGivesTheRangeAndAsksForASecondPair)
{
    const auto batch = sample::Bottle().at(sample::day(1));
    const auto so = ledger::assess(batch);
    const auto at = [&](double celsius) {
        return nextFilm(batch, so, kNineThirty, chemistry::Celsius(celsius), english())
            .warnings.join(u'\n');
    };
    EXPECT_FALSE(at(20).contains(QStringLiteral("Extended"))) << "the maker's own figure";
    // 9:30 × 3.0^0.4 and × 1.5^0.4 at 16 °C
    const QString said = at(16);
    EXPECT_TRUE(said.contains(QStringLiteral("11:10 to 14:45"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("A second time"))) << said.toStdString();
}

} // namespace ullage::app
