// Lines that are given anew or withdrawn: which of them stands.
//
// A line may say that it stands in for an earlier one of its type (`replaces`), with other figures,
// or that it takes it out of the book (`withdrawn`). What an event names keeps the figures of the
// line that it names; what is offered, counted and planned with is the line that stands.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace ullage::formulary
{

/// The lines of one type, in order of entry. Lines that stand in for one another, at any remove,
/// are one family. Of a family stands the last line that no other replaces and that is not
/// withdrawn; a family without such a line is withdrawn.
class GivenAnew
{
public:
    GivenAnew() = default;
    template <class Lines>
    explicit GivenAnew(const Lines& lines)
    {
        for (const auto& line : lines) {
            add(line);
        }
    }

    /// The next line. One that replaces nothing known begins a family.
    template <class Line>
    void add(const Line& line)
    {
        if constexpr (requires { line->id; }) {
            add(line->id, line->replaces, line->withdrawn);
        } else {
            add(line.id, line.replaces, line.withdrawn);
        }
    }
    void add(const std::string& id, const std::string& replaces, bool withdrawn);

    /// Places of the lines that stand, in the order in which their families began.
    [[nodiscard]] std::vector<std::size_t> standing() const;
    /// Place of the line that stands in the family of `id`; empty for an unknown id and where the
    /// family is withdrawn.
    [[nodiscard]] std::optional<std::size_t> standsFor(const std::string& id) const;
    [[nodiscard]] bool isWithdrawn(const std::string& id) const;
    /// Every id of its family in order of entry; `id` alone if it is unknown.
    [[nodiscard]] std::vector<std::string> family(const std::string& id) const;

private:
    struct Line {
        std::string id;
        std::size_t family = 0;
        bool withdrawn = false;
        bool replaced = false;
    };
    [[nodiscard]] std::optional<std::size_t> standingOf(std::size_t family) const;

    std::vector<Line> m_lines;
    std::vector<std::vector<std::size_t>> m_families; ///< places of their lines
    std::unordered_map<std::string, std::size_t> m_at;
};

} // namespace ullage::formulary
