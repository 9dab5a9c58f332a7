#include "core/store/integrity.h"
#include "tests/core/store/damaged_book.h"

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

// Does to the file what no program of ours would, then checks it.
std::vector<Error> findingsAfter(const QStringList& tampering)
{
    TempBook book;
    EXPECT_TRUE(book.import(kStart + R"({"type":"packet","id":"p","solution":"mq"})" + "\n" +
                            R"({"type":"film","id":"f","run":"run-1"})"));
    close(book);
    tamper(book.path(), tampering);
    book.open();
    const auto check = checkBook(*book.store);
    EXPECT_TRUE(check) << check.error().text;
    return check ? check->findings : std::vector<Error>{};
}

} // namespace

TEST(Integrity, ASoundBookHasNoFindings)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    EXPECT_EQ(check->entries, 4);
    EXPECT_EQ(check->events, 2);
    EXPECT_EQ(check->batches, 1);
    EXPECT_TRUE(check->findings.empty());
    EXPECT_TRUE(findingsAfter({}).empty());
}

TEST(Integrity, FindsWhatWasTamperedWith)
{
    struct Case {
        const char* sql;
        ErrorCode code;
        const char* subject;
    };
    const Case cases[] = {
        {"UPDATE entry SET body = '{broken}' WHERE id = 'e2'", ErrorCode::Malformed, "e2"},
        {"UPDATE entry SET body = replace(body, '\"used_ml\":600', '\"used_ml\":6000'), volume_ml "
         "= 6000 WHERE id = 'e2'",
         ErrorCode::NotEnough, "e2"},
        {"UPDATE entry SET volume_ml = 601 WHERE id = 'e2'", ErrorCode::Conflict, "e2"},
        {"UPDATE entry SET at_ms = at_ms + 1 WHERE id = 'e1'", ErrorCode::Conflict, "e1"},
        {"UPDATE entry SET id = 'e9' WHERE id = 'e2'", ErrorCode::Conflict, "e9"},
        {"UPDATE entry SET run = NULL WHERE id = 'e2'", ErrorCode::Conflict, "e2"},
        {"DELETE FROM entry WHERE id = 'b1'", ErrorCode::UnknownId, "e1"},
        {"DELETE FROM entry WHERE id = 'mq'", ErrorCode::UnknownId, "p"},
        {"DELETE FROM entry WHERE id = 'e2'", ErrorCode::UnknownId, "f"},
        {"DELETE FROM entry WHERE batch = 'dev-1'", ErrorCode::UnknownId, "dev-1"},
        {"DELETE FROM batch", ErrorCode::Conflict, "dev-1"},
        {"UPDATE batch SET ended_ms = 5", ErrorCode::Conflict, "dev-1"},
        {"UPDATE batch SET name = 'x'", ErrorCode::Conflict, "dev-1"},
        {"UPDATE entry SET action = 99 WHERE id = 'e1'", ErrorCode::StoreFailed, ""},
        {"UPDATE entry SET body = replace(body, '1030', '500') WHERE id = 'b1'", ErrorCode::TooMuch,
         "e1"},
        {"UPDATE entry SET body = replace(body, '1030', '-1') WHERE id = 'b1'",
         ErrorCode::OutOfRange, "b1"},
    };
    for (const Case& one : cases) {
        const auto findings = findingsAfter({one.sql});
        const bool found = std::any_of(findings.begin(), findings.end(), [&](const Error& error) {
            return error.code == one.code && error.subject == one.subject;
        });
        EXPECT_TRUE(found) << one.sql;
        for (const Error& error : findings) {
            if (!found) {
                ADD_FAILURE() << static_cast<int>(error.code) << ' ' << error.field << ' '
                              << error.text << ' ' << error.subject;
            }
        }
    }
}
