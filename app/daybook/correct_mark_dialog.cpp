#include "app/daybook/correct_mark_dialog.h"

#include "app/daybook/correcting_dialog.h"
#include "app/words/film_words.h"
#include "core/formulary/field_of.h"
#include "core/ledger/entry_fields.h"

#include <QComboBox>
#include <QLineEdit>

namespace ullage::app
{

using ledger::FilmFault;
using ledger::FilmMark;

CorrectMarkDialog::CorrectMarkDialog(Door& door, const QString& film, FilmMark mark,
                                     QWidget* parent)
    : DeedDialog(door, tr("Correct a mark"), parent), m_mark(std::move(mark)),
      m_fault(new QComboBox(this))
{
    addHeading(film);
    addText(tr("The mark is taken back and set anew with what you change. Undo takes both back."));
    for (std::size_t i = 0; i < ledger::kFilmFaultCodes.size(); ++i)
        m_fault->addItem(filmFaultTitle(static_cast<FilmFault>(i)));
    m_fault->setCurrentIndex(static_cast<int>(m_mark.fault.value_or(FilmFault::Thin)));
    addRow(QStringLiteral("mark"), tr("What is &wrong with it"), m_fault);
    m_note = form()->addWords(formulary::fieldOf(&FilmMark::note), tr("&Note"));
    m_note->setText(QString::fromStdString(m_mark.note));
    addWhen()->setMoment(m_mark.at);
    m_why = new QLineEdit(this);
    m_why->setMaxLength(static_cast<int>(formulary::fieldOf(&FilmMark::note).longest));
    addRow(QStringLiteral("why"), tr("Wh&y, if you like"), m_why);
    setDeed(tr("Correct"));
    m_fault->setFocus();
}

Result<void> CorrectMarkDialog::act()
{
    FilmMark now = m_mark;
    now.at = unlessSameMinute(m_mark.at, moment());
    now.fault = static_cast<FilmFault>(m_fault->currentIndex());
    now.note = m_note->text().trimmed().toStdString();
    return door().correctMark(now, m_why->text().trimmed().toStdString());
}

} // namespace ullage::app
