// A forgotten entry: what is told to follow is what is true once it is entered.
#include "tests/app/daybook/day_driver.h"

#include "app/daybook/forgotten_dialog.h"
#include "app/dialogs/consequence_card.h"
#include "app/words/event_words.h"
#include "tests/app/scripted_prompts.h"

#include <QKeySequence>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QTimer>

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
    static QStringList told(const DeedDialog& dialog)
    {
        const auto pauses = dialog.findChildren<QTimer*>(QString(), Qt::FindDirectChildrenOnly);
        EXPECT_FALSE(pauses.isEmpty());
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                return std::none_of(pauses.begin(), pauses.end(), [](const QTimer* pause) {
                    return pause->isSingleShot() && pause->isActive();
                });
            },
            10'000));
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

    // The newest entry of the bottle, its id left out.
    QString newest(const std::string& id)
    {
        const auto events = desk.session().book().events(id);
        const ledger::Event& event = events->back();
        const QString air = event.airLeft ? QString::number(event.airLeft->value()) : "-";
        return QStringList{
            QString::fromStdString(std::string(event.kind())),
            QString::number(event.at.time_since_epoch().count()), air,
            eventText(event, desk.session().formulary(), desk.preferences().wording())}
            .join('|');
    }

    Desk desk;
    std::string dev;
    std::string fix;
    std::string later;
};

using Kind = HappeningKind;

// A kind and what is typed into its fields, by their names.
struct Case {
    Kind kind;
    std::vector<std::pair<QString, QString>> fields;
};

const std::vector<Case>& cases()
{
    static const std::vector<Case> all{
        {Kind::DrawOff, {{"Volume taken out", "300"}, {"What for", "given away"}}},
        {Kind::TopUp, {{"Volume added", "20"}}},
        {Kind::Move, {}},
        {Kind::Opened, {{"Air left in the bottle, if you know", "30"}}},
        {Kind::StoodOpen, {{"Hours open", "20"}, {"Surface", "500"}}},
        {Kind::StoredAt, {{"Temperature there", "30"}}},
        {Kind::ClearingTest, {{"Cleared after (m:ss)", "1:10"}}},
        {Kind::StripTest,
         {{"Density, if measured", "1.2"}, {"Factor on the time from now on, if any", "1.2"}}},
        {Kind::Look, {{"What was looked at", "colour"}}},
        {Kind::Measured, {{"Silver, grams in a litre", "1.2"}}},
        {Kind::Filtered, {}},
        {Kind::Contaminated, {{"What happened to it", "fixer"}}},
        {Kind::Dissolved, {}},
        {Kind::Note, {{"Note", "brown"}}},
        {Kind::Discard, {{"How", "collected"}}},
    };
    return all;
}

void fill(HappeningDialog& dialog, const Case& one)
{
    const QWidget& within = *dialog.shown();
    for (const auto& [name, text] : one.fields) {
        if (one.kind == Kind::Note)
            named<QPlainTextEdit>(within, name)->setPlainText(text);
        else if (one.kind == Kind::Look || one.kind == Kind::Discard)
            named<QComboBox>(within, name)->setEditText(text);
        else
            type(within, name, text);
    }
}

QStringList bottles(const ForgottenDialog& dialog)
{
    QStringList names;
    const auto* combo = named<QComboBox>(dialog, "Bottle, of those in use then");
    for (int i = 0; i < combo->count(); ++i)
        names << combo->itemText(i);
    return names;
}

} // namespace

// One that is entered by its day of mixing was not there before: "– → Good" says nothing.
TEST_F(Forgotten, OfABottleThatComesTheFiguresStandAlone)
{
    const auto rows =
        consequenceRows({std::nullopt, outlook(dev)}, desk.now(), desk.preferences().wording());
    ASSERT_GT(rows.size(), 4U);
    for (const FactorRow& row : rows) {
        EXPECT_FALSE(row.value.contains(u'→')) << row.value.toStdString();
        EXPECT_NE(row.value, QStringLiteral("–")) << row.label.toStdString();
        EXPECT_FALSE(row.value.isEmpty()) << row.label.toStdString();
    }
}

TEST_F(Forgotten, MoreFilmThanCanBeIsAskedAboutOnce)
{
    ScriptedPrompts asked;
    const PromptsInForce force(asked);
    ForgottenDialog dialog(desk.door(), dev);
    dialog.show();
    dialog.setKind(Kind::Film);
    spin(dialog, "Number of films", 9);
    const QByteArray before = desk.journal();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(desk.journal(), before);
    ASSERT_EQ(asked.asked().size(), 1);
    EXPECT_TRUE(asked.asked().back().contains("Is it really 9 films")) << "8 are left";
    asked.answer(true);
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_DOUBLE_EQ(batch(dev).filmsDone.value(), 11);
}

TEST_F(Forgotten, FilmThroughTwoBottlesAtItsTime)
{
    ForgottenDialog dialog(desk.door(), dev);
    dialog.show();
    EXPECT_EQ(bottles(dialog).size(), 3);
    setMoment(dialog, daysAgo(35));
    EXPECT_EQ(bottles(dialog), (QStringList{"Dev 1", "Fix 1"})) << "those that stood then";
    EXPECT_EQ(named<QComboBox>(dialog, "Bottle, of those in use then")->currentText(), "Dev 1");
    spin(dialog, "Number of films", 5);
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

TEST_F(Forgotten, EachBottleOfARunHasFiguresOfItsOwn)
{
    ForgottenDialog dialog(desk.door(), dev);
    dialog.show();
    setMoment(dialog, daysAgo(35));
    spin(dialog, "Number of films", 1);
    auto* other = dialog.findChild<QListWidget*>()->item(0);
    other->setCheckState(Qt::Checked);
    type(dialog, "Fix 1: lost", "x");
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.problemOf("baths").contains("Fix 1: lost"))
        << dialog.problemOf("baths").toStdString();
    type(dialog, "Fix 1: lost", "20");
    other->setCheckState(Qt::Unchecked);
    EXPECT_TRUE(named<QLineEdit>(dialog, "Fix 1: lost")->isHidden());
    other->setCheckState(Qt::Checked);
    EXPECT_EQ(named<QLineEdit>(dialog, "Fix 1: lost")->text().left(2), "20") << "still there";
    const double before = batch(dev).volume.value();
    const double fixer = batch(fix).volume.value();
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), before);
    EXPECT_DOUBLE_EQ(batch(fix).volume.value(), fixer - 20);
}

TEST_F(Forgotten, EveryKindSaysWhatFollowsAndDoesIt)
{
    for (const Case& one : cases()) {
        const auto kind = one.kind;
        ForgottenDialog dialog(desk.door(), dev);
        dialog.show();
        setMoment(dialog, daysAgo(5));
        dialog.setKind(kind);
        fill(dialog, one);
        const QStringList said = told(dialog);
        const auto before = outlook(dev);
        const QByteArray journal = desk.journal();
        dialog.accept();
        ASSERT_FALSE(dialog.isVisible())
            << static_cast<int>(kind) << dialog.problemOf("").toStdString();
        EXPECT_NE(desk.journal(), journal);
        const QStringList now = lines(dev, before);
        EXPECT_EQ(said, now.isEmpty() ? QStringList({"Dev 1", "No figure changes."})
                                      : QStringList{"Dev 1"} + now)
            << static_cast<int>(kind);
        ASSERT_TRUE(desk.session().undo());
    }
}

TEST_F(Forgotten, LeavesTheLineThatTheBottlesDialogLeaves)
{
    for (const Case& one : cases()) {
        const std::string id = one.kind == Kind::ClearingTest ? fix : dev;
        BottleDialog then(one.kind, desk.door(), bottleOf(desk, id));
        ForgottenDialog forgotten(desk.door(), id);
        forgotten.setKind(one.kind);
        QStringList lines;
        QStringList said;
        for (HappeningDialog* dialog :
             {static_cast<HappeningDialog*>(&then), static_cast<HappeningDialog*>(&forgotten)}) {
            dialog->show();
            setMoment(*dialog, daysAgo(5));
            fill(*dialog, one);
            said << told(*dialog).join('|');
            dialog->accept();
            ASSERT_FALSE(dialog->isVisible())
                << static_cast<int>(one.kind) << dialog->problemOf("").toStdString();
            lines << newest(id);
            ASSERT_TRUE(desk.session().undo());
        }
        EXPECT_EQ(lines[0].toStdString(), lines[1].toStdString());
        EXPECT_EQ(said[0].toStdString(), said[1].toStdString());
        EXPECT_FALSE(said[0].isEmpty());
    }
}

TEST_F(Forgotten, AsksForTheAirWhereTheBottleIsOpen)
{
    for (const Case& one : cases()) {
        BottleDialog dialog(one.kind, desk.door(), bottleOf(desk, dev));
        dialog.show();
        fill(dialog, one);
        const auto what = dialog.shown()->happening();
        ASSERT_TRUE(what) << static_cast<int>(one.kind);
        EXPECT_EQ(dialog.shown()->has("air_ml"), ledger::opens(*what))
            << static_cast<int>(one.kind);
    }
}

TEST_F(Forgotten, EveryKeyIsOfOneFieldAlone)
{
    ForgottenDialog dialog(desk.door(), dev);
    dialog.show();
    for (int i = 0; i < kHappeningKinds; ++i) {
        dialog.setKind(static_cast<Kind>(i));
        QSet<QChar> taken;
        for (const QLabel* label : dialog.findChildren<QLabel*>()) {
            const QString key = QKeySequence::mnemonic(label->text()).toString();
            if (!label->buddy() || !label->isVisible() || key.isEmpty())
                continue;
            EXPECT_FALSE(taken.contains(key.back())) << i << ' ' << label->text().toStdString();
            taken.insert(key.back());
        }
        EXPECT_GE(taken.size(), 3) << i;
    }
}

TEST_F(Forgotten, AToppingUpFromAnotherBottleIsToldOfBoth)
{
    const auto spare = desk.mix("starter-mq-borax", "starter-glass-1000-b", 900, "Dev 2");
    desk.pass(2);
    desk.record(dev, ledger::Drawn{chemistry::Millilitres(200), "spilled", {}});
    desk.pass(2);
    ForgottenDialog dialog(desk.door(), dev);
    dialog.show();
    dialog.setKind(Kind::TopUp);
    setMoment(dialog, daysAgo(1));
    auto* from = named<QComboBox>(dialog, "From");
    from->setCurrentIndex(from->findText("Dev 2"));
    type(*dialog.shown(), "Volume added", "100");
    const QStringList said = told(dialog);
    EXPECT_TRUE(said.contains("Dev 1")) << said.join('|').toStdString();
    EXPECT_TRUE(said.contains("Dev 2")) << said.join('|').toStdString();
    dialog.accept();
    ASSERT_FALSE(dialog.isVisible()) << dialog.problemOf("").toStdString();
    EXPECT_DOUBLE_EQ(batch(spare).volume.value(), 800);
    EXPECT_DOUBLE_EQ(batch(dev).volume.value(), 900);
}

TEST_F(Forgotten, WhatCannotHaveBeenIsRefusedAndSaidBefore)
{
    ForgottenDialog dialog(desk.door(), dev);
    dialog.show();
    setMoment(dialog, daysAgo(5));
    dialog.setKind(ForgottenDialog::Kind::DrawOff);
    EXPECT_TRUE(told(dialog).join('|').contains("Fill in the fields"));
    const QByteArray before = desk.journal();
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("volume_ml").isEmpty());
    type(*dialog.shown(), "Volume taken out", "1200");
    EXPECT_TRUE(told(dialog).join('|').contains("1,200")) << told(dialog).join('|').toStdString();
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    setMoment(dialog, daysAgo(60));
    EXPECT_TRUE(told(dialog).join('|').contains("No bottle was in use then"));
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("batch").isEmpty());
    dialog.setKind(ForgottenDialog::Kind::Note);
    setMoment(dialog, daysAgo(5));
    dialog.accept();
    EXPECT_FALSE(dialog.problemOf("text").isEmpty()) << "a note without words";
    EXPECT_EQ(desk.journal(), before);
}

TEST_F(Forgotten, ABottleThatHasEndedStoodThen)
{
    desk.record(later, ledger::Discarded{"gone"});
    desk.pass(1);
    ForgottenDialog dialog(desk.door(), later);
    dialog.show();
    EXPECT_FALSE(bottles(dialog).contains("Stop 1"));
    setMoment(dialog, daysAgo(3));
    EXPECT_TRUE(bottles(dialog).contains("Stop 1"));
    auto* bottle = named<QComboBox>(dialog, "Bottle, of those in use then");
    bottle->setCurrentIndex(bottle->findText("Stop 1"));
    dialog.setKind(ForgottenDialog::Kind::Note);
    named<QPlainTextEdit>(dialog, "Note")->setPlainText("was yellow");
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(desk.session().book().events(later)->size(), 3u);
}

} // namespace ullage::app
