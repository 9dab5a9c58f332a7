#include "core/ledger/coded_notes.h"

#include <charconv>
#include <cmath>
#include <sstream>
#include <string>

namespace ullage::ledger
{

using chemistry::Seconds;

namespace
{

constexpr std::string_view kTimes = "run-times ";
constexpr std::string_view kRun = " run=";
constexpr std::string_view kTemperature = "temperature=";
constexpr std::string_view kTank = "tank=";
constexpr std::string_view kAsked = "test-asked ";
constexpr std::string_view kFilm = " film=";

bool begins(std::string_view text, std::string_view with)
{
    return text.substr(0, with.size()) == with;
}

// A name was one word: blanks, percent signs and control characters as %XX.
std::string fromWord(std::string_view word)
{
    std::string text;
    for (std::size_t i = 0; i < word.size(); ++i) {
        int byte = 0;
        const char* digits = word.data() + i + 1;
        const bool escaped = word[i] == '%' && i + 2 < word.size() &&
                             std::from_chars(digits, digits + 2, byte, 16).ptr == digits + 2;
        text += escaped ? static_cast<char>(byte) : word[i];
        i += escaped ? 2 : 0;
    }
    return text;
}

std::optional<chemistry::Celsius> readTemperature(std::string_view text)
{
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool fine = error == std::errc() && end == text.data() + text.size();
    return fine && std::isfinite(value) ? std::optional(chemistry::Celsius(value)) : std::nullopt;
}

std::optional<Seconds> readWhole(const std::string& text)
{
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value < 0) {
        return std::nullopt;
    }
    return Seconds(value);
}

} // namespace

std::optional<RunTimes> timesFromNote(std::string_view note)
{
    const std::size_t run = note.find(kRun);
    if (!begins(note, kTimes) || run == std::string_view::npos) {
        return std::nullopt;
    }
    RunTimes times;
    times.run = std::string(note.substr(run + kRun.size()));
    const std::size_t head = kTimes.size();
    std::istringstream words(run < head ? std::string()
                                        : std::string(note.substr(head, run - head)));
    std::string kind;
    std::string pair;
    while (words >> kind) {
        const std::string_view word = kind;
        if (begins(word, kTank)) {
            times.tank = fromWord(word.substr(kTank.size()));
            continue;
        }
        if (begins(word, kTemperature)) {
            times.temperature = readTemperature(word.substr(kTemperature.size()));
            if (!times.temperature) {
                return std::nullopt;
            }
            continue;
        }
        const bool second = static_cast<bool>(words >> pair);
        const std::size_t slash = pair.find('/');
        if (!second || slash == std::string::npos) {
            return std::nullopt;
        }
        const auto planned = readWhole(pair.substr(0, slash));
        const auto real = readWhole(pair.substr(slash + 1));
        if (!planned || !real) {
            return std::nullopt;
        }
        times.steps.push_back({kind, *planned, *real});
    }
    return times;
}

std::optional<TestAsked> testAskedFromNote(std::string_view note)
{
    const std::size_t film = note.find(kFilm);
    if (!begins(note, kAsked) || film == std::string_view::npos || film < kAsked.size()) {
        return std::nullopt;
    }
    const auto fault = filmFaultFromCode(note.substr(kAsked.size(), film - kAsked.size()));
    std::string id(note.substr(film + kFilm.size()));
    if (!fault || id.empty()) {
        return std::nullopt;
    }
    return TestAsked{*fault, std::move(id), true};
}

Happening meaningOf(Noted note)
{
    if (auto asked = testAskedFromNote(note.text)) {
        return std::move(*asked);
    }
    note.times = timesFromNote(note.text);
    return note;
}

} // namespace ullage::ledger
