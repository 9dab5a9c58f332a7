#include "core/ledger/test_asked.h"

namespace ullage::ledger
{

namespace
{

constexpr std::string_view kHead = "test-asked ";
constexpr std::string_view kFilm = " film=";

} // namespace

std::string testAskedNote(const TestAsked& asked)
{
    return std::string(kHead).append(code(asked.fault)).append(kFilm).append(asked.film);
}

std::optional<TestAsked> readTestAskedNote(const std::string& note)
{
    const std::size_t film = note.find(kFilm);
    if (note.rfind(kHead, 0) != 0 || film == std::string::npos || film < kHead.size()) {
        return std::nullopt;
    }
    const auto fault =
        filmFaultFromCode(std::string_view(note).substr(kHead.size(), film - kHead.size()));
    std::string id = note.substr(film + kFilm.size());
    if (!fault || id.empty()) {
        return std::nullopt;
    }
    return TestAsked{*fault, std::move(id)};
}

} // namespace ullage::ledger
