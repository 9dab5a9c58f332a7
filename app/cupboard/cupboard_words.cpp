#include "app/cupboard/cupboard_words.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

namespace
{

struct CupboardWords {
    Q_DECLARE_TR_FUNCTIONS(Cupboard)
};

} // namespace

QString leftText(const ledger::ItemHere& here, const QString& unit, const Wording& wording)
{
    return here.stock.left ? itemAmountText(here.item.kind, *here.stock.left, unit, wording)
                           : CupboardWords::tr("amount not known");
}

// A date stays together where its line is broken.
static QString unbroken(QString date) { return date.replace(u' ', QChar::Nbsp); }

QString keepsText(const ledger::ItemHere& here, chemistry::Instant now, const Wording& wording)
{
    using ledger::Keeps;
    const ledger::Shelflife& life = here.life;
    if (!life.until)
        return here.stock.openedAt
                   ? CupboardWords::tr("opened %1")
                         .arg(unbroken(dayText(*here.stock.openedAt, now, wording.locale)))
                   : QString();
    if (life.byOpening) {
        const QString day = unbroken(dayText(*life.until, now, wording.locale));
        if (life.keeps == Keeps::Past)
            return CupboardWords::tr("opened too long, kept to %1").arg(day);
        const double left = chemistry::daysBetween(now, *life.until).value();
        return CupboardWords::tr("opened, keeps %Ln more day(s), to %1", nullptr,
                                 static_cast<int>(std::floor(left)))
            .arg(day);
    }
    const QString day = unbroken(dayWords(here.item.useBy, wording.locale));
    switch (life.keeps) {
    case Keeps::Past:
        return CupboardWords::tr("past its date since %1").arg(day);
    case Keeps::EndsSoon:
        return CupboardWords::tr("ends soon: use by %1").arg(day);
    case Keeps::Fine:
        break;
    }
    return CupboardWords::tr("use by %1").arg(day);
}

QString dayWords(const std::string& day, const QLocale& locale)
{
    const QString text = QString::fromStdString(day);
    const QDate date = QDate::fromString(text, Qt::ISODate);
    return date.isValid() ? yearDateText(date, locale) : text;
}

} // namespace ullage::app
