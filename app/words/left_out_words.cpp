#include "app/words/left_out_words.h"

#include "app/words/shown_names.h"

#include <QCoreApplication>
#include <QStringList>

namespace ullage::app
{

namespace
{

struct LeftOutWords {
    Q_DECLARE_TR_FUNCTIONS(LeftOutWords)
};

} // namespace

QString leftOutText(const std::vector<ledger::Unread>& leftOut, const QLocale& locale)
{
    if (leftOut.empty())
        return {};
    QStringList names;
    for (const ledger::Unread& one : leftOut)
        names << shownName(one.name.empty() ? one.batch : one.name);
    return LeftOutWords::tr("Left out, because %n of it cannot be read as entered: %1", nullptr,
                            static_cast<int>(leftOut.size()))
        .arg(locale.createSeparatedList(names));
}

} // namespace ullage::app
