#include "app/words/moment_scan.h"

namespace ullage::app
{

bool MomentScan::skipSpace()
{
    static const QString between = QStringLiteral(" ,;·");
    while (m_at < m_text.size() && between.contains(m_text[m_at]))
        ++m_at;
    return m_at < m_text.size();
}

qsizetype MomentScan::wordEnd() const
{
    qsizetype end = m_at + 1;
    while (end < m_text.size() && m_text[end] != u' ' && m_text[end] != u',')
        ++end;
    return end;
}

qsizetype MomentScan::spaceAfter(qsizetype at) const
{
    while (at < m_text.size() && m_text[at] == u' ')
        ++at;
    return at;
}

bool MomentScan::endsWord(qsizetype at) const
{
    return at >= m_text.size() || !m_text[at].isLetterOrNumber();
}

QRegularExpressionMatch MomentScan::here(const QRegularExpression& pattern, qsizetype at) const
{
    return pattern.match(m_text, at, QRegularExpression::NormalMatch,
                         QRegularExpression::AnchorAtOffsetMatchOption);
}

std::optional<qsizetype> MomentScan::phrase(const QStringList& phrases, qsizetype at) const
{
    std::optional<qsizetype> end;
    for (const QString& one : phrases) {
        const QString words = plainly(one).trimmed();
        if (!words.isEmpty() && QStringView(m_text).mid(at).startsWith(words) &&
            endsWord(at + words.size()) && (!end || at + words.size() > *end))
            end = at + words.size();
    }
    return end;
}

std::optional<std::pair<int, qsizetype>> MomentScan::name(const std::vector<MomentName>& names,
                                                          qsizetype at) const
{
    for (const MomentName& one : names) {
        if (!QStringView(m_text).mid(at).startsWith(one.text))
            continue;
        qsizetype end = at + one.text.size();
        if (end < m_text.size() && m_text[end].isLetter())
            continue;
        if (end < m_text.size() && m_text[end] == u'.')
            ++end;
        return std::pair(one.number, end);
    }
    return std::nullopt;
}

std::optional<std::pair<bool, qsizetype>> MomentScan::halfOfDay(const QLocale& locale,
                                                                qsizetype at) const
{
    const auto among = [&](const QString& own, const QStringList& others) {
        return phrase(QStringList{own} + others, at);
    };
    if (const auto end = among(locale.pmText(), {QStringLiteral("pm"), QStringLiteral("p.m.")}))
        return std::pair(true, *end);
    if (const auto end = among(locale.amText(), {QStringLiteral("am"), QStringLiteral("a.m.")}))
        return std::pair(false, *end);
    return std::nullopt;
}

} // namespace ullage::app
