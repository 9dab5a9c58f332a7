// Words looked for in the day book, and how text is compared with them.
//
// One folding for every way of searching, with an index and without: composed letters (NFC), upper
// and lower case alike in every script ("STRASSE" finds "Straße"),
// invisible marks of direction and joining left out. Marks on letters count: "o" is not "ö".
#pragma once

#include <QByteArray>
#include <QString>

#include <string>
#include <vector>

namespace ullage::store
{

/// One word and what else counts as holding it, because of how it is worded on the screen. All of
/// it codes, as the journal spells them.
struct DayWord {
    std::string text; ///< as typed, without blanks
    /// Kinds of entries; "test-asked" for what asks for a test, however the book keeps it, and
    /// "voided" for what was taken back.
    std::vector<std::string> kinds;
    std::vector<std::string> solutions; ///< ids; bottles of these
    std::vector<std::string> faults;    ///< of films that were marked
    std::vector<std::string> whys;      ///< reasons that the program enters (kWhyCodes)

    [[nodiscard]] bool hasCodes() const
    {
        return !kinds.empty() || !solutions.empty() || !faults.empty() || !whys.empty();
    }
    friend bool operator==(const DayWord&, const DayWord&) = default;
};

/// The text as it is compared, in UTF-8. Never longer than a small multiple of it.
QByteArray folded(const QString& text);

/// The words of a text, divided at blanks; each once, what folds to nothing left out. At most
/// kMostWords, each cut at kLongestWord letters: beyond that nobody types.
std::vector<DayWord> dayWords(const QString& text);
inline constexpr int kMostWords = 16;
inline constexpr int kLongestWord = 200;

/// Whether a word stands in a text, as a search would find it.
bool holdsWord(const QString& text, const DayWord& word);

/// A word made ready to be looked for in many texts. The word must outlive it.
struct FoldedWord {
    const DayWord* word = nullptr; ///< null for a text without codes
    QByteArray text;               ///< folded
    bool plain = false;            ///< ASCII only

    explicit FoldedWord(const DayWord& word);
    /// A text that is folded already, without codes.
    explicit FoldedWord(QByteArray foldedText);
    /// False only if no text that stands in the line, however it is escaped, can hold the word.
    [[nodiscard]] bool mayStandIn(const QByteArray& line) const;
    [[nodiscard]] bool standsIn(const QByteArray& foldedText) const
    {
        return foldedText.contains(text);
    }
    /// Letters that follow one another, three by three, each once: what an index knows of a word.
    /// None for a shorter word.
    [[nodiscard]] std::vector<QByteArray> trigrams() const;
};

std::vector<QByteArray> trigramsOf(const QByteArray& foldedText, int most);

} // namespace ullage::store
