#include "app/dialogs/found_form.h"

#include "app/words/moment_reading.h"
#include "app/words/moment_text.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QDateTime>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

namespace ullage::app
{

namespace
{

const QString kMixedOn = QStringLiteral("mixed_on");

ReadMoment read(const QString& text, chemistry::Instant now, const QLocale& locale)
{
    return readMoment(text, now, locale, MomentWords::translated());
}

} // namespace

FoundForm::FoundForm(Clock clock, const Wording& wording, QWidget* parent)
    : FieldForm(wording, parent), m_clock(std::move(clock)), m_mixedOn(new QLineEdit(this))
{
    m_mixedOn->setPlaceholderText(tr("not known"));
    addRow(kMixedOn, tr("M&ixed on, if it is known"), m_mixedOn, Width::Half);
    m_assumed = addQuantity(formulary::fieldOf(&ledger::Mixed::assumed),
                            tr("Films per litre, as &you guess"), Width::Half);
    m_assumed->setPlaceholderText(tr("not known"));
    m_understood = addText({});
    addText(tr("What is left empty counts as not known: films left and dates stay blank, and what "
               "is counted from now on reads “at least”. Test it before its next film."));
    connect(m_mixedOn, &QLineEdit::textChanged, this, &FoundForm::showUnderstood);
    showUnderstood();
}

// A day alone is that day's noon: nobody remembers the hour.
std::optional<chemistry::Instant> FoundForm::mixedOn() const
{
    const auto now = m_clock();
    const auto what = read(m_mixedOn->text(), now, wording().locale);
    if (!what.isUnderstood())
        return std::nullopt;
    if (what.now)
        return now;
    const QTime time = what.timeWritten ? what.time : QTime(12, 0);
    const auto then = instantOf(QDateTime(what.date, time));
    return what.timeWritten || what.date != localDate(now) ? then : std::min(then, now);
}

std::optional<chemistry::FilmsPerLitre> FoundForm::assumed() const
{
    const auto value = m_assumed->value();
    return value ? std::optional(chemistry::FilmsPerLitre(*value)) : std::nullopt;
}

QString FoundForm::understood() const { return m_understood->text(); }

void FoundForm::showUnderstood()
{
    const auto when = mixedOn();
    m_understood->setVisible(when.has_value());
    m_understood->setText(
        when ? tr("Mixed on %1.").arg(understoodDay(localDate(*when), wording().locale))
             : QString());
}

bool FoundForm::isFine(chemistry::Instant found)
{
    if (m_mixedOn->text().trimmed().isEmpty())
        return true;
    const auto when = mixedOn();
    if (!when) {
        showProblem(kMixedOn, tr("Mixed on: “%1” cannot be read as a day. Leave it empty where it "
                                 "is not known.")
                                  .arg(m_mixedOn->text().trimmed()));
        return false;
    }
    if (*when > found) {
        showProblem(kMixedOn, tr("Mixed on: %1 lies after the day it was found.")
                                  .arg(understoodDay(localDate(*when), wording().locale)));
        return false;
    }
    return true;
}

} // namespace ullage::app
