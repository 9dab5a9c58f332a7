// What a person may type into the book.
#include "core/ledger/typed_text.h"

#include "core/ledger/book_import.h"
#include "tests/core/ledger/book_kit.h"

using namespace ullage;
using namespace ullage::ledger;

namespace
{

std::optional<ErrorCode> refusal(const std::string& text, std::size_t most = 10)
{
    const auto fine = checkTyped("note", text, most);
    return fine ? std::nullopt : std::optional(fine.error().code);
}

class TypedIntoTheBook : public BookTest
{
};

} // namespace

TEST(TypedText, TakesAnyUtf8)
{
    for (const char* text : {"", "a", "\x7f", "ä", "\u07FF", "\u0800", "\uD7FF", "\uE000", "\uFFFD",
                             "\U00010000", "\U0010FFFF", "<b>&\"'\n\x1b"}) {
        EXPECT_FALSE(refusal(text)) << text;
    }
}

TEST(TypedText, RefusesWhatIsNoUtf8)
{
    for (const char* text :
         {"\x80", "\xC1\x81", "\xC3", "\xC3(", "\xE0\x80\x80", "\xED\xA0\x80", "\xF0\x80\x80\x80",
          "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "a\xE2\x82"}) {
        EXPECT_EQ(refusal(text), ErrorCode::BadEncoding);
    }
}

TEST(TypedText, RefusesTheNullCharacter)
{
    EXPECT_EQ(refusal(std::string("a\0b", 3)), ErrorCode::Malformed);
}

TEST(TypedText, CountsCharactersNotBytes)
{
    EXPECT_FALSE(refusal("ääääääääää"));
    const auto fine = checkTyped("note", "👍👍👍", 2);
    ASSERT_FALSE(fine);
    EXPECT_EQ(fine.error().code, ErrorCode::TooLong);
    EXPECT_EQ(fine.error().field, "note");
    EXPECT_EQ(fine.error().number, 3);
    EXPECT_EQ(fine.error().high, 2);
    EXPECT_EQ(fine.error().unit, "characters");
}

TEST_F(TypedIntoTheBook, ALongestTextIsTakenAndOneLongerRefused)
{
    const std::string dev = mix();
    EXPECT_TRUE(book->record(dev, Noted{std::string(kLongestText, 'n')}, when(1)));
    expectRefused(
        [&] { return book->record(dev, Noted{std::string(kLongestText + 1, 'n')}, when(2)); },
        ErrorCode::TooLong, "text");
    expectRefused([&] { return book->record(dev, Noted{std::string("a\0b", 3)}, when(2)); },
                  ErrorCode::Malformed, "text");
    expectRefused(
        [&] {
            return book->record(dev, Looked{true, "\xFF"}, when(2));
        },
        ErrorCode::BadEncoding, "why");
    expectRefused<std::string>(
        [&] {
            return book->mix({"dev",
                              "glass",
                              chemistry::Millilitres(1000),
                              std::string(kLongestName + 1, 'n'),
                              {},
                              false},
                             when(2));
        },
        ErrorCode::TooLong, "name");
    book->setPerson(std::string(kLongestName + 1, 'n'));
    expectRefused([&] { return book->record(dev, Noted{"n"}, when(2)); }, ErrorCode::TooLong, "by");
}

// Whatever a line's description calls a text has a limit, inner ones too.
TEST(TypedText, LooksAtEveryTextOfALine)
{
    const std::string name(kLongestName + 1, 'n');
    const auto field = [](const Entry& entry) {
        const auto fine = checkTyped(entry);
        return fine ? std::string() : fine.error().field;
    };
    EXPECT_EQ(field({Packet{.id = "p", .place = name}, {}}), "place");
    EXPECT_EQ(field({Chemical{.id = "c", .hazards = {"H302", name}}, {}}), "hazards");
    EXPECT_EQ(field({Container{.id = "w", .name = name}, {}}), "name");
    EXPECT_EQ(field({RunTimes{.steps = {{name, {}, {}}}, .id = "t"}, {}}), "steps.step");
    EXPECT_EQ(field({FilmRecord{.id = "f", .notes = name}, {}}), "");
    formulary::Solution solution;
    solution.sources["capacity"] = std::string(kLongestSource, 's');
    EXPECT_EQ(field({solution, {}}), "");
    solution.sources["capacity"] += 's';
    EXPECT_EQ(field({solution, {}}), "sources.capacity");
    const auto event = [](Happening what) {
        return Entry{Event{.id = "e", .batch = "b", .what = std::move(what)}, {}};
    };
    EXPECT_EQ(field(event(Measured{.method = name})), "method");
    EXPECT_EQ(field(event(HandedOver{.to = name})), "to");
    EXPECT_EQ(field(event(ThrownAway{.why = name})), "");
    EXPECT_EQ(field(event(Processed{.load = {.films = {{name, 1}}}})), "films.format");
}

// What an older book or a journal holds is nothing that was typed here.
TEST_F(TypedIntoTheBook, AnImportTakesWhatIsLonger)
{
    const std::string dev = mix();
    auto import = book->import();
    ASSERT_TRUE(import);
    const Event note{"long", dev, History::at(1), Noted{std::string(kLongestText + 1, 'n')},
                     {},     {}};
    ASSERT_TRUE((*import)->add({note, {}}));
    EXPECT_TRUE((*import)->finish());
}
