// Letters need an application with fonts; no screen.
#include "tests/app/english_plurals.h"

#include <QGuiApplication>
#include <QLocale>

#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QGuiApplication application(argc, argv);
    ullage::app::EnglishPlurals plurals;
    QCoreApplication::installTranslator(&plurals);
    return RUN_ALL_TESTS();
}
