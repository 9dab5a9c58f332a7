#include "core/ledger/run_times.h"

#include <charconv>
#include <cmath>
#include <sstream>

namespace ullage::ledger
{

using chemistry::Seconds;

namespace
{

constexpr const char* kHead = "run-times ";
constexpr const char* kRun = "run=";

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
    return note + kRun + times.run;
}

std::optional<RunTimes> readTimesNote(const std::string& note)
{
    const std::size_t head = std::string(kHead).size();
    const std::size_t run = note.find(std::string(" ") + kRun);
    if (note.rfind(kHead, 0) != 0 || run == std::string::npos) {
        return std::nullopt;
    }
    RunTimes times{note.substr(run + 1 + std::string(kRun).size()), {}};
    std::istringstream words(run < head ? std::string() : note.substr(head, run - head));
    std::string kind;
    std::string pair;
    while (words >> kind) {
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
