// A book in which something is wrong: said, with what can be done about it.
#include "app/window/copies_dialog.h"
#include "app/window/salvage_dialog.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/window/window_kit.h"
#include "tests/core/store/damaged_book.h"

#include <QFile>
#include <QFileInfo>
#include <QListWidget>
#include <QPushButton>

namespace ullage::app
{

// Where something is wrong in the book, and said, stands what can be done about it.
TEST(BookStanding, aChangedLineOffersACopyAndSalvageRightThere)
{
    Desk desk;
    Window at(desk);
    const auto shown = [&](const QString& text) -> QPushButton* {
        for (auto* button : at.window.findChildren<QPushButton*>()) {
            if (button->text() == text && button->isVisible())
                return button;
        }
        return nullptr;
    };
    EXPECT_EQ(shown("Salvage…"), nullptr);
    desk.session().close();
    EXPECT_NE(shown("Open book…"), nullptr) << "no book is open";
    store::testing::tamper(desk.bookPath(),
                           {"UPDATE entry SET body = replace(body, 'glass', 'Glass') "
                            "WHERE id = 'starter-glass-1000'"});
    at.asked.answerWay(0);
    ASSERT_TRUE(at.controller.openBook(desk.bookPath()));
    EXPECT_TRUE(at.asked.asked().isEmpty()) << "not before the pages show what is sound";
    Window::settle();
    ASSERT_EQ(at.asked.asked().size(), 1);
    EXPECT_TRUE(at.asked.asked().front().startsWith("Something is wrong in the book|"))
        << at.asked.asked().front().toStdString();
    EXPECT_TRUE(at.asked.asked().front().contains("not as it was entered"));
    ASSERT_NE(at.window.findChild<CopiesDialog*>(), nullptr);
    EXPECT_TRUE(at.window.findChild<CopiesDialog*>()->isVisible());
    at.window.findChild<CopiesDialog*>()->close();
    Window::settle();

    QPushButton* salvage = shown("Salvage…");
    ASSERT_NE(salvage, nullptr);
    at.asked.answer(desk.file("fresh.ullage"));
    salvage->click();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return at.window.findChild<SalvageDialog*>() != nullptr; }, 20'000));
    EXPECT_EQ(at.asked.asked().size(), 2) << "which book it is needs no asking";
    at.dialog<SalvageDialog>()->accept();
    Window::settle();
    EXPECT_EQ(QFileInfo(desk.session().path()).fileName(), "fresh.ullage");
    EXPECT_EQ(shown("Salvage…"), nullptr) << "that one is sound";
}

// Behind the question stands the shelf with what is sound, and the rail says it once.
TEST(BookStanding, whatToDoAboutAFaultIsAskedOverAFullShelf)
{
    class Looking : public ScriptedPrompts
    {
    public:
        std::function<void()> look;
        std::optional<int> choose(QWidget* parent, const QString& title, const QString& label,
                                  const QStringList& ways) override
        {
            look();
            return ScriptedPrompts::choose(parent, title, label, ways);
        }
    };
    Desk desk;
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.mix("starter-mq-borax", "starter-glass-500", 500, "Dev 2");
    desk.run(dev, 1);
    Window at(desk);
    desk.session().close();
    store::testing::tamper(desk.bookPath(),
                           {"UPDATE entry SET body = replace(body, '\"count\":1', '\"count\":2') "
                            "WHERE kind = 'processed'"});
    Looking prompts;
    int asked = 0;
    prompts.look = [&] {
        ++asked;
        EXPECT_NE(at.bottle("Dev 2"), nullptr);
        EXPECT_NE(at.bottle("Dev 1"), nullptr);
    };
    const PromptsInForce force(prompts);
    ASSERT_TRUE(at.controller.openBook(desk.bookPath()));
    Window::settle();
    EXPECT_EQ(asked, 1);
    desk.session().lookForChanges();
    Window::settle();
    EXPECT_EQ(asked, 1) << "once is enough";
}

TEST(BookStanding, aDamagedBookIsSalvagedFromTheWindow)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    desk.session().close();
    {
        auto book = store::Connection::open(desk.bookPath(), store::FileMode::Write, 1000);
        ASSERT_TRUE(book);
        const auto page = (*book)->number("SELECT max(pageno) FROM dbstat WHERE name = 'entry' "
                                          "AND pagetype = 'leaf'");
        ASSERT_TRUE(page);
        book->reset();
        QFile file(desk.bookPath());
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        ASSERT_TRUE(file.seek((*page - 1) * 4096));
        file.write(QByteArray(4096, '\xAA'));
    }
    Window at(desk);
    at.asked.answer(desk.bookPath());
    const QString fresh = desk.file("fresh.ullage");
    at.asked.answer(fresh);
    emit at.window.salvageRequested();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return at.window.findChild<SalvageDialog*>() != nullptr; }, 20'000))
        << at.asked.asked().join(u'\n').toStdString();
    auto* dialog = at.dialog<SalvageDialog>();
    auto* missing = dialog->findChild<QListWidget*>();
    ASSERT_NE(missing, nullptr);
    EXPECT_GT(missing->count(), 0);
    dialog->accept();
    EXPECT_EQ(desk.session().path(), fresh);
}

} // namespace ullage::app
