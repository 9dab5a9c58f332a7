#include "tests/app/english_plurals.h"

#include <QCoreApplication>
#include <QLocale>

#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    qputenv("TZ", "UTC");
    testing::InitGoogleTest(&argc, argv);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QCoreApplication application(argc, argv);
    ullage::app::EnglishPlurals plurals;
    QCoreApplication::installTranslator(&plurals);
    return RUN_ALL_TESTS();
}
