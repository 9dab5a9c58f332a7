#include "app/window/bottle_deeds.h"

#include "app/dialogs/decant_dialog.h"
#include "app/dialogs/exchange_dialog.h"
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/history_dialog.h"
#include "app/dialogs/labels_dialog.h"
#include "app/dialogs/load_question.h"
#include "app/dialogs/mix_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "app/words/event_words.h"
#include "app/words/formulary_words.h"
#include "app/words/verdict_words.h"
#include "core/ledger/one_more.h"
#include "core/ledger/verdict.h"

#include <optional>

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

bool BottleDeeds::undo()
{
    if (!m_parts.session.isOpen())
        return false;
    const auto done = m_parts.session.undo();
    if (!done)
        m_parts.fail(tr("That cannot be undone"), done.error());
    return done.has_value();
}

void BottleDeeds::redo()
{
    if (!m_parts.session.isOpen())
        return;
    if (const auto done = m_parts.session.redo(); !done)
        m_parts.fail(tr("That cannot be done again"), done.error());
}

void BottleDeeds::printLabels(const QStringList& batches)
{
    std::vector<std::string> ids;
    for (const QString& batch : batches)
        ids.push_back(batch.toStdString());
    if (m_parts.session.isOpen())
        openOnce(new LabelsDialog(m_parts.door, ids, &m_parts.window));
}

void BottleDeeds::logMix() { openMix({}); }

void BottleDeeds::logMixOfGuide(const std::vector<MixChoice>& begun) { openMix(begun); }

void BottleDeeds::openMix(const std::vector<MixChoice>& ofGuide)
{
    if (!m_parts.session.isOpen())
        return;
    auto* dialog = new MixDialog(m_parts.door, &m_parts.window);
    if (!ofGuide.empty())
        dialog->beginWith(ofGuide.front());
    connect(dialog, &QDialog::accepted, this, [this, dialog, ofGuide] {
        emit bottleMade(dialog->mixed(), !ofGuide.empty());
        std::vector<MixChoice> rest(ofGuide.empty() ? ofGuide.end() : ofGuide.begin() + 1,
                                    ofGuide.end());
        if (rest.empty())
            return;
        rest.front().at = dialog->datedBack(); // a set is mixed in one go
        openMix(rest);
    });
    openOnce(dialog);
}

// Where it cannot simply be done again, it is asked what went through, and said why.
void BottleDeeds::oneMore(const Bottle& bottle)
{
    Session& session = m_parts.session;
    const auto more = ledger::oneMore(session.book(), bottle.batch.id, session.now());
    if (!more)
        return m_parts.fail(tr("That cannot be logged"), more.error());
    if (more->hindrance) {
        auto* dialog = new RunDialog(m_parts.door, &bottle, &m_parts.window);
        dialog->say(hindranceText(*more));
        return openDeed(dialog);
    }
    std::vector<ledger::Judged> judged;
    QString names;
    for (const ledger::Bath& bath : more->run.baths) {
        const Bottle* one = session.bottle(QString::fromStdString(bath.batch));
        if (!one)
            continue;
        judged.push_back({one->batch, one->assessment});
        const QString name = QString::fromStdString(one->batch.name);
        names = names.isEmpty() ? name
                : &bath == &more->run.baths.back()
                    ? tr("%1 and %2", "bottles, the last one").arg(names, name)
                    : tr("%1, %2", "bottles, another one").arg(names, name);
    }
    if (!LoadQuestion().sure(&m_parts.window, more->run, judged, m_parts.wording()))
        return;
    const auto logged =
        session.doing([&](ledger::Book& book) { return book.process(more->run, session.now()); });
    if (!logged)
        return m_parts.fail(tr("That cannot be logged"), logged.error());
    QStringList told{tr("1 film of %1 on %2", "format, bottles")
                         .arg(filmFormatShort(more->run.load.films.front().format), names)};
    for (const ledger::Bath& bath : more->run.baths) {
        const Bottle* now = session.bottle(QString::fromStdString(bath.batch));
        if (now && now->assessment.verdict >= ledger::Verdict::TestFirst)
            told << tr("%1: %2", "bottle, verdict")
                        .arg(QString::fromStdString(now->batch.name),
                             verdictWord(now->assessment.verdict));
    }
    emit deedDone(told.join(QStringLiteral(" · ")));
}

QString BottleDeeds::hindranceText(const ledger::OneMore& more)
{
    const auto batch = m_parts.session.book().batch(more.batch, m_parts.session.now());
    const QString name = QString::fromStdString(batch ? batch->name : more.batch);
    switch (more.hindrance.value_or(ledger::OneMoreHindrance::NothingDone)) {
    case ledger::OneMoreHindrance::Gone:
        return tr("%1 took the last film and is not in use any more: choose the baths.").arg(name);
    case ledger::OneMoreHindrance::Discard:
        return tr("%1 took the last film and is to be discarded: choose the baths.").arg(name);
    case ledger::OneMoreHindrance::VolumeShort:
        return tr("%1 holds less than the last film took of it.").arg(name);
    case ledger::OneMoreHindrance::NothingDone:
        break;
    }
    return tr("No film has gone through %1 yet: say what it was and which baths it took.")
        .arg(name);
}

void BottleDeeds::offerFreshTest(const QString& batch)
{
    constexpr chemistry::Days kJustMixed{1}; // clear the morning after it was stirred
    const Bottle* bottle = m_parts.session.isOpen() ? m_parts.session.bottle(batch) : nullptr;
    if (!bottle)
        return;
    const Bottle kept = *bottle; // the book may change while it is asked
    const ledger::Batch& fixer = kept.batch;
    if (fixer.solution->role != formulary::Role::Fixer || fixer.inDoubt() ||
        !ledger::knownClear(fixer) || !fixer.tests.empty() || !fixer.loads.empty() ||
        fixer.wear.value() > 0 ||
        chemistry::daysBetween(fixer.mixedAt, m_parts.session.now()) > kJustMixed)
        return;
    const QString name = QString::fromStdString(fixer.name);
    // The bottle stands in the book already: there is nothing here to cancel.
    const Question question{.title = tr("%1 is ready").arg(name),
                            .text = tr("Test a piece of leader now: it is the fresh value."),
                            .detail = tr("Later tests are compared with it. When a leader takes "
                                         "twice as long to clear, the fixer is spent."),
                            .yes = tr("Test it now"),
                            .no = tr("Later")};
    if (prompts().confirm(&m_parts.window, question))
        openDeed(
            new BottleDialog(HappeningKind::ClearingTest, m_parts.door, kept, &m_parts.window));
}

// What it was and how to take it back stands on the shelf, as after a film by one key.
void BottleDeeds::openDeed(QDialog* dialog)
{
    connect(dialog, &QDialog::accepted, this, [this] {
        const auto last = m_parts.session.isOpen() ? m_parts.session.book().undoable()
                                                   : std::optional<ledger::Action>();
        if (last)
            emit deedDone(tr("Logged: %1", "what was done").arg(actionName(*last)));
    });
    openOnce(dialog);
}

void BottleDeeds::doWith(BottleAction action, const QString& batch)
{
    if (!m_parts.session.isOpen())
        return;
    Door& door = m_parts.door;
    const Bottle* bottle = m_parts.session.bottle(batch);
    QWidget* over = &m_parts.window;
    if (action == BottleAction::RunFilm)
        return openDeed(new RunDialog(door, bottle, over));
    if (!bottle)
        return;
    if (action == BottleAction::OneMore)
        return oneMore(*bottle);
    const auto happened = [&](HappeningKind kind) {
        openDeed(new BottleDialog(kind, door, *bottle, over));
    };
    switch (action) {
    case BottleAction::RunFilm:
    case BottleAction::OneMore:
        return;
    case BottleAction::Bench:
        emit benchRequested(batch);
        return;
    case BottleAction::TopUp:
        return happened(HappeningKind::TopUp);
    case BottleAction::DrawOff:
        return happened(HappeningKind::DrawOff);
    case BottleAction::Decant:
        return openDeed(new DecantDialog(door, *bottle, over));
    case BottleAction::Move:
        return happened(HappeningKind::Move);
    case BottleAction::Test:
        return openDeed(
            new BottleDialog(testsOf(bottle->batch.solution->role), door, *bottle, over));
    case BottleAction::Measured:
        return happened(HappeningKind::Measured);
    case BottleAction::Filtered:
        return happened(HappeningKind::Filtered);
    case BottleAction::Dissolved: {
        auto* dialog = new BottleDialog(HappeningKind::Dissolved, door, *bottle, over);
        openDeed(dialog); // tells of it before anything is asked
        connect(dialog, &QDialog::accepted, this, [this, batch] { offerFreshTest(batch); });
        return;
    }
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
        return openOnce(new HistoryDialog(door, *bottle, over));
    case BottleAction::Label:
        return openOnce(new LabelsDialog(door, {bottle->batch.id}, over));
    case BottleAction::ExchangeBaths:
        return openDeed(new ExchangeDialog(door, *bottle, over));
    case BottleAction::Discard:
        return happened(HappeningKind::Discard);
    }
}

} // namespace ullage::app
