#include "app/widgets/manners.h"

#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

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
