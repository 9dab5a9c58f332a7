// Exchanging two fixing baths: one action over two bottles.
#include "app/dialogs/exchange_dialog.h"
#include "tests/app/dialogs/dialog_driver.h"

#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace ullage::app
{

namespace
{

class Exchanging : public testing::Test
{
protected:
    Exchanging()
    {
        desk.pass(-10);
        first = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
        spare = desk.mix("starter-acid-fixer", "starter-glass-500", 500, "Fix spare");
        second = desk.mix("starter-acid-fixer", "starter-glass-1000", 1000, "Fix 2");
        const auto done = desk.session().doing([&](ledger::Book& book) {
            ledger::FilmRun run{{.films = {{"135-36", 4}}},
                                {{first, {}, {}, false, {}}, {second, {}, {}, false, {}, true}},
                                {}};
            return book.process(run, desk.now());
        });
        EXPECT_TRUE(done);
        desk.pass(5);
    }

    Desk desk;
    std::string first;
    std::string second;
    std::string spare;
};

} // namespace

TEST_F(Exchanging, discardsTheFirstAndNamesTheSecondInOneAction)
{
    ExchangeDialog dialog(desk.door(), bottleOf(desk, first));
    dialog.show();
    auto* other = named<QComboBox>(dialog, "Second bath, that takes its place");
    EXPECT_EQ(other->currentText(), "Fix 2") << "the one that was the second bath";
    EXPECT_LT(other->findText("Fix 1"), 0) << "not itself";
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_EQ(desk.session().bottle(QString::fromStdString(first)), nullptr);
    const auto events = desk.session().book().events(second);
    ASSERT_TRUE(events);
    EXPECT_TRUE(std::holds_alternative<ledger::Noted>(events->back().what));
    EXPECT_EQ(desk.session().book().undoable()->what, "exchange-baths");
    ASSERT_TRUE(desk.session().undo());
    EXPECT_NE(desk.session().bottle(QString::fromStdString(first)), nullptr);
    EXPECT_NE(desk.session().book().undoable()->what, "exchange-baths") << "undone as one";
}

TEST_F(Exchanging, refusesWithoutASecondBathOrAWayToDispose)
{
    const QByteArray before = desk.journal();
    {
        ExchangeDialog dialog(desk.door(), bottleOf(desk, first));
        dialog.show();
        named<QComboBox>(dialog, "How")->setEditText(" ");
        dialog.accept();
        EXPECT_TRUE(dialog.isVisible());
        EXPECT_FALSE(dialog.problemOf("how").isEmpty());
    }
    EXPECT_EQ(desk.journal(), before);
    desk.record(second, ledger::Discarded{"collected"});
    desk.record(spare, ledger::Discarded{"collected"});
    desk.passMinutes(5);
    ExchangeDialog dialog(desk.door(), bottleOf(desk, first));
    dialog.show();
    EXPECT_FALSE(dialog.deedButton()->isEnabled()) << "not offered where there is none";
    EXPECT_TRUE(dialog.deedButton()->toolTip().contains("Mix one"));
    const auto labels = dialog.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text().contains("Mix one first");
    })) << "said before anybody tries";
    EXPECT_FALSE(named<QComboBox>(dialog, "Second bath, that takes its place")->isVisible());
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_NE(desk.session().bottle(QString::fromStdString(first)), nullptr);
}

} // namespace ullage::app
