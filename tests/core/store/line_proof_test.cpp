// Readers of single lines show nothing that was changed since it was entered, and everything else.
#include "core/store/line_proof.h"

#include "core/store/day_book.h"
#include "core/store/film_reader.h"
#include "core/store/packet_reader.h"
#include "tests/core/store/damaged_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

const QByteArray kDays =
    kHead + kSolution + kVessel +
    R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000,"bought":"2026-05-01"})"
    "\n"
    R"({"type":"event","id":"m1","batch":"d1","at":"2026-06-01T10:00:00Z","kind":"mixed","solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev 1"})"
    "\n"
    R"({"type":"event","id":"r1","batch":"d1","at":"2026-06-03T19:00:00Z","kind":"processed","films":[{"format":"120","count":1}],"run":"run-1"})"
    "\n"
    R"({"type":"film","id":"fi1","run":"run-1","format":"120","name":"Harbour"})"
    "\n"
    R"({"type":"event","id":"n1","batch":"d1","at":"2026-06-04T08:00:00Z","kind":"noted","text":"clear as day"})"
    "\n"
    R"({"type":"event","id":"n2","batch":"d1","at":"2026-06-05T08:00:00Z","kind":"noted","text":"a little darker"})"
    "\n"
    R"({"type":"event","id":"v1","batch":"d1","at":"2026-06-06T08:00:00Z","kind":"voided","voids":"n2","why":"wrong bottle"})"
    "\n"
    R"({"type":"event","id":"n3","batch":"d1","at":"2026-06-07T08:00:00Z","kind":"noted","text":"still clear"})"
    "\n";

// After the deeds: "id" of what may be shown, "id: fault" of what may not, newest first.
class LineProofTest : public ::testing::Test
{
protected:
    LineProofTest()
    {
        const auto done = book.import(kDays);
        EXPECT_TRUE(done) << done.error().field << ' ' << done.error().text;
    }

    void change(const char* from, const char* to, const char* id)
    {
        close(book);
        tamper(book.path(), {QStringLiteral("UPDATE entry SET body = replace(body, '%1', '%2') "
                                            "WHERE id = '%3'")
                                 .arg(from, to, id)});
        reopen();
    }
    void reopen()
    {
        auto opened = SqlStore::open(book.path(), {.access = Access::Read});
        ASSERT_TRUE(opened) << opened.error().text;
        store = std::move(*opened);
    }
    std::vector<std::string> shown(const char* words = "")
    {
        DayBook days(*store);
        DayFilter filter;
        filter.words = dayWords(QString::fromUtf8(words));
        const auto page = days.page(filter, {}, 100);
        EXPECT_TRUE(page) << page.error().text;
        std::vector<std::string> found;
        for (const DayEntry& entry : page->entries) {
            found.push_back(entry.fault ? entry.event.id + ": " + said(*entry.fault)
                                        : entry.event.id);
            if (entry.fault) {
                EXPECT_EQ(entry.name, "Dev 1");
                EXPECT_TRUE(entry.films.empty());
                EXPECT_TRUE(std::get<ledger::Noted>(entry.event.what).text.empty());
            }
        }
        return found;
    }

    TempBook book;
    std::unique_ptr<SqlStore> store;
};

using Shown = std::vector<std::string>;

} // namespace

TEST_F(LineProofTest, ASoundBookIsShownWhole)
{
    close(book);
    reopen();
    EXPECT_EQ(shown(), (Shown{"n3", "n2", "n1", "r1", "m1"}));
}

TEST_F(LineProofTest, AChangedLineIsNamedInItsPlaceAndNotShown)
{
    change("clear as day", "cloudy as ever", "n1");
    EXPECT_EQ(shown(), (Shown{"n3", "n2", "n1: changed 7 event n1", "r1", "m1"}));
    EXPECT_EQ(shown("darker"), Shown{"n2"});
    const auto event = store->event("n1");
    ASSERT_FALSE(event);
    EXPECT_EQ(said(event.error()), "changed 7 event n1");
    EXPECT_TRUE(store->event("n2"));
}

TEST_F(LineProofTest, ALineThatIsNoJsonHidesNoOther)
{
    change("\"text\":", "\"text\"", "n1");
    EXPECT_EQ(shown(), (Shown{"n3", "n2", "n1: changed 7 event n1", "r1", "m1"}));
}

TEST_F(LineProofTest, AFilmOfARunIsPartOfItsRow)
{
    change("Harbour", "Pier", "fi1");
    EXPECT_EQ(shown(), (Shown{"n3", "n2", "n1", "r1: changed 6 film fi1", "m1"}));
    EXPECT_FALSE(store->film("fi1"));
    const formulary::Formulary formulary;
    const auto films = FilmReader(*store, formulary).ofRun("run-1");
    ASSERT_FALSE(films);
    EXPECT_EQ(said(films.error()), "changed 6 film fi1");
}

TEST_F(LineProofTest, AChangedTakingBackTakesNothingBackInSilence)
{
    change("wrong bottle", "right bottle", "v1");
    EXPECT_EQ(shown(), (Shown{"n3", "n2: changed 9 event v1", "n1", "r1", "m1"}));
}

TEST_F(LineProofTest, AChangedPacketIsNotCounted)
{
    change("1000", "9000", "p1");
    const auto packets = packetsAtHand(*store);
    ASSERT_FALSE(packets);
    EXPECT_EQ(said(packets.error()), "changed 3 packet p1");
}

// The line is what was entered; only its own proof was hurt, which the next entry's tells.
TEST_F(LineProofTest, AChangedHashHidesNothing)
{
    close(book);
    tamper(book.path(), {QStringLiteral("UPDATE entry SET hash = zeroblob(32) WHERE id = 'n1'")});
    reopen();
    EXPECT_EQ(shown(), (Shown{"n3", "n2", "n1", "r1", "m1"}));
}
