#include "core/store/json_line.h"

#include <gtest/gtest.h>

using ullage::ErrorCode;
using namespace ullage::store;

namespace
{

ErrorCode refusalOf(const QByteArray& text)
{
    const auto line = readJsonLine(text);
    EXPECT_FALSE(line) << text.constData();
    return line ? ErrorCode{} : line.error().code;
}

} // namespace

TEST(JsonLine, KeepsEveryValueAsItWasWritten)
{
    const auto line = readJsonLine(R"( {"b": 1.50 , "a":{"x":[1e3,"\u00e9"]}} )");
    ASSERT_TRUE(line);
    ASSERT_EQ(line->fields.size(), 2u);
    EXPECT_EQ(line->fields[0].key, "b");
    EXPECT_EQ(line->fields[0].raw, "1.50");
    EXPECT_EQ(line->fields[1].raw, R"({"x":[1e3,"\u00e9"]})");
    EXPECT_EQ(line->object["b"].toDouble(), 1.5);
}

TEST(JsonLine, RefusesBrokenSyntax)
{
    for (const char* text : {"",
                             " ",
                             "[]",
                             "1",
                             "\"a\"",
                             "null",
                             "{",
                             "{\"a\"",
                             "{\"a\":",
                             "{\"a\":1",
                             "{\"a\":1,",
                             "{\"a\":1,}",
                             "{\"a\" 1}",
                             "{a:1}",
                             "{\"a\":01}",
                             "{\"a\":+1}",
                             "{\"a\":1.}",
                             "{\"a\":.5}",
                             "{\"a\":1e}",
                             "{\"a\":1e+}",
                             "{\"a\":tru}",
                             "{\"a\":'b'}",
                             "{\"a\":[1,]}",
                             "{\"a\":[1 2]}",
                             "{\"a\":[}",
                             "{\"a\":\"b}",
                             "{\"a\":\"\\x\"}",
                             "{\"a\":\"\\u12\"}",
                             "{\"a\":\"\\u12g4\"}",
                             "{\"a\":\"\\u+123\"}",
                             "{\"a\":1} {\"b\":2}",
                             "{\"a\":1}x",
                             "{\"a\":\"\t\"}",
                             "{,}",
                             "{\"a\":--1}",
                             "{\"a\":0x10}"}) {
        EXPECT_EQ(refusalOf(text), ErrorCode::Malformed) << text;
    }
}

TEST(JsonLine, RefusesTheSameFieldTwiceWhereverItStands)
{
    for (const char* text : {R"({"a":1,"a":1})", R"({"a":1,"\u0061":2})"}) {
        const auto line = readJsonLine(text);
        ASSERT_FALSE(line) << text;
        EXPECT_EQ(line.error().code, ErrorCode::Malformed);
        EXPECT_EQ(line.error().field, "a");
    }
    const auto inner = readJsonLine(R"({"wear":{"rule":"none","rule":"none"}})");
    ASSERT_FALSE(inner);
    EXPECT_EQ(inner.error().field, "wear.rule");
}

TEST(JsonLine, RefusesNumbersADoubleCannotHoldByName)
{
    for (const char* text :
         {R"({"v":1e999})", R"({"v":-1e999})", R"({"v":NaN})", R"({"v":Infinity})",
          R"({"v":-Infinity})", R"({"v":nan})", R"({"v":1e-999})"}) {
        const auto line = readJsonLine(text);
        ASSERT_FALSE(line) << text;
        EXPECT_EQ(line.error().code, ErrorCode::NotFinite) << text;
        EXPECT_EQ(line.error().field, "v");
    }
}

TEST(JsonLine, RefusesSurrogatesWithoutTheirPartner)
{
    for (const char* text : {R"({"a":"\ud800"})", R"({"a":"\udc00"})", R"({"a":"\ud800x"})",
                             R"({"a":"\ud800\ud800"})", R"({"a":"\ud800\u0041"})"}) {
        EXPECT_EQ(refusalOf(text), ErrorCode::Malformed) << text;
    }
    EXPECT_TRUE(readJsonLine(R"({"a":"\ud83d\ude00"})"));
}

TEST(JsonLine, RefusesWhatIsNotUtf8)
{
    for (const QByteArray& text :
         {QByteArray("{\"a\":\"\xff\"}"), QByteArray("{\"a\":\"\xc3\"}"),
          QByteArray("{\"a\":\"\xc0\xaf\"}"), QByteArray("{\"a\":\"\xed\xa0\x80\"}")}) {
        EXPECT_EQ(refusalOf(text), ErrorCode::BadEncoding);
    }
}

TEST(JsonLine, BoundsHowDeepObjectsAndArraysNest)
{
    const auto nested = [](int depth) {
        return "{\"a\":" + QByteArray(depth, '[') + QByteArray(depth, ']') + "}";
    };
    EXPECT_TRUE(readJsonLine(nested(kMostNested)));
    EXPECT_EQ(refusalOf(nested(kMostNested + 1)), ErrorCode::Malformed);
    EXPECT_EQ(refusalOf("{\"a\":" + QByteArray(500'000, '[')), ErrorCode::Malformed);
}
