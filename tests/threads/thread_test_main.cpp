#include "tests/threads/qt_hand_over.h"

#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const ullage::threads::Application application(argc, argv);
    return RUN_ALL_TESTS();
}
