// The list of rules against the tests of this program and against the model page.
#include "tests/published/rules.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <set>
#include <sstream>
#include <string>

namespace ullage::published
{
namespace
{

std::set<std::string> testsOfThisProgram()
{
    std::set<std::string> names;
    const auto& all = *::testing::UnitTest::GetInstance();
    for (int i = 0; i < all.total_test_suite_count(); ++i) {
        const auto& suite = *all.GetTestSuite(i);
        for (int k = 0; k < suite.total_test_count(); ++k) {
            names.insert(std::string(suite.name()) + '.' + suite.GetTestInfo(k)->name());
        }
    }
    return names;
}

// Items of the model page's chapter of that name, without their marks, lines joined.
std::set<std::string> listed(const std::string& heading)
{
    std::ifstream page(ULLAGE_MODEL_PAGE);
    std::set<std::string> items;
    std::string line;
    bool within = false;
    std::string item;
    const auto close = [&] {
        if (!item.empty()) {
            items.insert(item);
        }
        item.clear();
    };
    while (std::getline(page, line)) {
        if (line.starts_with("## ")) {
            close();
            within = line.find(heading) != std::string::npos;
        } else if (within && line.starts_with("- ")) {
            close();
            item = line.substr(2);
        } else if (within && line.starts_with("  ") && !item.empty()) {
            item += line.substr(1);
        } else {
            close();
        }
    }
    close();
    return items;
}

TEST(Rules, theirChecksAreTestsOfThisProgram)
{
    const auto tests = testsOfThisProgram();
    for (const Rule& rule : rules()) {
        for (const auto check : rule.checks) {
            EXPECT_TRUE(tests.contains(std::string(check))) << check << " of: " << rule.rule;
        }
    }
}

TEST(Rules, everyTestBelongsToOne)
{
    std::set<std::string_view> named;
    for (const Rule& rule : rules()) {
        named.insert(rule.checks.begin(), rule.checks.end());
    }
    for (const std::string& test : testsOfThisProgram()) {
        EXPECT_TRUE(named.contains(test) || test.starts_with("Rules.")) << test;
    }
}

// Each item there begins with the rule; after a colon it says what is known.
TEST(Rules, theModelPageListsTheUncheckedOnesAndNoOthers)
{
    std::set<std::string> unchecked;
    for (const Rule& rule : rules()) {
        if (rule.checks.empty()) {
            unchecked.insert(std::string(rule.rule));
        }
    }
    std::set<std::string> onPage;
    for (const std::string& item : listed("Not checked")) {
        onPage.insert(item.substr(0, item.find(':')));
    }
    EXPECT_EQ(unchecked, onPage);
}

} // namespace
} // namespace ullage::published
