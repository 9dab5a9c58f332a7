#include "core/ledger/entry.h"

#include <array>

namespace ullage::ledger
{

namespace
{

Result<void> checkIds(const std::string& id, const std::string& other, const char* field)
{
    if (id.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = "id"});
    }
    if (other.empty()) {
        return refuse({.code = ErrorCode::Missing, .field = field});
    }
    return {};
}

} // namespace

const std::string& Entry::id() const
{
    return std::visit([](const auto& entry) -> const std::string& { return entry.id; }, what);
}

std::string_view Entry::type() const
{
    static constexpr std::array<std::string_view, 8> kTypes{"solution",         "vessel",   "film",
                                                            "packet",           "chemical", "event",
                                                            "development-time", "film-mark"};
    return kTypes[what.index()];
}

Result<void> check(const FilmRecord& film)
{
    if (auto fine = checkIds(film.id, film.run, "run"); !fine) {
        return fine;
    }
    return film.exposureIndex ? checkRange("ei", *film.exposureIndex, 0.1, 1'000'000, "")
                              : Result<void>{};
}

Result<void> check(const Packet& packet)
{
    if (auto fine = checkIds(packet.id, packet.solution, "solution"); !fine) {
        return fine;
    }
    if (packet.makes) {
        if (auto fine = checkRange("makes_ml", packet.makes->value(), 1, 1'000'000, "ml"); !fine) {
            return fine;
        }
    }
    return packet.cost ? checkRange("cost", *packet.cost, 0, 1'000'000, "") : Result<void>{};
}

Result<void> check(const Chemical& chemical)
{
    if (auto fine = checkIds(chemical.id, chemical.name, "name"); !fine) {
        return fine;
    }
    return chemical.grams ? checkRange("grams", *chemical.grams, 0, 1'000'000, "g")
                          : Result<void>{};
}

} // namespace ullage::ledger
