// Tests of a bottle: clearing, strips, looks, silver; what they propose and what they refuse.
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/history_dialog.h"
#include "app/dialogs/strip_form.h"
#include "app/dialogs/test_forms.h"
#include "app/words/cautions.h"
#include "tests/app/dialogs/bottle_dialogs_fixture.h"
#include "tests/app/dialogs/dialog_driver.h"

namespace ullage::app
{

TEST_F(BottleDialogs, clearingTestIsJudgedWhileItIsTyped)
{
    desk.record(fix, ledger::ClearingTested{chemistry::Seconds(60), chemistry::Celsius(20)});
    BottleDialog dialog(tests(fix), desk.door(), bottleOf(desk, fix));
    type(dialog, "Cleared after (m:ss)", "1:10");
    EXPECT_TRUE(dialog.shown()->judgement().contains("under twice"))
        << dialog.shown()->judgement().toStdString();
    type(dialog, "Cleared after (m:ss)", "2:00");
    EXPECT_TRUE(dialog.shown()->judgement().contains("to be discarded"));
    type(dialog, "Temperature of the bath", "10"); // 120 s at 10 °C are 60 s at 20 °C
    EXPECT_TRUE(dialog.shown()->judgement().contains("under twice"));
    type(dialog, "Temperature of the bath", "200");
    expectRefused(dialog, "temperature_c");
    type(dialog, "Temperature of the bath", "20");
    expectDone(dialog);
    EXPECT_EQ(ledger::assess(batch(fix)).verdict, ledger::Verdict::Discard);
}

TEST_F(BottleDialogs, stripTestNeedsSomething)
{
    BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
    auto* result = named<QComboBox>(dialog, "Result");
    result->setCurrentIndex(result->findText("Neither: only noted"));
    expectRefused(dialog, "density");
    type(dialog, "Factor on the time from now on, if any", "11");
    expectRefused(dialog, "factor");
    type(dialog, "Factor on the time from now on, if any", "1.05");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(*batch(dev).stripFactor, 1.05);
}

// Centre 1.214, limits about 1.15 to 1.28.
class StripDialog : public BottleDialogs
{
protected:
    StripDialog()
    {
        for (const double density : {1.21, 1.23, 1.20, 1.22, 1.21}) {
            desk.record(dev, ledger::StripTested{density, {}, true});
            desk.passMinutes(10);
        }
    }
    double factor() { return batch(dev).stripFactor.value_or(1); }
};

TEST_F(StripDialog, proposesAFactorThatOnlyAcceptingTakes)
{
    for (const bool accepted : {false, true}) {
        BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
        dialog.show();
        auto* accept = dialog.findChild<QCheckBox*>("accept");
        EXPECT_FALSE(accept->isVisible());
        type(dialog, "Density, if measured", "1.10");
        ASSERT_TRUE(proposed(dialog));
        EXPECT_NEAR(*proposed(dialog), 1.1, 1e-9); // 1.21 fresh ÷ 1.10
        EXPECT_TRUE(dialog.shown()->judgement().contains("×\u00a01.10"));
        EXPECT_TRUE(accept->isVisible());
        EXPECT_FALSE(accept->isChecked()) << "it is proposed, not taken";
        if (accepted)
            QTest::keyClick(accept, Qt::Key_Space);
        EXPECT_EQ(named<QLineEdit>(dialog, "Factor on the time from now on, if any")->isEnabled(),
                  !accepted);
        expectDone(dialog);
        EXPECT_NEAR(factor(), accepted ? 1.1 : 1, 1e-9);
        desk.passMinutes(10);
    }
    // The next strip was developed with it: what it asks for comes on top.
    BottleDialog next(tests(dev), desk.door(), bottleOf(desk, dev));
    type(next, "Density, if measured", "1.10");
    EXPECT_NEAR(proposed(next).value_or(0), 1.21, 1e-9);
}

TEST_F(StripDialog, takesAcceptanceBackWithTheFigureItWasFor)
{
    BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
    dialog.show();
    type(dialog, "Density, if measured", "1.10");
    auto* accept = dialog.findChild<QCheckBox*>("accept");
    QTest::keyClick(accept, Qt::Key_Space);
    ASSERT_TRUE(accept->isChecked());
    type(dialog, "Density, if measured", "1.05");
    EXPECT_FALSE(accept->isChecked());
    type(dialog, "Density, if measured", "1.22");
    EXPECT_FALSE(proposed(dialog));
    EXPECT_FALSE(accept->isVisible());
    EXPECT_TRUE(dialog.shown()->judgement().contains("stays as it is"));
    type(dialog, "Density, if measured", "0.6");
    EXPECT_FALSE(proposed(dialog)) << "no time makes up for that";
    EXPECT_TRUE(dialog.shown()->judgement().contains("cause"));
    expectDone(dialog);
    EXPECT_EQ(factor(), 1);
}

TEST_F(StripDialog, theLimitsPresetTheResultAndPassingAgainstThemIsSaid)
{
    BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
    auto* result = named<QComboBox>(dialog, "Result");
    type(dialog, "Density, if measured", "1.22");
    EXPECT_EQ(result->currentIndex(), 0);
    type(dialog, "Density, if measured", "0.90");
    EXPECT_EQ(result->currentIndex(), 1) << "beyond the limits it failed";
    EXPECT_TRUE(dialog.shown()->judgement().contains("discarding"));
    result->setCurrentIndex(0);
    EXPECT_TRUE(dialog.shown()->judgement().contains("passed against its limits"))
        << dialog.shown()->judgement().toStdString();
    type(dialog, "Density, if measured", "0.95");
    EXPECT_EQ(result->currentIndex(), 0) << "what somebody chose stays";
    expectDone(dialog);
    EXPECT_FALSE(batch(dev).testFailed());
    const auto record = ledger::stripRecord(desk.session().strips("starter-mq-borax"));
    EXPECT_EQ(ledger::overriddenIn(record, dev).size(), 1u);
}

TEST_F(StripDialog, comparesWithWhatTheUserChooses)
{
    BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
    type(dialog, "Density, if measured", "1.10");
    auto* reference = named<QComboBox>(dialog, "Compared with");
    EXPECT_DOUBLE_EQ(reference->currentData().toDouble(), 1.21) << "the first one read fresh";
    reference->setCurrentIndex(reference->count() - 1); // the mean
    EXPECT_NEAR(proposed(dialog).value_or(0), 1.214 / 1.10, 1e-9);
}

TEST_F(BottleDialogs, stripsNeedOthersBeforeThem)
{
    BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
    type(dialog, "Density, if measured", "1.10");
    EXPECT_FALSE(proposed(dialog));
    EXPECT_TRUE(dialog.shown()->judgement().contains("limits need 5"));
    expectDone(dialog);
}

TEST_F(BottleDialogs, aFailedLookCondemns)
{
    BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
    dialog.setKind(HappeningKind::Look);
    named<QComboBox>(*dialog.shown(), "Result")->setCurrentIndex(1);
    EXPECT_FALSE(dialog.shown()->judgement().isEmpty());
    expectDone(dialog);
    EXPECT_TRUE(batch(dev).testFailed());
}

TEST_F(BottleDialogs, aPrecipitateIsFilteredAndNothingElse)
{
    const auto fail = [&](const QString& what) {
        BottleDialog look(tests(dev), desk.door(), bottleOf(desk, dev));
        look.setKind(HappeningKind::Look);
        named<QComboBox>(*look.shown(), "What was looked at")->setEditText(what);
        named<QComboBox>(*look.shown(), "Result")->setCurrentIndex(1);
        expectDone(look);
        desk.passMinutes(5);
    };
    fail("sediment or flakes");
    EXPECT_TRUE(batch(dev).testFailed());
    BottleDialog filtered(HappeningKind::Filtered, desk.door(), bottleOf(desk, dev));
    expectDone(filtered);
    EXPECT_FALSE(batch(dev).testFailed());
    desk.passMinutes(5);
    fail("smell");
    BottleDialog again(HappeningKind::Filtered, desk.door(), bottleOf(desk, dev));
    expectDone(again);
    EXPECT_TRUE(batch(dev).testFailed()) << "a smell is not filtered out";
}

TEST_F(BottleDialogs, aStopBathIsLookedAtByItsIndicatorFirst)
{
    const auto stop = desk.mix("starter-citric-stop", "starter-glass-500", 500, "Stop 3");
    BottleDialog dialog(tests(stop), desk.door(), bottleOf(desk, stop));
    EXPECT_EQ(named<QComboBox>(dialog, "What was looked at")->currentText(), "its indicator");
    named<QComboBox>(dialog, "Result")->setCurrentIndex(1);
    expectDone(dialog);
    const auto failures = batch(stop).failures;
    ASSERT_EQ(failures.size(), 1u);
    EXPECT_EQ(failures.front(), ledger::LookedAt::Indicator);
}

TEST_F(BottleDialogs, silverThatIsMeasuredReplacesTheCount)
{
    desk.run(fix, 4);
    ASSERT_NEAR(batch(fix).silver.value(), 0.6, 0.01);
    desk.passMinutes(5);
    BottleDialog dialog(HappeningKind::Measured, desk.door(), bottleOf(desk, fix));
    expectRefused(dialog, "silver_g_per_litre");
    type(dialog, "Silver, grams in a litre", "51");
    expectRefused(dialog, "silver_g_per_litre");
    type(dialog, "Silver, grams in a litre", "1.4");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(batch(fix).silver.value(), 1.4);
    const auto events = desk.session().book().events(fix);
    EXPECT_EQ(std::get<ledger::Measured>(events->back().what).method, "test paper");
}

} // namespace ullage::app
