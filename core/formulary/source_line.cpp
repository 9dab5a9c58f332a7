#include "core/formulary/source_line.h"

#include "core/formulary/figures.h"
#include "core/formulary/trimmed.h"

#include <array>
#include <cctype>
#include <utility>

namespace ullage::formulary
{

namespace
{

using chemistry::Grade;

constexpr std::array<std::pair<Grade, std::string_view>, 4> kWords{{
    {Grade::Published, "published"},
    {Grade::Computed, "computed"},
    {Grade::CommonPractice, "common practice"},
    {Grade::FromMemory, "from memory"},
}};

std::string_view wordsOf(Grade grade)
{
    for (const auto& [known, words] : kWords) {
        if (known == grade) {
            return words;
        }
    }
    return {};
}

// What follows the words, if the text is the words alone or a colon parts them from the rest.
std::optional<std::string_view> after(std::string_view text, std::string_view words)
{
    if (text.size() < words.size()) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (std::tolower(static_cast<unsigned char>(text[i])) != words[i]) {
            return std::nullopt;
        }
    }
    const std::string_view rest = trimmed(text.substr(words.size()));
    if (rest.empty()) {
        return rest;
    }
    return rest.front() == ':' ? std::optional(trimmed(rest.substr(1))) : std::nullopt;
}

} // namespace

SourceLine splitSource(std::string_view line)
{
    const std::string_view text = trimmed(line);
    SourceLine source{gradeOf(text), std::string(text)};
    if (source.grade) {
        if (const auto rest = after(text, wordsOf(*source.grade))) {
            source.text = std::string(*rest);
        }
    }
    return source;
}

std::string joinSource(const SourceLine& source)
{
    const std::string text(trimmed(source.text));
    if (!source.grade) {
        return text;
    }
    const std::string words(wordsOf(*source.grade));
    if (text.empty()) {
        return words;
    }
    // A text that says its grade itself is not made to say it twice, unless it would be cut short.
    if (splitSource(text) == SourceLine{source.grade, text}) {
        return text;
    }
    return words + ": " + text;
}

} // namespace ullage::formulary
