// The table of what can be a cause of which mark, held against what is said of it in words.
#include "core/ledger/film_cause.h"
#include "core/ledger/run_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace ullage::ledger
{
namespace
{

using formulary::Role;

TraitFound bath(FilmTrait trait, Role role) { return {.trait = trait, .role = role}; }
TraitFound step(FilmTrait trait, const std::string& kind)
{
    return {.trait = trait, .subject = kind};
}
bool can(FilmFault fault, const TraitFound& trait) { return !whyNot(fault, trait); }

constexpr std::array kBathTraits{FilmTrait::Bottle, FilmTrait::WearOver, FilmTrait::StandingOver,
                                 FilmTrait::BeyondVerdict};
constexpr std::array kFaults{FilmFault::Thin, FilmFault::Dense, FilmFault::Stained,
                             FilmFault::NotClear, FilmFault::Uneven};

TEST(FilmCause, TheTableHasEveryTraitWithEveryBathAndStepOnce)
{
    const auto rows = causeTable();
    const auto count = [&](FilmTrait trait, std::optional<Role> role, std::string_view kind) {
        return std::count_if(rows.begin(), rows.end(), [&](const CauseRow& row) {
            return row.trait == trait && row.role == role && row.step == kind;
        });
    };
    std::size_t expected = 0;
    for (int i = 0; i <= static_cast<int>(FilmTrait::Person); ++i) {
        const auto trait = static_cast<FilmTrait>(i);
        if (std::find(kBathTraits.begin(), kBathTraits.end(), trait) != kBathTraits.end()) {
            for (int role = 0; role <= static_cast<int>(Role::Other); ++role, ++expected) {
                EXPECT_EQ(count(trait, static_cast<Role>(role), ""), 1) << i << ' ' << role;
            }
        } else if (trait == FilmTrait::StepLonger || trait == FilmTrait::StepShorter) {
            for (const std::string_view kind : kStepCodes) {
                EXPECT_EQ(count(trait, {}, kind), 1) << kind;
                ++expected;
            }
        } else {
            EXPECT_EQ(count(trait, {}, ""), 1) << i;
            ++expected;
        }
    }
    EXPECT_EQ(rows.size(), expected);
    for (const CauseRow& row : rows) {
        EXPECT_FALSE(row.source.empty());
    }
}

TEST(FilmCause, OnlyWhatComesBeforeTheStopCanThin)
{
    for (const FilmTrait trait : kBathTraits) {
        EXPECT_TRUE(can(FilmFault::Thin, bath(trait, Role::Developer)));
        for (const Role role : {Role::Stop, Role::Fixer, Role::WashAid, Role::WettingAgent}) {
            EXPECT_FALSE(can(FilmFault::Thin, bath(trait, role)));
        }
    }
    EXPECT_TRUE(can(FilmFault::Thin, step(FilmTrait::StepShorter, "develop")));
    EXPECT_FALSE(can(FilmFault::Thin, step(FilmTrait::StepLonger, "develop")));
    EXPECT_FALSE(can(FilmFault::Thin, step(FilmTrait::StepLonger, "fix")));
    EXPECT_FALSE(can(FilmFault::Thin, step(FilmTrait::StepShorter, "fix")));
    EXPECT_TRUE(can(FilmFault::Thin, {.trait = FilmTrait::Colder}));
    EXPECT_EQ(whyNot(FilmFault::Thin, {.trait = FilmTrait::Warmer}), NoCause::OtherWay);
    EXPECT_EQ(whyNot(FilmFault::Thin, bath(FilmTrait::Bottle, Role::Fixer)), NoCause::AfterImage);
}

TEST(FilmCause, DenseIsTooMuchOfWhatThinIsTooLittle)
{
    EXPECT_TRUE(can(FilmFault::Dense, bath(FilmTrait::WearOver, Role::Developer)))
        << "the time was lengthened for it";
    EXPECT_FALSE(can(FilmFault::Dense, bath(FilmTrait::StandingOver, Role::Developer)));
    EXPECT_TRUE(can(FilmFault::Dense, step(FilmTrait::StepLonger, "develop")));
    EXPECT_FALSE(can(FilmFault::Dense, step(FilmTrait::StepShorter, "develop")));
    EXPECT_TRUE(can(FilmFault::Dense, step(FilmTrait::StepShorter, "acid-stop")));
    EXPECT_TRUE(can(FilmFault::Dense, {.trait = FilmTrait::Warmer}));
    EXPECT_FALSE(can(FilmFault::Dense, {.trait = FilmTrait::Colder}));
}

TEST(FilmCause, NotClearIsNeverTheDevelopersNorTheWashs)
{
    for (const FilmTrait trait : kBathTraits) {
        EXPECT_EQ(whyNot(FilmFault::NotClear, bath(trait, Role::Developer)), NoCause::NoFixing);
        EXPECT_TRUE(can(FilmFault::NotClear, bath(trait, Role::Fixer)));
        EXPECT_FALSE(can(FilmFault::NotClear, bath(trait, Role::WashAid)));
    }
    EXPECT_TRUE(can(FilmFault::NotClear, step(FilmTrait::StepShorter, "fix")));
    EXPECT_FALSE(can(FilmFault::NotClear, step(FilmTrait::StepLonger, "fix")));
    EXPECT_FALSE(can(FilmFault::NotClear, step(FilmTrait::StepShorter, "wash")));
}

TEST(FilmCause, StainsComeOfEveryBathButAnOldStop)
{
    for (const Role role :
         {Role::Developer, Role::Stop, Role::Fixer, Role::WashAid, Role::WettingAgent}) {
        EXPECT_TRUE(can(FilmFault::Stained, bath(FilmTrait::BeyondVerdict, role)));
    }
    EXPECT_EQ(whyNot(FilmFault::Stained, bath(FilmTrait::StandingOver, Role::Stop)),
              NoCause::NeverSpoilt);
    EXPECT_TRUE(can(FilmFault::Stained, step(FilmTrait::StepShorter, "wash")));
    EXPECT_FALSE(can(FilmFault::Stained, step(FilmTrait::StepLonger, "wash")));
}

TEST(FilmCause, ExposureChangesDensityAlone)
{
    const TraitFound exposure{.trait = FilmTrait::ExposureIndex};
    EXPECT_TRUE(can(FilmFault::Thin, exposure));
    EXPECT_TRUE(can(FilmFault::Dense, exposure));
    for (const FilmFault fault : {FilmFault::Stained, FilmFault::NotClear, FilmFault::Uneven}) {
        EXPECT_EQ(whyNot(fault, exposure), NoCause::ExposureOnly);
    }
}

TEST(FilmCause, WhatIsNotKnownIsNotRuledOut)
{
    for (const FilmFault fault : kFaults) {
        EXPECT_TRUE(can(fault, step(FilmTrait::StepLonger, "toning")));
        EXPECT_TRUE(can(fault, bath(FilmTrait::WearOver, Role::Other)));
        EXPECT_TRUE(can(fault, {.trait = FilmTrait::Bottle})) << "of no role";
        EXPECT_TRUE(can(fault, {.trait = FilmTrait::Person}));
    }
}

TEST(FilmCause, EveryMarkCanComeOfSomethingThatTheTableNames)
{
    for (const FilmFault fault : kFaults) {
        const auto rows = causeTable();
        EXPECT_TRUE(std::any_of(rows.begin(), rows.end(), [&](const CauseRow& row) {
            return row.role == Role::Developer || row.role == Role::Fixer
                       ? !row.against[static_cast<std::size_t>(fault)]
                       : false;
        })) << code(fault);
    }
    std::set<std::string_view> codes(kNoCauseCodes.begin(), kNoCauseCodes.end());
    EXPECT_EQ(codes.size(), kNoCauseCodes.size());
    EXPECT_EQ(code(NoCause::ExposureOnly), "exposure-only");
}

} // namespace
} // namespace ullage::ledger
