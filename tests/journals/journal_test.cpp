// Every scenario goes through the real store and comes out as a report, which must be the expected
// one; every refused journal must be refused at the expected line and field, the book unchanged.
#include "core/ledger/verdict.h"
#include "core/store/instant_text.h"
#include "core/store/report_json.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cmath>
#include <set>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

std::vector<std::string> namesIn(const char* folder, const char* ending)
{
    std::vector<std::string> names;
    const QDir place(QStringLiteral(ULLAGE_JOURNALS "/") + folder);
    for (const QString& name : place.entryList({QString("*") + ending}, QDir::Files)) {
        names.push_back(name.chopped(static_cast<int>(qstrlen(ending))).toStdString());
    }
    return names;
}

QString placeOf(const char* folder, const std::string& name, const char* ending)
{
    return QStringLiteral(ULLAGE_JOURNALS "/%1/%2%3").arg(folder, name.c_str(), ending);
}

constexpr double kTolerance = 1e-9;

bool close(double expected, double found)
{
    return std::abs(expected - found) <= kTolerance * std::max(1.0, std::abs(expected));
}

// Everything exactly, but numbers that are no whole ones: reasons in their order too, with every
// number that stands beside a code.
void compare(const QJsonValue& expected, const QJsonValue& found, const QString& where)
{
    ASSERT_EQ(expected.type(), found.type()) << where.toStdString();
    if (expected.isDouble()) {
        EXPECT_TRUE(close(expected.toDouble(), found.toDouble()))
            << where.toStdString() << ": expected "
            << QByteArray::number(expected.toDouble(), 'g', 17).constData() << ", found "
            << QByteArray::number(found.toDouble(), 'g', 17).constData();
    } else if (expected.isObject()) {
        const QJsonObject object = expected.toObject();
        EXPECT_EQ(object.keys(), found.toObject().keys()) << where.toStdString();
        for (auto one = object.begin(); one != object.end(); ++one) {
            compare(one.value(), found.toObject().value(one.key()), where + '.' + one.key());
        }
    } else if (expected.isArray()) {
        const QJsonArray left = expected.toArray();
        const QJsonArray right = found.toArray();
        ASSERT_EQ(left.size(), right.size())
            << where.toStdString() << ": expected "
            << QJsonDocument(left).toJson(QJsonDocument::Compact).constData() << ", found "
            << QJsonDocument(right).toJson(QJsonDocument::Compact).constData();
        for (qsizetype i = 0; i < left.size(); ++i) {
            compare(left[i], right[i], QStringLiteral("%1[%2]").arg(where).arg(i));
        }
    } else {
        EXPECT_EQ(expected, found) << where.toStdString();
    }
}

class Scenario : public ::testing::TestWithParam<std::string>
{
};
class Refused : public ::testing::TestWithParam<std::string>
{
};

std::string testName(const ::testing::TestParamInfo<std::string>& info)
{
    std::string name = info.param;
    std::replace_if(
        name.begin(), name.end(),
        [](char c) { return !std::isalnum(static_cast<unsigned char>(c)); }, '_');
    return name;
}

} // namespace

// A journal may have several reports: NAME.expected.json, NAME.2.expected.json and so on.
TEST_P(Scenario, GivesTheExpectedReports)
{
    const QByteArray journal = contentOf(placeOf("scenarios", GetParam(), ".jsonl"));
    TempBook book;
    const auto imported = book.import(journal);
    ASSERT_TRUE(imported) << imported.error().line << ": " << imported.error().field << " "
                          << imported.error().text;
    int reports = 0;
    const QDir place(QStringLiteral(ULLAGE_JOURNALS "/scenarios"));
    const auto name = QString::fromStdString(GetParam());
    for (const QString& file : place.entryList({name + "*.expected.json"}, QDir::Files)) {
        if (file.section('.', 0, 0) != name) {
            continue;
        }
        ++reports;
        const QJsonObject expected =
            QJsonDocument::fromJson(contentOf(place.filePath(file))).object();
        const auto at = instantFromText(expected["at"].toString());
        ASSERT_TRUE(at);
        const auto batches = book.book->batches(*at, expected["all"].toBool());
        ASSERT_TRUE(batches);
        const auto found = QJsonDocument::fromJson(reportJson(*batches));
        compare(expected["report"], found.array(), file);
    }
    EXPECT_GT(reports, 0);
}

// What no scenario gives a reason for has not been worked out a second time.
TEST(Scenarios, GiveEveryReasonThereIs)
{
    std::set<QString> given;
    const QDir place(QStringLiteral(ULLAGE_JOURNALS "/scenarios"));
    for (const QString& file : place.entryList({"*.expected.json"}, QDir::Files)) {
        const QJsonDocument expected = QJsonDocument::fromJson(contentOf(place.filePath(file)));
        const QJsonArray batches = expected["report"].toArray();
        for (const auto& batch : batches) {
            const QJsonArray reasons = batch.toObject()["reasons"].toArray();
            for (const auto& reason : reasons)
                given.insert(reason.toObject()["code"].toString());
        }
    }
    for (const std::string_view code : ledger::kReasonCodes) {
        EXPECT_TRUE(given.count(QString::fromUtf8(code.data(), static_cast<int>(code.size()))))
            << code;
    }
    EXPECT_EQ(given.size(), ledger::kReasonCodes.size());
}

TEST_P(Scenario, ComesBackOutAsItWentIn)
{
    const QByteArray journal = contentOf(placeOf("scenarios", GetParam(), ".jsonl"));
    TempBook book;
    ASSERT_TRUE(book.import(journal));
    const QByteArray exported = book.text();
    const auto again = book.import(exported);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0);
    EXPECT_EQ(book.text(), exported);
    TempBook other;
    ASSERT_TRUE(other.import(exported));
    EXPECT_EQ(other.text(), exported);
}

TEST_P(Refused, IsRefusedAtItsLineAndFieldAndChangesNothing)
{
    const QByteArray journal = contentOf(placeOf("refused", GetParam(), ".jsonl"));
    const QJsonObject expected =
        QJsonDocument::fromJson(contentOf(placeOf("refused", GetParam(), ".expected.json")))
            .object();
    TempBook book;
    ASSERT_TRUE(book.import(kHead + R"({"type":"vessel","id":"before","name":"B","capacity_ml":9,)"
                                    R"("material":"pet"})"
                                    "\n"));
    const QByteArray before = book.text();
    const auto imported = book.import(journal);
    ASSERT_FALSE(imported);
    const Error& error = imported.error();
    EXPECT_EQ(error.line, expected["line"].toInt());
    EXPECT_EQ(error.file, "test.jsonl");
    // Where the line cannot be read at all, the expectation names no field.
    if (!expected["field"].isNull()) {
        const QString field = QString::fromStdString(error.field).section('.', -1);
        EXPECT_EQ(field.toStdString(), expected["field"].toString().toStdString());
    }
    EXPECT_EQ(book.text(), before);
    book.open();
    EXPECT_EQ(book.text(), before);
}

INSTANTIATE_TEST_SUITE_P(Journals, Scenario, ::testing::ValuesIn(namesIn("scenarios", ".jsonl")),
                         testName);
INSTANTIATE_TEST_SUITE_P(Journals, Refused, ::testing::ValuesIn(namesIn("refused", ".jsonl")),
                         testName);
