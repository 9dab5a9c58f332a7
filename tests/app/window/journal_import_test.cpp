// A colleague's journal that contradicts the book, settled in the window as a person would.
#include "app/dialogs/import_dialog.h"
#include "app/dialogs/import_row.h"
#include "app/widgets/moment_field.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "core/store/copies.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/scripted_prompts.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPushButton>

namespace ullage::app
{

namespace
{

constexpr int kLongMs = 10'000;
const QByteArray kHead = "{\"type\":\"book\",\"format\":\"ullage-journal\",\"version\":1}\n";

QByteArray openedLine(const QByteArray& id, const std::string& batch, const QByteArray& at)
{
    return R"({"type":"event","id":")" + id + R"(","batch":")" + QByteArray::fromStdString(batch) +
           R"(","kind":"opened","at":")" + at + "\"}\n";
}

QStringList waysOf(const ImportRowView& view)
{
    const ImportRow row(
        view, [] { return chemistry::Instant(); }, QLocale("en_GB"), nullptr);
    const auto* box = row.findChild<QComboBox*>();
    QStringList ways;
    for (int i = 0; i < box->count(); ++i)
        ways << box->itemText(i);
    return ways;
}

// A window on a book with one bottle, and a journal about the same bottle.
struct Merging : ::testing::Test {
    Merging()
    {
        m_batch = m_desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        m_desk.passMinutes(120);
    }
    // Opens the window, lets it import these lines, and waits for what comes of it.
    ImportDialog* import(const QByteArray& lines)
    {
        m_before = m_desk.journal();
        m_window = std::make_unique<MainWindow>();
        m_controller =
            std::make_unique<Controller>(*m_window, m_desk.session(), m_desk.preferences());
        m_force = std::make_unique<PromptsInForce>(m_asked);
        m_window->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
        write(lines);
        m_asked.answer(m_desk.file("theirs.jsonl"));
        emit m_window->importRequested();
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return dialog() || m_asked.asked().size() > 1; }, kLongMs));
        return dialog();
    }
    void write(const QByteArray& lines)
    {
        QFile file(m_desk.file("theirs.jsonl"));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(kHead + lines);
    }
    ImportDialog* dialog() { return m_window->findChild<ImportDialog*>(); }
    QPushButton* button(const QString& text)
    {
        for (auto* button : dialog()->findChildren<QPushButton*>()) {
            if (button->text().remove(u'&') == text)
                return button;
        }
        ADD_FAILURE() << "no button " << text.toStdString();
        return nullptr;
    }
    void choose(int line, ImportRow::Choice choice)
    {
        auto* way =
            named<QComboBox>(*dialog(), QStringLiteral("What to do with line %1").arg(line));
        ASSERT_NE(way, nullptr);
        const int index = way->findData(int(choice));
        ASSERT_GE(index, 0);
        way->setCurrentIndex(index);
    }
    std::string said()
    {
        QStringList all;
        for (const auto* label : dialog()->findChildren<QLabel*>())
            all << label->text();
        return all.join(u'\n').toStdString();
    }
    void importWhenReady()
    {
        auto* import = button("Import");
        ASSERT_TRUE(QTest::qWaitFor([&] { return import->isEnabled(); }, kLongMs)) << said();
        const auto asked = m_asked.asked().size();
        QTest::mouseClick(import, Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_asked.asked().size() > asked; }, kLongMs));
        EXPECT_TRUE(QTest::qWaitFor([this] { return dialog() == nullptr; }, kLongMs));
    }

    Desk m_desk;
    std::string m_batch;
    QByteArray m_before;
    ScriptedPrompts m_asked;
    std::unique_ptr<MainWindow> m_window;
    std::unique_ptr<Controller> m_controller;
    std::unique_ptr<PromptsInForce> m_force;
};

} // namespace

TEST_F(Merging, withoutAContradictionNothingIsAsked)
{
    EXPECT_EQ(import(openedLine("a", m_batch, "2026-11-25T16:00:00Z")), nullptr);
    EXPECT_EQ(m_desk.journal(), m_before + openedLine("a", m_batch, "2026-11-25T16:00:00Z"));
}

TEST_F(Merging, theBookIsCopiedBefore)
{
    const QString copies = m_desk.file("copies");
    m_desk.session().copies().setPlaces(CopyPlaces{copies, {}});
    const auto before = m_desk.session().entries();
    EXPECT_EQ(import(openedLine("a", m_batch, "2026-11-25T16:00:00Z")), nullptr);
    const auto made = store::copies(m_desk.bookPath(), {}, {copies});
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(made.front().entries, before);
    EXPECT_FALSE(m_asked.asked().back().contains("No copy"));
}

TEST_F(Merging, whereNoCopyCanBeMadeThatIsSaidAndTheLinesComeIn)
{
    m_desk.session().copies().setPlaces(CopyPlaces{m_desk.bookPath() + "/copies", {}});
    EXPECT_EQ(import(openedLine("a", m_batch, "2026-11-25T16:00:00Z")), nullptr);
    EXPECT_TRUE(m_asked.asked().back().contains("No copy")) << m_asked.asked().back().toStdString();
    EXPECT_EQ(m_desk.journal(), m_before + openedLine("a", m_batch, "2026-11-25T16:00:00Z"));
}

TEST_F(Merging, aLineIsLeftOutAndTheRestComesIn)
{
    const QByteArray good = openedLine("good", m_batch, "2026-11-25T16:00:00Z");
    ASSERT_NE(import(openedLine("early", m_batch, "2026-11-01T16:00:00Z") + good), nullptr);
    EXPECT_FALSE(button("Import")->isEnabled());
    EXPECT_EQ(m_desk.journal(), m_before) << "nothing has come in yet";
    choose(2, ImportRow::Choice::LeaveOut);
    importWhenReady();
    EXPECT_EQ(m_desk.journal(), m_before + good);
}

TEST_F(Merging, aLineIsGivenTheTimeItReallyHad)
{
    ASSERT_NE(import(openedLine("early", m_batch, "2026-11-01T16:00:00Z")), nullptr);
    choose(2, ImportRow::Choice::ChangeTime);
    auto* when = named<MomentField>(*dialog(), "When line 2 really was");
    ASSERT_NE(when, nullptr);
    EXPECT_TRUE(when->isVisible());
    type(*dialog(), "When line 2 really was", "2026-11-25 sometime");
    EXPECT_FALSE(button("Import")->isEnabled()) << "what is not understood is not decided";
    const QDateTime meant =
        QDateTime::fromString("2026-11-25T16:10:00Z", Qt::ISODate).toLocalTime();
    type(*dialog(), "When line 2 really was", meant.toString("yyyy-MM-dd HH:mm"));
    importWhenReady();
    EXPECT_TRUE(m_desk.journal().contains("2026-11-25T16:10:00"));
}

TEST_F(Merging, oursIsTakenBack)
{
    m_desk.record(m_batch, ledger::Discarded{});
    m_desk.passMinutes(60);
    const QByteArray after = openedLine("after", m_batch, "2026-11-25T18:00:00Z");
    ASSERT_NE(import(after), nullptr);
    choose(2, ImportRow::Choice::TakeBack);
    importWhenReady();
    const QByteArray journal = m_desk.journal();
    EXPECT_TRUE(journal.contains(after));
    EXPECT_TRUE(journal.contains("\"voided\""));
}

TEST_F(Merging, everythingThatDoesNotFitIsLeftOutAtOnce)
{
    QByteArray lines;
    for (int i = 0; i < 250; ++i)
        lines += openedLine("e" + QByteArray::number(i), m_batch, "2026-11-01T16:00:00Z");
    const QByteArray good = openedLine("good", m_batch, "2026-11-25T16:00:00Z");
    ASSERT_NE(import(lines + good), nullptr);
    QTest::mouseClick(button("Leave all of them out"), Qt::LeftButton);
    importWhenReady();
    EXPECT_EQ(m_desk.journal(), m_before + good);
}

TEST_F(Merging, theSameBottleTwiceIsAskedFor)
{
    const QByteArray twin = R"({"type":"event","id":"x1","batch":"x-dev","kind":"mixed",)"
                            R"("at":"2026-11-25T16:30:00Z","solution":"starter-mq-borax",)"
                            R"("vessel":"starter-glass-1000","volume_ml":1000,"name":"Dev A"})"
                            "\n";
    ASSERT_NE(import(twin), nullptr);
    choose(2, ImportRow::Choice::KeepBoth);
    importWhenReady();
    EXPECT_TRUE(m_desk.journal().contains("Dev A"));
}

TEST_F(Merging, cancellingLeavesTheBookAsItWas)
{
    ASSERT_NE(import(openedLine("early", m_batch, "2026-11-01T16:00:00Z") +
                     openedLine("good", m_batch, "2026-11-25T16:00:00Z")),
              nullptr);
    choose(2, ImportRow::Choice::LeaveOut);
    QTest::keyClick(dialog(), Qt::Key_Escape); // asked, and not answered with yes
    ASSERT_NE(dialog(), nullptr) << "what was decided is not lost unasked";
    m_asked.answer(true);
    QTest::keyClick(dialog(), Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([this] { return dialog() == nullptr; }, kLongMs));
    EXPECT_EQ(m_desk.journal(), m_before);
}

TEST_F(Merging, aLineThatCannotBeReadIsNamedAndCanBeLeftOut)
{
    const QByteArray good = openedLine("good", m_batch, "2026-11-25T16:00:00Z");
    ASSERT_NE(import("{\"type\":\"ves\n" + good), nullptr);
    choose(2, ImportRow::Choice::LeaveOut);
    importWhenReady();
    EXPECT_EQ(m_desk.journal(), m_before + good);
}

TEST_F(Merging, aJournalThatChangesMeanwhileIsJudgedAnew)
{
    ASSERT_NE(import(openedLine("early", m_batch, "2026-11-01T16:00:00Z")), nullptr);
    const QByteArray good = openedLine("good", m_batch, "2026-11-25T16:00:00Z");
    write(openedLine("other", m_batch, "2026-11-02T16:00:00Z") +
          openedLine("early", m_batch, "2026-11-01T16:00:00Z") + good);
    choose(2, ImportRow::Choice::LeaveOut);
    const auto third = [this] { // a date has boxes as well
        const auto all = dialog()->findChildren<QComboBox*>();
        return std::any_of(all.begin(), all.end(), [](const QComboBox* box) {
            return box->accessibleName() == QLatin1String("What to do with line 3");
        });
    };
    ASSERT_TRUE(QTest::qWaitFor(third, kLongMs));
    EXPECT_FALSE(button("Import")->isEnabled()) << "what was decided held for another line";
    QTest::mouseClick(button("Leave all of them out"), Qt::LeftButton);
    importWhenReady();
    EXPECT_EQ(m_desk.journal(), m_before + good);
}

// Whether two bottles are one is asked where that is the question, and not wherever there is no way
// out.
TEST(ImportRow, onlyTwoBottlesCanBeKeptBoth)
{
    ImportRowView view;
    view.line = 3;
    EXPECT_FALSE(waysOf(view).contains("Keep both: two bottles"));
    view.sameBottle = true;
    EXPECT_TRUE(waysOf(view).contains("Keep both: two bottles"));
    EXPECT_TRUE(waysOf(view).contains("Leave theirs out"));
}

} // namespace ullage::app
