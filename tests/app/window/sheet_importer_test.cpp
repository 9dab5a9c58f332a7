// A stranger's spreadsheet on its way into the book, through the real window.
#include "app/dialogs/sheet_dialog.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "core/store/copies.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/scripted_prompts.h"

#include <QFile>
#include <QPushButton>
#include <QTreeWidget>

namespace ullage::app
{

namespace
{

constexpr int kLongestMs = 10'000;
// As a German spreadsheet writes it: a title, Latin-1, semicolons, decimal commas, two-digit years,
// a cell that would be run.
const QByteArray kUglySheet = "Chemie am Hafen;;;;\n;;;;\n"
                              "Flasche;Rezept;Inhalt (l);Angesetzt am;Filme bisher;Bemerkung\n"
                              "Dev A;MQ;1,0;3.4.26;6;=1+1 \"zwei\"\n"
                              "Dev B;MQ;0,75;13.5.26;;Fl\xe4schchen\n";

class SheetInWindow : public testing::Test
{
protected:
    SheetInWindow()
    {
        m_controller =
            std::make_unique<Controller>(m_window, m_desk.session(), m_desk.preferences());
        m_window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window));
    }
    QString write(const QByteArray& bytes)
    {
        const QString name = m_desk.file("pencil.csv");
        QFile file(name);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return name;
    }
    SheetDialog* dialog() { return m_window.findChild<SheetDialog*>(); }
    SheetDialog* import(const QByteArray& bytes)
    {
        m_asked.answer(write(bytes));
        const auto asked = m_asked.asked().size() + 1; // for the file
        emit m_window.importRequested();
        EXPECT_TRUE(QTest::qWaitFor(
            [&] { return (dialog() && dialog()->isVisible()) || m_asked.asked().size() > asked; },
            kLongestMs));
        return dialog();
    }
    QPushButton* button(const QString& text)
    {
        for (auto* button : dialog()->findChildren<QPushButton*>()) {
            if (button->text().remove(u'&') == text)
                return button;
        }
        ADD_FAILURE() << "no button " << text.toStdString();
        return nullptr;
    }
    void chooseSolution()
    {
        auto* box = named<QComboBox>(*dialog(), "Solution that “MQ” is");
        ASSERT_NE(box, nullptr);
        const int at = box->findText("MQ borax developer, stock");
        ASSERT_GT(at, 0);
        box->setCurrentIndex(at);
    }
    void enter()
    {
        QPushButton* import = button("Import");
        ASSERT_TRUE(QTest::qWaitFor([&] { return import->isEnabled(); }, kLongestMs));
        QTest::mouseClick(import, Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog(); }, kLongestMs));
    }
    std::optional<Bottle> bottle(const char* name)
    {
        for (const Bottle& one : m_desk.door().bottles()) {
            if (one.batch.name == name)
                return one;
        }
        return std::nullopt;
    }

    Desk m_desk;
    ScriptedPrompts m_asked;
    PromptsInForce m_force{m_asked};
    MainWindow m_window;
    std::unique_ptr<Controller> m_controller;
};

} // namespace

TEST_F(SheetInWindow, AsksWhatNobodyCanTellAndBringsPencilRecordsIn)
{
    const QByteArray before = m_desk.journal();
    ASSERT_NE(import(kUglySheet), nullptr);
    EXPECT_FALSE(button("Import")->isEnabled()) << "nobody knows yet what MQ is";
    auto* refused = named<QTreeWidget>(*dialog(), "Rows that are refused");
    ASSERT_EQ(refused->topLevelItemCount(), 2);
    EXPECT_EQ(refused->topLevelItem(0)->text(0), "4");
    EXPECT_EQ(m_desk.journal(), before);
    chooseSolution();
    enter();
    ASSERT_TRUE(bottle("Dev A") && bottle("Dev B"));
    EXPECT_DOUBLE_EQ(bottle("Dev A")->batch.filmsDone.value(), 6) << "it starts with them";
    EXPECT_DOUBLE_EQ(bottle("Dev B")->batch.volume.value(), 750);
    EXPECT_TRUE(m_desk.journal().contains("Fl\xc3\xa4schchen"));
    EXPECT_TRUE(m_asked.asked().back().contains("new entr"))
        << m_asked.asked().back().toStdString();
}

TEST_F(SheetInWindow, GoesWithOneUndoAndCanComeInAgainOtherwise)
{
    const auto undoable = m_desk.session().book().undoable();
    const auto vessels = [&] {
        return m_desk.session().book().formulary().currentVessels().size();
    };
    const std::size_t before = vessels();
    ASSERT_NE(import(kUglySheet), nullptr);
    chooseSolution();
    enter();
    EXPECT_EQ(vessels(), before + 2) << "one for each bottle";
    ASSERT_TRUE(m_desk.session().book().undoable());
    EXPECT_EQ(m_desk.session().book().undoable()->subject, "pencil.csv");
    ASSERT_TRUE(m_desk.session().undo());
    EXPECT_FALSE(bottle("Dev A") || bottle("Dev B"));
    EXPECT_EQ(vessels(), before) << "they go with it";
    ASSERT_EQ(m_desk.session().book().undoable().has_value(), undoable.has_value());
    ASSERT_NE(import(QByteArray(kUglySheet).replace("0,75", "0,80")), nullptr);
    auto* volume = named<QComboBox>(*dialog(), "What the column Filme bisher is");
    ASSERT_NE(volume, nullptr);
    volume->setCurrentIndex(0); // not used
    enter();
    ASSERT_TRUE(bottle("Dev A") && bottle("Dev B"));
    EXPECT_DOUBLE_EQ(bottle("Dev A")->batch.filmsDone.value(), 0);
    EXPECT_DOUBLE_EQ(bottle("Dev B")->batch.volume.value(), 800);
    ASSERT_TRUE(m_desk.session().undo());
    EXPECT_EQ(vessels(), before);
    ASSERT_TRUE(m_desk.session().redo());
    EXPECT_TRUE(bottle("Dev A"));
    EXPECT_EQ(vessels(), before + 2);
}

TEST_F(SheetInWindow, KeepsItsMappingForTheNextSheetOfTheseHeadings)
{
    ASSERT_NE(import(kUglySheet), nullptr);
    chooseSolution();
    enter();
    // One more title, as sheets get them.
    ASSERT_NE(import("Sommer;;;;;\n" + kUglySheet + "Dev C;MQ;0,5;14.5.26;;\n"), nullptr);
    enter();
    EXPECT_TRUE(bottle("Dev C"));
}

TEST_F(SheetInWindow, IsLeftWithoutATrace)
{
    const QByteArray before = m_desk.journal();
    ASSERT_NE(import(kUglySheet), nullptr);
    chooseSolution();
    m_asked.answer(true); // let go of what was chosen
    QTest::keyClick(dialog(), Qt::Key_Escape);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog(); }, kLongestMs));
    EXPECT_EQ(m_desk.journal(), before);
    EXPECT_EQ(m_asked.answersLeft(), 0U) << m_asked.asked().join('\n').toStdString();
    ASSERT_NE(import(kUglySheet), nullptr) << "and can be begun again";
}

TEST_F(SheetInWindow, SaysWhyAFileIsNoSheet)
{
    EXPECT_EQ(import(QByteArray()), nullptr);
    EXPECT_TRUE(m_asked.asked().back().startsWith("Import a spreadsheet"))
        << m_asked.asked().back().toStdString();
}

TEST_F(SheetInWindow, SavesTheMappingForTheCommandLine)
{
    ASSERT_NE(import(kUglySheet), nullptr);
    m_asked.answer(m_desk.file("mapping"));
    QTest::mouseClick(button("Save the mapping…"), Qt::LeftButton);
    QFile file(m_desk.file("mapping.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().contains("\"ullage-sheet\""));
}

TEST_F(SheetInWindow, TheBookIsCopiedBeforeItComesIn)
{
    const QString copies = m_desk.file("copies");
    m_desk.session().copies().setPlaces(CopyPlaces{copies, {}});
    const auto before = m_desk.session().entries();
    ASSERT_NE(import(kUglySheet), nullptr);
    chooseSolution();
    enter();
    const auto made = store::copies(m_desk.bookPath(), {}, {copies});
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(made.front().entries, before);
}

} // namespace ullage::app
