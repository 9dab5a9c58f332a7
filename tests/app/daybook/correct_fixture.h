// A developer and a fixer mixed thirty days ago, and corrections of what happened to them as a
// person makes them: from the entry in the Day book.
#pragma once

#include "app/daybook/correct_dialog.h"
#include "tests/app/daybook/day_driver.h"

namespace ullage::app
{

class CorrectFixture : public testing::Test
{
protected:
    CorrectFixture()
    {
        desk.pass(-30);
        mixed = desk.now();
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
        desk.pass(10);
    }

    // Through both, its films without lines of their own.
    void run(double films)
    {
        const auto done = desk.session().doing([&](ledger::Book& book) {
            return book.process({.load = {.films = {{"120", films}}},
                                 .baths = {{dev, {}, {}, false, {}}, {fix, {}, {}, false, {}}}},
                                desk.now());
        });
        ASSERT_TRUE(done);
    }
    ledger::Batch batch(const std::string& id)
    {
        const auto found = desk.session().book().batch(id, desk.now());
        EXPECT_TRUE(found);
        return found ? *found : ledger::Batch();
    }
    // The dialog of the entry that is shown so.
    template <class Dialog = CorrectDialog>
    Dialog* correcting(PageOn& on, const QString& title)
    {
        on.choose(title);
        on.page.correct();
        return on.dialog<Dialog>();
    }
    static QString follows(const DeedDialog& dialog) { return dialog.consequences().join('|'); }
    // A refusal that can be understood: no id stands in it.
    static void expectSaid(const QString& problem, const QString& about)
    {
        EXPECT_TRUE(problem.contains(about)) << problem.toStdString();
        EXPECT_FALSE(problem.contains("id-")) << problem.toStdString();
        EXPECT_FALSE(problem.contains("would-")) << problem.toStdString();
    }

    Desk desk;
    chemistry::Instant mixed;
    std::string dev;
    std::string fix;
};

} // namespace ullage::app
