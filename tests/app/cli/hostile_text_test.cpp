// What a terminal is shown of a book whose names and notes may hold anything.
#include "tests/app/cli/cli_kit.h"
#include "tests/hostile_text.h"

#include "core/store/line_writer.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace ullage;
using namespace ullage::app;
using namespace ullage::app::testing;
using namespace ullage::store::testing;

namespace
{

// Nothing a terminal would carry out, and no line that is not ours.
void expectHarmless(const QByteArray& shown, const std::string& what)
{
    const QString text = QString::fromUtf8(shown);
    for (const QChar c : text) {
        const char16_t code = c.unicode();
        const bool control = (code < 0x20 && c != u'\n') || (code >= 0x7F && code < 0xA0) ||
                             code == 0x061C || code == 0x200E || code == 0x200F ||
                             (code >= 0x2028 && code <= 0x202E) ||
                             (code >= 0x2066 && code <= 0x2069);
        EXPECT_FALSE(control) << "U+" << std::hex << static_cast<int>(code) << " for " << what;
    }
}

class HostileCommandTest : public CommandTest
{
protected:
    Answer importNamed(const std::string& name, const QString& book)
    {
        QByteArray journal = kStart;
        journal.replace("\"Dev 1\"", store::jsonText(name));
        journal.replace("\"MQ borax\"", store::jsonText(name));
        return run({"import", write("named.jsonl", journal), "--book", book});
    }
};

} // namespace

TEST_F(HostileCommandTest, ReportTimeAndCheckShowNamesHarmlessly)
{
    int number = 0;
    for (const std::string& name : ullage::tests::hostileSamples()) {
        const QString book = path(QString::number(++number) + ".ullage");
        ASSERT_EQ(importNamed(name, book).code, kDone);
        const Answer report = run({"report", "--book", book});
        EXPECT_EQ(report.code, kDone);
        expectHarmless(report.out, name);
        EXPECT_EQ(report.out.count('\n'), 2) << report.out.constData();
        const Answer time = run({"time", "--book", book, "--batch", "dev-1", "--base", "9:30@20",
                                 "--temperature", "20"});
        EXPECT_EQ(time.code, kDone) << time.err.constData();
        expectHarmless(time.out, name);
        EXPECT_EQ(time.out.count('\n'), 4) << time.out.constData();
        const Answer check = run({"check", "--book", book});
        EXPECT_EQ(check.code, kDone);

        const Answer json = run({"report", "--json", "--book", book});
        const auto array = QJsonDocument::fromJson(json.out).array();
        ASSERT_EQ(array.size(), 1) << json.out.constData();
        EXPECT_EQ(array[0].toObject()["name"].toString().toStdString(), name) << "exactly";
    }
}

TEST_F(HostileCommandTest, RefusalsShowWhatTheyQuoteHarmlessly)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    for (const std::string& text : ullage::tests::hostileSamples()) {
        const QByteArray json = store::jsonText(text);
        const QByteArrayList journals{
            kHead + R"({"type":)" + json + "}",
            kHead + R"({"type":"event","id":"x","kind":)" + json + "}",
            kHead + R"({"type":"event","id":"x","batch":"dev-1","kind":"moved","at":)" + json +
                R"(,"vessel":"b1"})",
            kHead +
                R"({"type":"event","id":"x","batch":"dev-1","kind":"moved","at":"2026-06-05T10:00:00Z","vessel":)" +
                json + "}",
            kHead + R"({"type":"film","id":"x","run":"y","format":)" + json + "}",
            kHead + "{" + json + ":1}",
        };
        for (const QByteArray& journal : journals) {
            const Answer refused = run({"import", write("refused.jsonl", journal)});
            EXPECT_EQ(refused.code, kRefused) << journal.constData();
            expectHarmless(refused.err, text);
            // One line of ours for what is wrong, and where it was gathered that nothing came in.
            const int gathered = refused.err.endsWith("\nNothing was imported.\n") ? 1 : 0;
            EXPECT_EQ(refused.err.count('\n'), 1 + gathered) << refused.err.constData();
            EXPECT_LT(refused.err.size(), 4000);
        }
        const QString word = QString::fromStdString(text);
        for (const QStringList& words :
             {QStringList{"report", "--at", word},
              QStringList{"time", "--batch", word, "--base", "9:30@20", "--temperature", "20"},
              QStringList{"import", "/nowhere/" + word}, QStringList{"report", "--x" + word},
              QStringList{"export", "/nowhere/" + word + ".jsonl"}}) {
            const Answer refused = run(words);
            EXPECT_NE(refused.code, kDone);
            expectHarmless(refused.err, text);
        }
    }
}

TEST_F(HostileCommandTest, ARefusalNeverQuotesAMegabyte)
{
    const QByteArray huge(900'000, 'x');
    for (const QByteArray& journal :
         {kHead + R"({"type":")" + huge + "\"}", kHead + R"({"type":"event","id":")" + huge + "\"}",
          kHead + "{\"" + huge + "\":", kHead + huge,
          kStart + R"({"type":"event","id":"x","batch":")" + huge +
              R"(","kind":"opened","at":"2026-06-05T10:00:00Z"})"}) {
        const Answer refused = run({"import", "-"}, journal);
        EXPECT_EQ(refused.code, kRefused);
        EXPECT_LT(refused.err.size(), 2000) << refused.err.left(300).constData();
    }
}
