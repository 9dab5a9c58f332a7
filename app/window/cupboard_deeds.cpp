#include "app/window/cupboard_deeds.h"

#include "app/calendar/calendar_offer.h"
#include "app/cupboard/add_item_dialog.h"
#include "app/cupboard/can_dialogs.h"
#include "app/cupboard/code_dialog.h"
#include "app/cupboard/item_deed_dialog.h"
#include "app/cupboard/work_dialog.h"
#include "app/cupboard/work_words.h"
#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "app/window/offered_work_dialog.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "core/cupboard/work_series.h"
#include "core/store/calendar_reader.h"
#include "core/store/file_identity.h"

#include <QFile>

namespace ullage::app
{

CupboardDeeds::CupboardDeeds(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts)
{
}

std::optional<ledger::CupboardState> CupboardDeeds::state() const
{
    if (!m_parts.door.isOpen())
        return std::nullopt;
    auto state = m_parts.door.cupboard();
    if (state)
        return std::move(*state);
    m_parts.fail(tr("The cupboard cannot be read"), state.error());
    return std::nullopt;
}

void CupboardDeeds::add()
{
    const auto now = state();
    if (!now)
        return;
    auto* dialog = new AddItemDialog(m_parts.door, *now, &m_parts.window);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { emit entered(dialog->entered()); });
    openOnce(dialog);
}

void CupboardDeeds::doWith(CupboardAction action, const QStringList& items)
{
    const auto now = state();
    if (!now)
        return;
    std::vector<ledger::ItemHere> chosen;
    for (const QString& id : items) {
        for (const ledger::ItemHere& here : now->items) {
            if (here.item.id == id.toStdString())
                chosen.push_back(here);
        }
    }
    if (chosen.empty())
        return;
    QWidget* over = &m_parts.window;
    switch (action) {
    case CupboardAction::Mix:
        emit mixRequested(QString::fromStdString(chosen.front().item.id));
        return;
    case CupboardAction::TeachCode:
        return openOnce(new CodeDialog(m_parts.door, *now, chosen.front(), over));
    case CupboardAction::Edit: {
        auto* dialog = new AddItemDialog(m_parts.door, *now, chosen.front(), over);
        connect(dialog, &QDialog::accepted, this,
                [this, dialog] { emit entered(dialog->entered()); });
        return openOnce(dialog);
    }
    default:
        return openOnce(new ItemDeedDialog(action, m_parts.door, std::move(chosen), over));
    }
}

void CupboardDeeds::doWithCan(CanAction action, const QString& can)
{
    const auto now = state();
    if (!now)
        return;
    QWidget* over = &m_parts.window;
    if (action == CanAction::New)
        return openOnce(new CanDialog(m_parts.door, {}, over));
    for (const ledger::CanHere& here : now->cans) {
        if (here.can.id != can.toStdString())
            continue;
        if (action == CanAction::Edit)
            return openOnce(new CanDialog(m_parts.door, here.can, over));
        if (action == CanAction::PourIn)
            return openOnce(new PourInDialog(m_parts.door, here, over));
        return openOnce(new HandOverDialog(m_parts.door, here, over));
    }
}

void CupboardDeeds::doWithWork(WorkAction action, const QString& work)
{
    const auto now = state();
    if (!now)
        return;
    QWidget* over = &m_parts.window;
    if (action == WorkAction::New)
        return openOnce(new WorkDialog(m_parts.door, {}, over));
    if (action == WorkAction::Import)
        return readCalendar(*now);
    for (const ledger::Work& one : now->works) {
        if (one.id != work.toStdString())
            continue;
        if (action == WorkAction::Edit)
            return openOnce(new WorkDialog(m_parts.door, one, over));
        if (action == WorkAction::SkipOnce)
            return skipOnce(one);
        return takeWorkAway(one);
    }
}

void CupboardDeeds::skipOnce(const ledger::Work& work)
{
    constexpr std::size_t kOffered = 26;
    const auto now = m_parts.door.now();
    const auto times = cupboard::nextTimes(work, now, kOffered, wallClock());
    QStringList ways;
    for (const chemistry::Instant at : times)
        ways << momentText(at, now, m_parts.wording().locale);
    const auto chosen =
        ways.isEmpty()
            ? std::nullopt
            : prompts().choose(&m_parts.window, tr("Skip once"),
                               tr("%1: which date is skipped?").arg(workName(work)), ways);
    if (!chosen)
        return;
    auto works = cupboard::withoutOnce(work, times[static_cast<std::size_t>(*chosen)], wallClock());
    std::vector<ledger::CupboardLine> lines;
    for (ledger::Work& line : works) {
        line.id = m_parts.door.newId();
        lines.push_back(std::move(line));
    }
    if (lines.empty())
        return;
    if (const auto done = m_parts.door.add(std::move(lines)); !done)
        m_parts.fail(tr("The work was not changed"), done.error());
}

void CupboardDeeds::takeWorkAway(ledger::Work work)
{
    const Question question{.title = tr("Delete the work?"),
                            .text = work.name.empty() ? tr("It will not be planned for any more.")
                                                      : tr("“%1” will not be planned for any more.")
                                                            .arg(QString::fromStdString(work.name)),
                            .detail = work.rule.empty()
                                          ? QString()
                                          : tr("That goes for every time it would come again."),
                            .yes = tr("Delete")};
    if (!prompts().confirm(&m_parts.window, question))
        return;
    work.replaces = work.id;
    work.id = m_parts.door.newId();
    work.withdrawn = true;
    if (const auto done = m_parts.door.add(std::vector<ledger::CupboardLine>{std::move(work)});
        !done)
        m_parts.fail(tr("The work was not deleted"), done.error());
}

// Which of it is work, the person says.
void CupboardDeeds::readCalendar(const ledger::CupboardState& state)
{
    const QString title = tr("Read a calendar");
    const auto name =
        prompts().openFile(&m_parts.window, title, tr("Calendars (*.ics);;All files (*)"));
    if (!name)
        return;
    if (store::isOpenHere(*name))
        return m_parts.fail(title, {.code = ErrorCode::BookItself, .field = "FILE"});
    QFile file(*name);
    if (!file.open(QIODevice::ReadOnly))
        return m_parts.fail(title, {.code = ErrorCode::FileFailed,
                                    .field = "FILE",
                                    .text = file.errorString().toStdString()});
    std::vector<Error> leftOut;
    const auto events = store::readCalendar(file.readAll(), &leftOut);
    if (!events)
        return m_parts.fail(title, events.error());
    auto works = offeredWork(*events, state, *m_parts.door.formulary(), m_parts.door.now());
    const QString notRead = notReadText(leftOut, m_parts.wording().locale);
    if (works.empty()) {
        const QString nothing =
            tr("Nothing new: what comes yet of this calendar is known already.");
        return prompts().tell(&m_parts.window, title,
                              notRead.isEmpty() ? nothing : nothing + u'\n' + notRead);
    }
    openOnce(new OfferedWorkDialog(m_parts.door, std::move(works), notRead, &m_parts.window));
}

} // namespace ullage::app
