// The choice of a period, as the day book and its statistics offer it.
#include "app/widgets/moment_field.h"
#include "app/widgets/period_bar.h"
#include "app/words/local_calendar.h"

#include <QComboBox>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

using Span = PeriodBar::Span;

const std::vector<Span> kSpans{Span::All,   Span::Today,   Span::Week, Span::TwelveMonths,
                               Span::Month, Span::Quarter, Span::Year, Span::Between};

} // namespace

TEST(PeriodBar, StaysWhereItWasGoneBackToAndEndsWithToday)
{
    PeriodBar bar(kSpans);
    bar.setReadingLocale(QLocale(QLocale::English));
    bar.setToday(QDate(2026, 11, 25));
    bar.setSpan(PeriodBar::Span::Quarter);
    bar.step(-3);
    EXPECT_EQ(bar.words(), "January to March 2026");
    bar.setToday(QDate(2027, 1, 1)); // another quarter begins
    EXPECT_EQ(bar.words(), "January to March 2026");
    bar.step(99);
    EXPECT_EQ(bar.words(), "January to March 2027") << "not beyond today's";
    EXPECT_EQ(bar.period(), periodOf(QDate(2027, 1, 1), QDate(2027, 4, 1)));
    QToolButton* later = nullptr;
    for (auto* button : bar.findChildren<QToolButton*>()) {
        if (button->accessibleName() == "Later")
            later = button;
    }
    ASSERT_TRUE(later);
    EXPECT_FALSE(later->isEnabled());
    bar.setSpan(PeriodBar::Span::All);
    bar.step(-1); // leads nowhere
    EXPECT_EQ(bar.period(), ledger::Period());
}

TEST(PeriodBar, CountsFromToday)
{
    PeriodBar bar({Span::Week, Span::All, Span::Today, Span::TwelveMonths});
    const QDate today(2026, 3, 1);
    bar.setToday(today);
    EXPECT_EQ(bar.span(), Span::Week) << "the first that is offered";
    EXPECT_EQ(bar.period(), periodOf(QDate(2026, 2, 23), QDate(2026, 3, 2)));
    EXPECT_EQ(bar.words(), "Last 7 days");
    bar.setSpan(Span::Today);
    EXPECT_EQ(bar.period(), periodOf(today, QDate(2026, 3, 2)));
    bar.setSpan(Span::TwelveMonths);
    EXPECT_EQ(bar.period(), periodOf(QDate(2025, 4, 1), {})) << "what is to come too";
    EXPECT_EQ(bar.findChild<QComboBox*>()->count(), 4);
}

// Whoever goes on to another period while a day is being typed is told once.
TEST(PeriodBar, TellsOfADayOnceItIsUnderstood)
{
    PeriodBar bar(kSpans);
    bar.setReadingLocale(QLocale(QLocale::English));
    bar.setToday(QDate(2026, 11, 25));
    bar.setSpan(Span::Between);
    bar.show();
    auto* from = bar.findChild<MomentField*>();
    ASSERT_EQ(from->accessibleName(), "From");
    QSignalSpy told(&bar, &PeriodBar::changed);
    from->selectAll();
    QTest::keyClicks(from, "yesterday");
    EXPECT_EQ(told.count(), 0) << "typing is waited for";
    EXPECT_TRUE(QTest::qWaitFor([&] { return told.count() == 1; }));
    EXPECT_EQ(bar.period(), periodOf(QDate(2026, 11, 24), QDate(2026, 11, 26)));
    from->selectAll();
    QTest::keyClicks(from, "today");
    bar.setSpan(Span::All);
    EXPECT_EQ(told.count(), 2);
    EXPECT_FALSE(bar.findChild<QTimer*>({}, Qt::FindDirectChildrenOnly)->isActive());
}

} // namespace ullage::app
