// What a forgotten event or a taking back would change, told before it is entered.
#include "core/ledger/consequences.h"

#include "core/ledger/deed_events.h"

#include "tests/core/ledger/book_kit.h"

#include <map>

namespace ullage::ledger
{

namespace
{

Event extra(double days, Happening what)
{
    return {"extra", "b", History::at(days), std::move(what), {}};
}

Result<Consequences> consequences(const History& history, const Event& event, double now = 100)
{
    return consequencesOf("b", history.entered, {event}, History::at(now), history.formulary);
}

Event films(double days, double count)
{
    return extra(days, Processed{Load{{{"120", count}}, {}}, {}, chemistry::Millilitres(0)});
}

} // namespace

TEST(Consequences, AForgottenRunTakesItsFilms)
{
    History history;
    history.mix("dev", 1000);
    history.run(10, 2);
    history.run(20, 3);
    const auto what = consequences(history, films(15, 4), 30);
    ASSERT_TRUE(what);
    EXPECT_DOUBLE_EQ(what->before->assessment.filmsLeft->value(), 5);
    EXPECT_DOUBLE_EQ(what->after->assessment.filmsLeft->value(), 1);
    EXPECT_EQ(what->before->assessment.verdict, Verdict::Good);
    EXPECT_EQ(what->after->assessment.verdict, Verdict::NearItsEnd);
    ASSERT_EQ(what->after->batch.loads.size(), 3u);
    EXPECT_DOUBLE_EQ(what->after->batch.loads[2].wearBefore.value(), 6) << "2 and the forgotten 4";
}

TEST(Consequences, RefuseWhatTheBookWouldRefuse)
{
    History history;
    history.mix("dev", 1000);
    history.run(10, 2);
    history.add(20, Discarded{"gone"});
    std::get<Mixed>(history.entered.front().what).name = "Dev 14";
    const Error early = consequences(history, films(-1, 1)).error();
    EXPECT_EQ(early.code, ErrorCode::BeforeMixing);
    EXPECT_EQ(early.subject, "Dev 14") << "what stands on the label, not an id";
    EXPECT_EQ(consequences(history, films(21, 1)).error().code, ErrorCode::AfterEnd);
    EXPECT_EQ(consequences(history, films(5, 0)).error().field, "films.count");
    EXPECT_EQ(consequences(history, films(200, 1)).error().code, ErrorCode::InFuture);
    // Fits at its own time, and leaves too little for what came after.
    History used;
    used.mix("dev", 1000);
    used.add(10, Drawn{chemistry::Millilitres(600), {}});
    EXPECT_FALSE(consequences(used, extra(5, Drawn{chemistry::Millilitres(500), {}})));
    EXPECT_TRUE(consequences(used, extra(5, Drawn{chemistry::Millilitres(400), {}})));
}

TEST(Consequences, TakingBackIsJudgedTheSameWay)
{
    History history;
    const auto mixing = history.mix("dev", 1000);
    const auto run = history.run(10, 8);
    const auto what = consequences(history, extra(30, Voided{run, "counted twice"}), 30);
    ASSERT_TRUE(what);
    EXPECT_DOUBLE_EQ(what->before->assessment.filmsLeft->value(), 2);
    EXPECT_DOUBLE_EQ(what->after->assessment.filmsLeft->value(), 10);
    const auto refused = consequences(history, extra(30, Voided{mixing, "wrong"}), 30);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::CannotVoid);
    EXPECT_EQ(refused.error().text, mixing);
    History alone;
    const auto only = alone.mix("dev", 1000);
    const auto gone = consequences(alone, extra(30, Voided{only, "wrong"}), 30);
    ASSERT_TRUE(gone);
    EXPECT_TRUE(gone->before);
    EXPECT_FALSE(gone->after);
}

// What was shown is what the book says once it is entered.
TEST_F(BookTest, ConsequencesAreWhatIsLaterTrue)
{
    const auto id = mix();
    ASSERT_TRUE(run({id}, 10, 2));
    ASSERT_TRUE(run({id}, 20, 3));
    const Noted note{"smells"};
    const std::vector<Happening> kinds{
        Processed{rolls(3), {}, chemistry::Millilitres(40)},
        Drawn{chemistry::Millilitres(200), "spilled"},
        ToppedUp{chemistry::Millilitres(30)},
        Contaminated{"fixer"},
        StoodOpen{chemistry::Hours(30), chemistry::SquareCentimetres(500)},
        Looked{false, "colour"},
        note,
    };
    for (const Happening& what : kinds) {
        const Event event{"extra", id, History::at(15), what, {}};
        const auto told = consequencesOf(id, *book->events(id), {event}, now, book->formulary());
        ASSERT_TRUE(told) << told.error().field;
        ASSERT_TRUE(book->record(id, what, when(15)));
        const Batch later = batch(id);
        const Assessment so = assess(later);
        EXPECT_EQ(told->after->assessment.verdict, so.verdict);
        EXPECT_EQ(told->after->assessment.filmsLeft, so.filmsLeft);
        EXPECT_EQ(told->after->assessment.discardBy, so.discardBy);
        EXPECT_EQ(told->after->batch.volume, later.volume);
        ASSERT_TRUE(book->undo());
        EXPECT_EQ(told->before->assessment.filmsLeft, assess(batch(id)).filmsLeft);
    }
}

// The bottle that is drawn from is not connected with the other one before.
TEST_F(BookTest, FillingFromAnotherBottleIsToldAsItIsEntered)
{
    const auto worn = mix(0, "dev", 500);
    ASSERT_TRUE(run({worn}, 1, 2));
    const auto filled = mix(0, "dev", 500);
    auto entered = *book->events(worn);
    const auto others = *book->events(filled);
    entered.insert(entered.end(), others.begin(), others.end());
    const auto extra = topUpEvents(filled, {chemistry::Millilitres(100), worn, {}}, when(15),
                                   [made = 0]() mutable { return "e" + std::to_string(made++); });
    std::map<std::string, Consequences> told;
    for (const std::string& id : {worn, filled}) {
        const auto what = consequencesOf(id, entered, extra, now, book->formulary());
        ASSERT_TRUE(what) << what.error().field;
        told[id] = *what;
    }
    ASSERT_TRUE(book->topUp(filled, chemistry::Millilitres(100), when(15), worn));
    for (const auto& [id, what] : told) {
        const Batch later = batch(id);
        EXPECT_EQ(what.after->batch.volume, later.volume);
        EXPECT_EQ(what.after->batch.wear, later.wear);
        EXPECT_EQ(what.after->assessment.filmsLeft, assess(later).filmsLeft);
    }
}

TEST_F(BookTest, SeveralAreTakenBackTogetherOrNotAtAll)
{
    const auto dev = mix();
    const auto fix = mix(0, "fixer", 1000, "squeezed");
    ASSERT_TRUE(run({dev, fix}, 10, 2));
    const std::string devRun = book->events(dev)->back().id;
    const std::string fixRun = book->events(fix)->back().id;
    expectRefused(
        [&] {
            return book->voidEvents({devRun, "nothing"}, "wrong");
        },
        ErrorCode::UnknownId, "voids");
    expectRefused([&] { return book->voidEvents({}, "wrong"); }, ErrorCode::Missing, "voids");
    ASSERT_TRUE(book->voidEvents({devRun, fixRun}, "wrong"));
    EXPECT_DOUBLE_EQ(wear(dev), 0);
    EXPECT_DOUBLE_EQ(wear(fix), 0);
    ASSERT_TRUE(book->undo()) << "one step";
    EXPECT_DOUBLE_EQ(wear(dev), 2);
    EXPECT_DOUBLE_EQ(wear(fix), 2);
}

TEST_F(BookTest, EveryEventSaysWhoDidIt)
{
    const auto first = mix();
    book->setPerson("Ada");
    ASSERT_TRUE(run({first}, 10, 1));
    ASSERT_TRUE(book->undo());
    book->setPerson({});
    ASSERT_TRUE(book->record(first, Noted{"later"}, when(11)));
    const auto events = *book->events(first);
    ASSERT_EQ(events.size(), 4u);
    EXPECT_EQ(events[0].by, "");
    EXPECT_EQ(events[1].by, "Ada");
    EXPECT_EQ(events[2].by, "Ada") << "who took it back";
    EXPECT_EQ(events[3].by, "");
}

} // namespace ullage::ledger
