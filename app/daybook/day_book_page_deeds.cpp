// What is done from the day book: adding, taking back, writing out, printing.
#include "app/daybook/day_book_page.h"

#include "app/daybook/correct_mark_dialog.h"
#include "app/daybook/corrections.h"
#include "app/daybook/day_facts.h"
#include "app/daybook/day_filter_bar.h"
#include "app/daybook/day_model.h"
#include "app/daybook/day_print.h"
#include "app/daybook/forgotten_dialog.h"
#include "app/session/file_names.h"
#include "app/widgets/prompts.h"
#include "app/widgets/why_not.h"
#include "app/words/film_words.h"

#include <QDialog>
#include <QFileInfo>
#include <QMenu>
#include <QPushButton>

namespace ullage::app
{

namespace
{

constexpr int kManyToPrint = 2000; // entries; some fifty sheets

} // namespace

void DayBookPage::addEntry()
{
    if (!m_door.isOpen())
        return;
    std::string bottle = m_filter->filter().batch;
    if (bottle.empty() && chosen())
        bottle = chosen()->event.batch;
    auto* dialog = new ForgottenDialog(m_door, bottle, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void DayBookPage::takeBack()
{
    const store::DayEntry* entry = chosen();
    if (!entry || entry->fault || !m_door.isOpen())
        return;
    if (entry->mark)
        return takeMarkBack(store::DayEntry(*entry));
    const DayLine line = dayLine(*entry, *m_door.formulary(), m_wording);
    const auto events = takingBack(*entry, m_door);
    auto* dialog =
        new TakeBackDialog(m_door, line.title, alongWith(*entry, events, m_door, m_wording), events,
                           entry->taken.has_value(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void DayBookPage::correct()
{
    const store::DayEntry* entry = chosen();
    if (!entry || entry->fault || !m_door.isOpen())
        return;
    auto entered = enteredAs(*entry, m_door);
    if (!whyNotCorrected(*entry, entered).isEmpty())
        return;
    const QString what = dayLine(*entry, *m_door.formulary(), m_wording).title;
    QDialog* dialog = nullptr;
    if (entry->mark && !entry->films.empty())
        dialog = new CorrectMarkDialog(m_door, filmText(entry->films.front(), m_wording.locale),
                                       *entry->mark, this);
    else
        dialog = newCorrection(m_door, what, std::move(entered), this);
    openCorrection(dialog);
}

void DayBookPage::correctFilm()
{
    const store::DayEntry* entry = chosen();
    if (!entry || entry->fault || !entry->mark || entry->films.empty() || !m_door.isOpen())
        return;
    auto entered = enteredAs(*entry, m_door);
    if (!entered.empty())
        openCorrection(newCorrection(m_door, filmText(entry->films.front(), m_wording.locale),
                                     std::move(entered), this));
}

void DayBookPage::openCorrection(QDialog* dialog)
{
    connect(dialog, &QDialog::accepted, this,
            [this, corrected = Corrected{chosen()->event, chosen()->mark.has_value(),
                                         m_model->lastEntry()}] {
                m_corrected = corrected; // the rows come later
                // Not to the button, which is to bring back by now what was corrected.
                m_list->setFocus();
            });
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

// By the menu key as well, and for whoever looks for it with the mouse.
void DayBookPage::showMenu(const QPoint& at)
{
    const store::DayEntry* entry = chosen();
    if (!entry || entry->fault || !m_door.isOpen())
        return;
    auto* menu = new QMenu(m_list);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const DayFacts facts = dayFacts(*entry, m_door, m_wording);
    if (facts.whyNotCorrected.isEmpty())
        menu->addAction(tr("&Correct…"), QKeySequence(Qt::Key_F2), this, &DayBookPage::correct);
    if (facts.ofFilm && facts.whyNotFilm.isEmpty())
        menu->addAction(tr("Correct the &film…"), this, &DayBookPage::correctFilm);
    menu->addAction(entry->taken ? tr("B&ring back…") : tr("&Take back…"),
                    QKeySequence(Qt::Key_Delete), this, &DayBookPage::takeBack);
    menu->popup(m_list->viewport()->mapToGlobal(at));
}

// A mark does nothing to a bottle: there are no consequences to show, only a reason to ask for.
void DayBookPage::takeMarkBack(const store::DayEntry& entry)
{
    const QString title = entry.taken ? tr("Bring the mark back") : tr("Take the mark back");
    const auto why = prompts().askText(this, title,
                                       entry.taken ? tr("Why does it stand again?")
                                                   : tr("Why? It stays in the book, struck out."));
    if (!why)
        return;
    ledger::FilmMark back = *entry.mark;
    if (entry.taken)
        back.id = entry.taken->voiding;
    const auto done = m_door.takeMarksBack({back}, why->trimmed().toStdString());
    if (!done)
        fail(title, done.error());
}

void DayBookPage::exportShown()
{
    if (!m_door.isOpen() || m_model->entriesRead() == 0)
        return;
    const QString name = QFileInfo(m_door.path()).completeBaseName() + tr("-day-book");
    const auto file = prompts().saveFile(this, tr("Export what is shown"), name + kTableEnding,
                                         tr("Tables (*.csv);;Journals (*.jsonl)"));
    if (!file)
        return;
    const auto words = dayWording(*m_door.formulary(), m_wording);
    const auto stop = [thread = m_slow.get()] { return thread->stopping(); };
    const auto failed = [this](const Error& error) {
        QMetaObject::invokeMethod(this, [this, error] {
            setWhyNot(m_export, {});
            fail(tr("Export what is shown"), error);
        });
    };
    setWhyNot(m_export, tr("It is being written."));
    m_slow->post(
        [=, this, filter = m_model->filter(),
         file = withEnding(*file, kTableEnding)](store::SqlStore& store) {
            const auto rows = exportDays(store, filter, words, file, stop);
            QMetaObject::invokeMethod(this, [this, rows] {
                setWhyNot(m_export, {});
                if (!rows)
                    return failUnlessStopped(tr("Export what is shown"), rows.error());
                prompts().tell(this, tr("Export what is shown"),
                               tr("%Ln entry(s) written.", nullptr, *rows));
                emit exported(*rows);
            });
        },
        failed);
}

void DayBookPage::printShown()
{
    if (!m_door.isOpen() || m_model->entriesRead() == 0)
        return;
    if (m_totals && (m_totals->more || m_totals->entries > kManyToPrint)) {
        const int entries = m_totals->entries;
        const Question question{
            tr("Print the day book"),
            m_totals->more ? tr("Print more than %Ln entry(s)?", nullptr, entries)
                           : tr("Print %Ln entry(s)?", nullptr, entries),
            tr("A shorter period, or one bottle chosen above, makes them fewer."), tr("Print"),
            false};
        if (!prompts().confirm(this, question))
            return;
    }
    const DayPrint print{
        tr("Day book · %1").arg(QFileInfo(m_door.path()).fileName()), m_filter->words(), {}};
    const auto words = dayWording(*m_door.formulary(), m_wording);
    const auto stop = [thread = m_slow.get()] { return thread->stopping(); };
    m_slow->post(
        [=, this, filter = m_model->filter()](store::SqlStore& store) {
            const auto lines = dayPrintLines(store, filter, words, stop);
            QMetaObject::invokeMethod(this, [this, lines, print] {
                if (!lines)
                    return failUnlessStopped(tr("Print the day book"), lines.error());
                DayPrint whole = print;
                whole.lines = *lines;
                emit printReady(static_cast<int>(whole.lines.size()));
                previewDays(whole, this);
            });
        },
        [this](const Error& error) {
            QMetaObject::invokeMethod(this,
                                      [this, error] { fail(tr("Print the day book"), error); });
        });
}

} // namespace ullage::app
