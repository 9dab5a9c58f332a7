#include "core/ledger/typed_text.h"

#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"

#include <concepts>
#include <map>
#include <optional>

namespace ullage::ledger
{

namespace
{

// How many bytes the character has that begins at `at`; 0 if none of UTF-8 does.
std::size_t lengthAt(const std::string& text, std::size_t at)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(at);
    if (first < 0x80) {
        return 1;
    }
    const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || at + length > text.size()) {
        return 0;
    }
    for (std::size_t i = at + 1; i < at + length; ++i) {
        if ((byte(i) & 0xC0) != 0x80) {
            return 0;
        }
    }
    // Longer than needed, a surrogate, or beyond the last character.
    const unsigned char second = byte(at + 1);
    const bool wrong = (first == 0xE0 && second < 0xA0) || (first == 0xED && second >= 0xA0) ||
                       (first == 0xF0 && second < 0x90) || (first == 0xF4 && second >= 0x90);
    return wrong ? 0 : length;
}

// Nothing if it is no UTF-8.
std::optional<std::size_t> charactersOf(const std::string& text)
{
    std::size_t count = 0;
    for (std::size_t at = 0; at < text.size(); ++count) {
        const std::size_t length = lengthAt(text, at);
        if (length == 0) {
            return std::nullopt;
        }
        at += length;
    }
    return count;
}

// Looks at one text after another until one is refused.
class Texts
{
public:
    [[nodiscard]] const Result<void>& result() const { return m_result; }

    template <class M>
    void field(const formulary::FieldDescription& is, const M& member, const std::string& way)
    {
        if constexpr (std::same_as<M, std::string>) {
            text(way + std::string(is.name), member, is.longest);
        } else if constexpr (formulary::detail::Optional<M>::value) {
            if (member) {
                field(is, *member, way);
            }
        } else if constexpr (formulary::detail::List<M>::value) {
            for (const auto& one : member) {
                field(is, one, way);
            }
        } else if constexpr (std::same_as<M, std::map<std::string, std::string>>) {
            for (const auto& [name, one] : member) {
                text(way + std::string(is.name), name, kLongestName);
                text(way + std::string(is.name) + '.' + name, one, is.longest);
            }
        } else if constexpr (formulary::Structured<M>) {
            formulary::eachField(member, [&](const auto& inner, const auto& part) {
                field(inner, part, way + std::string(is.name) + '.');
            });
        }
    }

private:
    void text(const std::string& field, const std::string& text, std::size_t most)
    {
        if (m_result) {
            m_result = checkTyped(field, text, most);
        }
    }

    Result<void> m_result;
};

} // namespace

bool canBeKept(std::string_view text)
{
    constexpr std::string_view kByteOrder = "\uFEFF";
    // SQLite takes the first for the end, the others for no characters, and drops the mark.
    return text.find('\0') == std::string_view::npos &&
           text.find("\uFFFE") == std::string_view::npos &&
           text.find("\uFFFF") == std::string_view::npos &&
           text.substr(0, kByteOrder.size()) != kByteOrder;
}

Result<void> checkTyped(const std::string& field, const std::string& text, std::size_t most)
{
    const auto count = charactersOf(text);
    if (!count) {
        return refuse({.code = ErrorCode::BadEncoding, .field = field, .allowed = "UTF-8"});
    }
    if (!canBeKept(text)) {
        return refuse(
            {.code = ErrorCode::Malformed, .field = field, .text = text, .allowed = kTextToKeep});
    }
    if (*count > most) {
        return refuse({.code = ErrorCode::TooLong,
                       .field = field,
                       .number = static_cast<double>(*count),
                       .high = static_cast<double>(most),
                       .unit = "characters"});
    }
    return {};
}

Result<void> checkTyped(const Entry& entry)
{
    Texts texts;
    eachEntryField(entry, [&](const formulary::FieldDescription& is, const auto& member) {
        texts.field(is, member, {});
    });
    return texts.result();
}

} // namespace ullage::ledger
