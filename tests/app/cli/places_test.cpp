// The program run in other countries: the book and its report are the same, byte for byte.
#include "tests/app/cli/cli_kit.h"

#include <QProcess>

using namespace ullage;
using namespace ullage::app;
using namespace ullage::app::testing;
using namespace ullage::store::testing;

namespace
{

struct Place {
    const char* language;
    const char* zone;
};

constexpr Place kPlaces[]{{"C", "UTC"},
                          {"de_DE.UTF-8", "Europe/Berlin"},
                          {"de_CH.UTF-8", "Europe/Zurich"},
                          {"fr_FR.UTF-8", "Pacific/Apia"},
                          {"ar_EG.UTF-8", "America/St_Johns"},
                          {"fa_IR.UTF-8", "Asia/Tehran"},
                          {"hi_IN.UTF-8", "Asia/Kolkata"},
                          {"tr_TR.UTF-8", "Australia/Lord_Howe"},
                          {"ja_JP.UTF-8", "Pacific/Kiritimati"},
                          {"en_US.UTF-8", "No/Such_Zone"},
                          {"xx_YY", "Pacific/Marquesas"}};

// In the doubled and the skipped hour of Berlin's clock, and on Samoa's missing day.
const QByteArray kMoments =
    R"({"type":"event","id":"g1","batch":"dev-1","kind":"noted","at":"2026-10-25T02:30:00+02:00","text":"a"})"
    "\n"
    R"({"type":"event","id":"g2","batch":"dev-1","kind":"noted","at":"2026-10-25T02:30:00+01:00","text":"b"})"
    "\n"
    R"({"type":"event","id":"g3","batch":"dev-1","kind":"topped-up","at":"2026-10-26T00:00:00.25-11:30","volume_ml":12.5})"
    "\n";

// The same in UTC, as a book keeps and writes them.
QByteArray momentsWritten()
{
    QByteArray written = kMoments;
    written.replace("2026-10-25T02:30:00+02:00", "2026-10-25T00:30:00Z");
    written.replace("2026-10-25T02:30:00+01:00", "2026-10-25T01:30:00Z");
    written.replace("2026-10-26T00:00:00.25-11:30", "2026-10-26T11:30:00.250Z");
    return written;
}

class PlacesTest : public CommandTest
{
protected:
    Answer runIn(const Place& place, const QStringList& words)
    {
        QProcess program;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.remove("LANGUAGE");
        for (const char* name : {"LANG", "LC_ALL", "LC_NUMERIC"}) {
            environment.insert(name, place.language);
        }
        environment.insert("TZ", place.zone);
        environment.insert("HOME", path("home"));
        environment.insert("XDG_CONFIG_HOME", path("config"));
        environment.insert("XDG_DATA_HOME", path("data"));
        program.setProcessEnvironment(environment);
        program.start(ULLAGE_PROGRAM, words);
        EXPECT_TRUE(program.waitForFinished(60'000));
        return {program.exitCode(), program.readAllStandardOutput(),
                program.readAllStandardError()};
    }
};

} // namespace

TEST_F(PlacesTest, BookAndReportAreTheSameEverywhere)
{
    const QString journal = write("season.jsonl", kStart + kMoments);
    Answer firstReport;
    Answer firstExport;
    Answer firstTime;
    int number = 0;
    for (const Place& place : kPlaces) {
        const QString where = QString::fromLatin1(place.language) + ' ' + place.zone;
        const QString book = path(QString::number(number) + ".ullage");
        const Answer imported = runIn(place, {"import", journal, "--book", book});
        ASSERT_EQ(imported.code, kDone) << imported.err.constData();
        const Answer report =
            runIn(place, {"report", "--json", "--at", "2026-11-01T00:00:00Z", "--book", book});
        ASSERT_EQ(report.code, kDone) << report.err.constData();
        const Answer written = runIn(place, {"export", "-", "--book", book});
        const Answer time =
            runIn(place, {"time", "--json", "--batch", "dev-1", "--base", "9:30@20,8:00@22.5",
                          "--temperature", "21.5", "--book", book});
        const Answer day = runIn(place, {"report", "--at", "2026-10-25", "--book", book});
        EXPECT_EQ(day.code, kDone) << day.err.constData();
        if (number++ == 0) {
            firstReport = report;
            firstExport = written;
            firstTime = time;
            EXPECT_EQ(written.out, kStart + momentsWritten());
        }
        EXPECT_EQ(report.out, firstReport.out) << where.toStdString();
        EXPECT_EQ(written.out, firstExport.out) << where.toStdString();
        EXPECT_EQ(time.out, firstTime.out) << where.toStdString();
        EXPECT_EQ(runIn(place, {"check", "--book", book}).code, kDone) << where.toStdString();
    }
}

// What opens a window is told of like every other command, without one.
TEST_F(PlacesTest, TheDemoTellsWhatItDoesInsteadOfOpening)
{
    const Answer answer = runIn(kPlaces[0], {"demo", "--help"});
    EXPECT_EQ(answer.code, kDone);
    EXPECT_TRUE(answer.out.contains("ullage demo"));
    EXPECT_TRUE(answer.err.isEmpty()) << answer.err.toStdString();
}
