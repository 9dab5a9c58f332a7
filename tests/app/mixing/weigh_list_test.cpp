#include "app/mixing/weigh_list.h"

#include "app/mixing/dissolve_step.h"
#include "app/words/units.h"
#include "tests/app/words/sample_batches.h"

#include <QCheckBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace ullage::app
{

using sample::english;

namespace
{

// Of metol there is enough, of borax too little, and sulfite stands nowhere.
cupboard::WeighOut outWith(double grams, bool keepsChemicals = true)
{
    cupboard::WeighOut out;
    out.keepsChemicals = keepsChemicals;
    out.parts.push_back({.part = {"metol", "", 2}, .kept = true, .here = 50, .takes = {{"m", 2}}});
    out.parts.push_back({.part = {"sodium-sulfite", "anhydrous", grams}, .lacks = grams});
    out.parts.push_back({.part = {"borax", "decahydrate", 2},
                         .kept = true,
                         .here = 0.5,
                         .lacks = 1.5,
                         .takes = {{"b", 0.5}}});
    return out;
}

} // namespace

TEST(WeighList, hasABoxForEachChemicalInItsOrder)
{
    WeighList list;
    EXPECT_TRUE(list.isHidden()) << "nothing is weighed from a packet";
    list.setOut(outWith(100), english().locale);
    EXPECT_FALSE(list.isHidden());
    ASSERT_EQ(list.count(), 3);
    EXPECT_EQ(list.box(0)->accessibleName(), "1. metol: 2 g");
    EXPECT_EQ(list.box(1)->text(), "2. sodium sulfite, anhydrous: 100 g");
    EXPECT_EQ(list.note(0), "in the cupboard: 50 g");
    EXPECT_EQ(list.note(1), "100 g too little in the cupboard");
    EXPECT_EQ(list.note(2), "1.5 g too little in the cupboard");
    list.setOut(outWith(100, false), english().locale);
    EXPECT_EQ(list.note(1), QString()) << "the cupboard is not kept for chemicals";
    list.setOut({}, english().locale);
    EXPECT_TRUE(list.isHidden());
}

TEST(WeighList, ticksStayWhileTheSameIsWeighed)
{
    WeighList list;
    list.setOut(outWith(100), english().locale);
    list.show();
    QTest::mouseClick(list.box(1), Qt::LeftButton, {}, QPoint(8, list.box(1)->height() / 2));
    EXPECT_EQ(list.ticked(), 1);
    list.setOut(outWith(100, false), sample::english().locale);
    EXPECT_EQ(list.ticked(), 1) << "somebody counted a jar meanwhile";
    list.setOut(outWith(50), english().locale);
    EXPECT_EQ(list.ticked(), 0) << "another volume is weighed anew";
}

TEST(WeighList, theSheetCanBeAskedFor)
{
    WeighList list;
    list.setOut(outWith(100), english().locale);
    QSignalSpy wanted(&list, &WeighList::sheetWanted);
    list.sheetButton()->click();
    EXPECT_EQ(wanted.count(), 1);
}

TEST(DissolveStep, whatWasPouredIsAllTicked)
{
    DissolveStep step([] { return sample::day(0); });
    step.setWeighOut(outWith(100), english().locale);
    step.list()->box(0)->setChecked(true);
    step.pour();
    EXPECT_EQ(step.list()->ticked(), 3);
    EXPECT_FALSE(step.list()->box(0)->isEnabled()) << "what is in is not taken out again";
    step.reset();
    EXPECT_EQ(step.list()->ticked(), 0);
    EXPECT_TRUE(step.list()->box(0)->isEnabled());
}

} // namespace ullage::app
