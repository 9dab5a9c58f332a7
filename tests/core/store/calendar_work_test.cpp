#include "core/store/calendar_work.h"

#include "core/store/calendar_reader.h"
#include "tests/core/store/temp_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

CalendarEvent event(const char* uid, const char* summary, int day)
{
    CalendarEvent made;
    made.uid = uid;
    made.at = std::chrono::sys_days(std::chrono::year(2027) / 1 / 1) + std::chrono::days(day);
    made.summary = QString::fromUtf8(summary);
    return made;
}

} // namespace

TEST(CalendarWork, isEnteredOnceAndGivenAnewWhereItMoved)
{
    TempBook book;
    const auto take = [&](const std::vector<CalendarEvent>& events) {
        const auto works = workOf(events, *book.book->cupboard(testNow()));
        std::vector<ledger::CupboardLine> lines(works.begin(), works.end());
        EXPECT_TRUE(lines.empty() || book.book->add(lines));
        return works.size();
    };
    const auto course = event("3f@elsewhere", "Course", 5);
    EXPECT_EQ(take({course, event("discard-dev-1@ullage", "Discard Dev 1", 9)}), 1u);
    EXPECT_EQ(take({course}), 0u);
    auto moved = event("3f@elsewhere", "Course", 6);
    moved.rule = "FREQ=WEEKLY";
    moved.films = 8;
    EXPECT_EQ(take({moved}), 1u);
    const auto state = *book.book->cupboard(testNow());
    ASSERT_EQ(state.works.size(), 1u);
    EXPECT_EQ(state.works.front().at, moved.at);
    EXPECT_EQ(state.works.front().rule, "FREQ=WEEKLY");
    EXPECT_EQ(state.works.front().films, chemistry::Films(8));
    // What this program wrote comes back as the same work.
    EXPECT_EQ(take({[&] {
                  auto ours = moved;
                  ours.uid = "work-3f@elsewhere@ullage";
                  return ours;
              }()}),
              0u);
}
