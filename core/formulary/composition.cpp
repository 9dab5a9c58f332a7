#include "core/formulary/composition.h"

#include "core/formulary/trimmed.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <string>
#include <utility>

namespace ullage::formulary
{

namespace
{

using chemistry::AmountUnit;
using chemistry::Ingredient;

constexpr std::array<std::pair<std::string_view, std::string_view>, 7> kUsualForms{{
    {"sodium-sulfite", "anhydrous"},
    {"sodium-carbonate", "anhydrous"},
    {"sodium-thiosulfate", "pentahydrate"},
    {"sodium-sulfate", "anhydrous"},
    {"borax", "decahydrate"},
    {"citric-acid", "monohydrate"},
    {"potassium-alum", "dodecahydrate"},
}};

std::string asSalt(std::string_view name)
{
    std::string salt(name);
    for (char& c : salt) {
        c = c == ' ' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
    return salt;
}

// "sodium-sulfite-heptahydrate" to the salt and its form; a name of no known salt stays as it is.
void nameSalt(Ingredient& part, std::string_view name)
{
    part.name = std::string(name);
    const std::string wanted = asSalt(name);
    for (const chemistry::SaltForm& known : chemistry::saltForms()) {
        const std::string whole = std::string(known.salt) + "-" + std::string(known.form);
        if (wanted == whole || wanted == known.salt) {
            part.name = known.salt;
            part.form = wanted == whole ? known.form : usualForm(known.salt);
            return;
        }
    }
}

// "sodium sulfite 100" or, last of its line, "borax 2 g per litre".
std::optional<Ingredient> readPart(std::string_view text)
{
    const auto digit = std::find_if(text.begin(), text.end(),
                                    [](unsigned char c) { return std::isdigit(c) != 0; });
    const auto start = static_cast<std::size_t>(digit - text.begin());
    if (start == 0 || start == text.size() || text[start - 1] != ' ') {
        return std::nullopt;
    }
    std::size_t end = start;
    while (end < text.size() && text[end] != ' ') {
        ++end;
    }
    std::string number(text.substr(start, end - start));
    std::replace(number.begin(), number.end(), ',', '.');
    Ingredient part;
    const auto [stopped, fault] =
        std::from_chars(number.data(), number.data() + number.size(), part.amount);
    if (fault != std::errc() || stopped != number.data() + number.size() || part.amount <= 0) {
        return std::nullopt;
    }
    const std::string_view rest = trimmed(text.substr(end));
    if (rest == "ml" || rest.substr(0, 3) == "ml ") {
        part.unit = AmountUnit::Millilitre;
    } else if (!rest.empty() && rest != "g" && rest.substr(0, 2) != "g ") {
        return std::nullopt;
    }
    nameSalt(part, trimmed(text.substr(0, start)));
    return part;
}

} // namespace

std::string_view usualForm(std::string_view salt)
{
    for (const auto& [known, form] : kUsualForms) {
        if (known == salt) {
            return form;
        }
    }
    return {};
}

std::optional<chemistry::Formula> readComposition(std::string_view line)
{
    std::string_view list = trimmed(line.substr(0, line.find(';')));
    chemistry::Formula formula{chemistry::Millilitres(1000), {}};
    while (!list.empty()) {
        const auto comma = list.find(", ");
        const auto part = readPart(trimmed(list.substr(0, comma)));
        if (!part) {
            return std::nullopt;
        }
        formula.ingredients.push_back(*part);
        list = comma == std::string_view::npos ? std::string_view() : list.substr(comma + 2);
    }
    if (formula.ingredients.empty()) {
        return std::nullopt;
    }
    return formula;
}

} // namespace ullage::formulary
