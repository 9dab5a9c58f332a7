// The plan of the weeks ahead in words: held against what is worked out by hand beside it.
#include "app/cupboard/buy_card.h"
#include "app/cupboard/need_strip.h"
#include "app/cupboard/needs_card.h"
#include "app/cupboard/pace_choice.h"
#include "app/cupboard/work_dialog.h"
#include "app/cupboard/work_words.h"
#include "app/words/local_calendar.h"
#include "tests/app/cupboard/cupboard_kit.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/core/store/damaged_book.h"

#include <QLabel>
#include <QSignalSpy>

namespace ullage::app
{

namespace
{

using cupboard::StretchKind;

// In `days`, this many films, in the developer mixed last.
ledger::Work workIn(Desk& desk, int days, double films, const std::string& rule = {})
{
    ledger::Work work;
    work.id = "work-" + std::to_string(days);
    work.at = desk.now() + std::chrono::days(days);
    work.films = chemistry::Films(films);
    work.name = "Course";
    work.rule = rule;
    return work;
}

NeedsView viewOf(Desk& desk, const PlanFor& planFor = {})
{
    return needsView(needsOf(desk, planFor), *desk.door().formulary(), desk.door().wording());
}

} // namespace

// A litre of stock does 10 films (starter formulary); 6 went through it, so 4 are left. A week on
// come 8 films: 4 of them in the bottle, 4 in a litre mixed the day before from the packet here.
// Two weeks on come 8 more: 6 are left in that one, and for 2 a packet is missing.
TEST(NeedViews, whatStandsWhatIsMixedAndWhatIsMissing)
{
    Desk desk; // 25 November 2026
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.run(dev, 6);
    shelve(desk, {powder("p1"), workIn(desk, 7, 8), workIn(desk, 14, 8)});
    const NeedsView view = viewOf(desk);
    ASSERT_EQ(view.strip.rows.size(), 1u);
    const NeedRow& row = view.strip.rows[0];
    EXPECT_EQ(row.detail, "16 films");
    ASSERT_EQ(row.bars.size(), 3u);
    EXPECT_EQ(row.bars[0].kind, StretchKind::Stands);
    EXPECT_EQ(row.bars[0].text, "Dev 1 · 4 films");
    EXPECT_DOUBLE_EQ(row.bars[0].from, 0);
    EXPECT_EQ(row.bars[1].kind, StretchKind::Mix);
    EXPECT_EQ(row.bars[1].text, "mix on 1 Dec");
    EXPECT_NEAR(row.bars[1].from, 6.0 / 56, 1e-9) << "of eight weeks";
    EXPECT_EQ(row.bars[2].kind, StretchKind::Missing);
    EXPECT_EQ(row.bars[2].text, "missing: buy by 8 Dec");
    ASSERT_EQ(view.strip.work.size(), 2u);
    EXPECT_NEAR(view.strip.work[1].at, 14.0 / 56, 1e-9);
    EXPECT_EQ(view.strip.weeks.front().day, "2 Dec");
    EXPECT_EQ(view.summary, "enough for the work until 2 Dec");

    ASSERT_EQ(view.buy.lines.size(), 1u);
    EXPECT_TRUE(view.buy.lines[0].text.endsWith("1,000\u00a0ml\u00a0×\u00a01"))
        << view.buy.lines[0].text.toStdString();
    EXPECT_EQ(view.buy.lines[0].by, "buy by 8 Dec");
    EXPECT_EQ(view.buy.lines[0].cost, "8.40\u00a0EUR");
    EXPECT_EQ(view.buy.lines[0].perFilm, "0.84\u00a0EUR for each film") << "a litre does ten";
    EXPECT_EQ(view.buy.together, "8.40\u00a0EUR");
}

// 25 films at once: 4 in the bottle, 10 from the packet, so 11 are missing: two packets.
TEST(NeedViews, aShoppingListForSoManyFilms)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.run(dev, 6);
    shelve(desk, {powder("p1")});
    const NeedsView view = viewOf(desk, {.weeks = 8, .films = 25});
    ASSERT_EQ(view.buy.lines.size(), 1u);
    EXPECT_TRUE(view.buy.lines[0].text.endsWith("×\u00a02"));
    EXPECT_EQ(view.buy.together, "16.80\u00a0EUR");
}

TEST(NeedViews, nothingKnownSaysWhatToDo)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const NeedsView view = viewOf(desk);
    EXPECT_TRUE(view.strip.rows.empty());
    EXPECT_TRUE(view.strip.nothing.contains("Add what is to come"));
    EXPECT_TRUE(view.buy.lines.empty());
}

TEST(NeedViews, workThatNoDeveloperIsKnownForSaysSo)
{
    Desk desk;
    shelve(desk, {workIn(desk, 7, 8)});
    EXPECT_TRUE(viewOf(desk).strip.nothing.contains("names no developer"));
}

TEST(NeedViews, workThatComesAgainIsOnTheStripEachTime)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {workIn(desk, 7, 1, "FREQ=WEEKLY;INTERVAL=2;UNTIL=20270101T235959Z")});
    const NeedsView view = viewOf(desk);
    EXPECT_EQ(view.strip.work.size(), 3u) << "2, 16 and 30 December";
    ASSERT_EQ(view.works.size(), 1u);
    EXPECT_TRUE(view.works[0].text.endsWith("every second week · until 1 Jan"))
        << view.works[0].text.toStdString();
    EXPECT_TRUE(view.works[0].repeats);
}

TEST(NeedViews, workSaysWhenItComesNextAndNothingOnceItIsOver)
{
    Desk desk;
    shelve(desk, {workIn(desk, 2, 4, "FREQ=WEEKLY"), workIn(desk, 3, 1)});
    ASSERT_EQ(viewOf(desk).works.size(), 2u);
    EXPECT_FALSE(viewOf(desk).works[1].repeats);
    desk.pass(4);
    const auto works = viewOf(desk).works;
    ASSERT_EQ(works.size(), 1u) << "the other is over";
    EXPECT_TRUE(works[0].text.contains("4 Dec")) << works[0].text.toStdString();
}

TEST(WorkWords, sayHowItComesAgain)
{
    const QLocale english(QLocale::English, QLocale::UnitedKingdom);
    EXPECT_EQ(ruleWords("FREQ=WEEKLY;INTERVAL=2;BYDAY=TU", english),
              "every second week on Tuesday");
    EXPECT_EQ(ruleWords("FREQ=WEEKLY;BYDAY=TU,TH;COUNT=6", english),
              "every week on Tuesday, Thursday");
    EXPECT_EQ(ruleWords("FREQ=MONTHLY;BYDAY=2TU,-1FR", english),
              "every month on second Tuesday, last Friday");
    EXPECT_EQ(ruleWords("FREQ=MONTHLY;BYMONTHDAY=1,-1", english), "every month on day 1, last day");
    EXPECT_EQ(ruleWords("every 2 weeks", english), "every 2 weeks") << "as it is";
    EXPECT_EQ(ruleWords("", english), "");
    EXPECT_EQ(ruleEndWords("FREQ=WEEKLY", {}, english), "");
}

// Three loads of two films today and the load believed in beforehand are 4 in 30 days, 8 films in
// them: 1.87 a week, and in eight weeks 7 loads, one every 7.5 days. The packet to be mixed first
// does 10 films, and the 4 left in the bottle are done before.
TEST(NeedViews, whatUsuallyComesIsPlannedBesideTheKnownWork)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    for (int i = 0; i < 3; ++i)
        desk.run(dev, 2);
    const NeedsView view = viewOf(desk);
    EXPECT_EQ(view.usualPace, "what usually comes: about 1.9 films a week");
    EXPECT_EQ(view.strip.pace, "14 films");
    ASSERT_EQ(view.strip.work.size(), 7u);
    EXPECT_NEAR(view.strip.work[0].at, 7.5 / 56, 1e-6);
    ASSERT_EQ(view.strip.rows.size(), 1u);
    EXPECT_EQ(view.strip.rows[0].bars.back().kind, StretchKind::Missing);

    PlanFor without;
    without.beside.kind = cupboard::Beside::Kind::Nothing;
    EXPECT_TRUE(viewOf(desk, without).strip.rows.empty());
    EXPECT_EQ(viewOf(desk, without).usualPace, view.usualPace) << "it is known all the same";
    NeedStrip strip;
    strip.setStrip(view.strip);
    EXPECT_TRUE(strip.accessibleDescription().contains("Besides the known work 14 films in all"));
}

TEST(PaceChoice, tellsOfAnotherPaceAndKeepsIt)
{
    PaceChoice choice;
    QSignalSpy changed(&choice, &PaceChoice::changed);
    EXPECT_EQ(choice.beside(), cupboard::Beside());
    named<QComboBox>(choice, "Film beside the known work")->setCurrentIndex(1);
    spin(choice, "Films a week", 14);
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(choice.beside(), (cupboard::Beside{cupboard::Beside::Kind::Given, 2}));
    Desk desk;
    desk.preferences().setBeside(choice.beside());
    PaceChoice other;
    other.setBeside(desk.preferences().beside());
    EXPECT_EQ(other.beside(), choice.beside());
}

TEST(NeedStrip, isAsHighAsItsRowsAndSaysThemAll)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    shelve(desk, {workIn(desk, 7, 3)});
    NeedStrip strip;
    const int empty = strip.sizeHint().height();
    strip.setStrip(viewOf(desk).strip);
    EXPECT_GT(strip.sizeHint().height(), empty);
    EXPECT_TRUE(strip.accessibleDescription().contains("Dev 1"));
    EXPECT_TRUE(strip.accessibleDescription().contains("Course"));
}

TEST(NeedStrip, leavesOutWholeWordsWhereABarIsShort)
{
    NeedBar bar;
    bar.text = "Dev 1 · 12 films";
    bar.shorter = QStringList{"12 films"};
    const QFontMetricsF metrics{QFont()};
    const double all = metrics.horizontalAdvance(bar.text);
    const double films = metrics.horizontalAdvance(bar.shorter[0]);
    EXPECT_EQ(NeedStrip::wordsIn(bar, metrics, all + 1), "Dev 1 · 12 films");
    EXPECT_EQ(NeedStrip::wordsIn(bar, metrics, all - 1), "12 films");
    EXPECT_EQ(NeedStrip::wordsIn(bar, metrics, films - 1), "") << "no figure is cut";
}

TEST(BuyCard, tellsOfAnotherTimeAndOfSoManyFilms)
{
    BuyCard card;
    QSignalSpy changed(&card, &BuyCard::planForChanged);
    EXPECT_EQ(card.planFor(), PlanFor());
    named<QComboBox>(card, "What to buy for")->setCurrentIndex(4);
    spin(card, "Films", 30);
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(card.planFor().films, 30);
    card.setPlanFor({.weeks = 12, .films = {}});
    EXPECT_EQ(card.planFor().weeks, 12);
    EXPECT_EQ(changed.count(), 2) << "set, not chosen";
}

TEST(WorkDialog, entersWorkThatComesAgainAndChangesIt)
{
    Desk desk;
    {
        WorkDialog dialog(desk.door(), {});
        dialog.show();
        dialog.accept();
        EXPECT_TRUE(dialog.isVisible());
        EXPECT_FALSE(dialog.problemOf("films").isEmpty()) << "how many is needed";
        type(dialog, "Films each time", "8");
        auto* again = named<QComboBox>(dialog, "How often");
        again->setCurrentIndex(again->findText("every second week"));
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    }
    auto works = snapshotOf(desk).state.works;
    ASSERT_EQ(works.size(), 1u);
    EXPECT_EQ(works[0].rule, "FREQ=WEEKLY;INTERVAL=2");
    EXPECT_EQ(works[0].films, chemistry::Films(8));
    const auto at = works[0].at;
    {
        WorkDialog dialog(desk.door(), works[0]);
        dialog.show();
        type(dialog, "Films each time", "4");
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible()) << dialog.refusal().toStdString();
    }
    works = snapshotOf(desk).state.works;
    ASSERT_EQ(works.size(), 1u);
    EXPECT_EQ(works[0].films, chemistry::Films(4));
    EXPECT_EQ(works[0].at, at);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_EQ(snapshotOf(desk).state.works[0].films, chemistry::Films(8));
}

// Dev 1 does not count, whatever is in it; what it was mixed from is still what films go through.
TEST(NeedViews, aBottleThatCannotBeReadIsLeftOutAndNamed)
{
    Desk desk;
    desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.run(dev, 3);
    shelve(desk, {workIn(desk, 7, 4)});
    desk.session().close();
    store::testing::tamper(desk.bookPath(),
                           {"UPDATE entry SET body = replace(body, '\"count\":3', '\"count\":1'), "
                            "films = 1 WHERE kind = 'processed'"});
    desk.reopen();
    auto needs = cupboard::readNeeds(desk.session().book(), desk.now(), {}, wallClock());
    ASSERT_TRUE(needs) << needs.error().text;
    ASSERT_EQ(needs->leftOut.size(), 1u);
    const NeedsView view = needsView(needsSnapshot(std::move(*needs), {}), *desk.door().formulary(),
                                     desk.door().wording());
    EXPECT_TRUE(view.leftOut.contains("Dev 1")) << view.leftOut.toStdString();
    ASSERT_EQ(view.strip.rows.size(), 2u) << "developer and fixer";
    for (const NeedRow& row : view.strip.rows) {
        ASSERT_EQ(row.bars.size(), 1u) << row.name.toStdString();
        EXPECT_EQ(row.bars[0].kind == StretchKind::Stands, row.role == formulary::Role::Fixer)
            << row.name.toStdString();
    }
    NeedsCard card; // as the page shows it
    card.setNeeds(view);
    bool shown = false;
    for (const auto* label : card.findChildren<QLabel*>())
        shown = shown || label->text() == view.leftOut;
    EXPECT_TRUE(shown);
}

TEST(NeedViews, aCanIsLeftOutIntoWhichABottleWentThatCannotBeRead)
{
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.run(dev, 3);
    ledger::Container can;
    can.id = "can";
    can.name = "Developer can";
    can.holds = ledger::Waste::Developer;
    can.capacity = chemistry::Millilitres(5000);
    shelve(desk, {can, powder("p")});
    desk.record(dev, ledger::Discarded{"to the can", "can"});
    desk.session().close();
    store::testing::tamper(desk.bookPath(),
                           {"UPDATE entry SET body = replace(body, '\"count\":3', '\"count\":1'), "
                            "films = 1 WHERE kind = 'processed'"});
    desk.reopen();
    const auto needs = cupboard::readNeeds(desk.session().book(), desk.now(), {}, wallClock());
    ASSERT_TRUE(needs) << needs.error().text;
    EXPECT_EQ(needs->cupboard.items.size(), 1u) << "the packet stands there";
    EXPECT_TRUE(needs->cupboard.cans.empty());
    ASSERT_EQ(needs->leftOut.size(), 1u);
    EXPECT_EQ(needs->leftOut[0].name, "Developer can");
    EXPECT_FALSE(desk.session().book().cupboard(desk.now())) << "where all of it is asked for";
}

} // namespace ullage::app
