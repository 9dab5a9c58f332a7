// Marks on films in the journal, the store, the day book and the check of a book; films read back
// with what they went through.
#include "core/store/day_book.h"
#include "core/store/film_reader.h"
#include "core/store/integrity.h"
#include "core/store/journal_codec.h"
#include "tests/core/store/damaged_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

const QByteArray kFilms =
    R"({"type":"film","id":"f1","run":"run-1","format":"135-36","name":"Harbour","ei":400})"
    "\n"
    R"({"type":"film","id":"f2","run":"run-1","format":"135-36","name":"Dunes"})"
    "\n";
const QByteArray kMark =
    R"({"type":"film-mark","id":"m1","film":"f1","at":"2026-06-04T08:00:00Z","mark":"thin",)"
    R"("note":"by half","by":"Ada"})"
    "\n";
const QByteArray kTaken =
    R"({"type":"film-mark","id":"m2","film":"f1","at":"2026-06-05T08:00:00Z","takes_back":"m1",)"
    R"("note":"dim light table"})"
    "\n";
const QByteArray kMarked = kStart + kFilms + kMark;

Error refused(TempBook& book, const QByteArray& text)
{
    const auto before = book.text();
    const auto done = book.import(text);
    EXPECT_FALSE(done) << text.constData();
    EXPECT_EQ(book.text(), before);
    return done ? Error{} : done.error();
}

std::vector<std::string> ids(const std::vector<ledger::FilmTrace>& films)
{
    std::vector<std::string> found;
    for (const auto& film : films) {
        found.push_back(film.film.id);
    }
    return found;
}

using Ids = std::vector<std::string>;

} // namespace

TEST(FilmMarks, GoThroughTheJournalUnchangedAndTwiceIsOnce)
{
    const QByteArray text = kMarked + kTaken;
    TempBook book;
    const auto done = book.import(text);
    ASSERT_TRUE(done) << done.error().field;
    EXPECT_EQ(done->added, done->lines);
    EXPECT_EQ(book.text(), text);
    book.open();
    const auto again = book.import(text);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0);
    EXPECT_EQ(book.text(), text);
    QByteArray other = kHead + kMark;
    other.replace("thin", "dense");
    EXPECT_EQ(refused(book, other).code, ErrorCode::IdTaken);
    // The moment goes into UTC, and the fields into their order.
    const auto line = decodeLine(R"({"mark":"not-clear","at":"2026-06-04T10:00:00+02:00",)"
                                 R"("film":"f","id":"m","type":"film-mark","x":1.0})");
    ASSERT_TRUE(line);
    EXPECT_EQ(std::get<ledger::Entry>(*line).body,
              R"({"type":"film-mark","id":"m","film":"f","at":"2026-06-04T08:00:00Z",)"
              R"("mark":"not-clear","x":1.0})");
}

TEST(FilmMarks, AMarkMayStandBeforeItsFilm)
{
    TempBook book;
    EXPECT_TRUE(book.import(kStart + kMark + kFilms));
}

TEST(FilmMarks, AreRefusedWithLineFieldAndValue)
{
    TempBook book;
    ASSERT_TRUE(book.import(kMarked));
    struct Case {
        const char* rest;
        ErrorCode code;
        const char* field;
    };
    const Case cases[] = {
        {R"("film":"f1","at":"2026-06-04T08:00:00Z","mark":"odd")", ErrorCode::UnknownKind, "mark"},
        {R"("film":"f1","at":"2026-06-04T08:00:00Z","mark":7)", ErrorCode::Malformed, "mark"},
        {R"("film":"f1","at":"2026-06-04T08:00:00Z")", ErrorCode::Missing, "mark"},
        {R"("film":"f1","at":"2026-06-04T08:00:00Z","mark":"thin","takes_back":"m1")",
         ErrorCode::Conflict, "takes_back"},
        {R"("film":"f1","at":"2026-06-04T08:00:00Z","takes_back":"m8")", ErrorCode::UnknownId,
         "takes_back"},
        {R"("film":"f2","at":"2026-06-04T08:00:00Z","takes_back":"m1")", ErrorCode::UnknownId,
         "takes_back"},
        {R"("film":"f8","at":"2026-06-04T08:00:00Z","mark":"thin")", ErrorCode::UnknownId, "film"},
        {R"("at":"2026-06-04T08:00:00Z","mark":"thin")", ErrorCode::Missing, "film"},
        {R"("film":"f1","mark":"thin")", ErrorCode::Missing, "at"},
        {R"("film":"f1","at":"today","mark":"thin")", ErrorCode::Malformed, "at"},
        {R"("film":"f1","at":"2028-06-04T08:00:00Z","mark":"thin")", ErrorCode::InFuture, "at"},
    };
    for (const Case& one : cases) {
        const Error error =
            refused(book, kHead + R"({"type":"film-mark","id":"m9",)" + one.rest + "}\n");
        EXPECT_EQ(error.code, one.code) << one.rest;
        EXPECT_EQ(error.field, one.field) << one.rest;
        EXPECT_EQ(error.line, 2) << one.rest;
    }
    EXPECT_EQ(refused(book, kHead + kTaken + QByteArray(kTaken).replace("m2", "m3")).code,
              ErrorCode::AlreadyVoided);
}

TEST(FilmMarks, AreFoundByTheCheckOfABook)
{
    const auto after = [](const char* sql) {
        TempBook book;
        EXPECT_TRUE(book.import(kMarked + kTaken));
        close(book);
        tamper(book.path(), {QString::fromLatin1(sql)});
        book.open();
        const auto check = checkBook(*book.store);
        EXPECT_TRUE(check);
        return check ? check->findings : std::vector<Error>{};
    };
    EXPECT_TRUE(after("SELECT 1").empty());
    const std::pair<const char*, const char*> cases[] = {
        {"DELETE FROM entry WHERE id = 'f1'", "m1"},
        {"DELETE FROM entry WHERE id = 'm1'", "m2"},
        {"UPDATE entry SET film = 'f2' WHERE id = 'm1'", "m1"},
        {"UPDATE entry SET body = replace(body, 'thin', 'fine') WHERE id = 'm1'", "m1"},
    };
    for (const auto& [sql, subject] : cases) {
        const auto findings = after(sql);
        EXPECT_TRUE(
            std::any_of(findings.begin(), findings.end(),
                        [&, id = subject](const Error& error) { return error.subject == id; }))
            << sql;
    }
}

TEST(FilmMarks, AreRowsOfTheDayBookAndStandWithTheirRun)
{
    TempBook book;
    ASSERT_TRUE(book.import(kMarked));
    DayBook days(*book.store);
    const auto page = [&](const DayFilter& filter) {
        auto read = days.page(filter, {}, 50);
        EXPECT_TRUE(read);
        EXPECT_EQ(days.count(filter)->entries, static_cast<int>(read->entries.size()));
        return read->entries;
    };
    auto all = page({});
    ASSERT_EQ(all.size(), 3u);
    ASSERT_TRUE(all[0].mark);
    EXPECT_EQ(all[0].event.id, "m1");
    EXPECT_EQ(all[0].event.by, "Ada");
    ASSERT_EQ(all[0].films.size(), 1u);
    EXPECT_EQ(all[0].films[0].name, "Harbour");
    EXPECT_FALSE(all[0].taken);
    ASSERT_EQ(all[1].marks.size(), 2u);
    EXPECT_EQ(all[1].marks[0].size(), 1u);
    EXPECT_TRUE(all[1].marks[1].empty());
    for (const char* words : {"by half", "ada"}) {
        DayFilter filter;
        filter.words = dayWords(words);
        EXPECT_EQ(page(filter).size(), 2u) << words << ": the mark, and the run that tells of it";
    }
    DayFilter name;
    name.words = dayWords("HARBOUR");
    EXPECT_EQ(page(name).size(), 2u) << "the run and the mark";
    DayFilter kind;
    kind.kinds = {"film-mark"};
    EXPECT_EQ(page(kind).size(), 1u);
    // Written out: the mark by itself, and with its run.
    EXPECT_EQ(days.lines(all[0])->size(), 2u) << "the mark and its film";
    EXPECT_EQ(days.lines(all[1])->size(), 4u) << "the bath, two films, the mark";

    ASSERT_TRUE(book.import(kHead + kTaken));
    all = page({});
    ASSERT_EQ(all.size(), 3u) << "what takes it back is no row of its own";
    ASSERT_TRUE(all[0].taken);
    EXPECT_EQ(all[0].taken->why, "dim light table");
    EXPECT_TRUE(all[1].marks[0].empty());
    EXPECT_EQ(days.lines(all[0])->size(), 3u);
    EXPECT_EQ(days.lines(all[1])->size(), 5u);
}

TEST(FilmReaderTest, LeadsFromFilmsToBottlesAndBack)
{
    TempBook book;
    ASSERT_TRUE(book.import(
        kMarked +
        R"({"type":"event","id":"e3","batch":"dev-1","kind":"processed","at":"2026-07-01T10:00:00Z",)"
        R"("films":[{"format":"120","count":1}],"run":"run-2","by":"Bo"})"
        "\n"
        R"({"type":"film","id":"f3","run":"run-2","format":"120"})"
        "\n"
        R"({"type":"event","id":"e4","batch":"dev-1","kind":"noted","at":"2026-07-01T10:00:00Z",)"
        R"("text":"run-times develop 600/660 temperature=21.0 tank=Big run=run-2"})"
        "\n"));
    FilmReader reader(*book.store, book.book->formulary());
    EXPECT_EQ(ids(*reader.ofBatch("dev-1")), (Ids{"f3", "f1", "f2"})) << "newest first";
    EXPECT_TRUE(reader.ofBatch("none")->empty());
    EXPECT_EQ(ids(*reader.marked()), Ids{"f1"});
    EXPECT_EQ(ids(*reader.ofRun("run-1")), (Ids{"f1", "f2"}));
    const auto day = [](int month) {
        return chemistry::Instant(std::chrono::sys_days(std::chrono::year(2026) / month / 15));
    };
    EXPECT_EQ(ids(*reader.between(day(6), day(8))), Ids{"f3"});
    EXPECT_FALSE(reader.film("none")->has_value());
    const auto film = **reader.film("f3");
    ASSERT_EQ(film.baths.size(), 1u);
    EXPECT_EQ(film.by, "Bo");
    EXPECT_EQ(film.baths[0].before.batch.name, "Dev 1");
    EXPECT_NEAR(film.baths[0].before.batch.wear.value(), 2, 1e-9) << "two films before it";
    ASSERT_TRUE(film.times);
    EXPECT_EQ(film.times->tank, "Big");
    EXPECT_EQ(film.times->temperature, chemistry::Celsius(21));
    const auto first = **reader.film("f1");
    EXPECT_EQ(first.marks.size(), 1u);
    EXPECT_EQ(first.baths[0].before.batch.wear.value(), 0);
    EXPECT_FALSE(first.times);

    // A run that is taken back is gone from the bottle; the film is still known.
    ASSERT_TRUE(book.book->voidEvent("e2", "wrong bottle"));
    EXPECT_EQ(ids(*reader.ofBatch("dev-1")), Ids{"f3"});
    EXPECT_TRUE(reader.marked()->empty());
    EXPECT_TRUE((**reader.film("f1")).baths.empty());
    EXPECT_EQ((**reader.film("f3")).baths[0].before.batch.wear.value(), 0);
}

// Step 3: a book of version 2 keeps every line, and from then on holds marks.
TEST(FilmMarkStep, ABookOfBeforeKeepsEverythingAndTakesMarks)
{
    TempBook fresh;
    const QString path = fresh.inFolder("older.ullage");
    StoreOptions second;
    second.access = Access::Create;
    second.steps = {schemaSteps()[0], schemaSteps()[1]};
    {
        auto store = SqlStore::open(path, second);
        ASSERT_TRUE(store);
        Connection& connection = (*store)->connection();
        ASSERT_TRUE(connection.run("INSERT INTO action (mode, what, subject) VALUES (3, 'x', '')"));
        int seq = 4; // numbers of entries have gaps where something was refused
        for (const QByteArray& line : (kStart + kFilms).split('\n')) {
            if (line.isEmpty() || line == kHead.trimmed()) {
                continue;
            }
            const auto read = decodeLine(line);
            ASSERT_TRUE(read);
            const auto& entry = std::get<ledger::Entry>(*read);
            const auto* event = entry.event();
            seq += 3;
            Statement put(connection,
                          QStringLiteral("INSERT INTO entry (seq, type, id, action, batch, kind, "
                                         "at_ms, run, body) VALUES (?, ?, ?, 1, ?, ?, ?, ?, ?)"));
            const auto text = [](const std::string& value) {
                return value.empty() ? std::nullopt : std::optional(value);
            };
            const auto* film = std::get_if<ledger::FilmRecord>(&entry.what);
            const auto run = film ? film->run : entry.id() == "e2" ? "run-1" : "";
            ASSERT_TRUE(
                put.run(seq, std::string(entry.type()), entry.id(),
                        event ? text(event->batch) : std::nullopt,
                        event ? std::optional(std::string(event->kind())) : std::nullopt,
                        event ? std::optional(std::int64_t(event->at.time_since_epoch().count()))
                              : std::nullopt,
                        text(run), line));
        }
        EXPECT_FALSE(connection.run(
            "INSERT INTO entry (type, id, action, body) VALUES ('film-mark', 'm', 1, '{}')"));
    }
    TempBook book(path);
    EXPECT_EQ(book.store->outcome(), SchemaOutcome::Upgraded);
    EXPECT_EQ(book.text(), kStart + kFilms);
    EXPECT_EQ(*book.store->lastEntry(), 4 + 3 * 6);
    ASSERT_TRUE(book.import(kHead + kMark));
    EXPECT_EQ(book.text(), kMarked);
    Connection& connection = book.store->connection();
    EXPECT_FALSE(connection.run("UPDATE entry SET film = NULL")) << "for good";
    EXPECT_FALSE(connection.run("DELETE FROM entry WHERE id = 'm1'"));
    EXPECT_FALSE(
        connection.run("INSERT OR REPLACE INTO entry SELECT * FROM entry WHERE id = 'm1'"));
    // The same indexes and triggers as a book made anew.
    const auto shape = [](Connection& of) {
        return *of.text("SELECT group_concat(type || ' ' || name || ' ' || coalesce(sql, ''), "
                        "char(10)) FROM (SELECT * FROM sqlite_schema ORDER BY type, name)");
    };
    EXPECT_EQ(shape(connection), shape(fresh.store->connection()));
}

// A film given anew keeps the id that marks name; one that was taken out is no film of its run.
TEST(FilmMarks, FollowAFilmThatIsGivenAnew)
{
    const QByteArray anew =
        R"({"type":"film","id":"f1b","run":"run-1","format":"120","name":"Harbour","replaces":"f1"})"
        "\n"
        R"({"type":"film","id":"f2b","run":"run-1","name":"Dunes","replaces":"f2","withdrawn":true})"
        "\n";
    TempBook book;
    ASSERT_TRUE(book.import(kMarked + anew));
    EXPECT_EQ(book.text(), kMarked + anew);
    FilmReader reader(*book.store, book.book->formulary());
    EXPECT_EQ(ids(*reader.ofRun("run-1")), Ids{"f1"});
    for (const char* const id : {"f1", "f1b"}) {
        const auto film = *reader.film(id);
        ASSERT_TRUE(film) << id;
        EXPECT_EQ(film->film.format, "120");
        EXPECT_EQ(film->marks.size(), 1u);
    }
    EXPECT_FALSE(*reader.film("f2")) << "it was taken out";
    EXPECT_EQ(ids(*reader.marked()), Ids{"f1"});
}
