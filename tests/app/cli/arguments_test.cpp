#include "app/cli/arguments.h"

#include <gtest/gtest.h>

using namespace ullage::app;

TEST(Arguments, AreTakenApart)
{
    Arguments arguments;
    ASSERT_FALSE(parse({"--book", "a.ullage", "time", "--base=9:30@20", "--json", "-", "--", "--x"},
                       arguments));
    EXPECT_EQ(arguments.command, "time");
    EXPECT_EQ(arguments.value("book"), "a.ullage");
    EXPECT_EQ(arguments.value("base"), "9:30@20");
    EXPECT_TRUE(arguments.has("json"));
    EXPECT_EQ(arguments.operands, (QStringList{"-", "--x"}));
}

TEST(Arguments, RefuseWhatNobodyKnows)
{
    for (const QStringList& words : {QStringList{"report", "--colour"},
                                     {"report", "-x"},
                                     {"report", "--at"},
                                     {"report", "--json", "--json"},
                                     {"report", "--json=yes"},
                                     {"report", "--"
                                                "=x"}}) {
        Arguments arguments;
        EXPECT_TRUE(parse(words, arguments)) << words.join(' ').toStdString();
    }
}
