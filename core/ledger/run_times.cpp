#include "core/ledger/run_times.h"

#include <charconv>
#include <cmath>
#include <cstdlib>
#include <sstream>
#include <string_view>

namespace ullage::ledger
{

using chemistry::Seconds;

namespace
{

constexpr const char* kHead = "run-times ";
constexpr const char* kRun = "run=";
constexpr std::string_view kTemperature = "temperature=";
constexpr std::string_view kTank = "tank=";

// A name as one word: blanks, percent signs and control characters as %XX.
std::string asWord(const std::string& text)
{
    static constexpr std::string_view kDigits = "0123456789ABCDEF";
    std::string word;
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (byte <= ' ' || letter == '%' || byte == 0x7F) {
            word += {'%', kDigits[byte / 16], kDigits[byte % 16]};
        } else {
            word += letter;
        }
    }
    return word;
}

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

std::string tenths(chemistry::Celsius temperature)
{
    const long long all = std::llround(temperature.value() * 10);
    const std::string whole = std::to_string(std::llabs(all));
    const std::string digits = whole.size() < 2 ? "0" + whole : whole;
    return (all < 0 ? "-" : "") + digits.substr(0, digits.size() - 1) + '.' + digits.back();
}

std::optional<chemistry::Celsius> readTemperature(std::string_view text)
{
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool fine = error == std::errc() && end == text.data() + text.size();
    return fine && std::isfinite(value) ? std::optional(chemistry::Celsius(value)) : std::nullopt;
}

std::string whole(Seconds time) { return std::to_string(std::llround(time.value())); }

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

std::string timesNote(const RunTimes& times)
{
    std::string note = kHead;
    for (const StepDone& step : times.steps) {
        note += step.kind + ' ' + whole(step.planned) + '/' + whole(step.real) + ' ';
    }
    if (times.temperature) {
        note.append(kTemperature).append(tenths(*times.temperature)) += ' ';
    }
    if (!times.tank.empty()) {
        note.append(kTank).append(asWord(times.tank)) += ' ';
    }
    return note + kRun + times.run;
}

std::optional<RunTimes> readTimesNote(const std::string& note)
{
    const std::size_t head = std::string(kHead).size();
    const std::size_t run = note.find(std::string(" ") + kRun);
    if (note.rfind(kHead, 0) != 0 || run == std::string::npos) {
        return std::nullopt;
    }
    RunTimes times;
    times.run = note.substr(run + 1 + std::string(kRun).size());
    std::istringstream words(run < head ? std::string() : note.substr(head, run - head));
    std::string kind;
    std::string pair;
    while (words >> kind) {
        const std::string_view word = kind;
        if (word.substr(0, kTank.size()) == kTank) {
            times.tank = fromWord(word.substr(kTank.size()));
            continue;
        }
        if (word.substr(0, kTemperature.size()) == kTemperature) {
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

} // namespace ullage::ledger
