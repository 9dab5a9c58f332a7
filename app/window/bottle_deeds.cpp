#include "app/window/bottle_deeds.h"

#include "app/dialogs/decant_dialog.h"
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/history_dialog.h"
#include "app/dialogs/mix_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/window/main_window.h"
#include "app/words/event_words.h"

namespace ullage::app
{

BottleDeeds::BottleDeeds(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts)
{
    connect(&m_parts.session, &Session::changed, this, &BottleDeeds::showUndo);
    connect(&m_parts.session, &Session::standingChanged, this, &BottleDeeds::showUndo);
}

// The Book looks at its last deed alone, and at the bottles and films that one was about: however
// long the book is, unless that deed was an import of it.
void BottleDeeds::showUndo()
{
    Session& session = m_parts.session;
    if (!session.isOpen())
        return;
    if (session.readOnly())
        return m_parts.window.setUndo({}, {});
    const auto name = [](const std::optional<ledger::Action>& action) {
        return action ? std::optional(actionName(*action)) : std::nullopt;
    };
    m_parts.window.setUndo(name(session.book().undoable()), name(session.book().redoable()));
}

void BottleDeeds::undo()
{
    if (!m_parts.session.isOpen())
        return;
    if (const auto done = m_parts.session.undo(); !done)
        m_parts.fail(tr("That cannot be undone"), done.error());
}

void BottleDeeds::redo()
{
    if (!m_parts.session.isOpen())
        return;
    if (const auto done = m_parts.session.redo(); !done)
        m_parts.fail(tr("That cannot be done again"), done.error());
}

void BottleDeeds::logMix()
{
    if (!m_parts.session.isOpen())
        return;
    auto* dialog = new MixDialog(m_parts.context(), &m_parts.window);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { emit bottleMade(dialog->mixed()); });
    openOnce(dialog);
}

void BottleDeeds::doWith(BottleAction action, const QString& batch)
{
    if (!m_parts.session.isOpen())
        return;
    const DialogContext context = m_parts.context();
    const Bottle* bottle = m_parts.session.bottle(batch);
    QWidget* over = &m_parts.window;
    if (action == BottleAction::RunFilm)
        return openOnce(new RunDialog(context, bottle, over));
    if (!bottle)
        return;
    const auto happened = [&](HappeningKind kind) {
        openOnce(new BottleDialog(kind, context, *bottle, over));
    };
    switch (action) {
    case BottleAction::RunFilm:
        return;
    case BottleAction::Bench:
        emit benchRequested(batch);
        return;
    case BottleAction::TopUp:
        return happened(HappeningKind::TopUp);
    case BottleAction::DrawOff:
        return happened(HappeningKind::DrawOff);
    case BottleAction::Decant:
        return openOnce(new DecantDialog(context, *bottle, over));
    case BottleAction::Move:
        return happened(HappeningKind::Move);
    case BottleAction::Test:
        return openOnce(
            new BottleDialog(testsOf(bottle->batch.solution->role), context, *bottle, over));
    case BottleAction::Dissolved:
        return happened(HappeningKind::Dissolved);
    case BottleAction::Contaminated:
        return happened(HappeningKind::Contaminated);
    case BottleAction::Note:
        return happened(HappeningKind::Note);
    case BottleAction::Opened:
        return happened(HappeningKind::Opened);
    case BottleAction::StoodOpen:
        return happened(HappeningKind::StoodOpen);
    case BottleAction::StoredAt:
        return happened(HappeningKind::StoredAt);
    case BottleAction::Films:
        emit filmsRequested(batch, QString::fromStdString(bottle->batch.name));
        return;
    case BottleAction::History:
        return openOnce(new HistoryDialog(context, *bottle, over));
    case BottleAction::Discard:
        return happened(HappeningKind::Discard);
    }
}

} // namespace ullage::app
