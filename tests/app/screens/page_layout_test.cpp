// Every page and every step of the guide on a screen of 1024 by 700, in English and German: nothing
// of them is cut, covered or squeezed, and no two things answer to one letter.
#include "app/cli/demo_book.h"
#include "app/session/starter.h"
#include "app/widgets/page_room.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "tests/app/screens/every_screen.h"
#include "tests/app/screens/layout_inspector.h"
#include "tests/app/screens/letter_inspector.h"

#include <QScrollBar>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ullage::app
{

class PageLayout : public testing::TestWithParam<const char*>
{
};

TEST_P(PageLayout, NothingOfAPageIsCutOrCovered)
{
    const QString language = QString::fromLatin1(GetParam());
    installLanguage(language);
    const QTemporaryDir folder;
    const auto clock = [] {
        return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    };
    const auto book = createDemoBook(folder.path(), clock);
    ASSERT_TRUE(book);
    Preferences preferences(folder.filePath("settings.ini"));
    preferences.setLanguage(language);
    SessionOptions options;
    options.clock = clock;
    options.starter = kStarterFormulary;
    Session session(options);
    MainWindow window;
    Controller controller(window, session, preferences);
    ASSERT_TRUE(controller.openBook(*book));
    window.show();
    letSettle();
    QStringList seen;
    seePages(window, session, [&](QWidget& page, const QString& name) {
        seen << name;
        const QStringList faults = layoutFaults(page) + letterFaults(page);
        EXPECT_TRUE(faults.isEmpty())
            << name.toStdString() << ": " << faults.join("\n    ").toStdString();
        for (const auto* room : page.findChildren<PageRoom*>())
            EXPECT_EQ(room->horizontalScrollBar()->maximum(), 0)
                << name.toStdString() << " is wider than its window";
    });
    EXPECT_GT(seen.size(), 30) << seen.join(' ').toStdString();
}

INSTANTIATE_TEST_SUITE_P(Languages, PageLayout, testing::Values("en", "de"));

} // namespace ullage::app
