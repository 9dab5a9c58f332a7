// What a run asks for besides: topping up a replenished bath.
#include "app/dialogs/base_times_edit.h"
#include "app/dialogs/run_dialog.h"
#include "app/widgets/films_edit.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/dialogs/run_film_fixture.h"
#include "tests/app/scripted_prompts.h"

namespace ullage::app
{

// A developer that is topped up, with a second bottle of it to take from.
class RunAndTopUp : public RunFilm
{
protected:
    RunAndTopUp()
    {
        auto solution = *desk.session().formulary().solution("starter-mq-borax");
        solution.id = "topped-up";
        solution.capacity = chemistry::FilmsPerLitre(20);
        solution.replenishPerFilm = chemistry::Millilitres(75);
        EXPECT_TRUE(desk.session().doing([&](ledger::Book& book) { return book.add(solution); }));
        rep = desk.mix("topped-up", "starter-glass-1000-b", 1000, "Dev 15");
        source = desk.mix("topped-up", "starter-hdpe-1000", 500, "Stock 1");
    }
    std::string rep;
    std::string source;
};

TEST_F(RunAndTopUp, offersWhatTheRunAsksForAndLogsItWithTheRun)
{
    const Bottle first = bottleOf(desk, rep);
    RunDialog dialog(desk.door(), &first);
    dialog.show();
    auto* take = dialog.findChild<QCheckBox*>("topUp");
    ASSERT_TRUE(take);
    EXPECT_TRUE(take->isVisible());
    EXPECT_FALSE(take->isChecked());
    EXPECT_TRUE(take->text().contains("75\u00a0ml"));
    dialog.findChild<FilmsEdit*>()->setFilms({{"135-36", 1, {}, {}, {}}, {"120", 1, {}, {}, {}}});
    EXPECT_TRUE(take->text().contains("150\u00a0ml")) << take->text().toStdString();
    QTest::keyClick(take, Qt::Key_Space);
    auto* from = dialog.findChild<QComboBox*>("topUpFrom");
    ASSERT_EQ(from->count(), 2);
    from->setCurrentIndex(1);
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_NEAR(batch(rep).volume.value(), batch(rep).vessel->capacity.value(), 1e-6);
    EXPECT_NEAR(batch(source).volume.value(), 350, 1e-9);
    EXPECT_LT(batch(rep).wear.value(), 2);
    EXPECT_NEAR(batch(rep).filmsDone.value(), 2, 1e-9);
    ASSERT_TRUE(desk.session().undo()); // one step takes back run and top-up
    EXPECT_NEAR(batch(rep).volume.value(), 1000, 1e-9);
    EXPECT_EQ(batch(rep).wear.value(), 0);
    EXPECT_NEAR(batch(source).volume.value(), 500, 1e-9);
}

TEST_F(RunAndTopUp, aReplenisherKeptInABottleIsDrawnFromThat)
{
    const auto run = desk.mix("starter-mq-borax-replenished", "starter-pp-1000", 1000, "Dev 16");
    const auto own = desk.mix("starter-mq-borax-replenisher", "starter-ldpe-1000", 900, "Rep 1");
    const Bottle first = bottleOf(desk, run);
    RunDialog dialog(desk.door(), &first);
    dialog.show();
    auto* take = dialog.findChild<QCheckBox*>("topUp");
    ASSERT_TRUE(take && take->isVisible());
    auto* from = dialog.findChild<QComboBox*>("topUpFrom");
    EXPECT_EQ(from->currentText(), "Rep 1");
    QTest::keyClick(take, Qt::Key_Space);
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_NEAR(batch(own).volume.value(), 870, 1e-9);
    EXPECT_NEAR(batch(run).wear.value(), 0, 1e-9) << "the film is made up for";
    EXPECT_NEAR(batch(run).replenished.value(), 30, 1e-9);
}

TEST_F(RunAndTopUp, isSilentForOthersAndLeavesItAloneWhenNotTicked)
{
    const Bottle other = bottleOf(desk, dev);
    RunDialog plain(desk.door(), &other);
    plain.show();
    const auto* hidden = plain.findChild<QCheckBox*>("topUp");
    EXPECT_TRUE(!hidden || !hidden->isVisible());
    const Bottle first = bottleOf(desk, rep);
    RunDialog dialog(desk.door(), &first);
    dialog.show();
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible());
    EXPECT_NEAR(batch(rep).wear.value(), 1, 1e-9);
}

} // namespace ullage::app
