// Words of ours that stand in a book as they were entered, found again to be shown in another
// language.
#pragma once

#include <QString>

namespace ullage::app
{

/// `text` in the user's language where it is one of `table`, else empty. The table holds what is
/// marked for translation (QT_TRANSLATE_NOOP) in the context of `Words` (Q_DECLARE_TR_FUNCTIONS).
template <class Words, class Table>
QString knownPhrase(const Table& table, const QString& text)
{
    for (const char* one : table) {
        if (text == QString::fromUtf8(one))
            return Words::tr(one);
    }
    return {};
}

} // namespace ullage::app
