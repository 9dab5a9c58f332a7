#include "core/ledger/run_sheet.h"

#include "core/chemistry/constants.h"
#include "core/chemistry/fixing.h"
#include "core/chemistry/washing.h"

#include <algorithm>
#include <cmath>

namespace ullage::ledger
{

using chemistry::Celsius;
using chemistry::Seconds;
using chemistry::TimeAtTemperature;
using formulary::Role;

namespace
{

const SheetBath* bathOf(const SheetRequest& request, std::optional<Role> role)
{
    const auto found =
        std::find_if(request.baths.begin(), request.baths.end(), [&](const SheetBath& bath) {
            return role && bath.judged->batch.solution->role == *role;
        });
    return found == request.baths.end() ? nullptr : &*found;
}

Result<DevelopingFactors> developing(const SheetRequest& request, const Judged& developer)
{
    if (request.pairs.empty()) {
        return refuse({.code = ErrorCode::NoFigure, .field = "base"});
    }
    const double q10 = developer.batch.solution->q10;
    const auto base = chemistry::baseTime(request.pairs, request.temperature, q10);
    if (!base) {
        return tl::unexpected(base.error());
    }
    const auto nearest =
        std::min_element(request.pairs.begin(), request.pairs.end(),
                         [&](const TimeAtTemperature& a, const TimeAtTemperature& b) {
                             const auto away = [&](const TimeAtTemperature& pair) {
                                 return std::abs((pair.temperature - request.temperature).value());
                             };
                             return away(a) < away(b);
                         });
    DevelopingFactors factors{.base = *nearest,
                              .temperature = base->time / nearest->time,
                              .wear = developer.assessment.wearFactor,
                              .strip = developer.batch.stripFactor.value_or(1),
                              .warnings = base->warnings};
    factors.time = base->time * factors.wear * factors.strip;
    return factors;
}

FixingFactors fixing(const SheetRequest& request, const Judged* fixer, Seconds figure,
                     TimeSource& source)
{
    FixingFactors factors{.times = chemistry::kFixFactor.value,
                          .cold = chemistry::coldFactor(request.temperature)};
    if (fixer) {
        const auto& solution = *fixer->batch.solution;
        if (request.tabularGrain) {
            factors.times = solution.tabularFactor.value_or(chemistry::kTabularFixFactor.value);
        }
        if (fixer->assessment.clearing) {
            factors.clearing = fixer->assessment.clearing->now;
            source = TimeSource::ClearingTest;
        } else if (solution.freshClearing) {
            factors.clearing = solution.freshClearing;
            source = TimeSource::SolutionFigure;
        }
    }
    if (!factors.clearing) {
        source = TimeSource::UserFigure;
    }
    factors.time = (factors.clearing ? *factors.clearing * factors.times : figure) * factors.cold;
    return factors;
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
    const auto found = std::find(kStepCodes.begin(), kStepCodes.end(), code);
    if (found == kStepCodes.end()) {
        return std::nullopt;
    }
    return static_cast<StepKind>(found - kStepCodes.begin());
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
        return Role::Fixer;
    case StepKind::WashAid:
        return Role::WashAid;
    case StepKind::WettingAgent:
        return Role::WettingAgent;
    default:
        return std::nullopt;
    }
}

TemperatureRule RunStep::rule() const
{
    return kind == StepKind::Develop ? TemperatureRule::Developer
           : kind == StepKind::Fix   ? TemperatureRule::Fixer
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
        const SheetBath* bath = bathOf(request, roleOf(line.kind));
        RunStep step{.kind = line.kind,
                     .changes = line.changes,
                     .planned = line.time,
                     .agitation = line.agitation,
                     .caution = cautionOf(line.kind)};
        if (roleOf(line.kind)) {
            last = bath;
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
            const auto factors = developing(request, *bath->judged);
            if (!factors) {
                return tl::unexpected(factors.error());
            }
            made.developing = *factors;
            made.basis.q10 = bath->judged->batch.solution->q10;
            step.planned = factors->time;
            step.source = TimeSource::Developing;
        }
        if (line.kind == StepKind::Fix) {
            made.fixing = fixing(request, bath ? bath->judged : nullptr, line.time, step.source);
            step.planned = made.fixing->time;
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
        if (bath) {
            step.batch = bath->judged->batch.id;
        }
        step.planned = Seconds(std::round(step.planned.value()));
        made.steps.push_back(step);
    }
    return made;
}

} // namespace ullage::ledger
