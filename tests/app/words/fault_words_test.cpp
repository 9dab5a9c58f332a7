// Faults of a book are told by what people know an entry by.
#include "app/words/fault_words.h"
#include "app/words/moment_text.h"
#include "core/store/damage.h"

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

using namespace std::chrono;

const Wording kWords{{}, QLocale("en_GB")};
const chemistry::Instant kNow = sys_days(year{2026} / 11 / 25);

chemistry::Instant day(unsigned month, unsigned day)
{
    return sys_days(year{2026} / month / day) + hours(12);
}

Error changed(std::int64_t entry, const char* id)
{
    return {.code = ErrorCode::NotAsEntered,
            .text = store::damage::kChanged,
            .subject = id,
            .entry = entry,
            .entryType = "event"};
}

Error missing(double low, double high)
{
    return {
        .code = ErrorCode::NotAsEntered, .text = store::damage::kMissing, .low = low, .high = high};
}

} // namespace

TEST(FaultWords, anEntryIsNamedByKindBottleAndMoment)
{
    store::FaultNames names;
    names.entries[1251] = {"event", "processed", day(11, 23), "Dev 26", {}};
    const QString name = "Film, Dev 26, " + momentText(day(11, 23), kNow, kWords.locale);
    EXPECT_EQ(faultSentence(changed(1251, "e837"), names, kNow, kWords),
              name + " is not as it was entered.");
    EXPECT_EQ(faultLine(changed(1251, "e837"), names, kNow, kWords.locale),
              "entry 1251 (" + name + ") is not as it was entered.");
    // What nobody knows anything of keeps its number and id.
    EXPECT_EQ(faultSentence(changed(7, "e7"), names, kNow, kWords),
              "Entry 7 (event “e7”) is not as it was entered.");
}

TEST(FaultWords, whatTheFormularyHoldsIsNamedByItsName)
{
    EXPECT_EQ(entryNameText({"vessel", {}, {}, {}, "Amber 2"}, kNow, kWords.locale),
              "Bottle “Amber 2”");
    EXPECT_EQ(entryNameText({"vessel", {}, {}, {}, {}}, kNow, kWords.locale), QString());
}

TEST(FaultWords, missingEntriesAreToldByTheDaysAroundThem)
{
    store::FaultNames names;
    names.missing[732] = {day(6, 15), day(6, 22)};
    const QString text = faultSentence(missing(732, 748), names, kNow, kWords);
    EXPECT_TRUE(text.startsWith("17 ")) << text.toStdString();
    EXPECT_TRUE(text.contains(" missing between " + dayText(day(6, 15), kNow, kWords.locale) +
                              " and " + dayText(day(6, 22), kNow, kWords.locale)))
        << text.toStdString();
    // Entered late: the one before is the later one.
    EXPECT_EQ(missingText(17, {day(6, 22), day(6, 15)}, kNow, kWords.locale), text);
    EXPECT_TRUE(missingText(2, {day(6, 15), {}}, kNow, kWords.locale).contains(" missing after "));
    EXPECT_TRUE(missingText(2, {{}, day(6, 15)}, kNow, kWords.locale).contains(" missing before "));
    // Within a day the time of day tells them apart.
    const auto later = day(6, 15) + hours(2);
    EXPECT_TRUE(missingText(2, {day(6, 15), later}, kNow, kWords.locale)
                    .contains(momentText(later, kNow, kWords.locale)));
}

// Where the language abbreviates months with a stop, the sentence's own one falls on it.
TEST(FaultWords, aSentenceThatEndsInAMonthHasOneStop)
{
    const Wording german{{}, QLocale("de")};
    store::FaultNames names;
    names.missing[732] = {day(6, 15), day(10, 13)};
    for (const QString& text : {faultSentence(missing(732, 748), names, kNow, german),
                                faultLine(missing(732, 748), names, kNow, german.locale),
                                missingText(17, {day(6, 15), day(10, 13)}, kNow, german.locale)}) {
        EXPECT_TRUE(text.endsWith(dayText(day(10, 13), kNow, german.locale))) << text.toStdString();
        EXPECT_TRUE(text.endsWith(u'.'));
        EXPECT_FALSE(text.contains("..")) << text.toStdString();
    }
}

TEST(FaultWords, aBottleIsCalledByItsName)
{
    store::FaultNames names;
    names.bottles["b-26"] = "Dev 26";
    const Error batch{
        .code = ErrorCode::NotAsEntered, .text = store::damage::kBatch, .subject = "b-26"};
    EXPECT_EQ(faultSentence(batch, names, kNow, kWords),
              "The batch “Dev 26” has other events than were entered.");
    const Error fold{.code = ErrorCode::UnknownId, .text = "mq", .subject = "b-26"};
    EXPECT_EQ(faultSentence(fold, names, kNow, kWords), "Dev 26: The book has no “mq”.");
}

} // namespace ullage::app
