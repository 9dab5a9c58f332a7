// Corrections: what was entered together goes together, and other values come in its place as one
// deed that is judged as a whole.
#include "core/ledger/book_import.h"
#include "core/ledger/consequences.h"
#include "core/ledger/film_lines.h"
#include "tests/core/ledger/book_kit.h"

namespace ullage::ledger
{

namespace
{

class CorrectTest : public BookTest
{
protected:
    std::string mixClear(double days, const std::string& name = "Dev 1")
    {
        NewBatch batch{"dev", "glass", chemistry::Millilitres(1000), name, {}, false};
        batch.dissolved = true;
        const auto id = book->mix(batch, when(days));
        EXPECT_TRUE(id);
        return id.value_or("");
    }
    std::vector<std::string> idsWith(const std::string& event)
    {
        std::vector<std::string> found;
        for (const Event& one : book->enteredWith(event).value_or(std::vector<Event>()))
            found.push_back(one.id);
        return found;
    }
    // The mixing and what was entered with it, at another time.
    std::vector<Event> movedTo(const std::string& event, double days)
    {
        auto events = book->enteredWith(event).value_or(std::vector<Event>());
        for (Event& one : events)
            one.at = History::at(days);
        return events;
    }
};

} // namespace

// The automatic entry once stood in the way of taking the mixing back.
TEST_F(CorrectTest, aMixingGoesTogetherWithItsDissolved)
{
    const auto dev = mixClear(1);
    const auto events = *book->events(dev);
    ASSERT_EQ(events.size(), 2U);
    EXPECT_EQ(idsWith(events[0].id), (std::vector{events[0].id, events[1].id}));
    ASSERT_TRUE(book->voidEvents(idsWith(events[0].id), "never mixed"));
    EXPECT_EQ(book->batch(dev, now).error().code, ErrorCode::UnknownId);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(batch(dev).volume, chemistry::Millilitres(1000));
}

TEST_F(CorrectTest, ofSeveralBottlesMixedAtOnceEachGoesByItself)
{
    NewBatch one{"dev", "glass", chemistry::Millilitres(1000), "Dev 1", {}, false};
    NewBatch other{"fixer", "small", chemistry::Millilitres(500), "Fix 1", {}, false};
    one.dissolved = other.dissolved = true;
    const auto both = book->mix({one, other}, when(1));
    ASSERT_TRUE(both);
    const auto mixing = book->events(both->front())->front().id;
    EXPECT_EQ(idsWith(mixing).size(), 2U);
    ASSERT_TRUE(book->voidEvents(idsWith(mixing), ""));
    EXPECT_TRUE(book->batch(both->back(), now));
}

// Taking one back once took back the others of its mixing in silence.
TEST_F(CorrectTest, ofWhatWasTakenFromTheCupboardEachGoesByItself)
{
    const auto sulfite = book->add(Chemical{.id = {}, .name = "sulfite", .grams = 500});
    const auto borax = book->add(Chemical{.id = {}, .name = "borax", .grams = 100});
    ASSERT_TRUE(sulfite && borax);
    NewBatch batch{"dev", "glass", chemistry::Millilitres(1000), "Dev 1", {}, false};
    batch.takes = {{*sulfite, 100}, {*borax, 2}};
    const auto bottle = book->mix(batch, when(1));
    ASSERT_TRUE(bottle);
    const auto taken = store.eventsOnItem(*sulfite)->back();
    EXPECT_EQ(idsWith(taken.id), std::vector{taken.id});
    Event less = taken;
    less.what = Taken{*sulfite, 80, std::get<Taken>(taken.what).forBatch};
    ASSERT_TRUE(book->correct({taken.id}, {less}, "misread"));
    EXPECT_EQ(book->undoable()->subject, "sulfite");
    const auto left = [&] {
        const auto cupboard = book->cupboard(now);
        for (const ItemHere& here : cupboard->items) {
            if (here.item.name == "sulfite") {
                return here.stock.left.value_or(-1);
            }
        }
        return -2.0;
    };
    EXPECT_DOUBLE_EQ(left(), 420);
    ASSERT_TRUE(book->undo());
    EXPECT_DOUBLE_EQ(left(), 400);
    ASSERT_TRUE(book->redo());
    EXPECT_DOUBLE_EQ(left(), 420);
    const auto mixing = book->events(*bottle)->front().id;
    ASSERT_EQ(idsWith(mixing).size(), 3U) << "what was taken for it goes with it";
    ASSERT_TRUE(book->voidEvents(idsWith(mixing), "never mixed"));
    EXPECT_DOUBLE_EQ(left(), 500);
    ASSERT_TRUE(book->undo());
    EXPECT_DOUBLE_EQ(left(), 420);
    less.what = Taken{*sulfite, 800, {}};
    Event again;
    const auto all = *store.eventsOnItem(*sulfite);
    for (const Event& event : all) {
        again = event.kind() == "taken" ? event : again;
    }
    EXPECT_FALSE(book->correct({again.id}, {less}, "more than there is"));
    EXPECT_DOUBLE_EQ(left(), 420);
}

TEST_F(CorrectTest, whatAnImportBroughtDoesNotBelongTogether)
{
    const auto dev = mix();
    auto import = *book->import();
    ASSERT_TRUE(import->add({Event{"x1", dev, History::at(3), Opened{}, {}}, {}}));
    ASSERT_TRUE(import->add({Event{"x2", dev, History::at(4), Opened{}, {}}, {}}));
    ASSERT_TRUE(import->finish());
    EXPECT_EQ(idsWith("x1"), std::vector<std::string>{"x1"});
}

TEST_F(CorrectTest, aWrongMixingDateIsPutRightAndUndoneAsOne)
{
    const auto dev = mixClear(5);
    ASSERT_TRUE(run({dev}, 7, 2));
    const auto mixing = book->events(dev)->front().id;
    const auto before = batch(dev);
    ASSERT_TRUE(book->correct(idsWith(mixing), movedTo(mixing, 2), "wrong day"));
    EXPECT_EQ(batch(dev).mixedAt, History::at(2));
    EXPECT_EQ(batch(dev).loads.size(), 1U) << "the film stays";
    EXPECT_EQ(book->undoable()->what, "correct");
    EXPECT_EQ(book->undoable()->subject, "Dev 1");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(batch(dev).mixedAt, before.mixedAt);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(batch(dev).mixedAt, History::at(2));
    restart();
    EXPECT_EQ(batch(dev).mixedAt, History::at(2)) << "it is so in the store";
}

TEST_F(CorrectTest, whatRestsOnItIsNamedAndNothingChanges)
{
    const auto dev = mixClear(5);
    ASSERT_TRUE(run({dev}, 7, 2));
    const auto mixing = book->events(dev)->front().id;
    const auto film = book->events(dev)->back();
    expectRefused([&] { return book->correct(idsWith(mixing), movedTo(mixing, 9), "later"); },
                  ErrorCode::CannotVoid, "voids");
    expectRefused([&] { return book->voidEvents(idsWith(mixing), ""); }, ErrorCode::CannotVoid,
                  "voids");
    auto entered = *book->connectedEvents(dev);
    for (const std::string& id : idsWith(mixing))
        entered.push_back({"v-" + id, dev, now, Voided{id, {}}, {}, {}});
    const auto misfit = firstNotFitting(entered, book->formulary());
    ASSERT_TRUE(misfit);
    EXPECT_EQ(misfit->event.id, film.id);
}

// What only the entry that comes instead does wrong is that one's refusal.
TEST_F(CorrectTest, aValueThatDoesNotFitIsRefusedForItself)
{
    const auto dev = mix();
    ASSERT_TRUE(book->drawOff(dev, chemistry::Millilitres(100), "spilled", when(3)));
    const auto drawn = book->events(dev)->back();
    Event more = drawn;
    more.what = Drawn{chemistry::Millilitres(1500), "spilled", {}};
    expectRefused([&] { return book->correct({drawn.id}, {more}, "misread"); },
                  ErrorCode::NotEnough, "volume_ml");
    more.what = Drawn{chemistry::Millilitres(300), "spilled", {}};
    ASSERT_TRUE(book->correct({drawn.id}, {more}, "misread"));
    EXPECT_EQ(batch(dev).volume, chemistry::Millilitres(700));
    EXPECT_EQ(book->events(dev)->back().by, "");
}

// In between there is nothing to discard, and no film to take away: only the whole counts.
TEST_F(CorrectTest, onlyTheWholeMustFit)
{
    const auto dev = mix(0, "dev", 500);
    ASSERT_TRUE(book->topUp(dev, chemistry::Millilitres(400), when(2)));
    ASSERT_TRUE(book->drawOff(dev, chemistry::Millilitres(700), "sold", when(3)));
    const auto topUp = (*book->events(dev))[1];
    Event less = topUp;
    less.what = ToppedUp{chemistry::Millilitres(300), {}, {}};
    ASSERT_TRUE(book->correct({topUp.id}, {less}, "misread"));
    EXPECT_EQ(batch(dev).volume, chemistry::Millilitres(100));
    less.what = ToppedUp{chemistry::Millilitres(100), {}, {}};
    const auto now3 = book->events(dev)->back().id;
    expectRefused([&] { return book->correct({now3}, {less}, ""); }, ErrorCode::CannotVoid,
                  "voids");
}

namespace
{

// A run of two named films through a developer.
class CorrectRunTest : public CorrectTest
{
protected:
    CorrectRunTest() : dev(mix()), other(mix(0, "dev", 400, "small"))
    {
        FilmRun wanted;
        wanted.load = rolls(2);
        wanted.baths = {{dev, {}, {}, false, {}}};
        wanted.films = {{.format = "120", .name = "Harbour"}, {.format = "120", .name = "Dunes"}};
        run = book->process(wanted, History::at(3)).value_or("");
    }

    std::vector<FilmNow> films() { return filmsNow(*store.filmLines(run)); }
    std::string names()
    {
        std::string all;
        for (const FilmNow& one : films())
            all += one.film.format + " " + one.film.name + "; ";
        return all;
    }
    std::vector<std::string> baths()
    {
        std::vector<std::string> found;
        for (const std::string& id : {dev, other}) {
            if (!batch(id).loads.empty())
                found.push_back(id);
        }
        return found;
    }
    // What the run says now, through that bottle.
    Result<void> correct(const std::string& bottle, const Load& load, std::vector<FilmRecord> lines)
    {
        std::vector<std::string> gone;
        Event instead;
        for (const std::string& id : {dev, other}) {
            const auto events = *book->events(id);
            const auto taken = takenBack(events);
            for (const Event& event : events) {
                if (event.kind() == "processed" && !taken.contains(event.id)) {
                    gone.push_back(event.id);
                    instead = event;
                }
            }
        }
        instead.batch = bottle;
        std::get<Processed>(instead.what).load = load;
        return book->correct(gone, {instead}, "misread", std::move(lines));
    }

    std::string dev;
    std::string other;
    std::string run;
};

} // namespace

TEST_F(CorrectRunTest, anotherFormatKeepsTheFilmAndItsMarks)
{
    const std::string harbour = films()[0].film.id;
    ASSERT_TRUE(book->markFilms({harbour}, FilmFault::Thin, "by half"));
    FilmRecord line = films()[0].film;
    line.replaces = harbour;
    line.format = "135-36";
    ASSERT_TRUE(correct(dev, {{{"135-36", 1}, {"120", 1}}, {}}, {line}));
    EXPECT_EQ(names(), "135-36 Harbour; 120 Dunes; ");
    EXPECT_EQ(films()[0].film.id, harbour) << "whatever names it still does";
    EXPECT_EQ(store.marksOf(harbour)->size(), 1U);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(names(), "120 Harbour; 120 Dunes; ");
    EXPECT_EQ(films()[0].film.id, harbour);
    restart();
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(names(), "135-36 Harbour; 120 Dunes; ");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(names(), "120 Harbour; 120 Dunes; ") << "as often as one likes";
    ASSERT_TRUE(book->redo());
    line.name = "Harbour at night";
    ASSERT_TRUE(correct(dev, {{{"135-36", 1}, {"120", 1}}, {}}, {line})) << "by its first id";
    EXPECT_EQ(names(), "135-36 Harbour at night; 120 Dunes; ");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(names(), "135-36 Harbour; 120 Dunes; ");
}

TEST_F(CorrectRunTest, filmsComeAndGoWithTheirRun)
{
    FilmRecord gone = films()[1].film;
    gone.replaces = gone.id;
    gone.withdrawn = true;
    const FilmRecord added{.id = {}, .run = run, .format = "120", .name = "Mole", .notes = {}};
    ASSERT_TRUE(correct(dev, rolls(2), {gone, added}));
    EXPECT_EQ(names(), "120 Harbour; 120 Mole; ");
    EXPECT_EQ(filmNow(*store.filmLines(run), gone.replaces).film.name, "Dunes")
        << "what it was can still be said";
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(names(), "120 Harbour; 120 Dunes; ");
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(names(), "120 Harbour; 120 Mole; ");
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(names(), "120 Harbour; 120 Dunes; ") << "what went with its run is known as it was";
    EXPECT_TRUE(baths().empty());
}

TEST_F(CorrectRunTest, aFilmWithAMarkIsNotTakenOut)
{
    FilmRecord gone = films()[0].film;
    gone.replaces = gone.id;
    gone.withdrawn = true;
    ASSERT_TRUE(book->markFilms({gone.id}, FilmFault::Thin, ""));
    expectRefused([&] { return correct(dev, rolls(1), {gone}); }, ErrorCode::Conflict, "film");
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(correct(dev, rolls(1), {gone}));
    EXPECT_EQ(names(), "120 Dunes; ");
    expectRefused([&] { return correct(dev, rolls(1), {gone}); }, ErrorCode::UnknownId, "replaces");
}

TEST_F(CorrectRunTest, goesThroughAnotherBottleUnderItsOwnId)
{
    ASSERT_TRUE(correct(other, rolls(2), {}));
    EXPECT_EQ(baths(), std::vector{other});
    EXPECT_EQ(std::get<Processed>(book->events(other)->back().what).run, run);
    EXPECT_EQ(names(), "120 Harbour; 120 Dunes; ");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(baths(), std::vector{dev});
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(baths(), std::vector{other});
}

TEST_F(CorrectRunTest, filmsStayAsTheyWereCorrectedWhileTheirRunIsTakenBack)
{
    FilmRecord line = films()[0].film;
    line.replaces = line.id;
    line.name = "Quay";
    ASSERT_TRUE(correct(dev, rolls(2), {line}));
    ASSERT_TRUE(book->voidEvent(book->events(dev)->back().id, "never happened"));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(baths(), std::vector{dev}) << "the taking back";
    ASSERT_TRUE(book->redo());
    EXPECT_TRUE(baths().empty());
    EXPECT_EQ(names(), "120 Quay; 120 Dunes; ");
}

} // namespace ullage::ledger
