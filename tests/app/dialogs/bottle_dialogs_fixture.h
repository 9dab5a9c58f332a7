// A developer and a fixer in the middle of their lives, and a dialog that is refused or done.
#pragma once

#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/strip_form.h"
#include "app/words/cautions.h"
#include "tests/app/dialogs/dialog_driver.h"

namespace ullage::app
{

class BottleDialogs : public testing::Test
{
protected:
    BottleDialogs()
    {
        desk.pass(-30);
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 900, "Dev 14");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 9");
        desk.pass(20);
    }

    ledger::Batch batch(const std::string& id)
    {
        return *desk.session().book().batch(id, desk.now());
    }
    std::vector<HappeningKind> tests(const std::string& id)
    {
        return testsOf(batch(id).solution->role);
    }
    static std::optional<double> proposed(const BottleDialog& dialog)
    {
        return dialog.findChild<StripForm*>()->proposedFactor();
    }
    void expectRefused(DeedDialog& dialog, const QString& field)
    {
        const QByteArray before = desk.journal();
        dialog.show();
        dialog.accept();
        EXPECT_TRUE(dialog.isVisible());
        EXPECT_EQ(dialog.result(), 0);
        EXPECT_FALSE(dialog.problemOf(field).isEmpty())
            << field.toStdString() << "; general: " << dialog.problemOf("").toStdString();
        EXPECT_EQ(desk.journal(), before);
    }
    void expectDone(DeedDialog& dialog)
    {
        dialog.show();
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible())
            << dialog.problemOf("").toStdString() << dialog.problemOf("at").toStdString();
    }

    Desk desk;
    std::string dev;
    std::string fix;
};

} // namespace ullage::app
