// What is said about the book's file says what to do.
#include "app/words/error_words.h"

#include "app/words/field_words.h"
#include "core/ledger/line_description.h"

#include <gtest/gtest.h>

#include <span>

namespace ullage::app
{

namespace
{

QString said(Error error) { return errorLine(error); }

void expectNamed(std::span<const formulary::FieldDescription> fields, const std::string& way)
{
    for (const formulary::FieldDescription& is : fields) {
        const std::string field = way + std::string(is.name);
        EXPECT_NE(fieldName(field), QString::fromStdString(field)) << field;
        expectNamed(is.inner, field + '.');
    }
}

} // namespace

TEST(ErrorWords, sayWhatIsNoBookAndWhy)
{
    EXPECT_EQ(said({.code = ErrorCode::NotABook, .text = "missing", .file = "a.ullage"}),
              "a.ullage: there is no such book.");
    for (const char* why : {"missing", "empty", "no name", "folder", "dangling link", "not a file",
                            "unreadable", "not SQLite", "another program's", "log alone"}) {
        const QString sentence = said({.code = ErrorCode::NotABook, .text = why});
        EXPECT_FALSE(sentence.contains(u'“')) << "a code is no sentence: " << why;
    }
    EXPECT_TRUE(said({.code = ErrorCode::NotABook, .text = "log alone"}).contains("-wal"));
}

// A refusal in the window began with "amount" or "use_by", as the journal spells them.
TEST(ErrorWords, everyFieldOfTheJournalHasANameForPeople)
{
    for (const ledger::LineDescription& line : ledger::lineDescriptions())
        expectNamed(line.fields, {});
}

TEST(ErrorWords, writeWholeNumbersOut)
{
    const QString line = said({.code = ErrorCode::OutOfRange,
                               .field = "volume_ml",
                               .number = 9e6,
                               .low = 0.5,
                               .high = 1e6,
                               .unit = "ml"});
    EXPECT_TRUE(line.contains("9000000 ml")) << line.toStdString();
    EXPECT_TRUE(line.contains("0.5 ml to 1000000 ml")) << line.toStdString();
}

TEST(ErrorWords, sayWhoIsWaitedForAndForHowLong)
{
    const QString known = said({.code = ErrorCode::Busy, .high = 5, .subject = "reader (4711)"});
    EXPECT_TRUE(known.contains("reader (4711)")) << known.toStdString();
    EXPECT_TRUE(known.contains("5 second")) << known.toStdString();
    EXPECT_TRUE(known.contains("try again")) << known.toStdString();
    const QString unknown = said({.code = ErrorCode::Busy});
    EXPECT_TRUE(unknown.contains("another program or window")) << unknown.toStdString();
    EXPECT_FALSE(unknown.contains("0 second")) << unknown.toStdString();
}

TEST(ErrorWords, sayWhereTheBookWentAndThatNothingWasEntered)
{
    for (const char* how : {"missing", "replaced", "log"}) {
        const QString sentence = said({.code = ErrorCode::BookMoved, .text = how});
        EXPECT_TRUE(sentence.contains("Nothing was entered")) << sentence.toStdString();
    }
    EXPECT_NE(said({.code = ErrorCode::BookMoved, .text = "replaced"}),
              said({.code = ErrorCode::BookMoved, .text = "missing"}));
}

} // namespace ullage::app
