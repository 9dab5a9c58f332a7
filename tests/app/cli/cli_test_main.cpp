// Qt Sql finds its drivers through the application object.
#include "tests/app/english_plurals.h"

#include <QCoreApplication>

#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    ullage::app::EnglishPlurals plurals;
    QCoreApplication::installTranslator(&plurals);
    return RUN_ALL_TESTS();
}
