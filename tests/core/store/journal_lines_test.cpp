// The journal's lines by their description: every one goes out and comes back, the book's table
// knows the same types, and what version 1 said otherwise is taken for what says it now.
#include "core/store/integrity.h"
#include "core/store/journal_codec.h"
#include "tests/core/ledger/sample_lines.h"
#include "tests/core/store/temp_book.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

using namespace ullage;
using namespace ullage::ledger;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

const QByteArray kHeadOne = R"({"type":"book","format":"ullage-journal","version":1})"
                            "\n";
const QByteArray kPacket = R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000})"
                           "\n";
const QByteArray kFilm = R"({"type":"film","id":"f1","run":"run-1","format":"135-36"})"
                         "\n";
const QByteArray kAskedOne = R"({"type":"event","id":"a1","batch":"dev-1","kind":"noted",)"
                             R"("at":"2026-06-05T13:00:00Z","text":"test-asked thin film=f1"})"
                             "\n";
const QByteArray kAskedTwo = R"({"type":"event","id":"a1","batch":"dev-1","kind":"test-asked",)"
                             R"("at":"2026-06-05T13:00:00Z","mark":"thin","film":"f1"})"
                             "\n";
const QByteArray kTimesOne = R"({"type":"event","id":"t1","batch":"dev-1","kind":"noted",)"
                             R"("at":"2026-06-05T12:00:00Z","text":"run-times develop 600/610 )"
                             R"(temperature=20.5 tank=Two%20reels run=run-1"})"
                             "\n";
const QByteArray kOpenedOne = R"({"type":"event","id":"o1","kind":"opened-packet",)"
                              R"("at":"2026-06-05T11:00:00Z","packet":"p1"})"
                              "\n";
const QByteArray kOpenedTwo = R"({"type":"event","id":"o1","item":"p1","kind":"opened-packet",)"
                              R"("at":"2026-06-05T11:00:00Z"})"
                              "\n";

QByteArray withoutHead(const QByteArray& text) { return text.mid(text.indexOf('\n') + 1); }

Error refused(TempBook& book, const QByteArray& text)
{
    const auto before = book.text();
    const auto done = book.import(text);
    EXPECT_FALSE(done) << text.constData();
    EXPECT_EQ(book.text(), before);
    return done ? Error{} : done.error();
}

} // namespace

TEST(JournalLines, EveryTypeAndKindGoesOutAndComesBack)
{
    for (const Entry& made : sample::lines()) {
        const std::string name = sample::nameOf(made);
        const QByteArray text = encode(made);
        const auto line = decodeLine(text);
        ASSERT_TRUE(line) << name << ' ' << line.error().field << ' ' << text.constData();
        const Entry& back = std::get<Entry>(*line);
        EXPECT_EQ(sample::nameOf(back), name);
        EXPECT_EQ(back.id(), made.id());
        EXPECT_EQ(back.body, text.toStdString()) << "written in the order it is read in";
        EXPECT_EQ(encode({back.what, {}}), text) << name;
        const auto stored = decodeStored(text);
        ASSERT_TRUE(stored) << name;
        EXPECT_EQ(encode({stored->what, {}}), text) << name;
        // Every field that the description has is on the line.
        const auto fields =
            back.event() ? describe(*back.event()).fields : describe(back.what.index()).fields;
        const auto json = QJsonDocument::fromJson(text).object();
        for (const auto& is : fields) {
            const bool excluded = is.name == "area_cm2" && name == "event processed";
            const bool other = (is.name == "solution" && name == "event topped-up") ||
                               (is.name == "from" && name == "event mixed") ||
                               is.name == "takes_back" || is.name == "withdrawn";
            EXPECT_TRUE(json.contains(QLatin1String(is.name.data())) || excluded || other)
                << name << ' ' << is.name;
        }
    }
}

TEST(JournalLines, TheBooksTableKnowsTheTypesOfTheDescription)
{
    TempBook book;
    const auto sql = book.store->connection().text(
        "SELECT sql FROM sqlite_schema WHERE type = 'table' AND name = 'entry'");
    ASSERT_TRUE(sql);
    const auto list = QRegularExpression("type IN \\(([^)]*)\\)\\),").match(*sql).captured(1);
    QStringList listed;
    auto each = QRegularExpression("'([^']+)'").globalMatch(list);
    while (each.hasNext()) {
        listed << each.next().captured(1);
    }
    QStringList described;
    for (const std::string_view type : kTypeCodes) {
        described << QString::fromUtf8(type.data(), static_cast<qsizetype>(type.size()));
    }
    listed.sort();
    described.sort();
    EXPECT_EQ(listed, described);
}

TEST(JournalLines, WhatOnlyNeedsKeepingIsKept)
{
    const QByteArray lines =
        kPacket +
        R"({"type":"chemical","id":"c1","name":"borax","grams":500,"cost":"4.20","hazards":["H360FD"]})"
        "\n"
        R"({"type":"supply","id":"s1","name":"gloves","unit":"pieces","amount":40})"
        "\n"
        R"({"type":"supply","id":"s2","replaces":"s1","withdrawn":true})"
        "\n"
        R"({"type":"barcode","code":"4006381333931","of":"p1","amount":1})"
        "\n"
        R"({"type":"work","id":"w1","at":"2026-12-08T18:00:00Z","films":8,"developer":"mq"})"
        "\n"
        R"({"type":"container","id":"k1","name":"Fixer can","holds":"fixer","capacity_ml":10000})"
        "\n" +
        kFilm + R"({"type":"run-times","run":"run-1","tank_ml":600,"temperature_c":20.5,)" +
        R"("steps":[{"step":"develop","planned_s":600,"real_s":610}]})" + "\n" + kAskedTwo +
        kOpenedTwo;
    TempBook book;
    const auto done = book.import(kStart + lines);
    ASSERT_TRUE(done) << done.error().line << done.error().field << ' ' << done.error().text;
    EXPECT_EQ(book.text(), kStart + lines);
    EXPECT_EQ(book.import(kStart + lines)->added, 0);
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty()) << check->findings.front().subject;
    const auto only = [&](const char* where) {
        return book.store->connection()
            .text(QStringLiteral("SELECT group_concat(type || ' ' || id) FROM entry WHERE ") +
                  where)
            ->toStdString();
    };
    EXPECT_EQ(only("item = 'p1'"), "event o1");
    EXPECT_EQ(only("film = 'f1'"), "event a1");
    EXPECT_EQ(only("type = 'run-times' AND run = 'run-1'"), "run-times run-1");
    EXPECT_TRUE(book.book->batch("dev-1", testNow())->testAskedAt);
}

TEST(JournalLines, OfTheCupboardAndOfCansAreTakenIn)
{
    const QByteArray lines =
        R"({"type":"chemical","id":"k1","name":"borax","grams":250})"
        "\n"
        R"({"type":"container","id":"can","name":"Can","holds":"developer","capacity_ml":2000})"
        "\n"
        R"({"type":"event","id":"t","item":"k1","kind":"taken","at":"2026-06-06T10:00:00Z","amount":100,"for":"dev-1"})"
        "\n"
        R"({"type":"event","id":"c","item":"k1","kind":"counted","at":"2026-06-07T10:00:00Z","amount":140})"
        "\n"
        R"({"type":"event","id":"d","batch":"dev-1","kind":"discarded","at":"2026-06-08T10:00:00Z","container":"can"})"
        "\n"
        R"({"type":"event","id":"p","container":"can","kind":"poured-in","at":"2026-06-09T10:00:00Z","volume_ml":500})"
        "\n"
        R"({"type":"event","id":"h","container":"can","kind":"handed-over","at":"2026-06-10T10:00:00Z","to":"the yard"})"
        "\n"
        R"({"type":"event","id":"v","kind":"voided","at":"2026-06-11T10:00:00Z","voids":"h","why":"not yet"})"
        "\n"
        R"({"type":"event","id":"a","item":"p1","kind":"thrown-away","at":"2026-06-12T10:00:00Z","why":"damp"})"
        "\n";
    TempBook book;
    ASSERT_TRUE(book.import(kStart + kPacket));
    const auto imported = book.import(kHead + lines);
    ASSERT_TRUE(imported) << imported.error().field << imported.error().line;
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty());
    book.open();
    const auto state = book.book->cupboard(testNow());
    ASSERT_TRUE(state) << state.error().field;
    ASSERT_EQ(state->items.size(), 1u) << "the packet was thrown away";
    EXPECT_EQ(state->items.front().stock.left, 140);
    ASSERT_EQ(state->cans.size(), 1u);
    EXPECT_EQ(state->cans.front().stock.volume, chemistry::Millilitres(980 + 500))
        << "what was left in the bottle, and what was poured in; not handed over yet";

    const Error error = refused(
        book,
        kHead +
            R"({"type":"event","id":"x","item":"k1","kind":"taken","at":"2026-06-13T10:00:00Z","amount":141})"
            "\n");
    EXPECT_EQ(error.code, ErrorCode::NotEnough);
    EXPECT_EQ(error.field, "amount");
    EXPECT_EQ(error.line, 2);
    const Error full = refused(
        book,
        kHead +
            R"({"type":"event","id":"x","container":"can","kind":"poured-in","at":"2026-06-13T10:00:00Z","volume_ml":600})"
            "\n");
    EXPECT_EQ(full.code, ErrorCode::TooMuch);
    EXPECT_EQ(full.line, 2);
}

TEST(JournalLines, NameOnlyWhatIsThere)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart + kPacket));
    const std::pair<const char*, const char*> cases[] = {
        {R"({"type":"run-times","run":"nowhere","steps":[{"step":"fix","planned_s":1,"real_s":1}]})",
         "run"},
        {R"({"type":"barcode","code":"1","of":"nobody"})", "of"},
        {R"({"type":"work","id":"w","at":"2026-12-08T18:00:00Z","developer":"nobody"})",
         "developer"},
        {R"({"type":"supply","id":"s","name":"S","replaces":"nobody"})", "replaces"},
        {R"({"type":"container","id":"k","name":"K","holds":"wash","capacity_ml":1,"replaces":"x"})",
         "replaces"},
        {R"({"type":"event","id":"x","item":"nobody","kind":"opened-packet","at":"2026-06-06T10:00:00Z"})",
         "item"},
        {R"({"type":"event","id":"x","batch":"dev-1","kind":"test-asked","at":"2026-06-06T10:00:00Z","mark":"thin","film":"nobody"})",
         "film"},
    };
    for (const auto& [line, field] : cases) {
        const Error error = refused(book, kHead + line + "\n");
        EXPECT_EQ(error.code, ErrorCode::UnknownId) << line;
        EXPECT_EQ(error.field, field) << line;
        EXPECT_EQ(error.line, 2) << line;
    }
}

TEST(VersionOne, NotesOfCodesAreTakenForTheKindsThatReplaceThem)
{
    TempBook book;
    const QByteArray lines = kPacket + kFilm + kAskedOne + kTimesOne + kOpenedOne;
    ASSERT_TRUE(book.import(kHeadOne + withoutHead(kStart) + lines));
    EXPECT_EQ(book.text(), kHead + withoutHead(kStart) + lines)
        << "lines as they were, under the version of today";
    EXPECT_TRUE(book.book->batch("dev-1", testNow())->testAskedAt);
    const auto events = book.book->events("dev-1");
    ASSERT_TRUE(events);
    const auto& asked = std::get<TestAsked>((*events)[2].what);
    EXPECT_EQ(asked.film, "f1");
    EXPECT_TRUE(asked.asNote);
    const auto& times = std::get<Noted>((*events)[3].what).times;
    ASSERT_TRUE(times);
    EXPECT_EQ(times->tank, "Two reels");
    EXPECT_EQ(times->run, "run-1");
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.empty());

    // The same again, in either way of saying it, changes nothing; another thing is refused.
    const QByteArray now = book.text();
    for (const QByteArray& again :
         {kHeadOne + lines, kHead + lines, kHead + kAskedTwo + kOpenedTwo}) {
        const auto done = book.import(again);
        ASSERT_TRUE(done) << done.error().field;
        EXPECT_EQ(done->added, 0);
    }
    EXPECT_EQ(book.text(), now);
    EXPECT_EQ(refused(book, kHead + QByteArray(kAskedTwo).replace("thin", "dense")).code,
              ErrorCode::IdTaken);
    EXPECT_EQ(refused(book, kHead + QByteArray(kOpenedTwo).replace("p1", "p2")).code,
              ErrorCode::IdTaken);

    // Taken back as any other event.
    ASSERT_TRUE(book.book->voidEvent("a1", "mistaken"));
    EXPECT_FALSE(book.book->batch("dev-1", testNow())->testAskedAt);
}

TEST(VersionOne, TheNotesThatABookOfNowGetsInTheOtherDirectionAreTheSameToo)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart + kPacket + kFilm + kAskedTwo + kOpenedTwo));
    const auto done = book.import(kHeadOne + kAskedOne + kOpenedOne);
    ASSERT_TRUE(done) << done.error().field;
    EXPECT_EQ(done->added, 0);
}

TEST(VersionOne, AHeaderIsNeverRepeated)
{
    TempBook book;
    ASSERT_TRUE(
        book.import(R"({"type":"book","format":"ullage-journal","version":1,"title":"Harbour"})"
                    "\n" +
                    withoutHead(kStart)));
    EXPECT_EQ(book.text(),
              R"({"type":"book","format":"ullage-journal","version":2,"title":"Harbour"})"
              "\n" +
                  withoutHead(kStart));
    TempBook plain;
    ASSERT_TRUE(plain.import(kHeadOne + withoutHead(kStart)));
    EXPECT_EQ(plain.text(), kHead + withoutHead(kStart));
}

TEST(VersionOne, AnotherNoteThatBeginsLikeOneIsANote)
{
    TempBook book;
    const QByteArray note = R"({"type":"event","id":"n1","batch":"dev-1","kind":"noted",)"
                            R"("at":"2026-06-05T13:00:00Z","text":"test-asked by Ada"})"
                            "\n";
    ASSERT_TRUE(book.import(kStart + note));
    EXPECT_FALSE(book.book->batch("dev-1", testNow())->testAskedAt);
    EXPECT_FALSE(std::get<Noted>(book.book->events("dev-1")->back().what).times);
}
