#include "core/ledger/entry.h"

#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"

namespace ullage::formulary
{

Result<void> Described<ledger::Packet>::together(const ledger::Packet& packet)
{
    if (!packet.volume || !packet.form || *packet.form == Form::Liquid) {
        return {};
    }
    return refuse({.code = ErrorCode::Conflict,
                   .field = "volume_ml",
                   .allowed = "with \"form\": \"liquid\""});
}

// By its run alone its other lines are found.
Result<void> Described<ledger::FilmRecord>::together(const ledger::FilmRecord& film)
{
    return film.run.empty() ? refuse({.code = ErrorCode::Missing, .field = "run"}) : Result<void>();
}

} // namespace ullage::formulary

namespace ullage::ledger
{

using formulary::FieldDescription;

const std::string& Entry::id() const
{
    return std::visit([](const auto& entry) -> const std::string& { return entry.id; }, what);
}

std::string_view Entry::type() const { return kTypeCodes[what.index()]; }

Result<void> check(const FilmRecord& film) { return formulary::checkDescribed(film); }

Result<void> check(const Packet& packet) { return formulary::checkDescribed(packet); }

Result<void> check(const Chemical& chemical) { return formulary::checkDescribed(chemical); }

Result<void> check(const Entry& entry)
{
    return std::visit(
        [](const auto& what) -> Result<void> {
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(what)>, Event>) {
                return checkFields(what);
            } else {
                auto fine = formulary::checkDescribed(what);
                formulary::eachField(what, [&](const FieldDescription& is, const auto& member) {
                    if (fine) {
                        fine = formulary::checkBuilt(is, member);
                    }
                });
                return fine;
            }
        },
        entry.what);
}

} // namespace ullage::ledger
