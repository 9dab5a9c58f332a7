#include "core/cupboard/chemical_kind.h"

#include "core/formulary/trimmed.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace ullage::cupboard
{

namespace
{

constexpr std::array<NumberedChemical, 23> kNumbered{{
    {"sodium-sulfite", "anhydrous", "7757-83-7"},
    {"sodium-sulfite", "heptahydrate", "10102-15-5"},
    {"sodium-carbonate", "anhydrous", "497-19-8"},
    {"sodium-carbonate", "monohydrate", "5968-11-6"},
    {"sodium-carbonate", "decahydrate", "6132-02-1"},
    {"sodium-thiosulfate", "anhydrous", "7772-98-7"},
    {"sodium-thiosulfate", "pentahydrate", "10102-17-7"},
    {"sodium-sulfate", "anhydrous", "7757-82-6"},
    {"sodium-sulfate", "decahydrate", "7727-73-3"},
    {"borax", "anhydrous", "1330-43-4"},
    {"borax", "pentahydrate", "12179-04-3"},
    {"borax", "decahydrate", "1303-96-4"},
    {"citric-acid", "anhydrous", "77-92-9"},
    {"citric-acid", "monohydrate", "5949-29-1"},
    {"potassium-alum", "anhydrous", "10043-67-1"},
    {"potassium-alum", "dodecahydrate", "7784-24-9"},
    {"metol", "", "55-55-0"},
    {"hydroquinone", "", "123-31-9"},
    {"phenidone", "", "92-43-3"},
    {"ascorbic acid", "", "50-81-7"},
    {"sodium ascorbate", "", "134-03-2"},
    {"potassium bromide", "", "7758-02-3"},
    {"acetic acid", "", "64-19-7"},
}};

// The form that the words behind a salt's name tell; empty if none does.
std::string_view formIn(std::string_view words, std::string_view salt)
{
    for (const chemistry::SaltForm& known : chemistry::saltForms()) {
        // Without its end: other languages write "heptahydrat".
        const auto stem = known.form.substr(0, known.form.size() - 1);
        if (known.salt == salt && words.find(stem) != std::string_view::npos) {
            return known.form;
        }
    }
    return words.find("dry") != std::string_view::npos ? "anhydrous" : std::string_view();
}

std::vector<std::string> namesWith(std::string_view form, chemistry::Ingredient part,
                                   const NamesOfPart& names)
{
    part.form = form;
    std::vector<std::string> all = names ? names(part) : std::vector<std::string>();
    if (!form.empty()) {
        all.push_back(part.name + ' ' + part.form);
    } else {
        all.push_back(part.name);
    }
    for (std::string& name : all) {
        name = comparable(name);
    }
    return all;
}

bool holds(const std::vector<std::string>& names, std::string_view name)
{
    return std::find(names.begin(), names.end(), name) != names.end();
}

} // namespace

std::span<const NumberedChemical> numberedChemicals() { return kNumbered; }

std::string comparable(std::string_view name)
{
    std::string text;
    for (const unsigned char c : formulary::trimmed(name)) {
        const bool blank = c == '-' || std::isspace(c) != 0;
        if (!blank) {
            text += static_cast<char>(c < 0x80 ? std::tolower(c) : c);
        } else if (!text.empty() && text.back() != ' ') {
            text += ' ';
        }
    }
    return text;
}

bool isOf(const ledger::Chemical& chemical, const chemistry::Ingredient& part,
          const NamesOfPart& names)
{
    if (part.unit != chemistry::AmountUnit::Gram) {
        return false;
    }
    const std::string wanted = comparable(part.name);
    const auto number = formulary::trimmed(chemical.cas);
    for (const NumberedChemical& known : kNumbered) {
        if (known.cas == number) {
            return comparable(known.name) == wanted &&
                   (part.form.empty() || known.form == part.form);
        }
    }
    const std::string whole = comparable(chemical.name);
    const auto end = whole.find_first_of(",(");
    const std::string_view name = formulary::trimmed(std::string_view(whole).substr(0, end));
    const auto bare = namesWith({}, part, names);
    for (const chemistry::SaltForm& known : chemistry::saltForms()) {
        if (known.salt == part.name && !holds(bare, whole) &&
            (holds(namesWith(known.form, part, names), whole) ||
             holds(namesWith(known.form, part, names), name))) {
            return known.form == part.form;
        }
    }
    if (!holds(bare, name)) {
        return false;
    }
    const auto form = formIn(std::string_view(whole).substr(name.size()), part.name);
    return form.empty() || form == part.form;
}

} // namespace ullage::cupboard
