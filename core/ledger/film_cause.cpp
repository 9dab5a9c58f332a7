#include "core/ledger/film_cause.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

using formulary::Role;
using enum NoCause;

constexpr std::string_view kPractice = "common practice, no source";
constexpr std::string_view kKeeping = "core/chemistry/README.md: a stop bath is spoilt by nothing";
constexpr std::nullopt_t can = std::nullopt;

using Against = decltype(CauseRow::against);

//                             thin        dense     stained   not clear   uneven
constexpr Against kAnything = {can, can, can, can, can};

// A developer: a spent one gives less; one that is worn is given more time, which may be too much;
// its oxidation products stain; the bromide of worn ones runs down the film. It clears nothing.
constexpr Against kDeveloper = {can, can, can, NoFixing, can};
constexpr Against kOldDeveloper = {can, OtherWay, can, NoFixing, AllAlike};

// A stop bath that is spent stops late and not everywhere at once, lets developer into the fixer
// (stain) and hardener out of it (scum).
constexpr Against kStop = {AfterImage, can, can, can, can};
constexpr Against kOldStop = {NeverSpoilt, NeverSpoilt, NeverSpoilt, NeverSpoilt, NeverSpoilt};

// A fixer that is spent leaves silver halide: milky, in patches, darkening to density and stain.
// Bleaching takes hours in a fresh one, not the minutes of a run.
constexpr Against kFixer = {AfterImage, can, can, can, can};

// What is left of fixer and dye stains; drops dry to marks.
constexpr Against kWashAid = {Later, Later, can, Later, Later};
constexpr Against kWetting = {Later, Later, can, Later, can};

constexpr Against kLonger = {Enough, Enough, Enough, Enough, Enough};
constexpr Against kLessPreWet = {PlainWater, PlainWater, can, PlainWater, can};
constexpr Against kMoreDeveloping = {OtherWay, can, can, NoFixing, AllAlike};
constexpr Against kLessDeveloping = {can, OtherWay, OtherWay, NoFixing, can};
// Developing goes on in what drains from the film, and in air; a fixer is poured back as well.
constexpr Against kMorePouring = {OtherWay, can, can, NoFixing, can};
constexpr Against kLessPouring = {can, OtherWay, OtherWay, can, AllAlike};

// Everything goes slower or faster: developing, fixing and washing, and so does staining.
constexpr Against kWarmer = {OtherWay, can, can, OtherWay, can};
constexpr Against kColder = {can, OtherWay, can, can, OtherWay};
constexpr Against kExposure = {can, can, ExposureOnly, ExposureOnly, ExposureOnly};

constexpr CauseRow bath(FilmTrait trait, Role role, const Against& against,
                        std::string_view source = kPractice)
{
    return {.trait = trait, .role = role, .against = against, .source = source};
}

constexpr CauseRow step(FilmTrait trait, std::string_view kind, const Against& against)
{
    return {.trait = trait, .step = kind, .against = against, .source = kPractice};
}

constexpr CauseRow plain(FilmTrait trait, const Against& against)
{
    return {.trait = trait, .against = against, .source = kPractice};
}

constexpr std::array kTable{
    bath(FilmTrait::Bottle, Role::Developer, kDeveloper),
    bath(FilmTrait::WearOver, Role::Developer, kDeveloper),
    bath(FilmTrait::StandingOver, Role::Developer, kOldDeveloper),
    bath(FilmTrait::BeyondVerdict, Role::Developer, kDeveloper),
    bath(FilmTrait::Bottle, Role::Stop, kStop),
    bath(FilmTrait::WearOver, Role::Stop, kStop),
    bath(FilmTrait::StandingOver, Role::Stop, kOldStop, kKeeping),
    bath(FilmTrait::BeyondVerdict, Role::Stop, kStop),
    bath(FilmTrait::Bottle, Role::Fixer, kFixer),
    bath(FilmTrait::WearOver, Role::Fixer, kFixer),
    bath(FilmTrait::StandingOver, Role::Fixer, kFixer),
    bath(FilmTrait::BeyondVerdict, Role::Fixer, kFixer),
    bath(FilmTrait::Bottle, Role::WashAid, kWashAid),
    bath(FilmTrait::WearOver, Role::WashAid, kWashAid),
    bath(FilmTrait::StandingOver, Role::WashAid, kWashAid),
    bath(FilmTrait::BeyondVerdict, Role::WashAid, kWashAid),
    bath(FilmTrait::Bottle, Role::WettingAgent, kWetting),
    bath(FilmTrait::WearOver, Role::WettingAgent, kWetting),
    bath(FilmTrait::StandingOver, Role::WettingAgent, kWetting),
    bath(FilmTrait::BeyondVerdict, Role::WettingAgent, kWetting),
    // Of a bath of no known kind nothing is ruled out.
    bath(FilmTrait::Bottle, Role::Other, kAnything),
    bath(FilmTrait::WearOver, Role::Other, kAnything),
    bath(FilmTrait::StandingOver, Role::Other, kAnything),
    bath(FilmTrait::BeyondVerdict, Role::Other, kAnything),

    step(FilmTrait::StepLonger, "pre-wet", kLonger),
    step(FilmTrait::StepShorter, "pre-wet", kLessPreWet),
    step(FilmTrait::StepLonger, "develop", kMoreDeveloping),
    step(FilmTrait::StepShorter, "develop", kLessDeveloping),
    step(FilmTrait::StepLonger, "pour-back", kMorePouring),
    step(FilmTrait::StepShorter, "pour-back", kLessPouring),
    step(FilmTrait::StepLonger, "water-stop", kLonger),
    step(FilmTrait::StepShorter, "water-stop", kStop),
    step(FilmTrait::StepLonger, "acid-stop", kLonger),
    step(FilmTrait::StepShorter, "acid-stop", kStop),
    step(FilmTrait::StepLonger, "fix", kLonger),
    step(FilmTrait::StepShorter, "fix", kFixer),
    step(FilmTrait::StepLonger, "second-fix", kLonger),
    step(FilmTrait::StepShorter, "second-fix", kFixer),
    step(FilmTrait::StepLonger, "rinse", kLonger),
    step(FilmTrait::StepShorter, "rinse", kWashAid),
    step(FilmTrait::StepLonger, "wash-aid", kLonger),
    step(FilmTrait::StepShorter, "wash-aid", kWashAid),
    step(FilmTrait::StepLonger, "wash", kLonger),
    step(FilmTrait::StepShorter, "wash", kWashAid),
    step(FilmTrait::StepLonger, "fill-and-dump", kLonger),
    step(FilmTrait::StepShorter, "fill-and-dump", kWashAid),
    step(FilmTrait::StepLonger, "wetting-agent", kLonger),
    step(FilmTrait::StepShorter, "wetting-agent", kWetting),

    plain(FilmTrait::Warmer, kWarmer),
    plain(FilmTrait::Colder, kColder),
    plain(FilmTrait::ExposureIndex, kExposure),
    // Whoever, whatever and wherever they were: that may stand for anything.
    plain(FilmTrait::OneRun, kAnything),
    plain(FilmTrait::Film, kAnything),
    plain(FilmTrait::Format, kAnything),
    plain(FilmTrait::Tank, kAnything),
    plain(FilmTrait::Person, kAnything),
};

} // namespace

std::string_view code(NoCause why) { return kNoCauseCodes[static_cast<std::size_t>(why)]; }

std::span<const CauseRow> causeTable() { return kTable; }

std::optional<NoCause> whyNot(FilmFault fault, const TraitFound& trait)
{
    const bool ofStep =
        trait.trait == FilmTrait::StepLonger || trait.trait == FilmTrait::StepShorter;
    const auto row = std::find_if(kTable.begin(), kTable.end(), [&](const CauseRow& one) {
        return one.trait == trait.trait && one.role == trait.role &&
               (!ofStep || one.step == trait.subject);
    });
    return row == kTable.end() ? std::nullopt : row->against[static_cast<std::size_t>(fault)];
}

} // namespace ullage::ledger
