// The same film, told four ways: logged in Run film, run on the Bench, added as a forgotten entry
// and imported. Line by line it leaves the same book, but for ids, times of day and the clock's own
// line, which only a clock can write.
#include "app/bench/bench_page.h"
#include "app/cli/command_line.h"
#include "app/daybook/forgotten_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/session/session_door.h"
#include "app/widgets/films_edit.h"
#include "tests/app/dialogs/dialog_driver.h"

#include <QBuffer>
#include <QComboBox>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>

#include <map>

namespace ullage::app
{
namespace
{

struct Silence : Sounds {
    void play(CueTone) override {}
};

const std::vector<ledger::RunFilm> kFilms{{"135-36", 2, "Quay 400", 800, "harbour, dawn"},
                                          {"9x12cm", 1, "Lantern 100", {}, ""},
                                          {"4.6x61cm", 1, "", {}, ""}};

// A desk with a developer and a fixer; what was there before the film is the same everywhere.
struct Told {
    Desk desk;
    std::string dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    std::string fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");

    std::string second = {}; ///< the second of two fixing baths, where there is one

    bool diluted = false; ///< the developer 1+1, which cannot go back

    explicit Told(bool twoBaths = false, bool dilutes = false) : diluted(dilutes)
    {
        if (twoBaths)
            second = desk.mix("starter-acid-fixer", "starter-glass-1000-b", 1000, "Fix 2");
        desk.passMinutes(90);
    }

    // Lines with ids by their order, without times of day.
    QStringList lines() const
    {
        std::map<QString, QString> ids;
        QStringList all;
        for (const QByteArray& line : desk.journal().split('\n')) {
            QJsonObject object = QJsonDocument::fromJson(line).object();
            const QString type = object["type"].toString();
            if (type == QStringLiteral("run-times") ||
                (type != QStringLiteral("event") && type != QStringLiteral("film")))
                continue;
            object.remove(QStringLiteral("at"));
            for (const char* field : {"id", "batch", "run"}) {
                const QString key = QString::fromLatin1(field);
                if (!object.contains(key))
                    continue;
                const QString id = object[key].toString();
                const auto known =
                    ids.try_emplace(id, QStringLiteral("#%1").arg(ids.size())).first->second;
                object[key] = known;
            }
            all << QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
        }
        return all;
    }
};

void logInDialog(Told& told)
{
    RunDialog dialog(told.desk.door(), nullptr);
    dialog.show();
    dialog.findChild<FilmsEdit*>()->setFilms(kFilms);
    if (told.diluted)
        spin(dialog, "Dilution of the developer", 1);
    type(dialog, "Developer: volume used", told.diluted ? "300" : "600");
    if (told.diluted)
        type(dialog, "Developer: air left", "50");
    type(dialog, "Fixer: volume used", "600");
    type(dialog, "Fixer: lost", "20");
    if (!told.second.empty()) {
        auto* second = named<QComboBox>(dialog, "Second fixing bath: bottle");
        second->setCurrentIndex(second->findData(QString::fromStdString(told.second)));
        type(dialog, "Second fixing bath: volume used", "600");
    }
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible())
        << dialog.problemOf("").toStdString() << dialog.problemOf("films").toStdString();
}

void runOnTheBench(Told& told)
{
    Door& door = told.desk.door();
    const int parts = told.diluted ? 1 : 0;
    door.setBaseTimes("starter-mq-borax", {{chemistry::Celsius(20), chemistry::Seconds(60)}},
                      parts);
    BenchMemory memory(told.desk.preferences().settings());
    memory.remember(ledger::Tank{"Tank", chemistry::Millilitres(600), {}});
    Silence sounds;
    std::chrono::milliseconds steady{1'000};
    BenchPage page(door, memory, sounds, {[&] { return steady; }, [&] { return told.desk.now(); }});
    page.resize(1112, 800);
    page.show();
    page.findChild<FilmsEdit*>()->setFilms(kFilms);
    spin(page, "Dilution of the developer", parts);
    auto* time = page.findChild<QuantityEdit*>(QStringLiteral("baseTime"));
    time->selectAll();
    QTest::keyClicks(time, QStringLiteral("1:00"));
    if (!told.second.empty()) {
        auto* sheet = page.findChild<QComboBox*>(QStringLiteral("template"));
        sheet->setCurrentIndex(sheet->count() - 1);
    }
    auto* start = page.findChild<QPushButton*>(QStringLiteral("start"));
    ASSERT_TRUE(start->isEnabled());
    start->click();
    for (int i = 0; i < 200 && page.stage() == BenchPage::Stage::Run; ++i) {
        steady += std::chrono::seconds(1);
        page.tick();
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &page, Qt::Key_Return);
        QApplication::processEvents();
    }
    ASSERT_EQ(page.stage(), BenchPage::Stage::Finish);
    for (auto* lost : page.findChildren<QuantityEdit*>(QStringLiteral("lost"))) {
        if (lost->accessibleName() != QStringLiteral("Lost from Fix 1"))
            continue;
        lost->selectAll();
        QTest::keyClicks(lost, QStringLiteral("20"));
    }
    if (told.diluted) {
        auto* air = named<QComboBox>(page, "Air left in Dev 1");
        air->setCurrentIndex(air->count() - 1); // measured
        type(page, "Measured air in Dev 1", "50");
    }
    page.findChild<QPushButton*>(QStringLiteral("log"))->click();
    ASSERT_EQ(page.stage(), BenchPage::Stage::Plan);
}

void addForgotten(Told& told)
{
    ForgottenDialog dialog(told.desk.door(), told.dev);
    dialog.show();
    dialog.setKind(ForgottenDialog::Kind::Film);
    dialog.findChild<FilmsEdit*>()->setFilms(kFilms);
    auto* also = dialog.findChild<QListWidget*>();
    ASSERT_EQ(also->count(), told.second.empty() ? 1 : 2);
    for (int i = 0; i < also->count(); ++i)
        also->item(i)->setCheckState(Qt::Checked);
    type(dialog, "Dev 1: volume used", told.diluted ? "300" : "600");
    if (told.diluted) {
        named<QCheckBox>(dialog, "Dev 1: one-shot")->setChecked(true);
        type(dialog, "Dev 1: air left", "50");
    }
    type(dialog, "Fix 1: volume used", "600");
    type(dialog, "Fix 1: lost", "20");
    if (!told.second.empty()) {
        type(dialog, "Fix 2: volume used", "600");
        named<QCheckBox>(dialog, "Fix 2: second fixing bath")->setChecked(true);
    }
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
}

// As somebody writes it who has only the journal's own description.
void import(Told& told)
{
    const QByteArray films =
        R"("films":[{"format":"135-36","count":2},{"format":"9x12cm","count":1})"
        R"(,{"format":"4.6x61cm","count":1}])";
    const auto bath = [&](const char* id, const std::string& batch, const char* more,
                          const char* used = R"("used_ml":600,)") {
        return QByteArray(R"({"type":"event","id":")") + id + R"(","batch":")" +
               QByteArray::fromStdString(batch) +
               R"(","kind":"processed","at":"2026-11-25T17:00:00Z",)" + films + "," + used + more +
               R"("run":"r"})" + "\n";
    };
    const auto film = [](const char* id, const char* rest) {
        return QByteArray(R"({"type":"film","id":")") + id + R"(","run":"r",)" + rest + "}\n";
    };
    QFile file(told.desk.file("theirs.jsonl"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const char* quay = R"("format":"135-36","name":"Quay 400","ei":800,"notes":"harbour, dawn")";
    file.write("{\"type\":\"book\",\"format\":\"ullage-journal\",\"version\":2}\n" +
               bath("x1", told.dev, told.diluted ? R"("one_shot":true,"air_ml":50,)" : "",
                    told.diluted ? R"("used_ml":300,)" : R"("used_ml":600,)") +
               bath("x2", told.fix, R"("lost_ml":20,)") +
               (told.second.empty() ? QByteArray() : bath("x3", told.second, R"("second":true,)")) +
               film("f1", quay) + film("f2", quay) +
               film("f3", R"("format":"9x12cm","name":"Lantern 100")") +
               film("f4", R"("format":"4.6x61cm")"));
    file.close();
    Arguments arguments;
    ASSERT_FALSE(parse({QStringLiteral("import"), file.fileName()}, arguments));
    QBuffer in;
    QBuffer out;
    QBuffer err;
    for (QBuffer* buffer : {&in, &out, &err})
        buffer->open(QIODevice::ReadWrite);
    ASSERT_EQ(runCommand(arguments,
                         {&in, &out, &err, [&] { return told.desk.now(); }, told.desk.bookPath()}),
              kDone)
        << err.data().toStdString();
}

} // namespace

TEST(SameBook, FilmLoggedRunImportedAndAddedLaterLeavesTheSameLines)
{
    Told dialog;
    logInDialog(dialog);
    Told bench;
    runOnTheBench(bench);
    Told imported;
    import(imported);
    Told forgotten;
    addForgotten(forgotten);
    const QStringList lines = dialog.lines();
    ASSERT_EQ(lines.size(), 4 + 2 + 4) << lines.join(u'\n').toStdString();
    EXPECT_TRUE(lines.back().contains(QStringLiteral("4.6x61cm")));
    EXPECT_TRUE(lines[6].contains(QStringLiteral("\"notes\":\"harbour, dawn\"")));
    EXPECT_EQ(bench.lines().join(u'\n'), lines.join(u'\n'));
    EXPECT_EQ(imported.lines().join(u'\n'), lines.join(u'\n'));
    EXPECT_EQ(forgotten.lines().join(u'\n'), lines.join(u'\n'));
    EXPECT_EQ(lines.filter(QStringLiteral("\"lost_ml\":20")).size(), 1);
}

TEST(SameBook, ASecondFixingBathLeavesTheSameLinesToo)
{
    Told dialog(true);
    logInDialog(dialog);
    Told bench(true);
    runOnTheBench(bench);
    Told imported(true);
    import(imported);
    Told forgotten(true);
    addForgotten(forgotten);
    const QStringList lines = dialog.lines();
    ASSERT_EQ(lines.size(), 6 + 3 + 4) << lines.join(u'\n').toStdString();
    EXPECT_EQ(lines.filter(QStringLiteral("\"second\":true")).size(), 1);
    EXPECT_EQ(bench.lines().join(u'\n'), lines.join(u'\n'));
    EXPECT_EQ(imported.lines().join(u'\n'), lines.join(u'\n'));
    EXPECT_EQ(forgotten.lines().join(u'\n'), lines.join(u'\n'));
}

TEST(SameBook, ADilutedDeveloperLeavesTheSameLinesToo)
{
    Told dialog(false, true);
    logInDialog(dialog);
    Told bench(false, true);
    runOnTheBench(bench);
    Told imported(false, true);
    import(imported);
    Told forgotten(false, true);
    addForgotten(forgotten);
    const QStringList lines = dialog.lines();
    ASSERT_EQ(lines.size(), 4 + 2 + 4) << lines.join(u'\n').toStdString();
    EXPECT_EQ(lines.filter(QStringLiteral("\"one_shot\":true")).size(), 1);
    EXPECT_EQ(lines.filter(QStringLiteral("\"used_ml\":300")).size(), 1);
    EXPECT_EQ(lines.filter(QStringLiteral("\"air_ml\":50")).size(), 1);
    EXPECT_EQ(bench.lines().join(u'\n'), lines.join(u'\n'));
    EXPECT_EQ(imported.lines().join(u'\n'), lines.join(u'\n'));
    EXPECT_EQ(forgotten.lines().join(u'\n'), lines.join(u'\n'));
}

} // namespace ullage::app
