#include "core/store/search_words.h"

#include <QStringList>

#include <algorithm>

namespace ullage::store
{

namespace
{

constexpr int kMostTrigrams = 24; // more find hardly fewer

bool isPlain(const QByteArray& text)
{
    return std::all_of(text.begin(), text.end(),
                       [](char one) { return static_cast<unsigned char>(one) < 0x80; });
}

char lower(char one) { return one >= 'A' && one <= 'Z' ? static_cast<char>(one - 'A' + 'a') : one; }

bool holdsPlain(const QByteArray& line, const QByteArray& word)
{
    return std::search(line.begin(), line.end(), word.begin(), word.end(),
                       [](char a, char b) { return lower(a) == b; }) != line.end();
}

} // namespace

// By way of capitals: that is where "ß" comes to be two letters.
QByteArray folded(const QString& text)
{
    QString result;
    result.reserve(text.size());
    for (const QChar letter :
         text.normalized(QString::NormalizationForm_C).toUpper().toCaseFolded()) {
        if (letter.isNull()) {
            result += QChar(QChar::ReplacementCharacter); // an index would end at it
        } else if (letter.category() != QChar::Other_Format) {
            result += letter;
        }
    }
    return result.normalized(QString::NormalizationForm_C).toUtf8();
}

std::vector<DayWord> dayWords(const QString& text)
{
    std::vector<DayWord> words;
    std::vector<QByteArray> seen;
    for (const QString& one : text.simplified().split(u' ', Qt::SkipEmptyParts)) {
        const QString word = one.left(kLongestWord);
        QByteArray form = folded(word);
        if (form.isEmpty() || std::find(seen.begin(), seen.end(), form) != seen.end()) {
            continue;
        }
        seen.push_back(std::move(form));
        words.push_back({word.toStdString(), {}, {}, {}, {}});
        if (words.size() == kMostWords) {
            break;
        }
    }
    return words;
}

bool holdsWord(const QString& text, const DayWord& word)
{
    return FoldedWord(word).standsIn(folded(text));
}

FoldedWord::FoldedWord(const DayWord& one)
    : word(&one), text(folded(QString::fromStdString(one.text))), plain(isPlain(text))
{
}

FoldedWord::FoldedWord(QByteArray foldedText) : text(std::move(foldedText)), plain(isPlain(text)) {}

bool FoldedWord::mayStandIn(const QByteArray& line) const
{
    // Other letters may fold to these, and an escape may stand for any.
    if (!isPlain(line) || line.contains('\\')) {
        return true;
    }
    return plain && holdsPlain(line, text);
}

std::vector<QByteArray> FoldedWord::trigrams() const { return trigramsOf(text, kMostTrigrams); }

std::vector<QByteArray> trigramsOf(const QByteArray& foldedText, int most)
{
    const auto letters = QString::fromUtf8(foldedText).toUcs4();
    std::vector<QByteArray> found;
    for (qsizetype i = 0; i + 3 <= letters.size() && static_cast<int>(found.size()) < most; ++i) {
        QByteArray three =
            QString::fromUcs4(reinterpret_cast<const char32_t*>(&letters[i]), 3).toUtf8();
        if (std::find(found.begin(), found.end(), three) == found.end()) {
            found.push_back(std::move(three));
        }
    }
    return found;
}

} // namespace ullage::store
