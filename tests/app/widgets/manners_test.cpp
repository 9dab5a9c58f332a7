#include "app/widgets/manners.h"

#include "app/widgets/red_paper.h"
#include "app/widgets/theme.h"
#include "tests/app/light_of.h"

#include <QComboBox>
#include <QDialog>
#include <QGraphicsEffect>
#include <QLabel>
#include <QLineEdit>
#include <QMainWindow>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QSignalSpy>
#include <QTabBar>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

#include <cstdlib>
#include <initializer_list>

namespace
{

QString manyWords() { return QStringLiteral("words that wrap and wrap again ").repeated(30); }

struct Wordy : QDialog {
    Wordy() : words(new QLabel(manyWords(), this)), below(new QPushButton(QStringLiteral("Do it")))
    {
        auto* column = new QVBoxLayout(this);
        words->setWordWrap(true);
        words->setFixedWidth(260);
        column->addWidget(words);
        column->addWidget(below);
    }
    QLabel* words;
    QPushButton* below;
};

} // namespace

TEST(Manners, AButtonOnAPageAnswersToEnterAndToSpace)
{
    QWidget page;
    auto* button = new QPushButton(QStringLiteral("Mix"), &page);
    QSignalSpy clicked(button, &QPushButton::clicked);
    page.show();
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Return);
    QTest::keyClick(button, Qt::Key_Enter);
    QTest::keyClick(button, Qt::Key_Space);
    EXPECT_EQ(clicked.count(), 3);
}

TEST(Manners, ADialogOpensAsLargeAsItsWordsNeed)
{
    Wordy dialog;
    dialog.show();
    const int atOnce = dialog.height();
    EXPECT_GE(dialog.words->height(), dialog.words->heightForWidth(dialog.words->width()));
    QTest::qWait(50);
    EXPECT_EQ(dialog.height(), atOnce) << "grew after it was placed";
}

TEST(Manners, WordsThatComeLaterPushNothingOutOfSight)
{
    Wordy dialog;
    dialog.words->setText(QStringLiteral("short"));
    dialog.show();
    const int before = dialog.height();
    dialog.words->setText(manyWords());
    QTest::qWait(50);
    EXPECT_GT(dialog.height(), before + 100);
    EXPECT_GE(dialog.words->height(), dialog.words->heightForWidth(dialog.words->width()));
    EXPECT_LT(dialog.below->geometry().bottom(), dialog.height());
    const int grown = dialog.height();
    dialog.words->clear();
    QTest::qWait(50);
    EXPECT_EQ(dialog.height(), grown) << "nothing jumps about";
}

TEST(Manners, ADialogThatGrowsStaysOnTheScreen)
{
    Wordy dialog;
    dialog.show();
    const QRect room = dialog.screen()->availableGeometry();
    dialog.move(room.left() + 40, room.bottom() - dialog.height() - 4);
    dialog.resize(dialog.width(), dialog.height() + 60);
    QTest::qWait(50);
    EXPECT_LE(dialog.frameGeometry().bottom(), room.bottom());
    EXPECT_GE(dialog.frameGeometry().top(), room.top());
    EXPECT_EQ(dialog.frameGeometry().left(), room.left() + 40);
}

TEST(Manners, ADialogLargerThanTheScreenShowsItsTop)
{
    Wordy dialog;
    dialog.show();
    const QRect room = dialog.screen()->availableGeometry();
    dialog.resize(dialog.width(), room.height() + 200);
    QTest::qWait(50);
    EXPECT_EQ(dialog.frameGeometry().top(), room.top());
}

TEST(Manners, ADialogOpensOverItsWindow)
{
    QMainWindow window;
    window.setGeometry(120, 100, 640, 600);
    window.show();
    QDialog dialog(&window);
    auto* column = new QVBoxLayout(&dialog);
    column->addWidget(new QLabel(QStringLiteral("Is the bottle clear?"), &dialog));
    dialog.show();
    QTest::qWait(50);
    const QPoint off = dialog.frameGeometry().center() - window.frameGeometry().center();
    constexpr int kFrame = 40; // of which Qt and the screen think differently
    EXPECT_LT(std::abs(off.x()), kFrame) << dialog.x();
    EXPECT_LT(std::abs(off.y()), kFrame) << dialog.y();
}

TEST(Manners, NoWindowOpensLargerThanItsScreen)
{
    QMainWindow window;
    Wordy dialog;
    for (QWidget* either : std::initializer_list<QWidget*>{&window, &dialog}) {
        const QRect room = either->screen()->availableGeometry();
        either->setGeometry(room.right() - 100, room.bottom() - 100, room.width() + 500,
                            room.height() + 500);
        either->show();
        QTest::qWait(50);
        EXPECT_TRUE(room.contains(either->frameGeometry()))
            << either->metaObject()->className() << either->frameGeometry().width() << " x "
            << either->frameGeometry().height();
    }
}

TEST(Manners, ABoxWantsRoomForWhatCameIntoItLater)
{
    QWidget page;
    auto* column = new QVBoxLayout(&page);
    auto* box = new QComboBox;
    box->addItem(QStringLiteral("none"));
    column->addWidget(box);
    page.show();
    const int before = box->sizeHint().width();
    const QString longer = QStringLiteral("Fix 16 · Acid fixer · 16 films left");
    box->addItem(longer);
    EXPECT_GT(box->sizeHint().width(), before);
    EXPECT_GT(box->sizeHint().width(), box->fontMetrics().horizontalAdvance(longer));
}

TEST(Manners, EnterInABoxThatCanBeTypedIntoIsNotLost)
{
    QDialog dialog;
    auto* column = new QVBoxLayout(&dialog);
    auto* box = new QComboBox;
    box->setEditable(true);
    box->addItems({QStringLiteral("collected for the depot"), QStringLiteral("tank of the club")});
    column->addWidget(box);
    auto* enter = new QPushButton(QStringLiteral("Enter"));
    enter->setDefault(true);
    column->addWidget(enter);
    QSignalSpy clicked(enter, &QPushButton::clicked);
    dialog.show();
    box->setFocus();
    box->lineEdit()->selectAll();
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_EQ(clicked.count(), 1);
    EXPECT_EQ(box->currentText(), QStringLiteral("collected for the depot"));
}

TEST(Manners, WhereWordsAreTypedNothingIsWhiteOnTheRedScreen)
{
    auto& theme = ullage::app::Theme::instance();
    QWidget page;
    auto* column = new QVBoxLayout(&page);
    auto* words = new QPlainTextEdit;
    column->addWidget(words);
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    words->setFocus();
    theme.setDarkRoom(true);
    QTest::keyClicks(words, " "); // the place of typing has just been painted anew
    const ullage::app::Light red = ullage::app::lightOf(*words->viewport());
    theme.setDarkRoom(false);
    EXPECT_LT(red.others, 40);
    EXPECT_GT(red.red, 150) << "where one types is still seen";
    EXPECT_EQ(words->viewport()->graphicsEffect(), nullptr) << "nothing stays of it";
}

TEST(Manners, PicturesOfQtsOwnDialogsAreRedOnTheRedScreen)
{
    auto& theme = ullage::app::Theme::instance();
    QMessageBox box;
    box.setIcon(QMessageBox::Warning); // yellow
    box.setText(QStringLiteral("The labels were not saved."));
    ullage::app::showQtDialogInRed(box);
    box.show();
    theme.setDarkRoom(true);
    QTest::qWait(1);
    const ullage::app::Light red = ullage::app::lightOf(box);
    theme.setDarkRoom(false);
    EXPECT_EQ(red.others, 0);
    EXPECT_GT(red.red, 100) << "and can be read";
}

TEST(Manners, TabsAreShownWhole)
{
    QWidget page;
    auto* tabs = new QTabBar(&page);
    for (const char* name : {"Solutions", "Bottles", "Development times"})
        tabs->addTab(QString::fromLatin1(name));
    page.show();
    EXPECT_FALSE(tabs->usesScrollButtons());
    EXPECT_GE(tabs->minimumSizeHint().width(), tabs->sizeHint().width());
}
