// Every page and dialog on a screen of 1024 by 700, in English and German: nothing reaches past the
// screen, and a dialog's buttons are in view.
#include "app/cli/demo_book.h"
#include "app/session/starter.h"
#include "app/widgets/theme.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "tests/app/desktop_leaks.h"
#include "tests/app/screens/every_screen.h"
#include "tests/app/screens/layout_inspector.h"
#include "tests/app/screens/letter_inspector.h"
#include "tests/app/screens/offscreen_screen.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QScreen>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

class SmallScreen : public testing::TestWithParam<const char*>
{
protected:
    void SetUp() override
    {
        const QString language = QString::fromLatin1(GetParam());
        installLanguage(language);
        const auto clock = [] {
            return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
        };
        const auto book = createDemoBook(m_folder.path(), clock);
        ASSERT_TRUE(book);
        m_preferences = std::make_unique<Preferences>(m_folder.filePath("settings.ini"));
        m_preferences->setLanguage(language);
        SessionOptions options;
        options.clock = clock;
        options.starter = kStarterFormulary;
        m_session = std::make_unique<Session>(options);
        m_window = std::make_unique<MainWindow>();
        m_controller = std::make_unique<Controller>(*m_window, *m_session, *m_preferences);
        ASSERT_TRUE(m_controller->openBook(*book));
    }

    QTemporaryDir m_folder;
    std::unique_ptr<Preferences> m_preferences;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<MainWindow> m_window;
    std::unique_ptr<Controller> m_controller;
};

void expectOnScreen(const QWidget& window, const QString& name)
{
    const QRect room = window.screen()->availableGeometry();
    EXPECT_TRUE(room.contains(window.frameGeometry()))
        << name.toStdString() << " is " << window.frameGeometry().width() << " x "
        << window.frameGeometry().height() << " at " << window.x() << ", " << window.y();
}

} // namespace

TEST_P(SmallScreen, TabAndLettersGoThroughEveryField)
{
    seeDialogs(*m_session, *m_preferences, [&](QWidget& dialog, const QString& name) {
        const QStringList faults = tabFaults(dialog) + letterFaults(dialog);
        EXPECT_TRUE(faults.isEmpty())
            << name.toStdString() << ": " << faults.join(QStringLiteral("; ")).toStdString();
    });
}

TEST_P(SmallScreen, NoDialogGrowsWhenSomethingIsRefused)
{
    QSize before;
    int refused = 0;
    seeDialogs(*m_session, *m_preferences, [&](QWidget& dialog, const QString& name) {
        if (name.endsWith(QStringLiteral("-refused"))) {
            ++refused;
            EXPECT_EQ(dialog.width(), before.width()) << name.toStdString();
            EXPECT_EQ(dialog.height(), before.height()) << name.toStdString();
        }
        before = dialog.size();
    });
    EXPECT_GT(refused, 4);
}

TEST_P(SmallScreen, TheWindowStaysOnItAsLargeAsItWasElsewhere)
{
    m_window->resize(1900, 1000);
    m_window->show();
    letSettle();
    expectOnScreen(*m_window, QStringLiteral("window"));
}

TEST_P(SmallScreen, EveryDialogHasItsButtonsInView)
{
    int dialogs = 0;
    int buttons = 0;
    seeDialogs(*m_session, *m_preferences, [&](QWidget& dialog, const QString& name) {
        ++dialogs;
        expectOnScreen(dialog, name);
        for (const auto* box : dialog.findChildren<QDialogButtonBox*>()) {
            for (const auto* button : box->buttons()) {
                if (!button->isVisible())
                    continue;
                ++buttons;
                const QRect place(button->mapTo(&dialog, QPoint()), button->size());
                EXPECT_TRUE(dialog.rect().contains(place))
                    << name.toStdString() << ": " << button->text().toStdString();
                EXPECT_EQ(button->visibleRegion().boundingRect(), button->rect())
                    << name.toStdString() << ": " << button->text().toStdString();
            }
        }
    });
    EXPECT_GT(dialogs, 40);
    EXPECT_GT(buttons, 60);
}

INSTANTIATE_TEST_SUITE_P(Languages, SmallScreen, testing::Values("en", "de"));

} // namespace ullage::app

int main(int argc, char** argv)
{
    const QTemporaryDir folder;
    ullage::app::useOffscreen({1024, 700}, folder.path());
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    auto& theme = ullage::app::Theme::instance();
    theme.setMode(ullage::app::ThemeMode::Light);
    theme.install(application);
    return RUN_ALL_TESTS();
}
