#include "tests/core/store/temp_book.h"

#include <QFile>

#include <random>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

// Every type of line and kind of event once, with fields of other programs, in canonical order.
QByteArray everything()
{
    QByteArray text = kStart;
    text +=
        R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000,"lot":"A7","cost":8.50})"
        "\n"
        R"({"type":"chemical","name":"borax","grams":250})"
        "\n"
        R"({"type":"film","id":"f1","run":"run-1","format":"135-36","name":"Harbour","x":[1.0]})"
        "\n"
        R"({"type":"film-mark","id":"m1","film":"f1","at":"2026-06-04T09:00:00Z","mark":"uneven","y":1.0})"
        "\n";
    const char* events[] = {
        R"("kind":"dissolved","at":"2026-06-01T10:40:00Z")",
        R"("kind":"noted","at":"2026-06-01T10:50:00Z","text":"tab\t \"quote\" \\ ü 😀 \u0001")",
        R"("kind":"opened","at":"2026-06-04T10:00:00Z","air_ml":10)",
        R"("kind":"strip-test","at":"2026-06-05T10:00:00Z","density":1.21,"factor":1.02,"passed":true)",
        R"("kind":"looked","at":"2026-06-06T10:00:00Z","passed":true,"why":"colour")",
        R"("kind":"stored-at","at":"2026-06-07T10:00:00Z","temperature_c":17.5)",
        R"("kind":"stood-open","at":"2026-06-08T10:00:00Z","hours":1.5,"area_cm2":516.13)",
        R"("kind":"clearing-test","at":"2026-06-08T11:00:00Z","seconds":50,"temperature_c":20)",
        R"("kind":"drawn","at":"2026-06-09T10:00:00Z","volume_ml":50,"why":"a test")",
        R"("kind":"topped-up","at":"2026-06-10T10:00:00.125Z","volume_ml":30,"from":"")",
        R"("kind":"moved","at":"2026-06-11T10:00:00Z","vessel":"b1")",
        R"("kind":"contaminated","at":"2026-06-12T10:00:00Z","why":"fixer")",
        R"("kind":"voided","at":"2026-06-12T11:00:00Z","voids":"k11","why":"the other bottle")",
        R"("kind":"opened-packet","at":"2026-06-13T10:00:00Z","packet":"p1","unknown":null)",
        R"("kind":"discarded","at":"2026-07-01T10:00:00Z","how":"drum","litres":1e2)",
    };
    int count = 0;
    for (const char* event : events) {
        text += R"({"type":"event","id":"k)" + QByteArray::number(count++) +
                R"(","batch":"dev-1",)" + event + "}\n";
    }
    return text;
}

QByteArray resource(const char* name)
{
    QFile file(QStringLiteral(ULLAGE_RESOURCES "/") + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
    return file.readAll();
}

} // namespace

TEST(JournalImport, GivesBackEveryByteOfAJournalInCanonicalForm)
{
    TempBook book;
    const auto imported = book.import(everything());
    ASSERT_TRUE(imported) << imported.error().line << imported.error().field;
    EXPECT_EQ(imported->added, imported->lines);
    EXPECT_EQ(book.text(), everything());
    book.open();
    EXPECT_EQ(book.text(), everything());
}

TEST(JournalImport, TwiceIsTheSameAsOnce)
{
    TempBook book;
    ASSERT_TRUE(book.import(everything()));
    const auto again = book.import(everything());
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0);
    EXPECT_EQ(book.text(), everything());
}

// What it takes back says of which bottle it is: the line is kept with that bottle, goes out as it
// was written, and is the same line when it comes again, to this book and to another.
TEST(JournalImport, ATakingBackNeedsNotNameItsBottle)
{
    const QByteArray journal =
        kStart + R"({"type":"event","id":"e3","kind":"voided","at":"2026-06-04T10:00:00Z",)"
                 R"("voids":"e2","why":"another bottle"})"
                 "\n"
                 R"({"type":"event","id":"e4","kind":"voided","at":"2026-06-04T11:00:00Z",)"
                 R"("voids":"e3"})"
                 "\n"
                 R"({"type":"event","id":"e5","kind":"voided","at":"2026-06-04T12:00:00Z",)"
                 R"("voids":"e2"})"
                 "\n";
    TempBook book;
    ASSERT_TRUE(book.import(journal));
    const auto events = book.store->eventsOf("dev-1");
    ASSERT_TRUE(events);
    EXPECT_EQ(events->size(), 5U);
    const auto batches = book.book->batches(testNow(), true);
    ASSERT_TRUE(batches);
    ASSERT_EQ(batches->size(), 1U);
    EXPECT_EQ((*batches)[0].filmsDone, chemistry::Films(0));

    TempBook second;
    const auto first = second.import(book.text());
    ASSERT_TRUE(first) << first.error().line << first.error().field;
    EXPECT_EQ(first->added, first->lines);
    for (TempBook* one : {&book, &second}) {
        one->open();
        const auto again = one->import(journal);
        ASSERT_TRUE(again) << again.error().line << again.error().field;
        EXPECT_EQ(again->added, 0);
        EXPECT_EQ(one->text(), journal);
    }
}

TEST(JournalImport, IgnoresTheWritingOfWhatIsThere)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    QByteArray other = kStart;
    other.replace("\"volume_ml\":1000", "\"volume_ml\":1.0e3");
    other.replace("2026-06-01T10:00:00Z", "2026-06-01T12:00:00+02:00");
    ASSERT_NE(other, kStart);
    const auto again = book.import(other);
    ASSERT_TRUE(again) << again.error().field;
    EXPECT_EQ(again->added, 0);
    EXPECT_EQ(book.text(), kStart);
}

TEST(JournalImport, ToleratesMarkBlankLinesAndCarriageReturns)
{
    QByteArray text = kStart;
    text.replace("\n", "\r\n\r\n  \r\n");
    TempBook book;
    ASSERT_TRUE(book.import("\xEF\xBB\xBF" + text));
    EXPECT_EQ(book.text(), kStart);
}

TEST(JournalImport, KeepsTheFirstLineOfTheJournalThatABookBeginsWith)
{
    const QByteArray head =
        R"({"type":"book","format":"ullage-journal","version":2,"darkroom":"harbour"})"
        "\n";
    TempBook book;
    ASSERT_TRUE(book.import(head + kVessel));
    EXPECT_EQ(book.text(), head + kVessel);
    ASSERT_TRUE(book.import(kHead + kSolution));
    EXPECT_EQ(book.text(), head + kVessel + kSolution);
}

TEST(JournalImport, NeedsOneBookLineAndThatFirst)
{
    TempBook book;
    const std::pair<QByteArray, int> cases[] = {
        {"", 1}, {"\n\n", 1}, {kVessel, 1}, {kHead + kVessel + kHead, 3}, {kHead + kHead, 2}};
    for (const auto& [text, line] : cases) {
        const auto refused = book.import(text);
        ASSERT_FALSE(refused) << text.constData();
        EXPECT_EQ(refused.error().line, line) << text.constData();
        EXPECT_EQ(refused.error().field, "type");
    }
    EXPECT_EQ(book.text(), kHead);
}

TEST(JournalImport, ATruncatedJournalIsRefusedWhereverItBreaksOff)
{
    TempBook book;
    const int lastLine = static_cast<int>(kStart.count('\n'));
    const qsizetype lastStart = kStart.chopped(1).lastIndexOf('\n') + 1;
    for (qsizetype end = lastStart + 1; end < kStart.size() - 1; ++end) {
        const auto refused = book.import(kStart.first(end));
        ASSERT_FALSE(refused) << end;
        EXPECT_EQ(refused.error().code, ErrorCode::Malformed);
        EXPECT_EQ(refused.error().line, lastLine);
    }
    EXPECT_EQ(book.text(), kHead);
    EXPECT_TRUE(book.import(kStart.chopped(1))); // only the last line break is missing
}

TEST(JournalImport, NamesTheLineOfAFilmWhoseRunNobodyNames)
{
    TempBook book;
    const auto refused = book.import(kStart + R"({"type":"film","id":"f","run":"none"})" + "\n" +
                                     R"({"type":"chemical","name":"borax"})");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().line, 6);
    EXPECT_EQ(refused.error().field, "run");
    EXPECT_EQ(book.text(), kHead);
}

TEST(JournalImport, TakesTheStarterFormularyAndTheDemo)
{
    TempBook starter;
    const auto formulary = starter.import(resource("starter.jsonl"));
    ASSERT_TRUE(formulary) << formulary.error().line << ' ' << formulary.error().field;
    TempBook demo;
    const auto season = demo.import(resource("demo/demo.jsonl"));
    ASSERT_TRUE(season) << season.error().line << ' ' << season.error().field << ' '
                        << season.error().text;
    EXPECT_GT(season->added, 100);
}

// One change a time to a good journal: whatever comes of it, nothing crashes, a refusal has its
// line, and the book is as before it.
TEST(JournalImport, SurvivesEveryKindOfDamage)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kVessel));
    const QByteArray before = book.text();
    const QByteArray good = everything();
    constexpr char kJunk[] = "\"{}[]:,\\0123456789.eE+-tfn \x80\xff\xc3\x00u";
    const QByteArray junk(kJunk, sizeof kJunk - 1);
    std::mt19937 random(20'261'125); // NOLINT: the same damage every time
    const auto pick = [&random](qsizetype below) {
        return static_cast<qsizetype>(random() % static_cast<std::mt19937::result_type>(below));
    };
    int refused = 0;
    constexpr int kRounds = 4000;
    for (int round = 0; round < kRounds; ++round) {
        QByteArray text = good;
        const qsizetype at = pick(text.size());
        switch (pick(5)) {
        case 0:
            text[at] = junk[pick(junk.size())];
            break;
        case 1:
            text.remove(at, 1 + pick(12));
            break;
        case 2:
            text.insert(at, junk[pick(junk.size())]);
            break;
        case 3:
            text.insert(at, text.mid(pick(text.size()), 1 + pick(40)));
            break;
        default:
            text.truncate(at);
            break;
        }
        // What would be taken is not to be kept, or the next round would meet it.
        text += "\n{\"type\":\"vessel\",\"id\":\"b1\"}\n";
        const auto done = book.import(text);
        ASSERT_FALSE(done) << round;
        refused += done.error().line > 0 ? 1 : 0;
        if (round % 200 == 0) {
            ASSERT_EQ(book.text(), before) << round;
        }
    }
    EXPECT_EQ(refused, kRounds);
    EXPECT_EQ(book.text(), before);
}
