#include "app/widgets/theme.h"

#include <QApplication>
#include <QFile>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace ullage::app;

namespace
{

void expectReadable(const Colours& c, const char* name)
{
    SCOPED_TRACE(name);
    const auto check = [](const QColor& words, const QColor& ground, const char* what) {
        EXPECT_GE(contrast(words, ground), 4.5) << what;
    };
    for (const QColor& ground :
         {c.paper, c.rail, c.card, c.raised, c.selected, c.caution, c.calm}) {
        check(c.ink, ground, "ink");
        check(c.quiet, ground, "quiet words");
    }
    for (const QColor& ground : {c.paper, c.card}) {
        check(c.green, ground, "Good");
        check(c.amber, ground, "Near its end");
        check(c.blue, ground, "Test first");
        check(c.red, ground, "Discard");
    }
    check(c.amber, c.caution, "a caution's heading");
    check(c.green, c.calm, "a cue");
    check(c.onInk, c.ink, "a primary button");
    check(c.tapeInk, c.tape, "a label's name");
    check(c.tapeQuiet, c.tape, "a label's date");
    // Marks and lines need 3 to 1 against what they lie on.
    for (const QColor& line : {c.brown, c.blue, c.grey, c.focus})
        EXPECT_GE(contrast(line, c.card), 3.0);
}

} // namespace

TEST(Theme, WordsAreReadableOnEveryGround)
{
    expectReadable(lightColours(), "light");
    expectReadable(darkColours(), "dark");
}

TEST(Theme, ContrastOfBlackAndWhiteIs21)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrast(QColor("#777777"), Qt::white), 4.48, 0.01);
}

TEST(Theme, ChangesLive)
{
    Theme& theme = Theme::instance();
    theme.setMode(ThemeMode::Light);
    QWidget page;
    page.setAutoFillBackground(true);
    QPushButton button(QStringLiteral("Mix"));
    setButtonLook(&button, ButtonLook::Primary);
    button.resize(120, 40);
    const auto ground = [&] { return button.grab().toImage().pixelColor(20, 5); };
    EXPECT_EQ(ground(), lightColours().ink);

    QSignalSpy changed(&theme, &Theme::changed);
    theme.setMode(ThemeMode::Dark);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_TRUE(theme.isDark());
    EXPECT_EQ(page.grab().toImage().pixelColor(0, 0), darkColours().paper);
    EXPECT_EQ(ground(), darkColours().ink);
    theme.setMode(ThemeMode::Light);
    EXPECT_EQ(ground(), lightColours().ink);
}

TEST(Theme, StyleSheetLeavesNoNameUnresolved)
{
    for (const bool dark : {false, true}) {
        const QString sheet = styleSheet(dark ? darkColours() : lightColours(), dark);
        EXPECT_FALSE(sheet.contains(u'@'));
        EXPECT_FALSE(sheet.contains(QStringLiteral("%icons")));
        static const QRegularExpression kMark(QStringLiteral("url\\((:[^)]+)\\)"));
        auto marks = kMark.globalMatch(sheet);
        EXPECT_TRUE(marks.hasNext());
        while (marks.hasNext()) {
            const QString mark = marks.next().captured(1);
            EXPECT_TRUE(QFile::exists(mark)) << mark.toStdString();
        }
    }
}
