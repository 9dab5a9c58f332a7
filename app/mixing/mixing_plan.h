// What the mixing guide works out from packet and bottle, as plain values.
#pragma once

#include "app/charts/chart.h"
#include "app/words/factor_row.h"
#include "app/words/units.h"
#include "core/chemistry/dilution.h"
#include "core/chemistry/formula.h"
#include "core/chemistry/mixing.h"
#include "core/chemistry/warming.h"
#include "core/chemistry/water.h"
#include "core/formulary/formulary.h"
#include "core/ledger/entry.h"

#include <QStringList>

#include <memory>
#include <optional>

namespace ullage::app
{

/// The steps from packet to bottle. Close is the last before logging; from Done there is no way
/// back.
enum class MixingStage { Choice, Safety, Water, Dissolve, TopUp, Close, Done };

/// How a liquid is diluted: one part with `parts` of water, or from one strength to another.
struct LiquidDilution {
    double parts = 0;
    std::optional<std::pair<chemistry::Strength, chemistry::Strength>> strengths = {};
    friend bool operator==(const LiquidDilution&, const LiquidDilution&) = default;
};

/// What was chosen in the first step. Anything may still be missing.
struct MixingPlan {
    std::shared_ptr<const formulary::Solution> solution;
    std::shared_ptr<const formulary::Vessel> vessel;
    chemistry::Millilitres makes;         ///< final volume; 0 while it is not known
    std::optional<double> powderGrams;    ///< as the packet says; not used with a formula
    QString name;                         ///< of the batch to be
    std::optional<ledger::Packet> packet; ///< opened for it, where the cupboard holds one
    /// To be weighed out in place of a packet: for `makes`, in the forms at hand.
    std::optional<chemistry::Formula> formula;
    /// Of a solution that comes as a liquid, in place of powder and formula.
    std::optional<LiquidDilution> liquid;

    [[nodiscard]] bool isComplete() const { return solution && vessel && makes.value() > 0; }
    /// Of a liquid what is measured, and the water in all; empty for a powder, and where its
    /// strengths or the volume make no dilution.
    [[nodiscard]] std::optional<chemistry::VolumesToPour> pours() const;
    /// Grams weighed out (liquids not counted), or what the packet says; 0 where neither is known.
    [[nodiscard]] double powder() const;
    /// Grams of it taken to be crystals of thiosulfate: all of a fixer's packet, or what the
    /// formula has of them.
    [[nodiscard]] double thiosulfate() const;
    /// Volume that the powder adds: thiosulfate by its form, and the rest as sulfite (a
    /// simplification).
    [[nodiscard]] chemistry::Millilitres displaced() const;
    /// Water to begin with; the plan must be complete. Refuses as chemistry::startVolume() and, of
    /// a liquid, startForLiquid() do: TooMuch for a vessel that is too small, NotEnough if the
    /// powder leaves no room.
    [[nodiscard]] Result<chemistry::StartVolume> start() const;
    /// Before anything is opened; empty without a solution.
    [[nodiscard]] QStringList cautions() const;
};

/// The water usual for a packaged powder of this role, where the packet says nothing:
/// kPackagedDeveloperWater, kFixerWater, for others and for a liquid kOtherWater.
struct UsualWater {
    chemistry::Celsius low;
    chemistry::Celsius high;
    chemistry::Celsius start; ///< what the guide begins with
};
UsualWater usualWater(formulary::Role role, bool liquid = false);

/// Why packet and bottle do not go together, in words; empty if they do.
QString planProblem(const MixingPlan& plan, const Wording& wording);
/// "half a bottle: 111 g of powder will raise it by 12 ml".
QString startNote(const MixingPlan& plan, const chemistry::StartVolume& start,
                  const Wording& wording);
/// "It will become": films, the tenth film's factor or the last one's, keeping if mixed `now`, and
/// what a film costs if the packet has a price and the solution a capacity. Empty without a
/// complete plan. The shortest of it, where several bottles stand below one another, are films and
/// keeping.
enum class Becomes { Whole, Shortest };
std::vector<FactorRow> becomesRows(const MixingPlan& plan, chemistry::Instant now,
                                   const Wording& wording, Becomes much = Becomes::Whole);

/// A bottle in a bath or in the room: where it stands, what is wanted, and how fast it goes.
struct BathClock {
    chemistry::Celsius bottle;
    chemistry::Celsius bath; ///< or the room's air
    chemistry::Celsius wanted;
    chemistry::Seconds constant; ///< τ, > 0; see chemistry/warming.h
    chemistry::Surroundings surroundings = chemistry::Surroundings::StirredBath;

    /// From now; 0 if it is there. Refuses as chemistry::timeToReach() does (OutOfRange).
    [[nodiscard]] Result<chemistry::Seconds> ready() const
    {
        return chemistry::timeToReach(wanted, bottle, bath, constant);
    }
};
/// Temperature of the bottle over minutes from now, with a marker where it is ready; the summary is
/// bathText().
ChartSpec bathChart(const BathClock& clock, const Wording& wording);
/// "ready in about 17 min" (minutes rounded up), or why it never is.
QString bathText(const BathClock& clock, const Wording& wording);

} // namespace ullage::app
