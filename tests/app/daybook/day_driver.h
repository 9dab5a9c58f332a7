// Waiting for what a thread hands over, and the rows that a page shows.
#pragma once

#include "app/daybook/day_book_page.h"
#include "app/daybook/day_filter_bar.h"
#include "app/daybook/day_model.h"
#include "tests/app/dialogs/dialog_driver.h"

#include <QListView>

#include <gtest/gtest.h>

namespace ullage::app
{

/// Runs the event loop until it holds; a failure after ten seconds.
template <class Holds>
void waitFor(Holds holds)
{
    EXPECT_TRUE(QTest::qWaitFor(holds, 10'000));
}

/// Titles of all entries read, with "(…)" after those taken back, headings of days left out.
inline QStringList titles(const DayModel& model)
{
    QStringList found;
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex index = model.index(row);
        if (index.data(DayModel::IsDayRole).toBool())
            continue;
        const QString taken = index.data(DayModel::TakenRole).toString();
        found << index.data().toString() + (taken.isEmpty() ? QString() : " (" + taken + ")");
    }
    return found;
}

/// The page on a desk's book, shown.
class PageOn
{
public:
    explicit PageOn(Desk& desk) : page(desk.door(), new QWidget)
    {
        page.resize(1100, 760);
        page.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&page));
        settle();
    }

    void settle()
    {
        // Past the pause that the search makes, to what it asked for.
        QTest::qWait(1);
        waitFor([this] { return !page.model()->isWaiting(); });
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QStringList shown() const { return titles(*page.model()); }
    void choose(const QString& title)
    {
        for (int row = 0; row < page.model()->rowCount(); ++row) {
            if (page.model()->index(row).data().toString() == title)
                return page.list()->setCurrentIndex(page.model()->index(row));
        }
        ADD_FAILURE() << "no entry " << title.toStdString();
    }
    template <class Dialog>
    Dialog* dialog()
    {
        auto* found = page.findChild<Dialog*>();
        EXPECT_NE(found, nullptr);
        return found;
    }

    DayBookPage page;
};

} // namespace ullage::app
