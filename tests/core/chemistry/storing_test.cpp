#include "core/chemistry/storing.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

TEST(StoreWarning, coldForAllAndWarmForFixersOnly)
{
    EXPECT_EQ(storeWarning(Celsius(4.9), false), StoreWarning::TooCold);
    EXPECT_EQ(storeWarning(Celsius(4.9), true), StoreWarning::TooCold);
    EXPECT_FALSE(storeWarning(Celsius(5), false));
    EXPECT_FALSE(storeWarning(Celsius(29), true));
    EXPECT_EQ(storeWarning(Celsius(29.1), true), StoreWarning::TooWarm);
    EXPECT_FALSE(storeWarning(Celsius(35), false));
}

} // namespace
} // namespace ullage::chemistry
