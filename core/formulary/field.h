// What a field of a journal's line is: its name, what it holds, its unit, range and default, what
// it names, and whether this program reckons with it.
//
// Every line is described once, field by field, beside the struct it is read into. Reading and
// writing, the order of fields, the checks of ranges and references, and whatever shows or asks for
// a field go by that description: there is no second list.
#pragma once

#include <cstddef>
#include <limits>
#include <span>
#include <string_view>

namespace ullage::formulary
{

/// How a field's value is written.
enum class Holds {
    Text,    ///< UTF-8
    Date,    ///< a day, as text
    Moment,  ///< RFC 3339 with a zone; kept in UTC
    Number,  ///< in `unit`, within [low, high]
    Decimal, ///< exact decimal text, within [low, high]; read from a number too
    Truth,
    Code,    ///< one of `codes`
    Texts,   ///< a list of texts; one text stands for a list of one
    Sources, ///< an object of texts
    Object,  ///< of the fields `inner`
    Objects, ///< a list of objects of the fields `inner`, at most `most`
};

enum class Presence {
    Required, ///< must be there, a text not empty
    Optional, ///< where it is left out, the thing is not known or not so
    Stated,   ///< has a default, and is written even where it is that
    Implied,  ///< has a default, and is left out where it is that
};

/// What an id in a field is the id of.
enum class Refers {
    Nothing,
    Solution,
    Vessel,
    Batch,
    Event,
    Film,
    FilmMark,
    Run,
    Packet,
    Item,      ///< a packet, a chemical or a supply
    Kind,      ///< a solution or an item that stands for its kind, or a type of item
    Container, ///< for waste
    Same,      ///< another line of the same type
};

// What a person may type of a text, in characters; see core/ledger/typed_text.h.
inline constexpr std::size_t kLongestName = 200;    ///< names, persons, places, codes
inline constexpr std::size_t kLongestSource = 2000; ///< where a figure is from
inline constexpr std::size_t kLongestText = 10'000; ///< notes and reasons

struct FieldDescription {
    std::string_view name; ///< as the journal spells it; ends with a NUL
    Holds holds = Holds::Text;
    Presence presence = Presence::Optional;
    // Of a number or decimal: both ends allowed. NaN is never in it.
    double low = -std::numeric_limits<double>::infinity();
    double high = std::numeric_limits<double>::infinity();
    std::string_view unit = "";                   ///< as in Error::unit
    bool whole = false;                           ///< a number of pieces: no fractions
    double fallback = 0;                          ///< default of a number
    std::string_view meant = "";                  ///< default of a code
    std::span<const std::string_view> codes = {}; ///< in the order of their enum
    std::span<const FieldDescription> inner = {}; ///< of an object, or of each in a list
    std::size_t most = 0;                         ///< of a list; 0: no limit
    /// Characters of a text (of each text of a list) that is typed here; a journal may hold more.
    std::size_t longest = kLongestName;
    Refers refers = Refers::Nothing;
    /// The line's subject, which stands before its kind.
    bool subject = false;
    /// What version 1 called it: read where the field itself is not there, never written.
    std::string_view formerly = "";
    /// False: described, read and kept, but nothing reckons with it yet, so that a line which says
    /// anything but the default is refused. Switching an effect on is dropping notBuilt().
    bool built = true;

    // Makers of a description, to be chained -----------------------------------------------------
    [[nodiscard]] constexpr FieldDescription required() const
    {
        auto changed = *this;
        changed.presence = Presence::Required;
        return changed;
    }
    /// Of a number: with this default.
    [[nodiscard]] constexpr FieldDescription stated(double number = 0) const
    {
        auto changed = *this;
        changed.presence = Presence::Stated;
        changed.fallback = number;
        return changed;
    }
    /// Likewise.
    [[nodiscard]] constexpr FieldDescription implied(double number = 0) const
    {
        auto changed = *this;
        changed.presence = Presence::Implied;
        changed.fallback = number;
        return changed;
    }
    /// Of a code that may be left out: what is taken then.
    [[nodiscard]] constexpr FieldDescription means(std::string_view code) const
    {
        auto changed = *this;
        changed.meant = code;
        return changed;
    }
    [[nodiscard]] constexpr FieldDescription wholeNumber() const
    {
        auto changed = *this;
        changed.whole = true;
        return changed;
    }
    [[nodiscard]] constexpr FieldDescription atMost(std::size_t pieces) const
    {
        auto changed = *this;
        changed.most = pieces;
        return changed;
    }
    [[nodiscard]] constexpr FieldDescription asSubject() const
    {
        auto changed = *this;
        changed.subject = true;
        return changed;
    }
    /// Its name in version 1.
    [[nodiscard]] constexpr FieldDescription once(std::string_view name1) const
    {
        auto changed = *this;
        changed.formerly = name1;
        return changed;
    }
    [[nodiscard]] constexpr FieldDescription notBuilt() const
    {
        auto changed = *this;
        changed.built = false;
        return changed;
    }
};

namespace field
{

constexpr FieldDescription ofKind(std::string_view name, Holds holds)
{
    FieldDescription made;
    made.name = name;
    made.holds = holds;
    return made;
}
constexpr FieldDescription text(std::string_view name) { return ofKind(name, Holds::Text); }
/// A note or a reason: as long as it takes.
constexpr FieldDescription prose(std::string_view name)
{
    auto made = text(name);
    made.longest = kLongestText;
    return made;
}
/// Where a figure is from.
constexpr FieldDescription source(std::string_view name)
{
    auto made = text(name);
    made.longest = kLongestSource;
    return made;
}
constexpr FieldDescription date(std::string_view name) { return ofKind(name, Holds::Date); }
constexpr FieldDescription moment(std::string_view name) { return ofKind(name, Holds::Moment); }
constexpr FieldDescription truth(std::string_view name) { return ofKind(name, Holds::Truth); }
constexpr FieldDescription texts(std::string_view name) { return ofKind(name, Holds::Texts); }
/// A source for each of several figures, by the figure's name.
constexpr FieldDescription sources(std::string_view name)
{
    auto made = source(name);
    made.holds = Holds::Sources;
    return made;
}

/// A text that is the id of something else.
constexpr FieldDescription id(std::string_view name, Refers refers)
{
    auto made = text(name);
    made.refers = refers;
    return made;
}
constexpr FieldDescription number(std::string_view name, double low, double high,
                                  std::string_view unit)
{
    auto made = ofKind(name, Holds::Number);
    made.low = low;
    made.high = high;
    made.unit = unit;
    return made;
}
/// A number that must be above 0: the smallest double stands for "more than nothing".
constexpr FieldDescription positive(std::string_view name, double high, std::string_view unit)
{
    return number(name, std::numeric_limits<double>::min(), high, unit);
}
constexpr FieldDescription decimal(std::string_view name, double low, double high)
{
    auto made = number(name, low, high, "");
    made.holds = Holds::Decimal;
    return made;
}
constexpr FieldDescription code(std::string_view name, std::span<const std::string_view> codes)
{
    auto made = ofKind(name, Holds::Code);
    made.codes = codes;
    return made;
}
constexpr FieldDescription object(std::string_view name, std::span<const FieldDescription> inner)
{
    auto made = ofKind(name, Holds::Object);
    made.inner = inner;
    return made;
}
constexpr FieldDescription objects(std::string_view name, std::span<const FieldDescription> inner)
{
    auto made = ofKind(name, Holds::Objects);
    made.inner = inner;
    return made;
}

} // namespace field

} // namespace ullage::formulary
