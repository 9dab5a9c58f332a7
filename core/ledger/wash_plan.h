// How the film of a run is washed: one of the published ways (chemistry/washing.h) or fill and
// dump, put into a run template in place of the washing it has.
#pragma once

#include "core/chemistry/washing.h"
#include "core/ledger/run_sheet.h"

#include <array>
#include <optional>

namespace ullage::ledger
{

enum class WashKind { AsTemplate, Running, Changes, Aid, FillAndDump };
inline constexpr std::array<WashKind, 5> kWashKinds{WashKind::AsTemplate, WashKind::Running,
                                                    WashKind::Changes, WashKind::Aid,
                                                    WashKind::FillAndDump};

struct WashPlan {
    WashKind kind = WashKind::AsTemplate;
    int fills = 10;                      ///< of fill and dump: 1 to 20
    chemistry::Seconds each{60};         ///< how long a filling stands and is turned
    chemistry::Millilitres filling{500}; ///< V, water of one filling
    chemistry::Millilitres carried{25};  ///< v, what film and tank keep back each time
    /// The tap; empty for as warm as the thermometer's reading.
    std::optional<chemistry::Celsius> water;
};

/// Rinse, wash aid, running wash, fill and dump: the steps that a way of washing replaces.
bool washes(StepKind kind);

/// The published way behind a kind; empty for the template's own and for fill and dump.
std::optional<chemistry::WashWay> wayOf(WashKind kind);

/// The template with this washing: rinses, wash aid and washes after the fixer give way to it, and
/// the wetting agent stays last. Times are those of water at 18 °C or more; makeSheet() lengthens
/// them for the cold. A wash with a full change every so often becomes fill and dump with as many
/// fillings as that takes.
RunTemplate withWash(RunTemplate sheet, const WashPlan& plan);

/// Share of the fixer left by the plan's fill and dump: (v/(V+v))^N. Empty for the other ways.
std::optional<double> shareLeft(const WashPlan& plan);

} // namespace ullage::ledger
