// A developer and a fixer that have stood, and a film to be logged in them.
#pragma once

#include "app/dialogs/run_dialog.h"
#include "tests/app/dialogs/dialog_driver.h"

namespace ullage::app
{

class RunFilm : public testing::Test
{
protected:
    RunFilm()
    {
        desk.pass(-20);
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 14");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 9");
        desk.pass(10);
    }
    ledger::Batch batch(const std::string& id)
    {
        return *desk.session().book().batch(id, desk.now());
    }
    void expectRefused(RunDialog& dialog, const QString& field)
    {
        const QByteArray before = desk.journal();
        dialog.accept();
        EXPECT_TRUE(dialog.isVisible());
        EXPECT_FALSE(dialog.problemOf(field).isEmpty())
            << field.toStdString() << "; general: " << dialog.problemOf("").toStdString();
        EXPECT_EQ(desk.journal(), before);
    }

    Desk desk;
    std::string dev;
    std::string fix;
};

} // namespace ullage::app
