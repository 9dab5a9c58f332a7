// What is not mixed yet, as its lines say it: packets, chemicals, supplies, what codes on packets
// stand for, the film that is known to come, and the cans for waste.
#pragma once

#include "core/formulary/given_anew.h"
#include "core/ledger/entry.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ullage::ledger
{

/// Lines of one type in order of entry, and which of them stand (given_anew.h).
template <class T>
class Lines
{
public:
    void add(const T& line)
    {
        m_given.add(line);
        m_lines.push_back(line);
    }
    /// Those that stand, in the order in which they first came.
    [[nodiscard]] std::vector<T> standing() const
    {
        std::vector<T> found;
        for (const std::size_t place : m_given.standing()) {
            found.push_back(m_lines[place]);
        }
        return found;
    }
    /// The line that stands for the id of any line of its family; null for an unknown id and for
    /// what was withdrawn.
    [[nodiscard]] const T* now(const std::string& id) const
    {
        const auto place = m_given.standsFor(id);
        return place ? &m_lines[*place] : nullptr;
    }
    [[nodiscard]] const formulary::GivenAnew& given() const { return m_given; }
    [[nodiscard]] const std::vector<T>& all() const { return m_lines; }

private:
    std::vector<T> m_lines;
    formulary::GivenAnew m_given;
};

/// How an item's amount is counted, and what may be done with it.
enum class ItemKind {
    Powder,   ///< packets: 1 is a whole one, whole ones only are mixed from
    Liquid,   ///< mL
    Chemical, ///< g
    Supply,   ///< in its own unit
};

/// One thing in the cupboard, whatever its type.
struct Item {
    std::string id;       ///< of the line that stands
    std::string name;     ///< empty for a packet: its solution names it
    std::string solution; ///< of a packet
    ItemKind kind = ItemKind::Powder;
    std::optional<double> bought;                ///< amount as it came; empty: not known
    std::optional<chemistry::Millilitres> makes; ///< of a packet: what all of it makes
    std::optional<chemistry::Days> keepsOpened;  ///< once opened
    std::string useBy;                           ///< a day as ISO text, or empty
    std::string place;
};

Item itemOf(const Packet& packet);
Item itemOf(const Chemical& chemical);
Item itemOf(const Supply& supply);

/// A packet of crystals is one of powder; one with a volume, and none other said, is a liquid.
bool isLiquid(const Packet& packet);

struct Cupboard {
    Lines<Packet> packets;
    Lines<Chemical> chemicals;
    Lines<Supply> supplies;
    Lines<Barcode> barcodes;
    Lines<Work> works;
    Lines<Container> containers;

    /// Takes a line of one of these types; others are passed over.
    void add(const Entry& entry);
    /// What stands for an item's id, sought among packets, chemicals and supplies in this order;
    /// empty for an unknown one and for what was withdrawn.
    [[nodiscard]] std::optional<Item> item(const std::string& id) const;
    /// Everything that stands, in that order.
    [[nodiscard]] std::vector<Item> items() const;
    /// Every id that an item, or a can, was given under, in order of entry.
    [[nodiscard]] std::vector<std::string> idsOfItem(const std::string& id) const;
    [[nodiscard]] std::vector<std::string> idsOfContainer(const std::string& id) const
    {
        return containers.given().family(id);
    }
};

} // namespace ullage::ledger
