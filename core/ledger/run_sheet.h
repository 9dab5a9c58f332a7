// The steps of a run: a template that people keep and edit, made into times, bottles and cautions.
#pragma once

#include "core/formulary/solution.h"
#include "core/ledger/agitation.h"
#include "core/ledger/load_times.h"
#include "core/ledger/run_plan.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::ledger
{

enum class StepKind {
    PreWet,
    Develop,
    PourBack, ///< what the last bath before it took, back into its own bottle
    WaterStop,
    AcidStop,
    Fix,
    SecondFix, ///< the second of two fixing baths; left out where there is no bottle for it
    Rinse,
    WashAid,
    Wash,        ///< in running water
    FillAndDump, ///< `changes` fills
    WettingAgent,
};
inline constexpr std::array<std::string_view, 12> kStepCodes{
    "pre-wet",    "develop", "pour-back", "water-stop", "acid-stop",     "fix",
    "second-fix", "rinse",   "wash-aid",  "wash",       "fill-and-dump", "wetting-agent"};
std::string_view code(StepKind kind);
std::optional<StepKind> stepFromCode(std::string_view code);
/// The bottle a step needs, if any.
std::optional<formulary::Role> roleOf(StepKind kind);
/// The same, with which of two fixing baths it is.
std::optional<BathPlace> placeOf(StepKind kind);

/// One line of a template. Plain values, to be kept and edited.
struct TemplateStep {
    StepKind kind{};
    chemistry::Seconds time; ///< whole step; unused by Develop, and by Fix with a figure of its own
    int changes = 1;         ///< changes of water or fills; 1 to 20
    Agitation agitation;
    friend bool operator==(const TemplateStep&, const TemplateStep&) = default;
};

struct RunTemplate {
    std::string name; ///< the user's own; empty for the ones the program brings
    std::string id;
    std::vector<TemplateStep> steps;
    friend bool operator==(const RunTemplate&, const RunTemplate&) = default;
};

/// Refuses no steps or more than 40, times outside 1 s to 4 h, changes out of range, agitation that
/// check() refuses, two steps of a kind that takes a bottle, a pour-back with no bath before it, a
/// second fixing bath with no first one before it.
Result<void> check(const RunTemplate& sheet);

/// Those the program brings: "water-stop" (running wash), "acid-stop", "fill-and-dump" and
/// "two-baths" (for fixing).
/// Common practice, every figure to be edited.
std::vector<RunTemplate> usualTemplates();

/// Where a step's time comes from.
enum class TimeSource {
    Template,       ///< the user's own figure for a step without chemistry
    Developing,     ///< base × temperature × wear × strip
    ClearingTest,   ///< this bottle's tests
    SolutionFigure, ///< the solution's clearing time when fresh
    UserFigure,     ///< nothing known of the fixer: the figure of the template
    ColdWash,       ///< the template's washing time, lengthened for cold water
};
inline constexpr std::array<std::string_view, 6> kTimeSourceCodes{
    "template", "developing", "clearing-test", "solution-figure", "user-figure", "cold-wash"};
std::string_view code(TimeSource source);

/// What to be careful with at a step; worded by the application.
enum class StepCaution { None, Developer, PourBack, Acid, Fixer, Wetting };
inline constexpr std::array<std::string_view, 6> kStepCautionCodes{
    "none", "developer", "pour-back", "acid", "fixer", "wetting-agent"};
std::string_view code(StepCaution caution);

/// How a reading of the thermometer changes a step.
enum class TemperatureRule { None, Developer, Fixer };

/// What is poured into the tank for a bath.
struct Pour {
    chemistry::Millilitres stock; ///< from the bottle, as it stands in it
    chemistry::Millilitres water; ///< added; 0 for undiluted
    friend bool operator==(const Pour&, const Pour&) = default;
};

struct RunStep {
    StepKind kind{};
    int changes = 1;
    chemistry::Seconds planned; ///< to the whole second
    TimeSource source = TimeSource::Template;
    Agitation agitation;
    std::string batch; ///< the bottle it goes through, or into which it is poured back; or empty
    StepCaution caution = StepCaution::None;
    std::optional<Pour> pour; ///< for a step that a bottle is poured from, where it is known

    [[nodiscard]] TemperatureRule rule() const;
    friend bool operator==(const RunStep&, const RunStep&) = default;
};

/// What is known of temperature and film, and goes with the run so that a later reading can be
/// used.
struct TemperatureBasis {
    std::vector<chemistry::TimeAtTemperature> pairs;
    double q10 = 1.9;
};

/// A bath and its bottle.
struct SheetBath {
    const Judged* judged = nullptr; ///< not null
    bool oneShot = false;
    Pour pour;           ///< no stock: not known
    bool second = false; ///< of two fixing baths
};

struct SheetRequest {
    RunTemplate sheet;
    chemistry::Celsius temperature;
    std::vector<chemistry::TimeAtTemperature> pairs; ///< base time: the film maker's figures
    std::vector<SheetBath> baths;                    ///< at most one a place
    bool tabularGrain = false;
    std::optional<chemistry::Celsius> washWater; ///< empty for as warm as the reading
};

struct RunSheet {
    std::vector<RunStep> steps;
    TemperatureBasis basis;
    std::optional<DevelopingFactors> developing;
    std::optional<FixingFactors> fixing;

    [[nodiscard]] chemistry::Seconds whole() const;
};

/// The sheet for these bottles. Pour-back steps of one-shot baths, and of baths without a bottle,
/// are left out; so is a second fixing bath without a bottle. With one, each of the two baths has
/// half of the fixing time; without, the first has all of it. Refuses what check() refuses, a
/// Develop step without a developer (Missing) or without a base time (NoFigure), and what
/// baseTime() and coldWashFactor() refuse. Cold water lengthens the running wash and every filling
/// of fill and dump.
Result<RunSheet> makeSheet(const SheetRequest& request);

} // namespace ullage::ledger
