#include "app/widgets/plain_text.h"
#include "app/widgets/why_not.h"

#include <QAction>
#include <QPushButton>
#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace ullage::app;

TEST(WhyNot, AGreyEntrySaysWhyInItsOwnWords)
{
    QAction entry(QString{});
    setEntryWords(&entry, QStringLiteral("&Measure silver…"));
    setWhyNot(&entry, QStringLiteral("fixers only"));
    EXPECT_FALSE(entry.isEnabled());
    EXPECT_EQ(entry.text(), "&Measure silver… (fixers only)");
    EXPECT_EQ(whyNot(&entry), "fixers only");
    setEntryWords(&entry, QStringLiteral("&Silber messen…"));
    EXPECT_EQ(entry.text(), "&Silber messen… (fixers only)") << "another language keeps it grey";
    setWhyNot(&entry, {});
    EXPECT_TRUE(entry.isEnabled());
    EXPECT_EQ(entry.text(), "&Silber messen…");
}

TEST(WhyNot, AReasonIsNeitherMarkupNorAKey)
{
    const QString reason = QStringLiteral("<b>Dev</b> & %1 are full");
    QAction entry(QString{});
    setEntryWords(&entry, QStringLiteral("&Decant…"));
    setWhyNot(&entry, reason);
    EXPECT_EQ(entry.text(), "&Decant… (<b>Dev</b> && %1 are full)");
    EXPECT_EQ(entry.toolTip(), plainToolTip(reason));
    QPushButton button;
    setWhyNot(&button, reason);
    EXPECT_EQ(button.toolTip(), plainToolTip(reason));
    EXPECT_EQ(button.accessibleDescription(), reason);
}

TEST(WhyNot, AButtonIsAsItsEntryIs)
{
    QAction entry(QString{});
    setEntryWords(&entry, QStringLiteral("One more film"));
    QPushButton button;
    followEntry(&button, &entry);
    setButtonTip(&button, QStringLiteral("as the last one"));
    QSignalSpy chosen(&entry, &QAction::triggered);
    button.click();
    EXPECT_EQ(chosen.count(), 1);
    EXPECT_EQ(button.toolTip(), "as the last one");
    setWhyNot(&entry, QStringLiteral("it is to be discarded"));
    EXPECT_FALSE(button.isEnabled());
    EXPECT_EQ(button.toolTip(), "it is to be discarded");
    setWhyNot(&entry, {});
    EXPECT_TRUE(button.isEnabled());
    EXPECT_EQ(button.toolTip(), "as the last one");
}
