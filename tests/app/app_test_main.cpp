// One application for all widget tests: no screen, no settings of the machine, the program's look.
#include "app/widgets/theme.h"
#include "tests/app/desktop_leaks.h"
#include "tests/app/screens/offscreen_screen.h"

#include <QApplication>
#include <QLocale>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    // Large enough for a window of any size that a test gives it.
    const QTemporaryDir folder;
    ullage::app::useOffscreen({1920, 1200}, folder.path());
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    auto& theme = ullage::app::Theme::instance();
    theme.setMode(ullage::app::ThemeMode::Light);
    theme.install(application);
    return RUN_ALL_TESTS();
}
