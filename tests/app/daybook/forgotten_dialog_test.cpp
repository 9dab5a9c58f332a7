// A forgotten entry: what is told to follow is what is true once it is entered.
#include "tests/app/daybook/day_driver.h"

#include "app/daybook/consequence_card.h"
#include "app/daybook/forgotten_dialog.h"

#include <QListWidget>

namespace ullage::app
{

namespace
{

class Forgotten : public testing::Test
{
protected:
    Forgotten()
    {
        desk.pass(-40);
        desk.clearWhenMixed = false;
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
        desk.pass(10);
        desk.run(dev, 2);
        desk.pass(20);
        later = desk.mix("starter-citric-stop", "starter-glass-500", 500, "Stop 1");
        desk.pass(10);
    }

    ledger::Batch batch(const std::string& id)
    {
        return *desk.session().book().batch(id, desk.now());
    }
    // The dialog's lines when the pause after typing is over.
    static QStringList told(const ForgottenDialog& dialog)
    {
        QTest::qWait(250);
        return dialog.consequences();
    }
    chemistry::Instant daysAgo(int days) const
    {
        return desk.now() - std::chrono::hours(24 * days);
    }
    // What the card would say of the bottle as it is now, against how it was.
    QStringList lines(const std::string& id, const ledger::Outlook& before)
    {
        const ledger::Batch now = batch(id);
        const ledger::Consequences what{before, ledger::Outlook{now, ledger::assess(now)}};
        QStringList found;
        for (const FactorRow& row : consequenceRows(what, desk.now(), desk.preferences().wording()))
            found << QStringLiteral("%1: %2").arg(row.label, row.value);
        return found;
    }
    ledger::Outlook outlook(const std::string& id)
    {
        const ledger::Batch now = batch(id);
        return {now, ledger::assess(now)};
    }

    Desk desk;
    std::string dev;
    std::string fix;
    std::string later;
};

QStringList bottles(const ForgottenDialog& dialog)
{
    QStringList names;
    const auto* combo = named<QComboBox>(dialog, "Bottle, of those that stood then");
    for (int i = 0; i < combo->count(); ++i)
        names << combo->itemText(i);
    return names;
}

} // namespace

TEST_F(Forgotten, FilmThroughTwoBottlesAtItsTime)
{
    ForgottenDialog dialog(contextOf(desk), dev);
    dialog.show();
    EXPECT_EQ(bottles(dialog).size(), 3);
    setMoment(dialog, daysAgo(35));
    EXPECT_EQ(bottles(dialog), (QStringList{"Dev 1", "Fix 1"})) << "those that stood then";
    EXPECT_EQ(named<QComboBox>(dialog, "Bottle, of those that stood then")->currentText(), "Dev 1");
    type(dialog, "Count", "5");
    auto* also = dialog.findChild<QListWidget*>();
    ASSERT_EQ(also->count(), 1);
    also->item(0)->setCheckState(Qt::Checked);
    const QByteArray before = desk.journal();
    const QStringList said = told(dialog);
    EXPECT_EQ(desk.journal(), before) << "nothing is written for a look";
    EXPECT_TRUE(said.contains("Films left: 8 films → 3 films")) << said.join('|').toStdString();
    const auto devBefore = outlook(dev);
    const auto fixBefore = outlook(fix);
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_EQ(said, QStringList{"Dev 1"} + lines(dev, devBefore) + QStringList{"Fix 1"} +
                        lines(fix, fixBefore));
    ASSERT_EQ(batch(dev).loads.size(), 2u);
    EXPECT_DOUBLE_EQ(batch(dev).loads[1].wearBefore.value(), 5) << "the later run came after it";
    ASSERT_TRUE(desk.session().undo()) << "one step";
    EXPECT_DOUBLE_EQ(batch(fix).filmsDone.value(), 0);
}

TEST_F(Forgotten, EveryKindSaysWhatFollowsAndDoesIt)
{
    using Kind = ForgottenDialog::Kind;
    const std::vector<std::pair<Kind, std::vector<std::pair<QString, QString>>>> cases{
        {Kind::DrawOff, {{"Volume", "300"}}},
        {Kind::TopUp, {{"Volume", "20"}}},
        {Kind::Opened, {}},
        {Kind::StoodOpen, {{"Hours open", "20"}, {"Surface", "500"}}},
        {Kind::StoredAt, {{"Temperature", "30"}}},
        {Kind::StripTest, {{"Factor on the time, if any", "1.2"}}},
        {Kind::Look, {{"What was looked at", "colour"}}},
        {Kind::Contaminated, {{"What happened to it", "fixer"}}},
        {Kind::Dissolved, {}},
        {Kind::Note, {{"Note", "brown"}}},
        {Kind::Discard, {{"Where it went", "collected"}}},
    };
    for (const auto& [kind, fields] : cases) {
        ForgottenDialog dialog(contextOf(desk), dev);
        dialog.show();
        setMoment(dialog, daysAgo(5));
        dialog.setKind(kind);
        for (const auto& [name, text] : fields)
            type(dialog, name, text);
        const QStringList said = told(dialog);
        const auto before = outlook(dev);
        const QByteArray journal = desk.journal();
        dialog.accept();
        ASSERT_FALSE(dialog.isVisible())
            << static_cast<int>(kind) << dialog.problemOf("").toStdString();
        EXPECT_NE(desk.journal(), journal);
        const QStringList now = lines(dev, before);
        EXPECT_EQ(said, now.isEmpty() ? QStringList({"Dev 1", "Nothing is reckoned differently."})
                                      : QStringList{"Dev 1"} + now)
            << static_cast<int>(kind);
        ASSERT_TRUE(desk.session().undo());
    }
}

TEST_F(Forgotten, WhatCannotHaveBeenIsRefusedAndSaidBefore)
{
    ForgottenDialog dialog(contextOf(desk), dev);
    dialog.show();
    setMoment(dialog, daysAgo(5));
    dialog.setKind(ForgottenDialog::Kind::DrawOff);
    EXPECT_TRUE(told(dialog).join('|').contains("Fill in the fields"));
    const QByteArray before = desk.journal();
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("volume_ml").isEmpty());
    type(dialog, "Volume", "1200");
    EXPECT_TRUE(told(dialog).join('|').contains("1,200")) << told(dialog).join('|').toStdString();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    setMoment(dialog, daysAgo(60));
    EXPECT_TRUE(told(dialog).join('|').contains("No bottle stood then"));
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("batch").isEmpty());
    dialog.setKind(ForgottenDialog::Kind::Note);
    setMoment(dialog, daysAgo(5));
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("why").isEmpty()) << "a note without words";
    EXPECT_EQ(desk.journal(), before);
}

TEST_F(Forgotten, ABottleThatHasEndedStoodThen)
{
    desk.record(later, ledger::Discarded{"gone"});
    desk.pass(1);
    ForgottenDialog dialog(contextOf(desk), later);
    dialog.show();
    EXPECT_FALSE(bottles(dialog).contains("Stop 1"));
    setMoment(dialog, daysAgo(3));
    EXPECT_TRUE(bottles(dialog).contains("Stop 1"));
    auto* bottle = named<QComboBox>(dialog, "Bottle, of those that stood then");
    bottle->setCurrentIndex(bottle->findText("Stop 1"));
    dialog.setKind(ForgottenDialog::Kind::Note);
    type(dialog, "Note", "was yellow");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(desk.session().book().events(later)->size(), 3u);
}

} // namespace ullage::app
