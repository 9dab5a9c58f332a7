// Text as an unfriendly hand might type it: seeded, the same on every machine.
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace ullage::tests
{

/// What breaks programs, one of each: markup, quotes, mnemonics, formulas of spreadsheets, SQL,
/// search operators, paths, placeholders, escapes of terminals, reading directions, letters outside
/// the first plane. UTF-8 without U+0000, byte order marks and noncharacters.
inline const std::vector<std::string>& hostileSamples()
{
    static const std::vector<std::string> samples{
        "<b>x</b>",
        "<img src=\"file:///etc/hostname\">",
        "<img src='file:///etc/hostname' onerror=alert(1)>",
        "<a href=\"file:///\">x</a>",
        "<style>*{display:none}</style><h1>",
        "<!DOCTYPE html><html><body><table>",
        "<?xml version=\"1.0\"?><svg/>",
        "&amp; &lt;b&gt; &#x41;",
        "&File && &x",
        "[*] - unsaved",
        "%1 %2 %n %L1 %s %99",
        "\"quoted\" 'single' `back` \\",
        "'; DROP TABLE entry; --",
        "\" OR 1=1 --",
        "100% _under_ %like% [a-z]*",
        "NEAR(a b) AND OR NOT \"x\" * ^ : col:",
        "=1+1",
        "=HYPERLINK(\"http://localhost\",\"x\")",
        "+49",
        "-2+3",
        "@SUM(A1:A9)",
        "\t=1",
        "\r=1",
        "a\nb\r\nc\n",
        "\x1b[2J\x1b[31mred\x1b]0;title\x07",
        "\xC2\x9B"
        "31m eight-bit control",
        "\x01\x02\x08\x7f",
        "\u202Etxe.exe\u202C",
        "\u2066isolated\u2069\u200F",
        "\u2028line\u2029paragraph",
        "مثبّت حمضي ١٢٣",
        "מפתח",
        "👩‍🔬🧪 \U0001F3F4\U000E0067\U000E007F",
        "e\u0301\u0302\u0303\u0304\u0305\u0306\u0307",
        "mark \u200B\u00AD\u00A0",
        "\uFFFD\u2060",
        "İIıi ſß ﬁ",
        "../../etc/passwd",
        "C:\\CON\\..\\x",
        "file:///etc/hostname",
        "run-times develop 600/605 run=run-1",
        "test-asked thin film=x",
        "{\"type\":\"event\",\"id\":\"e1\"}",
        "null",
        " ",
        "   leading and trailing   ",
        std::string(190, 'w'),
    };
    return samples;
}

/// `count` texts: the samples, and mixtures of them and of single characters of all planes, none
/// longer than `most` characters.
inline std::vector<std::string> hostileTexts(int count, std::uint32_t seed, std::size_t most = 200)
{
    std::mt19937 random(seed);
    const auto below = [&](std::uint32_t limit) {
        return static_cast<std::uint32_t>(random() % limit);
    };
    const auto& samples = hostileSamples();
    std::vector<std::string> texts(samples.begin(), samples.end());
    const auto append = [](std::string& text, std::uint32_t c) {
        if (c < 0x80) {
            text += static_cast<char>(c);
        } else if (c < 0x800) {
            text += static_cast<char>(0xC0 | (c >> 6));
            text += static_cast<char>(0x80 | (c & 0x3F));
        } else if (c < 0x10000) {
            text += static_cast<char>(0xE0 | (c >> 12));
            text += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
            text += static_cast<char>(0x80 | (c & 0x3F));
        } else {
            text += static_cast<char>(0xF0 | (c >> 18));
            text += static_cast<char>(0x80 | ((c >> 12) & 0x3F));
            text += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
            text += static_cast<char>(0x80 | (c & 0x3F));
        }
    };
    while (texts.size() < static_cast<std::size_t>(count)) {
        std::string text;
        std::size_t characters = 0;
        for (std::uint32_t parts = 1 + below(6); parts > 0; --parts) {
            if (below(3) == 0) {
                const std::string& sample =
                    samples[below(static_cast<std::uint32_t>(samples.size()))];
                if (characters + sample.size() <= most) {
                    text += sample;
                    characters += sample.size();
                }
                continue;
            }
            for (std::uint32_t run = 1 + below(8); run > 0 && characters < most;
                 --run, ++characters) {
                constexpr std::uint32_t kLimits[]{0x80, 0x800, 0x10000, 0x110000};
                std::uint32_t c = 1 + below(kLimits[below(4)] - 1);
                // No halves of pairs; nor what is no character and marks the order of bytes.
                if ((c >= 0xD800 && c < 0xE000) || c == 0xFEFF || (c & 0xFFFE) == 0xFFFE) {
                    c = '<';
                }
                append(text, c);
            }
        }
        texts.push_back(text);
    }
    texts.resize(static_cast<std::size_t>(count));
    return texts;
}

} // namespace ullage::tests
