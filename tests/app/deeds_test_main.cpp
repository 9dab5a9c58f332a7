// One application for the tests of session, dialogs and controller.
#include "app/widgets/theme.h"
#include "tests/app/desktop_leaks.h"
#include "tests/app/english_plurals.h"
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
    qputenv("TZ", "UTC");
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    ullage::app::EnglishPlurals plurals;
    QApplication::installTranslator(&plurals);
    auto& theme = ullage::app::Theme::instance();
    theme.setMode(ullage::app::ThemeMode::Light);
    theme.install(application);
    return RUN_ALL_TESTS();
}
