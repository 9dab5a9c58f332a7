#include "app/widgets/grade_badge.h"
#include "app/widgets/where_from_button.h"
#include "app/widgets/where_from_popover.h"

#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QTest>
#include <QTextBlock>
#include <QTextLayout>
#include <QTranslator>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

Explanation sampleWhy()
{
    Explanation why;
    why.title = QStringLiteral("Films left");
    why.value = QStringLiteral("7 films");
    why.equation = QStringLiteral("a < b & c");
    why.inputs = {{QStringLiteral("Done"), QStringLiteral("3 films")}};
    why.constants = {{QStringLiteral("Cap"), QStringLiteral("0.05"), QStringLiteral("0.01 – 0.25"),
                      QStringLiteral("a survey"), chemistry::Grade::Published}};
    why.grade = chemistry::Grade::Computed;
    return why;
}

WhereFromPopover* openPopover()
{
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (auto* popover = qobject_cast<WhereFromPopover*>(widget);
            popover && popover->isVisible())
            return popover;
    }
    return nullptr;
}

struct Asked {
    QWidget window;
    QLabel* figure = new QLabel(QStringLiteral("7 films"), &window);
    int times = 0;

    Asked()
    {
        askWhereFrom(figure, [this] {
            ++times;
            return sampleWhy();
        });
        window.resize(300, 200);
        window.show();
    }
};

class LongWordsForGrades : public QTranslator
{
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override
    {
        return QLatin1String(context) == QLatin1String("Figures") &&
                       QLatin1String(source) == QLatin1String("from memory")
                   ? QStringLiteral("out of what somebody remembers")
                   : QString();
    }
};

} // namespace

TEST(ExplanationView, saysAllThereIsWithoutTakingItForMarkup)
{
    ExplanationView view;
    view.setExplanation(sampleWhy());
    const QString text = view.toPlainText();
    for (const char* part : {"Films left", "7 films", "a < b & c", "3 films", "0.05", "a survey"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part;
    EXPECT_TRUE(text.contains(gradeMeaning(chemistry::Grade::Computed)));
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("a survey")));
}

TEST(ExplanationView, breaksNoWordWhereItIsNarrow)
{
    ExplanationView view;
    Explanation why = sampleWhy();
    why.constants = {{QStringLiteral("Wall lets through"), QStringLiteral("0 cm³·mm/(m²·day·atm)"),
                      QStringLiteral("0.01 – 0.25"), QStringLiteral("a survey"),
                      chemistry::Grade::CommonPractice}};
    view.setExplanation(why);
    view.resize(270, 500);
    view.show();
    QTest::qWait(1);
    QStringList lines;
    for (QTextBlock block = view.document()->begin(); block.isValid(); block = block.next()) {
        for (int i = 0; i < block.layout()->lineCount(); ++i) {
            const QTextLine line = block.layout()->lineAt(i);
            lines << block.text().mid(line.textStart(), line.textLength());
        }
    }
    const QString all = lines.join(u'|').remove(QChar(0x2060)); // what holds a figure together
    for (const QString& whole :
         {gradeName(chemistry::Grade::CommonPractice), QStringLiteral("(0.01\u00a0–\u00a00.25)")})
        EXPECT_TRUE(all.contains(whole)) << whole.toStdString() << " in " << all.toStdString();
}

TEST(WhereFrom, opensByKeyAndClosesBackToTheFigure)
{
    Asked asked;
    EXPECT_TRUE(asked.figure->focusPolicy() & Qt::TabFocus);
    EXPECT_FALSE(asked.figure->accessibleDescription().isEmpty());
    asked.figure->setFocus();
    QTest::keyClick(asked.figure, Qt::Key_F1);
    ASSERT_TRUE(openPopover());
    EXPECT_EQ(asked.times, 1);
    EXPECT_EQ(openPopover()->view()->explanation().title, QStringLiteral("Films left"));
    QTest::keyClick(openPopover()->view(), Qt::Key_Escape);
    QApplication::processEvents();
    EXPECT_FALSE(openPopover());
    EXPECT_EQ(asked.window.focusWidget(), asked.figure);
}

TEST(WhereFrom, opensByMouseAndTheMakerCanBeReplaced)
{
    Asked asked;
    askWhereFrom(asked.figure, [] {
        Explanation other = sampleWhy();
        other.title = QStringLiteral("Other");
        return other;
    });
    QTest::mouseClick(asked.figure, Qt::LeftButton);
    ASSERT_TRUE(openPopover());
    EXPECT_EQ(asked.times, 0);
    EXPECT_EQ(openPopover()->view()->explanation().title, QStringLiteral("Other"));
    openPopover()->close();
}

TEST(WhereFromButton, listsWhatIsShownNowAndOpensIt)
{
    QWidget window;
    WhereFromButton button(&window);
    std::vector<Explanation> figures;
    button.setFigures([&] { return figures; });
    window.show();
    button.refresh();
    EXPECT_TRUE(button.isHidden()) << "nothing to ask about";
    figures = {sampleWhy(), sampleWhy()};
    figures.back().title = QStringLiteral("Other");
    button.refresh();
    EXPECT_TRUE(button.isVisible());
    emit button.menu()->aboutToShow();
    ASSERT_EQ(button.menu()->actions().size(), 2);
    EXPECT_EQ(button.menu()->actions()[1]->text(), QStringLiteral("Other · 7 films"));
    button.menu()->actions()[1]->trigger();
    ASSERT_TRUE(openPopover());
    EXPECT_EQ(openPopover()->view()->explanation().title, QStringLiteral("Other"));
    openPopover()->close();
    figures.pop_back();
    emit button.menu()->aboutToShow();
    EXPECT_EQ(button.menu()->actions().size(), 1) << "asked anew each time";
}

TEST(GradeBadge, everyGradeLooksDifferent)
{
    std::vector<QImage> seen;
    for (const MaybeGrade grade :
         {MaybeGrade(), MaybeGrade(chemistry::Grade::Published),
          MaybeGrade(chemistry::Grade::Computed), MaybeGrade(chemistry::Grade::CommonPractice),
          MaybeGrade(chemistry::Grade::FromMemory)}) {
        QImage image(180, 30, QImage::Format_ARGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paintGrade(painter, image.rect(), grade);
        painter.end();
        // In grey: colour is not what tells them apart.
        image = image.convertToFormat(QImage::Format_Grayscale8);
        for (const QImage& other : seen)
            EXPECT_NE(image, other);
        seen.push_back(image);
    }
}

TEST(GradeBadge, hasRoomForItsWordsInAnyLanguage)
{
    const double before = widestBadge();
    LongWordsForGrades words;
    QApplication::installTranslator(&words);
    EXPECT_GT(widestBadge(), before + 50);
    QImage image(400, 30, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintGrade(painter, image.rect(), chemistry::Grade::FromMemory);
    painter.end();
    int left = image.width();
    for (int x = 0; x < image.width() && left == image.width(); ++x) {
        for (int y = 0; y < image.height(); ++y) {
            if (image.pixelColor(x, y) != QColor(Qt::white))
                left = x;
        }
    }
    EXPECT_NEAR(image.width() - left, widestBadge(), 4) << "its ring takes what it needs";
    QApplication::removeTranslator(&words);
}

} // namespace ullage::app
