// The way of washing on the plan, and topping up at the end of a run.
#include "bench_kit.h"

#include "app/bench/step_list.h"
#include "app/bench/wash_edit.h"
#include "app/widgets/quantity_edit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

namespace ullage::app
{
namespace
{

using chemistry::Celsius;
using chemistry::Millilitres;
using chemistry::Seconds;
using ledger::StepKind;
using ledger::WashKind;
using Stage = BenchPage::Stage;

std::vector<StepKind> kinds(const ledger::RunSheet& sheet)
{
    std::vector<StepKind> all;
    for (const ledger::RunStep& step : sheet.steps)
        all.push_back(step.kind);
    return all;
}

TEST(BenchWash, theWayChosenIsTheWayThatRuns)
{
    Bench bench;
    BenchPage& page = bench.open();
    page.findChild<QPushButton*>("addFilm")->click();
    page.findChild<QComboBox*>("wash")->setCurrentIndex(int(WashKind::Running));
    QApplication::processEvents();
    page.findChild<QPushButton*>("start")->click();
    ASSERT_EQ(page.stage(), Stage::Run);
    const auto& sheet = page.run()->state().sheet;
    const auto all = kinds(sheet);
    EXPECT_EQ(std::count(all.begin(), all.end(), StepKind::Wash), 1);
    EXPECT_EQ(std::count(all.begin(), all.end(), StepKind::WashAid), 0);
    EXPECT_EQ(sheet.steps[sheet.steps.size() - 2].planned, Seconds(30 * 60));
}

TEST(BenchWash, aColdTapLengthensTheWashAndWarns)
{
    Bench bench;
    BenchPage& page = bench.open();
    page.findChild<QPushButton*>("addFilm")->click();
    auto* wash = page.findChild<WashEdit*>();
    wash->setKind(WashKind::Running);
    EXPECT_TRUE(wash->note().contains("SS0509"));
    EXPECT_TRUE(wash->warning().isEmpty());
    auto* tap = page.findChild<QuantityEdit*>("tap");
    tap->setFocus();
    QTest::keyClicks(tap, "11");
    QApplication::processEvents();
    EXPECT_FALSE(wash->warning().isEmpty()) << "nine degrees below the fixer";
    page.findChild<QPushButton*>("start")->click();
    ASSERT_EQ(page.stage(), Stage::Run);
    const auto& steps = page.run()->state().sheet.steps;
    EXPECT_EQ(steps[steps.size() - 2].planned, Seconds(90 * 60));
}

TEST(WashEdit, reckonsLiveWhatFillAndDumpLeaves)
{
    WashEdit edit({{}, QLocale(QLocale::English, QLocale::UnitedKingdom)});
    edit.setRun(Celsius(20), Millilitres(475));
    edit.setKind(WashKind::FillAndDump);
    edit.findChild<QSpinBox*>("fills")->setValue(3);
    EXPECT_TRUE(edit.note().contains("1 part in 8,000")) << edit.note().toStdString(); // 20³
    edit.findChild<QSpinBox*>("fills")->setValue(20);
    EXPECT_TRUE(edit.note().contains("less than 1 part in a million")) << edit.note().toStdString();
    edit.findChild<QSpinBox*>("fills")->setValue(2);
    EXPECT_TRUE(edit.note().contains("1 part in 400")) << edit.note().toStdString();
    auto* carried = edit.findChild<QuantityEdit*>("carried");
    carried->setFocus();
    carried->selectAll();
    QTest::keyClicks(carried, "475");
    EXPECT_TRUE(edit.note().contains("1 part in 4.0")) << edit.note().toStdString();
    carried->selectAll();
    QTest::keyClicks(carried, "x");
    EXPECT_FALSE(edit.problem().isEmpty());
    EXPECT_TRUE(edit.note().isEmpty());
    edit.setKind(WashKind::Changes);
    EXPECT_TRUE(edit.problem().isEmpty()) << "nobody asks for it now";
    EXPECT_TRUE(edit.note().contains("14209"));
    EXPECT_EQ(edit.plan().kind, WashKind::Changes);
}

TEST(WashEdit, saysWhenTapAndFixerAreTooFarApart)
{
    WashEdit edit({{}, QLocale(QLocale::English, QLocale::UnitedKingdom)});
    auto* tap = edit.findChild<QuantityEdit*>("tap");
    edit.setRun(Celsius(20), Millilitres(500));
    QTest::keyClicks(tap, "12");
    EXPECT_TRUE(edit.warning().isEmpty()); // exactly 8
    edit.setRun(Celsius(20.5), Millilitres(500));
    EXPECT_FALSE(edit.warning().isEmpty());
    edit.setRun(std::nullopt, Millilitres(500));
    EXPECT_TRUE(edit.warning().isEmpty());
}

TEST(BenchTopUp, isOfferedAtTheEndAndLoggedWithTheRun)
{
    Bench bench;
    formulary::Solution solution = *bench.shelf.book->formulary().solution("mq");
    solution.id = "topped-up";
    solution.replenishPerFilm = Millilitres(60);
    ASSERT_TRUE(bench.shelf.book->add(solution));
    bench.host.setBaseTimes("topped-up", {{Celsius(20), Seconds(600)}});
    const std::string rep = bench.shelf.mix("topped-up", "b3", "Dev 15");
    BenchPage& page = bench.open();
    page.plan(rep);
    page.findChild<QPushButton*>("addFilm")->click();
    page.findChild<QPushButton*>("start")->click();
    ASSERT_EQ(page.stage(), Stage::Run);
    bench.key(Qt::Key_Space);
    for (int step = 0; step < 10; ++step) {
        bench.pass(page.run()->target().value());
        bench.key(Qt::Key_Return);
    }
    ASSERT_EQ(page.stage(), Stage::Finish);
    auto* take = page.findChild<QCheckBox*>("topUp");
    ASSERT_TRUE(take && take->isVisible());
    EXPECT_FALSE(take->isChecked());
    EXPECT_TRUE(take->text().contains("120\u00a0ml")) << take->text().toStdString();
    QTest::keyClick(take, Qt::Key_Space);
    if (qEnvironmentVariableIsSet("ULLAGE_PICTURES"))
        page.grab().save(qEnvironmentVariable("ULLAGE_PICTURES") + "/finish-top-up.png");
    bench.click("log");
    EXPECT_EQ(page.stage(), Stage::Plan);
    const auto batch = bench.batch(rep);
    EXPECT_NEAR(batch.filmsDone.value(), 2, 1e-9);
    // Room for 30 of 120: 90 poured off first.
    EXPECT_NEAR(batch.volume.value(), 1030, 1e-9);
    EXPECT_NEAR(batch.wear.value(), 2 * 910.0 / 1030, 1e-9);
}

} // namespace
} // namespace ullage::app
