#include "app/mixing/formula_table.h"

#include "tests/app/words/sample_batches.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>

#include <algorithm>

namespace ullage::app
{

namespace
{

bool isSeenIn(const FormulaTable& table, const QString& words)
{
    const auto labels = table.findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
        return label->isVisible() && label->text() == words &&
               table.rect().contains(QRect(label->mapTo(&table, QPoint()), label->size()));
    });
}

} // namespace

// As narrow as a step in a window of 1024 by 700: the weights were out of sight there.
TEST(FormulaTable, formsStandBelowTheirSaltWhereThereIsNoRoomBeside)
{
    QWidget step; // a window would not be narrower than its layout
    step.resize(800, 400);
    FormulaTable table(sample::english(), &step);
    table.setFormula(
        {chemistry::Millilitres(1000), {{"metol", "", 2}, {"sodium-sulfite", "anhydrous", 100}}});
    constexpr int kNarrow = 300;
    EXPECT_LE(table.minimumSizeHint().width(), kNarrow);
    table.resize(700, 300);
    step.show();
    QApplication::processEvents();
    EXPECT_EQ(table.atHand(1)->y(), table.inFormula(1)->y());
    EXPECT_TRUE(isSeenIn(table, "100 g"));
    table.resize(kNarrow, 300);
    QApplication::processEvents();
    EXPECT_GT(table.atHand(1)->y(), table.inFormula(1)->y());
    for (const char* words :
         {"metol", "2 g", "sodium sulfite", "100 g", "The formula means", "At hand"})
        EXPECT_TRUE(isSeenIn(table, words)) << words;
    EXPECT_LE(table.atHand(1)->geometry().right(), kNarrow);
    table.atHand(1)->setCurrentText("heptahydrate");
    EXPECT_EQ(table.weighed(1), "200 g");
    table.resize(700, 300);
    QApplication::processEvents();
    EXPECT_EQ(table.atHand(1)->y(), table.inFormula(1)->y());
    EXPECT_EQ(table.atHand(1)->currentText(), "heptahydrate");
}

} // namespace ullage::app
