// Every dialog on one bottle: what it enters, and that what it refuses leaves the book as it was.
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/history_dialog.h"
#include "app/dialogs/strip_form.h"
#include "app/dialogs/test_forms.h"
#include "app/widgets/caution_box.h"
#include "app/words/cautions.h"
#include "tests/app/dialogs/bottle_dialogs_fixture.h"
#include "tests/app/dialogs/dialog_driver.h"

#include <QFile>
#include <QLabel>
#include <QPlainTextEdit>
#include <QTreeWidget>

namespace ullage::app
{

TEST_F(BottleDialogs, eachDeedCarriesItsCautions)
{
    const auto said = [this](HappeningKind kind, const std::string& id) {
        BottleDialog dialog(kind, desk.door(), bottleOf(desk, id));
        dialog.show();
        QString text;
        for (const auto* box : dialog.findChildren<CautionBox*>()) {
            for (const auto* label : box->findChildren<QLabel*>())
                text += box->isVisible() ? label->text() + u'\n' : QString();
        }
        return text;
    };
    for (const std::string& id : {dev, fix}) {
        const QString away = said(HappeningKind::Discard, id);
        EXPECT_TRUE(away.contains(Cautions::oneCanEach()));
        EXPECT_EQ(away.count(Cautions::packetFirst()), 1);
        const QString look = said(HappeningKind::Look, id);
        EXPECT_TRUE(look.contains(Cautions::fanTowards()));
        const QString moved = said(HappeningKind::Move, id);
        EXPECT_TRUE(moved.contains(Cautions::inertGas()));
        EXPECT_TRUE(moved.contains(Cautions::foodBottles()));
        EXPECT_TRUE(moved.contains(Cautions::glovesAndEyes()));
        EXPECT_TRUE(moved.contains(Cautions::eyes()));
        EXPECT_TRUE(said(HappeningKind::TopUp, id).contains(Cautions::eyes()));
        const QString filtered = said(HappeningKind::Filtered, id);
        EXPECT_TRUE(filtered.contains(Cautions::glovesAndEyes()));
        EXPECT_TRUE(filtered.contains(Cautions::kitchenTools()));
    }
    EXPECT_TRUE(said(HappeningKind::ClearingTest, fix).contains(Cautions::noEating()));
    EXPECT_TRUE(said(HappeningKind::Measured, fix).contains(Cautions::glovesAndEyes()));
    EXPECT_TRUE(said(HappeningKind::StripTest, dev).contains(Cautions::developerOnSkin()));
}

TEST_F(BottleDialogs, topUp)
{
    BottleDialog dialog(HappeningKind::TopUp, desk.door(), bottleOf(desk, dev));
    expectRefused(dialog, "volume_ml"); // nothing typed
    type(dialog, "Volume added", "131");
    expectRefused(dialog, "volume_ml"); // 130 fit
    EXPECT_TRUE(dialog.problemOf("volume_ml").contains("131")) << "names the value";
    EXPECT_TRUE(dialog.problemOf("volume_ml").contains("130")) << "names what is allowed";
    type(dialog, "Volume added", "100");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 1000);
}

TEST_F(BottleDialogs, topUpFromAnotherBottleDrawsThatOne)
{
    const auto spare = desk.mix("starter-mq-borax", "starter-glass-500", 500, "Dev 15");
    BottleDialog dialog(HappeningKind::TopUp, desk.door(), bottleOf(desk, dev));
    auto* from = named<QComboBox>(dialog, "From");
    from->setCurrentIndex(from->findText("Dev 15"));
    type(dialog, "Volume added", "100 ml");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(batch(spare).volume.value(), 400);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_DOUBLE_EQ(batch(spare).volume.value(), 500);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 900);
}

TEST_F(BottleDialogs, topUpOffersTheOtherBottlesOfItsKindOnly)
{
    desk.mix("starter-mq-borax-1-1", "starter-glass-500", 500, "Dev thin");
    desk.mix("starter-mq-borax", "starter-glass-1000-b", 500, "Dev 15");
    BottleDialog dialog(HappeningKind::TopUp, desk.door(), bottleOf(desk, dev));
    auto* from = named<QComboBox>(dialog, "From");
    ASSERT_EQ(from->count(), 3) << "freshly mixed and two developers; no fixer, not itself";
    EXPECT_EQ(from->itemText(0), "Freshly mixed");
    EXPECT_EQ(from->itemText(1), "Dev 15") << "the same solution first";
    EXPECT_TRUE(from->itemText(2).startsWith("Dev thin · "));
    from->setCurrentIndex(2);
    type(dialog, "Volume added", "50");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 950);
}

TEST_F(BottleDialogs, topUpTakesTheReplenisherThatTheSolutionNames)
{
    auto topped = *desk.session().formulary().solution("starter-mq-borax");
    auto replenisher = topped;
    replenisher.id = "replenisher";
    replenisher.name = "Borax replenisher";
    topped.id = "topped";
    topped.name = "Topped up";
    topped.replenishPerFilm = chemistry::Millilitres(50);
    topped.replenisher = replenisher.id;
    for (const auto& solution : {replenisher, topped})
        ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) { return book.add(solution); }));
    const auto pot = desk.mix("topped", "starter-glass-2000", 1000, "Dev pot");
    desk.run(pot, 4);
    BottleDialog dialog(HappeningKind::TopUp, desk.door(), bottleOf(desk, pot));
    auto* from = named<QComboBox>(dialog, "From");
    EXPECT_EQ(from->currentText(), "Replenisher: Borax replenisher") << "that is what it is for";
    EXPECT_EQ(named<QuantityEdit>(dialog, "Volume added")->value(), 200) << "four films of 50 ml";
    type(dialog, "Volume added", "100");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(batch(pot).replenished.value(), 100);
    EXPECT_NEAR(batch(pot).wear.value(), 2 / 1.1, 1e-9) << "100 ml take two films away";
    const auto full = desk.mix("topped", "starter-glass-1000-b", 1030, "Dev full");
    desk.run(full, 2);
    BottleDialog none(HappeningKind::TopUp, desk.door(), bottleOf(desk, full));
    EXPECT_TRUE(named<QuantityEdit>(none, "Volume added")->text().isEmpty())
        << "where there is no room nothing is proposed, rather than 0";
}

TEST_F(BottleDialogs, drawOff)
{
    BottleDialog dialog(HappeningKind::DrawOff, desk.door(), bottleOf(desk, dev));
    for (const char* bad : {"", "abc", "-5", "901", "nan", "1e9", "1,500"}) {
        type(dialog, "Volume taken out", bad);
        expectRefused(dialog, "volume_ml");
    }
    type(dialog, "Volume taken out", "50");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 850);
}

// The shelf says 8¼ films; what would be left is said in the same words.
TEST_F(BottleDialogs, whatIsLeftIsSaidAsOnTheShelf)
{
    BottleDialog dialog(HappeningKind::DrawOff, desk.door(), bottleOf(desk, dev));
    type(dialog, "Volume taken out", "70"); // 8.3 films of 10 a litre
    QTest::qWait(250);
    EXPECT_TRUE(dialog.consequences().contains("Films left: 9 films → 8¼ films"))
        << dialog.consequences().join('|').toStdString();
}

TEST_F(BottleDialogs, moveRefusesABottleTooSmall)
{
    BottleDialog dialog(HappeningKind::Move, desk.door(), bottleOf(desk, dev));
    auto* vessel = named<QComboBox>(dialog, "Into which bottle");
    vessel->setCurrentIndex(vessel->findData("starter-glass-500"));
    expectRefused(dialog, "vessel");
    vessel->setCurrentIndex(vessel->findData("starter-glass-1000-b"));
    expectDone(dialog);
    EXPECT_EQ(batch(dev).vessel->id, "starter-glass-1000-b");
}

TEST_F(BottleDialogs, anyOfThemCanBeDatedBackButNotBeyondReason)
{
    BottleDialog dialog(HappeningKind::Note, desk.door(), bottleOf(desk, dev));
    named<QPlainTextEdit>(dialog, "Note")->setPlainText("smells of nothing");
    setMoment(dialog, desk.now() - std::chrono::hours(24 * 40));
    expectRefused(dialog, "at");
    EXPECT_TRUE(dialog.problemOf("at").contains("Dev 14 was mixed"));
    setMoment(dialog, desk.now() + std::chrono::hours(2));
    expectRefused(dialog, "at");
    const auto then = desk.now() - std::chrono::hours(24 * 3);
    setMoment(dialog, then);
    expectDone(dialog);
    const auto events = desk.session().book().events(dev);
    ASSERT_TRUE(events);
    EXPECT_EQ(events->back().at, then);
    EXPECT_EQ(std::get<ledger::Noted>(events->back().what).text, "smells of nothing");
}

TEST_F(BottleDialogs, aDeedWithinTheMinuteOfMixingIsAtMixing)
{
    desk.passMinutes(1);
    const auto late = desk.now() + std::chrono::seconds(0);
    WhenEdit moment([&] { return late + std::chrono::hours(1); }, QLocale());
    const auto mixed = late + std::chrono::seconds(42);
    moment.setEarliest(mixed, "Dev was mixed");
    moment.setMoment(late);
    EXPECT_EQ(moment.moment(), mixed);
    EXPECT_TRUE(moment.problem().isEmpty());
}

TEST_F(BottleDialogs, emptyNoteIsRefused)
{
    BottleDialog dialog(HappeningKind::Note, desk.door(), bottleOf(desk, dev));
    named<QPlainTextEdit>(dialog, "Note")->setPlainText("  \n ");
    expectRefused(dialog, "text");
}

TEST_F(BottleDialogs, aBookThatCanOnlyBeReadIsSaidFromTheStartAndStaysSaid)
{
    ASSERT_TRUE(QFile::rename(desk.bookPath(), desk.bookPath() + ".away"));
    (void)desk.session().doing(
        [](ledger::Book&) -> Result<void> { return refuse({.code = ErrorCode::Cancelled}); });
    ASSERT_TRUE(desk.session().readOnly());
    BottleDialog dialog(tests(dev), desk.door(), bottleOf(desk, dev));
    EXPECT_FALSE(dialog.refusal().isEmpty());
    dialog.setKind(HappeningKind::Look);
    EXPECT_FALSE(dialog.refusal().isEmpty());
    EXPECT_FALSE(dialog.deedButton()->isEnabled());
    ASSERT_TRUE(QFile::rename(desk.bookPath() + ".away", desk.bookPath()));
}

TEST_F(BottleDialogs, storingOpeningAndStandingOpen)
{
    BottleDialog stored(HappeningKind::StoredAt, desk.door(), bottleOf(desk, dev));
    type(stored, "Temperature there", "46");
    expectRefused(stored, "temperature_c");
    type(stored, "Temperature there", "8 °C");
    expectDone(stored);
    EXPECT_DOUBLE_EQ(batch(dev).temperature.value(), 8);

    BottleDialog stood(HappeningKind::StoodOpen, desk.door(), bottleOf(desk, dev));
    type(stood, "Hours open", "2");
    expectRefused(stood, "area_cm2");
    type(stood, "Surface", "516");
    expectDone(stood);
    EXPECT_GT(batch(dev).standing.taken.openVessel.value(), 0);

    const int openings = batch(dev).openings;
    BottleDialog opened(HappeningKind::Opened, desk.door(), bottleOf(desk, dev));
    type(opened, "Air left in the bottle, if you know", "30");
    expectDone(opened);
    EXPECT_EQ(batch(dev).openings, openings + 1);
    EXPECT_NEAR(batch(dev).standing.air.volume.value(), 30, 1e-9);
}

// Said where it is entered, and not only on the card once it is done.
TEST_F(BottleDialogs, storingTooColdOrTooWarmIsWarnedOfAsItIsTyped)
{
    const auto warning = [this](const std::string& id, const QString& degrees) {
        BottleDialog dialog(HappeningKind::StoredAt, desk.door(), bottleOf(desk, id));
        dialog.show();
        const auto* said = dialog.findChild<QLabel*>(QStringLiteral("storeWarning"));
        EXPECT_FALSE(said->isVisible()) << "nothing is typed yet";
        type(dialog, "Temperature there", degrees);
        EXPECT_EQ(said->isVisible(), !said->text().isEmpty());
        return said->text();
    };
    EXPECT_TRUE(warning(dev, "4 °C").contains(QStringLiteral("too cold")));
    EXPECT_TRUE(warning(dev, "4 °C").contains(QStringLiteral("80")));
    EXPECT_TRUE(warning(fix, "4 °C").contains(QStringLiteral("too cold")));
    EXPECT_TRUE(warning(fix, "30 °C").contains(QStringLiteral("too warm")));
    EXPECT_TRUE(warning(dev, "30 °C").isEmpty()) << "its model says what warmth does to it";
    EXPECT_TRUE(warning(dev, "18 °C").isEmpty());
}

TEST_F(BottleDialogs, marks)
{
    BottleDialog dissolved(HappeningKind::Dissolved, desk.door(), bottleOf(desk, dev));
    expectDone(dissolved);
    EXPECT_TRUE(batch(dev).dissolved);
    BottleDialog contaminated(HappeningKind::Contaminated, desk.door(), bottleOf(desk, dev));
    expectDone(contaminated);
    EXPECT_TRUE(batch(dev).contaminated);
}

TEST_F(BottleDialogs, discardAsksHowAndCanBeUndone)
{
    BottleDialog dialog(HappeningKind::Discard, desk.door(), bottleOf(desk, fix));
    auto* how = named<QComboBox>(dialog, "How");
    EXPECT_EQ(how->currentText(), "collected for silver recovery");
    how->setEditText(" ");
    expectRefused(dialog, "how");
    how->setEditText("collected");
    expectDone(dialog);
    EXPECT_EQ(desk.session().bottle(QString::fromStdString(fix)), nullptr);
    ASSERT_TRUE(desk.session().undo());
    EXPECT_NE(desk.session().bottle(QString::fromStdString(fix)), nullptr);
}

TEST_F(BottleDialogs, aBottleThatEndedMeanwhileIsRefused)
{
    BottleDialog dialog(HappeningKind::DrawOff, desk.door(), bottleOf(desk, dev));
    desk.record(dev, ledger::Discarded{"by another window"});
    desk.passMinutes(1);
    type(dialog, "Volume taken out", "50");
    expectRefused(dialog, "at");
}

TEST_F(BottleDialogs, historyTakesBackWithAReason)
{
    desk.run(dev, 3);
    HistoryDialog dialog(desk.door(), bottleOf(desk, dev));
    auto* events = named<QTreeWidget>(dialog, "Entries, newest first");
    ASSERT_EQ(events->topLevelItemCount(), 3); // mixed, dissolved, run
    EXPECT_TRUE(events->topLevelItem(0)->text(1).contains("135-36"));
    expectRefused(dialog, "why");
    type(dialog, "Why the chosen entry is taken back", "counted twice");
    expectDone(dialog);
    EXPECT_DOUBLE_EQ(batch(dev).filmsDone.value(), 0);

    HistoryDialog again(desk.door(), bottleOf(desk, dev));
    type(again, "Why the chosen entry is taken back", "once more");
    expectRefused(again, "voids"); // it is taken back already
}

TEST_F(BottleDialogs, historySaysWhatFollowsFromTakingBack)
{
    desk.run(dev, 3);
    HistoryDialog dialog(desk.door(), bottleOf(desk, dev));
    EXPECT_TRUE(dialog.consequences().contains("Films left: 6 films → 9 films"))
        << dialog.consequences().join('|').toStdString();
    auto* events = named<QTreeWidget>(dialog, "Entries, newest first");
    events->setCurrentItem(events->topLevelItem(2)); // the mixing, that the run needs
    QTest::qWait(250);
    EXPECT_FALSE(dialog.consequences().join('|').contains("Films left"));
}

TEST_F(BottleDialogs, theMixingUnderLaterEntriesCannotBeTakenBack)
{
    desk.run(dev, 1);
    HistoryDialog dialog(desk.door(), bottleOf(desk, dev));
    auto* events = named<QTreeWidget>(dialog, "Entries, newest first");
    events->setCurrentItem(events->topLevelItem(2));
    ASSERT_TRUE(events->currentItem()->text(1).startsWith("Mixed"));
    type(dialog, "Why the chosen entry is taken back", "never mixed");
    expectRefused(dialog, "voids");
}

TEST_F(BottleDialogs, germanNumbersAndOunces)
{
    desk.preferences().setLanguage(QStringLiteral("de"));
    BottleDialog german(HappeningKind::DrawOff, desk.door(), bottleOf(desk, dev));
    type(german, "Volume taken out", "50,5");
    expectDone(german);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 849.5);

    desk.preferences().setLanguage(QStringLiteral("en"));
    desk.preferences().setUnits({VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit});
    BottleDialog ounces(HappeningKind::DrawOff, desk.door(), bottleOf(desk, dev));
    type(ounces, "Volume taken out", "1");
    expectDone(ounces);
    EXPECT_NEAR(batch(dev).volume.value(), 849.5 - kMillilitresPerFluidOunce, 1e-9);
}

} // namespace ullage::app
