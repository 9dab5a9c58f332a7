#include "core/ledger/run_sheet.h"

#include "core/chemistry/washing.h"
#include "core/formulary/codes.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::Seconds;
using formulary::Role;

namespace
{

const SheetBath* bathOf(const SheetRequest& request, std::optional<BathPlace> place)
{
    const auto found =
        std::find_if(request.baths.begin(), request.baths.end(), [&](const SheetBath& bath) {
            return place && bath.judged->batch.solution->role == place->role &&
                   bath.second == place->second;
        });
    return found == request.baths.end() ? nullptr : &*found;
}

TimeSource sourceOf(ClearingFrom from)
{
    switch (from) {
    case ClearingFrom::Tests:
        return TimeSource::ClearingTest;
    case ClearingFrom::SolutionFigure:
        return TimeSource::SolutionFigure;
    case ClearingFrom::Nowhere:
        break;
    }
    return TimeSource::UserFigure;
}

const TemplateStep* lineOf(const RunTemplate& sheet, StepKind kind)
{
    const auto found = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                    [&](const TemplateStep& step) { return step.kind == kind; });
    return found == sheet.steps.end() ? nullptr : &*found;
}

// Without a clearing time the template's own figures stand: those of both baths together.
FixingFactors fixing(const SheetRequest& request, Seconds figure)
{
    const TemplateStep* again = lineOf(request.sheet, StepKind::SecondFix);
    const SheetBath* fixer = bathOf(request, Role::Fixer);
    const auto known = fixer ? fixingTime(fixer->judged->batch, fixer->judged->assessment,
                                          request.temperature, request.tabularGrain)
                             : std::nullopt;
    auto factors =
        known ? *known : fixingTime(again ? figure + again->time : figure, request.temperature);
    factors.baths = again && bathOf(request, placeOf(StepKind::SecondFix)) ? 2 : 1;
    return factors;
}

// In one of two baths; what nobody knows is shared as the template has it.
Seconds fixingIn(const FixingFactors& factors, Seconds figure)
{
    return factors.baths > 1 && factors.from == ClearingFrom::Nowhere ? figure * factors.cold
                                                                      : factors.inEach();
}

StepCaution cautionOf(StepKind kind)
{
    switch (kind) {
    case StepKind::Develop:
        return StepCaution::Developer;
    case StepKind::PourBack:
        return StepCaution::PourBack;
    case StepKind::AcidStop:
        return StepCaution::Acid;
    case StepKind::Fix:
    case StepKind::SecondFix:
        return StepCaution::Fixer;
    case StepKind::WettingAgent:
        return StepCaution::Wetting;
    default:
        return StepCaution::None;
    }
}

} // namespace

std::string_view code(StepKind kind) { return kStepCodes[static_cast<std::size_t>(kind)]; }

std::optional<StepKind> stepFromCode(std::string_view code)
{
    return formulary::fromCode<StepKind>(kStepCodes, code);
}

std::string_view code(TimeSource source)
{
    return kTimeSourceCodes[static_cast<std::size_t>(source)];
}

std::string_view code(StepCaution caution)
{
    return kStepCautionCodes[static_cast<std::size_t>(caution)];
}

std::optional<Role> roleOf(StepKind kind)
{
    switch (kind) {
    case StepKind::Develop:
        return Role::Developer;
    case StepKind::AcidStop:
        return Role::Stop;
    case StepKind::Fix:
    case StepKind::SecondFix:
        return Role::Fixer;
    case StepKind::WashAid:
        return Role::WashAid;
    case StepKind::WettingAgent:
        return Role::WettingAgent;
    default:
        return std::nullopt;
    }
}

std::optional<BathPlace> placeOf(StepKind kind)
{
    const auto role = roleOf(kind);
    return role ? std::optional(BathPlace(*role, kind == StepKind::SecondFix)) : std::nullopt;
}

TemperatureRule RunStep::rule() const
{
    const auto role = roleOf(kind);
    return role == Role::Developer ? TemperatureRule::Developer
           : role == Role::Fixer   ? TemperatureRule::Fixer
                                   : TemperatureRule::None;
}

Seconds RunSheet::whole() const
{
    Seconds sum;
    for (const RunStep& step : steps) {
        sum += step.planned;
    }
    return sum;
}

Result<RunSheet> makeSheet(const SheetRequest& request)
{
    if (auto fine = check(request.sheet); !fine) {
        return tl::unexpected(fine.error());
    }
    RunSheet made;
    made.basis.pairs = request.pairs;
    const SheetBath* last = nullptr;
    for (const TemplateStep& line : request.sheet.steps) {
        const SheetBath* bath = bathOf(request, placeOf(line.kind));
        RunStep step{.kind = line.kind,
                     .changes = line.changes,
                     .planned = line.time,
                     .agitation = line.agitation,
                     .caution = cautionOf(line.kind)};
        if (roleOf(line.kind)) {
            last = bath;
        }
        if (line.kind == StepKind::SecondFix && !bath) {
            continue;
        }
        if (line.kind == StepKind::PourBack) {
            if (!last || last->oneShot) {
                continue;
            }
            bath = last;
        }
        if (line.kind == StepKind::Develop) {
            if (!bath) {
                return refuse({.code = ErrorCode::Missing, .field = "developer"});
            }
            auto factors = developingTime(bath->judged->batch, bath->judged->assessment,
                                          request.pairs, request.temperature);
            if (!factors) {
                return tl::unexpected(factors.error());
            }
            made.developing = std::move(*factors);
            made.basis.q10 = bath->judged->batch.solution->q10;
            step.planned = made.developing->time;
            step.source = TimeSource::Developing;
        }
        if (line.kind == StepKind::Fix) {
            made.fixing = fixing(request, line.time);
        }
        if (roleOf(line.kind) == Role::Fixer) {
            step.source = sourceOf(made.fixing->from);
            step.planned = fixingIn(*made.fixing, line.time);
        }
        if (line.kind == StepKind::Wash || line.kind == StepKind::FillAndDump) {
            const auto cold =
                chemistry::coldWashFactor(request.washWater.value_or(request.temperature));
            if (!cold) {
                return tl::unexpected(cold.error());
            }
            if (*cold > 1) {
                step.planned *= *cold;
                step.source = TimeSource::ColdWash;
            }
        }
        if (bath && roleOf(line.kind) && bath->pour.stock.value() > 0) {
            step.pour = bath->pour;
        }
        if (bath) {
            step.batch = bath->judged->batch.id;
        }
        // What somebody set is kept to the second; what was reckoned is shown so everywhere, and
        // film is never fixed for less than was reckoned.
        if (step.planned == line.time) {
            step.planned = Seconds(std::round(step.planned.value()));
        } else if (roleOf(line.kind) == Role::Fixer) {
            step.planned = inUseAtLeast(step.planned);
        } else {
            step.planned = inUse(step.planned);
        }
        made.steps.push_back(step);
    }
    return made;
}

} // namespace ullage::ledger
