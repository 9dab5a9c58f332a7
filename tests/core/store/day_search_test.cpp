// A search finds the same by its index as on foot: what was typed, however hostile, and what came
// to a row after it was indexed.
#include "tests/core/store/search_kit.h"

#include <random>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

using Ids = SearchBook::Ids;

const QString kDay = "2026-06-0%1T10:00:00Z";

QString day(int number) { return kDay.arg(number); }

// What people type, and what they had better not.
const QStringList kHostile{"Öl & Wasser",
                           "STRASSE 9",
                           "Straße 10",
                           "\"quoted\" 'single'",
                           "100 %_ \\ back",
                           "a' OR 1=1 --",
                           "\" OR words : x",
                           "NEAR(a b) AND NOT *",
                           "<b>bold</b> <img src=x>",
                           QString::fromUtf8("מפתח שחור"),
                           QString::fromUtf8("مظهر الفيلم"),
                           QString::fromUtf8("現像液 定着液"),
                           QString::fromUtf8("😀🎞️ film 👩‍🔬"),
                           QString::fromUtf8("o\xCC\x88l a\xCC\x8A"),
                           QString("zero\u200Bwidth \u202Eright to left"),
                           "line\nbreak\ttab",
                           "=1+1",
                           "{\"type\":\"event\"}",
                           "\x1b[31mred",
                           QString(3000, 'x') + " end",
                           "aaa aaaa aaaaa",
                           QString::fromUtf8("ﬁxer ﬂow ǅ İstanbul ısı")};

QByteArray hostileJournal()
{
    QByteArray text = kHead + kSolution + kVessel;
    std::mt19937 dice(7);
    const auto any = [&] { return kHostile[static_cast<qsizetype>(dice() % kHostile.size())]; };
    for (int batch = 0; batch < 12; ++batch) {
        const QString id = QString("b%1").arg(batch);
        text += mixedLine("m" + id, id, day(1), any() + QString::number(batch));
        for (int i = 0; i < 6; ++i) {
            const QString one = id + "-" + QString::number(i);
            const int at = 2 + static_cast<int>(dice() % 7);
            switch (dice() % 5) {
            case 0:
                text += eventLine(one, id, day(at), "noted", {{"text", any()}, {"by", any()}});
                break;
            case 1:
                text += eventLine(one, id, day(at), "looked", {{"why", any()}, {"passed", true}});
                break;
            case 2:
                text += eventLine(one, id, day(at), "contaminated", {{"why", any()}});
                text +=
                    eventLine("v" + one, id, day(9), "voided", {{"voids", one}, {"why", any()}});
                break;
            default:
                text +=
                    eventLine(one, id, day(at), "processed",
                              {{"films", QJsonArray{QJsonObject{{"format", "120"}, {"count", 1}}}},
                               {"run", QString("run-%1").arg(dice() % 9)},
                               {"by", any()}});
            }
        }
    }
    for (int run = 0; run < 9; ++run) {
        const QJsonObject film{{"type", "film"},
                               {"id", QString("film-%1").arg(run)},
                               {"run", QString("run-%1").arg(run)},
                               {"format", "120"},
                               {"name", any()},
                               {"notes", any()}};
        text += QJsonDocument(film).toJson(QJsonDocument::Compact) + '\n';
        const QJsonObject mark{{"type", "film-mark"}, {"id", QString("mark-%1").arg(run)},
                               {"film", film["id"]},  {"at", day(9)},
                               {"mark", "thin"},      {"note", any()}};
        text += QJsonDocument(mark).toJson(QJsonDocument::Compact) + '\n';
    }
    return text;
}

} // namespace

TEST(DaySearch, FindsTheSameByItsIndexAsOnFootWhateverWasTyped)
{
    SearchBook book(hostileJournal());
    ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
    std::mt19937 dice(11);
    int found = 0;
    for (int round = 0; round < 400; ++round) {
        const QString& from = kHostile[static_cast<qsizetype>(dice() % kHostile.size())];
        const auto start = static_cast<qsizetype>(dice() % from.size());
        QString part = from.mid(start, 1 + static_cast<qsizetype>(dice() % 9));
        part = dice() % 3 == 0 ? part.toUpper() : dice() % 2 == 0 ? part.toLower() : part;
        if (dice() % 4 == 0) {
            part += " " + kHostile[static_cast<qsizetype>(dice() % kHostile.size())].left(4);
        }
        SCOPED_TRACE(part.toStdString());
        DayFilter filter = SearchBook::looking(part);
        if (filter.words.empty()) {
            continue;
        }
        if (dice() % 4 == 0) { // words that the program shows
            filter.words[0].kinds = {"noted", "voided"};
            filter.words[0].faults = {"thin"};
        }
        if (dice() % 6 == 0) {
            filter.words[0].solutions = {"mq"};
        }
        if (dice() % 6 == 0) {
            filter.kinds = {"noted", "processed"};
        }
        found += static_cast<int>(book.both(filter, 1 + static_cast<int>(dice() % 7)).size());
        ASSERT_FALSE(HasFailure());
    }
    EXPECT_GT(found, 1000) << "it was worth looking";
}

TEST(DaySearch, EveryTextTypedIsFoundByItsOwnWords)
{
    QByteArray journal = kHead + kSolution + kVessel + mixedLine("m", "b", day(1), "Dev");
    for (qsizetype i = 0; i < kHostile.size(); ++i) {
        journal +=
            eventLine("n" + QString::number(i), "b", day(2), "noted", {{"text", kHostile[i]}});
    }
    SearchBook book(journal);
    ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
    for (qsizetype i = 0; i < kHostile.size(); ++i) {
        const Ids ids = book.both(kHostile[i]);
        EXPECT_TRUE(std::find(ids.begin(), ids.end(), "n" + std::to_string(i)) != ids.end())
            << kHostile[i].toStdString();
    }
}

TEST(DaySearch, ANoteOfAMegabyteIsFoundByItsEnd)
{
    QString text(1'000'000, 'y');
    text += " needle";
    SearchBook book(kHead + kSolution + kVessel + mixedLine("m", "b", day(1), "Dev") +
                    eventLine("n", "b", day(2), "noted", {{"text", text}}));
    ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
    EXPECT_EQ(book.both("NEEDLE"), Ids{"n"});
    EXPECT_EQ(book.both(QString(150, 'y')), Ids{"n"});
}

// More documents than are looked at all at once, entered in another order than they happened.
TEST(DaySearch, CommonWordsComeNewestFirstHoweverTheyWereEntered)
{
    std::mt19937 dice(3);
    const auto start = QDateTime(QDate(2020, 1, 2), QTime(0, 0), Qt::UTC);
    constexpr int kNotes = 14'000;
    const auto text = [](int i) { return QString(i % 2 ? "common water" : "common acid"); };
    const auto at = [&](int i) { // some are entered late
        const auto turn = i % 5 == 0 ? static_cast<int>(dice() % kNotes) : i;
        return start.addSecs(turn * 600).toString(Qt::ISODate);
    };
    SearchBook book(notesIn(kNotes, text, at));
    ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
    EXPECT_EQ(book.both(SearchBook::looking("common"), 500).size(), kNotes);
    EXPECT_EQ(book.both(SearchBook::looking("water"), 700).size(), kNotes / 2);
    EXPECT_EQ(book.both(SearchBook::looking("water 13"), 700), Ids());
    DayFilter year = SearchBook::looking("water");
    year.from =
        start.addDays(20).toMSecsSinceEpoch() * std::chrono::milliseconds(1) + chemistry::Instant();
    year.until = *year.from + std::chrono::hours(24 * 7);
    const Ids week = book.both(year, 100);
    EXPECT_GT(week.size(), 100u);
    EXPECT_LT(week.size(), 2000u);
    const auto totals =
        DayBook(*book.book.store, book.index().get()).count(SearchBook::looking("common"));
    ASSERT_TRUE(totals);
    EXPECT_TRUE(totals->more);
    EXPECT_EQ(totals->entries, kMostCounted);
}

TEST(DaySearch, WhatComesToARowLaterIsFoundToo)
{
    SearchBook book(kHead + kSolution + kVessel + mixedLine("m", "b", day(1), "First name") +
                    eventLine("r", "b", day(2), "processed",
                              {{"films", QJsonArray{QJsonObject{{"format", "120"}, {"count", 1}}}},
                               {"run", "run-1"}}));
    ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
    const auto steps = std::vector<std::pair<QByteArray, QString>>{
        {R"({"type":"film","id":"f","run":"run-1","format":"120","name":"Harbour roll"})",
         "harbour"},
        {R"({"type":"film-mark","id":"k","film":"f","at":"2026-06-03T10:00:00Z","mark":"thin",)"
         R"("note":"much too pale"})",
         "pale"},
        {R"({"type":"event","id":"v","batch":"b","kind":"voided","at":"2026-06-04T10:00:00Z",)"
         R"("voids":"r","why":"counted double"})",
         "double"}};
    for (const auto& [line, word] : steps) {
        ASSERT_TRUE(book.book.import(kHead + line + '\n'));
        const Ids before = book.both(word);
        EXPECT_TRUE(std::find(before.begin(), before.end(), "r") != before.end())
            << "though the index does not know of it yet";
        ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
        EXPECT_EQ(book.both(word), before);
    }
    EXPECT_EQ(book.both("first harbour double"), Ids{"r"}) << "words from several lines";
    // The bottle is taken back and its name used for another mixing.
    ASSERT_TRUE(book.book.import(
        kHead + eventLine("vm", "b", day(5), "voided", {{"voids", "m"}, {"why", "misread"}}) +
        mixedLine("m2", "b", day(1), "Second name")));
    EXPECT_EQ(book.both("second").size(), 3u) << "all that happened to it";
    ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
    EXPECT_EQ(book.both("second").size(), 3u);
    EXPECT_EQ(book.both("misread"), Ids{"m"});
}

TEST(DaySearch, CodesAreNoWords)
{
    SearchBook book(
        kHead + kSolution + kVessel + mixedLine("m", "b", day(1), "Dev") +
        eventLine("t", "b", day(2), "clearing-test", {{"seconds", 60}, {"temperature_c", 20}}) +
        eventLine("o", "b", day(2), "noted", {{"text", "test-asked thin film=f"}}) +
        eventLine("u", "b", day(3), "voided", {{"voids", "t"}, {"why", "undone"}}));
    ASSERT_EQ(book.keep(), SearchKeeper::Outcome::UpToDate);
    for (const char* code : {"clearing", "noted", "voided", "undone", "test-asked", "thin",
                             "volume_ml", "temperature", "event", "developer"}) {
        EXPECT_EQ(book.both(code), Ids()) << code;
        const DayWord word{code, {}, {}, {}, {}};
        EXPECT_EQ(book.index()->count({FoldedWord(word)}, 10), 0) << "nor are they in the index";
    }
    DayFilter meant = SearchBook::looking("zurückgenommen");
    meant.words[0].whys = {"undone"};
    EXPECT_EQ(book.both(meant), Ids{"t"});
    meant.words[0] = {"dünn", {}, {}, {"thin"}, {}};
    EXPECT_EQ(book.both(meant), Ids{"o"});
    meant.words[0] = {"prüfung", {"test-asked", "clearing-test"}, {}, {}, {}};
    EXPECT_EQ(book.both(meant), (Ids{"o", "t"}));
}

TEST(DaySearch, HandsOverWhatItHasAfterSoManyRowsAndGoesOn)
{
    const auto start = QDateTime(QDate(2020, 1, 2), QTime(0, 0), Qt::UTC);
    const auto text = [](int i) { return QString(i == 5 ? "qq" : "other"); };
    const auto at = [&](int i) { return start.addSecs(i * 60).toString(Qt::ISODate); };
    SearchBook book(notesIn(12'000, text, at));
    DayBook days(*book.book.store);
    const auto first = days.page(SearchBook::looking("qq"), {}, 50);
    ASSERT_TRUE(first);
    EXPECT_TRUE(first->entries.empty());
    EXPECT_TRUE(first->more);
    EXPECT_FALSE(first->stopped);
    const auto second = days.page(SearchBook::looking("qq"), first->last, 50);
    ASSERT_TRUE(second);
    ASSERT_EQ(second->entries.size(), 1u);
    EXPECT_EQ(second->entries[0].event.id, "n5");
    EXPECT_FALSE(second->more);
}
