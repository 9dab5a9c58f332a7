// What stands at a place of a text about a moment: figures, phrases, names.
#pragma once

#include "app/words/moment_names.h"

#include <QRegularExpression>
#include <QStringList>

#include <optional>
#include <utility>

namespace ullage::app
{

class MomentScan
{
protected:
    /// `text` is written plainly().
    explicit MomentScan(QString text) : m_text(std::move(text)) {}

    /// Goes on to the next part; false if there is none.
    bool skipSpace();
    /// Where the word ends that begins here.
    [[nodiscard]] qsizetype wordEnd() const;
    [[nodiscard]] qsizetype spaceAfter(qsizetype at) const;
    [[nodiscard]] bool endsWord(qsizetype at) const;
    [[nodiscard]] QRegularExpressionMatch here(const QRegularExpression& pattern,
                                               qsizetype at) const;
    /// The end of the longest of these phrases that stands there.
    [[nodiscard]] std::optional<qsizetype> phrase(const QStringList& phrases, qsizetype at) const;
    /// The number of the name that stands there, and its end.
    [[nodiscard]] std::optional<std::pair<int, qsizetype>>
    name(const std::vector<MomentName>& names, qsizetype at) const;
    /// Whether the afternoon is named there, or the morning, and its end.
    [[nodiscard]] std::optional<std::pair<bool, qsizetype>> halfOfDay(const QLocale& locale,
                                                                      qsizetype at) const;

    QString m_text;
    qsizetype m_at = 0; ///< read as far as this
};

} // namespace ullage::app
