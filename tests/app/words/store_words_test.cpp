#include "app/words/error_words.h"

#include <gtest/gtest.h>

using namespace ullage;
using namespace ullage::app;

namespace
{

QString said(int code)
{
    Error error{.code = ErrorCode::StoreFailed, .text = "the database's words"};
    error.number = code;
    return errorLine(error);
}

// Codes as SQLite documents them ("Result and Error Codes").
constexpr int kFull = 13;
constexpr int kReadOnly = 8;
constexpr int kReadOnlyFolder = 1544;
constexpr int kWrite = 778;
constexpr int kRead = 266;
constexpr int kCannotOpen = 14;
constexpr int kDamaged = 11;

} // namespace

TEST(StoreWords, sayWhatToDo)
{
    EXPECT_TRUE(said(kFull).contains("no room left"));
    EXPECT_TRUE(said(kFull).contains("Make room, and try again"));
    EXPECT_TRUE(said(kWrite).contains("could not be written"));
    EXPECT_TRUE(said(kRead).contains("could not be read"));
    EXPECT_TRUE(said(kReadOnly).contains("may not be written"));
    EXPECT_TRUE(said(kReadOnlyFolder).contains("may not be written"));
    EXPECT_TRUE(said(kCannotOpen).contains("cannot be opened"));
    EXPECT_TRUE(said(kDamaged).contains("restore a copy"));
    for (const int code :
         {kFull, kWrite, kRead, kReadOnly, kReadOnlyFolder, kCannotOpen, kDamaged}) {
        EXPECT_TRUE(said(code).contains("Nothing was changed")) << code;
        EXPECT_TRUE(said(code).endsWith("(the database's words)")) << code;
    }
}

TEST(StoreWords, keepTheDatabasesOwnWhereNothingIsKnown)
{
    EXPECT_EQ(said(1), "The book could not be read or written: the database's words");
    EXPECT_EQ(errorLine({.code = ErrorCode::StoreFailed, .text = "no row"}),
              "The book could not be read or written: no row");
    EXPECT_EQ(errorSentence({.code = ErrorCode::StoreFailed, .text = "no row"}, {}),
              "The book could not be read or written: no row.")
        << "a sentence in the window, after which others may stand";
}
