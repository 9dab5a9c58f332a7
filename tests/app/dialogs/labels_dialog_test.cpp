#include "app/dialogs/labels_dialog.h"

#include "app/dialogs/label_preview.h"
#include "app/widgets/count_box.h"
#include "app/widgets/theme.h"
#include "tests/app/desk.h"
#include "tests/app/light_of.h"
#include "tests/app/scripted_prompts.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QListWidget>
#include <QPushButton>

namespace ullage::app
{

namespace
{

class LabelsDialogTest : public ::testing::Test
{
protected:
    LabelsDialogTest()
    {
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    }
    void choose(LabelsDialog& dialog, const QString& sheet)
    {
        const int index = dialog.sheet()->findData(sheet);
        ASSERT_GE(index, 0);
        dialog.sheet()->setCurrentIndex(index);
    }

    Desk desk;
    std::string dev;
    std::string fix;
};

} // namespace

TEST_F(LabelsDialogTest, theBottlesItWasOpenedForAreChosenOrAllOfThem)
{
    LabelsDialog one(desk.door(), {fix});
    ASSERT_TRUE(one.job());
    ASSERT_EQ(one.job()->faces.size(), 1U);
    EXPECT_EQ(one.job()->faces[0].code.text.section('\n', 0, 0).toStdString(), fix);
    LabelsDialog all(desk.door(), {});
    ASSERT_TRUE(all.job());
    EXPECT_EQ(all.job()->faces.size(), 2U);
    LabelsDialog both(desk.door(), {fix, dev});
    ASSERT_TRUE(both.job());
    EXPECT_EQ(both.job()->faces.size(), 2U) << "of a set";
    all.bottles()->item(0)->setCheckState(Qt::Unchecked);
    ASSERT_TRUE(all.job());
    EXPECT_EQ(all.job()->faces.size(), 1U);
}

TEST_F(LabelsDialogTest, aLabelThatIsTooSmallIsNotProposed)
{
    EXPECT_EQ(LabelsDialog(desk.door(), {fix}).sheet()->currentData(), QStringLiteral("70x36"));
    const auto wordy =
        desk.mix("starter-mq-borax", "starter-hdpe-1000", 1000, "Developer of the Tuesday course");
    LabelsDialog dialog(desk.door(), {wordy});
    EXPECT_NE(dialog.sheet()->currentData(), QStringLiteral("70x36"));
    EXPECT_TRUE(dialog.job()) << dialog.problem().toStdString();
    choose(dialog, QStringLiteral("70x36"));
    EXPECT_FALSE(dialog.job()) << "and where it is chosen it is refused";
}

TEST_F(LabelsDialogTest, itsPaperIsRedAndDimWhileTheScreenIsRed)
{
    LabelsDialog dialog(desk.door(), {dev});
    dialog.show();
    auto* preview = dialog.findChild<LabelPreview*>();
    ASSERT_NE(preview, nullptr);
    EXPECT_EQ(lightOf(*preview).others, 255) << "white, as it will be printed";
    Theme::instance().setDarkRoom(true);
    const Light light = lightOf(*preview);
    Theme::instance().setDarkRoom(false);
    EXPECT_EQ(light.others, 0);
    EXPECT_LT(light.red, 100);
    EXPECT_GT(light.red, 40) << "and can be read";
    EXPECT_EQ(lightOf(*preview).others, 255);
}

TEST_F(LabelsDialogTest, withoutABottleItSaysWhyNothingCanBePrinted)
{
    LabelsDialog dialog(desk.door(), {dev});
    dialog.bottles()->item(0)->setCheckState(Qt::Unchecked);
    EXPECT_FALSE(dialog.job());
    EXPECT_FALSE(dialog.problem().isEmpty());
    EXPECT_FALSE(dialog.printButton()->isEnabled());
    EXPECT_FALSE(dialog.saveButton()->isEnabled());
}

TEST_F(LabelsDialogTest, theFirstFreeLabelIsAskedOfASheetAndMustBeOnIt)
{
    LabelsDialog dialog(desk.door(), {});
    EXPECT_FALSE(dialog.first()->isVisibleTo(&dialog));
    choose(dialog, "a4-70x36");
    EXPECT_TRUE(dialog.first()->isVisibleTo(&dialog));
    dialog.first()->setValue(24);
    ASSERT_TRUE(dialog.job());
    EXPECT_EQ(dialog.job()->firstFree, 23);
    EXPECT_EQ(sheetsOf(*dialog.job()), 2);
    choose(dialog, "a4-105x74"); // of eight
    EXPECT_FALSE(dialog.job());
    EXPECT_TRUE(dialog.problem().contains("8")) << dialog.problem().toStdString();
    dialog.first()->setValue(8);
    EXPECT_TRUE(dialog.job());
    dialog.outlines()->setChecked(true);
    EXPECT_TRUE(dialog.job()->outlines);
}

TEST_F(LabelsDialogTest, thePdfIsSavedWithItsEndingAndNeverOverTheBook)
{
    LabelsDialog dialog(desk.door(), {});
    ScriptedPrompts prompts;
    const PromptsInForce inForce(prompts);
    prompts.answer(desk.file("mine"));
    prompts.answer(desk.bookPath());
    dialog.saveButton()->click();
    QFile pdf(desk.file("mine.pdf"));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
    const QByteArray before = desk.journal();
    dialog.saveButton()->click();
    EXPECT_EQ(prompts.asked().size(), 3); // twice where to, once why not
    EXPECT_EQ(desk.journal(), before);
}

} // namespace ullage::app
