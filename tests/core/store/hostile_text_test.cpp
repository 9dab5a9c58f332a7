// Whatever text goes into a book comes out of it unchanged, or is refused and leaves it as it was.
#include "tests/core/store/temp_book.h"
#include "tests/hostile_text.h"

#include "core/formulary/figures.h"
#include "core/ledger/typed_text.h"
#include "core/store/csv_cell.h"
#include "core/store/day_book.h"
#include "core/store/integrity.h"
#include "core/store/line_writer.h"
#include "core/store/report_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <map>
#include <random>
#include <set>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;
using ullage::tests::hostileSamples;
using ullage::tests::hostileTexts;

namespace
{

constexpr int kTexts = 10'000;

chemistry::Instant at(double minutes)
{
    return testNow() - std::chrono::days(90) +
           std::chrono::milliseconds(std::llround(minutes * 60'000));
}

// Every text value of a journal's lines.
void gather(const QJsonValue& value, std::multiset<std::string>& into)
{
    if (value.isString()) {
        into.insert(value.toString().toStdString());
    } else if (value.isArray()) {
        for (const QJsonValue& one : value.toArray()) {
            gather(one, into);
        }
    } else if (value.isObject()) {
        const QJsonObject object = value.toObject();
        for (const QString& key : object.keys()) {
            gather(object.value(key), into);
        }
    }
}

std::multiset<std::string> textsIn(const QByteArray& journal)
{
    std::multiset<std::string> texts;
    for (const QByteArray& line : journal.split('\n')) {
        gather(QJsonDocument::fromJson(line).object(), texts);
    }
    return texts;
}

void expectAll(const std::vector<std::string>& typed, const QByteArray& journal)
{
    const auto held = textsIn(journal);
    for (const std::string& text : typed) {
        if (!text.empty()) {
            EXPECT_TRUE(held.contains(text)) << text;
        }
    }
}

// The journal goes into another book and comes out the same; both books are sound.
void expectSameElsewhere(TempBook& book)
{
    const QByteArray journal = book.text();
    TempBook other;
    const auto done = other.import(journal);
    ASSERT_TRUE(done) << done.error().line << done.error().field << done.error().text;
    EXPECT_EQ(other.text(), journal);
    const auto again = book.import(journal);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0);
    for (TempBook* one : {&book, &other}) {
        const auto check = checkBook(*one->store);
        ASSERT_TRUE(check);
        EXPECT_TRUE(check->findings.empty());
    }
}

// The cells of a CSV file as RFC 4180 has them.
std::vector<QByteArrayList> cellsOf(const QByteArray& csv)
{
    std::vector<QByteArrayList> rows(1);
    QByteArray cell;
    bool quoted = false;
    for (qsizetype i = 0; i < csv.size(); ++i) {
        const char c = csv[i];
        if (quoted) {
            if (c == '"' && i + 1 < csv.size() && csv[i + 1] == '"') {
                cell += csv[++i];
            } else if (c == '"') {
                quoted = false;
            } else {
                cell += c;
            }
        } else if (c == '"') {
            quoted = true;
        } else if (c == ',') {
            rows.back() << cell;
            cell.clear();
        } else if (c == '\r' && i + 1 < csv.size() && csv[i + 1] == '\n') {
            ++i;
            rows.back() << cell;
            cell.clear();
            rows.emplace_back();
        } else {
            cell += c;
        }
    }
    rows.pop_back();
    return rows;
}

QByteArray noteLine(const QByteArray& id, const QByteArray& rawText)
{
    return R"({"type":"event","id":")" + id +
           R"(","batch":"dev-1","kind":"noted","at":"2026-06-05T10:00:00Z","text":)" + rawText +
           "}\n";
}

} // namespace

TEST(HostileText, GoesThroughTheBookUnchanged)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel));
    const auto texts = hostileTexts(kTexts, 20'261);
    std::vector<std::string> batches;
    std::vector<std::string> typed;
    double minute = 0;
    for (std::size_t i = 0; i + 8 <= texts.size(); i += 8) {
        ledger::Book& to = *book.book;
        const auto next = [&] { return ledger::When{at(++minute), {}}; };
        to.setPerson(texts[i]);
        if (i % 800 == 0) {
            const auto mixed =
                to.mix({"mq", "b1", chemistry::Millilitres(1000), texts[i + 1], {}, false}, next());
            ASSERT_TRUE(mixed) << mixed.error().field << texts[i + 1];
            batches.push_back(*mixed);
            typed.push_back(texts[i + 1]);
        }
        const std::string& batch = batches.back();
        const auto run =
            to.process({.load = {.films = {{"120", 1}}},
                        .baths = {{batch, {}, {}, false, {}}},
                        .films = {{.format = "120", .name = texts[i + 2], .notes = texts[i + 3]}},
                        .times = {}},
                       next().at);
        ASSERT_TRUE(run) << run.error().field << texts[i + 2];
        ASSERT_TRUE(to.record(batch, ledger::Noted{texts[i + 4]}, next())) << texts[i + 4];
        ASSERT_TRUE(to.drawOff(batch, chemistry::Millilitres(0.1), texts[i + 5], next()));
        ASSERT_TRUE(to.record(batch, ledger::Looked{true, texts[i + 6]}, next()));
        const auto events = to.events(batch);
        ASSERT_TRUE(events);
        ASSERT_TRUE(to.voidEvent(events->back().id, texts[i + 7]));
        typed.insert(typed.end(), {texts[i], texts[i + 2], texts[i + 3], texts[i + 4], texts[i + 5],
                                   texts[i + 6], texts[i + 7]});
    }
    EXPECT_GT(typed.size(), 8'000U);
    expectAll(typed, book.text());
    expectSameElsewhere(book);

    const auto folded = book.book->batches(testNow());
    ASSERT_TRUE(folded);
    const auto report = QJsonDocument::fromJson(reportJson(*folded)).array();
    ASSERT_EQ(report.size(), static_cast<qsizetype>(batches.size()));
    for (qsizetype i = 0; i < report.size(); ++i) {
        EXPECT_EQ(report[i].toObject()["name"].toString().toStdString(),
                  (*folded)[static_cast<std::size_t>(i)].name);
    }
}

TEST(HostileText, GoesThroughTheJournalUnchanged)
{
    const auto texts = hostileTexts(kTexts, 4711, 2000);
    QByteArray journal = kHead + kSolution + kVessel + kMixed;
    std::map<QByteArray, std::string> ids;
    for (std::size_t i = 0; i < texts.size(); i += 4) {
        const QByteArray number = QByteArray::number(static_cast<qulonglong>(i));
        const QByteArray id = store::jsonText(texts[i] + number.toStdString());
        ids[number] = texts[i] + number.toStdString();
        // Some as they are, some with every letter as an escape.
        QByteArray text = store::jsonText(texts[i + 1]);
        if (i % 3 == 0) {
            text = "\"";
            for (const QChar c : QString::fromStdString(texts[i + 1])) {
                text += "\\u" + QByteArray::number(c.unicode(), 16).rightJustified(4, '0');
            }
            text += '"';
        }
        journal += R"({"type":"event","id":)" + id +
                   R"(,"batch":"dev-1","kind":"noted","at":"2026-06-05T10:00:00Z","text":)" + text +
                   R"(,"by":)" + store::jsonText(texts[i + 2]) + R"(,"mood":)" +
                   store::jsonText(texts[i + 3]) + "}\n";
    }
    TempBook book;
    const auto done = book.import(journal);
    ASSERT_TRUE(done) << done.error().line << done.error().field << done.error().text;
    EXPECT_EQ(book.text(), journal);
    std::vector<std::string> typed; // the first of each four went into an id
    for (std::size_t i = 0; i < texts.size(); ++i) {
        if (i % 4 != 0) {
            typed.push_back(texts[i]);
        }
    }
    expectAll(typed, book.text());
    expectSameElsewhere(book);

    QBuffer device;
    device.open(QIODevice::WriteOnly);
    ASSERT_TRUE(exportEventsCsv(*book.store, device));
    const auto rows = cellsOf(device.data());
    ASSERT_EQ(rows.size(), ids.size() + 2);
    std::set<std::string> read;
    for (std::size_t i = 2; i < rows.size(); ++i) {
        ASSERT_EQ(rows[i].size(), 8) << i;
        for (const QByteArray& cell : rows[i]) {
            EXPECT_FALSE(!cell.isEmpty() && QByteArray("=+-@\t\r").contains(cell.front()))
                << cell.toStdString();
        }
        read.insert(csvTyped(rows[i][0]).toStdString());
    }
    for (const auto& [number, id] : ids) {
        EXPECT_TRUE(read.contains(id)) << id;
    }
}

// SQLite takes U+FFFE and U+FFFF for no characters and drops a mark of byte order: such a text
// would come out as another one, and an id twice.
TEST(HostileText, WhatWouldComeOutChangedIsRefused)
{
    TempBook book;
    ASSERT_TRUE(book.import(kHead + kSolution + kVessel + kMixed));
    const QByteArray before = book.text();
    for (const std::string text : {"a\uFFFE", "\uFFFFz", "\uFEFFname"}) {
        EXPECT_FALSE(ledger::canBeKept(text));
        const auto typed = book.book->record("dev-1", ledger::Noted{text}, {at(1), {}});
        ASSERT_FALSE(typed);
        EXPECT_EQ(typed.error().code, ErrorCode::Malformed);
        EXPECT_EQ(typed.error().field, "text");
    }
    for (const QByteArray raw :
         {"a\uFFFE", "\uFFFFz", "\uFEFFname", R"(\ufffe)", R"(\uffff)", R"(\ufeffname)"}) {
        const auto note = book.import(kHead + noteLine("n1", '"' + raw + '"'));
        ASSERT_FALSE(note) << raw.toStdString();
        EXPECT_EQ(note.error().line, 2);
        EXPECT_EQ(note.error().field, "text");
        EXPECT_FALSE(book.import(kHead + noteLine(raw, R"("x")")));
    }
    EXPECT_FALSE(book.import(kHead + noteLine("n1", "\"x\",\"mood\":\"\uFFFE\"")));
    EXPECT_EQ(book.text(), before);
    // Elsewhere in a text the mark is a character like others.
    ASSERT_TRUE(book.import(kHead + noteLine("n2", "\"word\uFEFFjoined\"")));
    expectSameElsewhere(book);
}

TEST(HostileText, ALongNoteComesInOrIsRefusedByItsLength)
{
    const QByteArray megabyte(1'000'000, 'n');
    const QByteArray journal = kStart + noteLine("long", '"' + megabyte + '"');
    TempBook book;
    ASSERT_TRUE(book.import(journal));
    EXPECT_EQ(book.text(), journal);
    expectSameElsewhere(book);

    const auto tooLong = book.import(kHead + noteLine("longer", '"' + megabyte + megabyte + '"'));
    ASSERT_FALSE(tooLong);
    EXPECT_EQ(tooLong.error().code, ErrorCode::TooLong);
    EXPECT_EQ(tooLong.error().line, 2);
    EXPECT_EQ(book.text(), journal);

    const auto typed =
        book.book->record("dev-1", ledger::Noted{megabyte.toStdString()}, {testNow(), {}});
    ASSERT_FALSE(typed);
    EXPECT_EQ(typed.error().code, ErrorCode::TooLong);
    EXPECT_EQ(typed.error().field, "text");
    EXPECT_EQ(typed.error().number, 1'000'000);
    EXPECT_EQ(book.text(), journal);
}

// The longest that may be typed, of the character that takes most room in JSON.
TEST(HostileText, WhateverMayBeTypedFitsOnALine)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const std::string note(ledger::kLongestText, '\x01');
    const std::string name(ledger::kLongestName, '\x01');
    book.book->setPerson(name);
    ASSERT_TRUE(book.book->record("dev-1", ledger::Noted{note}, {testNow(), {}}));
    ASSERT_TRUE(book.book->mix({"mq", "b1", chemistry::Millilitres(1000), name, {}, false},
                               {testNow(), {}}));
    formulary::Solution solution = *book.book->formulary().solution("mq");
    solution.id = "mq-2";
    solution.name = name;
    for (const auto& bounds : formulary::kFigures) {
        solution.sources[std::string(bounds.source)] = std::string(ledger::kLongestSource, '\x01');
    }
    ASSERT_TRUE(book.book->add(solution));
    expectSameElsewhere(book);
}

TEST(HostileText, BytesThatAreNoTextAreRefusedAndNothingComesIn)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const auto expectRefused = [&](const QByteArray& rawText) {
        const auto done = book.import(kHead + noteLine("good", "\"x\"") + noteLine("bad", rawText));
        ASSERT_FALSE(done) << rawText.toStdString();
        EXPECT_EQ(done.error().line, 3);
    };
    for (const char* raw : {"\"\xFF\"", "\"\xC3\"", "\"\xED\xA0\x80\"", "\"\xED\xB0\x80\"",
                            "\"\xF4\x90\x80\x80\"", "\"\xC0\x80\"", "\"\\ud83d\"", "\"\\ude00\"",
                            "\"\\ude00\\ud83d\"", "\"\\u0000\"", "\"a\\u0000b\"", "\"\x01\"",
                            "\"\x1b[2J\"", "\"\t\"", "\"\\x41\"", "\"\\u12\"", "\"", "\"\\\""}) {
        expectRefused(raw);
    }
    expectRefused(QByteArray("\"a\0b\"", 5));
    std::mt19937 random(9);
    for (int round = 0; round < 500; ++round) {
        QByteArray bytes;
        for (int i = 0; i < 12; ++i) {
            bytes += static_cast<char>(0x80 | (random() & 0x7F));
        }
        if (!bytes.isValidUtf8()) {
            expectRefused('"' + bytes + '"');
        }
    }
    EXPECT_EQ(book.text(), kStart);
}

TEST(HostileText, IsFoundInTheDayBookByItself)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    std::vector<std::string> typed;
    for (const std::string& text : hostileSamples()) {
        // A search has no blanks at its ends, and codes are no words of a person.
        const QString trimmed = QString::fromStdString(text).trimmed();
        if (trimmed.size() < 3 || text.starts_with("run-times ") ||
            text.starts_with("test-asked ")) {
            continue;
        }
        typed.push_back(trimmed.toStdString());
        ASSERT_TRUE(book.book->record("dev-1", ledger::Noted{text}, {testNow(), {}}));
    }
    ASSERT_GT(typed.size(), 35U);
    for (const std::string& text : typed) {
        DayBook days(*book.store);
        const auto page = days.page({.words = dayWords(QString::fromStdString(text))}, {}, 200);
        ASSERT_TRUE(page) << page.error().text << " for " << text;
        const bool found =
            std::any_of(page->entries.begin(), page->entries.end(), [&](const DayEntry& entry) {
                const auto* note = std::get_if<ledger::Noted>(&entry.event.what);
                return note && note->text.find(text) != std::string::npos;
            });
        EXPECT_TRUE(found) << text;
    }
}
