// What is done with bottles from the window: each deed opens its dialog; undo and redo.
#pragma once

#include <QObject>

#include "app/dialogs/mix_dialog.h"
#include "app/shelf/bottle_actions.h"
#include "app/window/window_parts.h"

namespace ullage::ledger
{
struct OneMore;
}

namespace ullage::app
{

class BottleDeeds : public QObject
{
    Q_OBJECT

public:
    explicit BottleDeeds(const WindowParts& parts, QObject* parent = nullptr);

    // None does anything while no book is open.
    /// The plain dialog for a new batch; and the same in place of the guide that led to it.
    void logMix();
    /// One after the other, of a set.
    void logMixOfGuide(const std::vector<MixChoice>& begun);
    /// Running film needs no bottle; the others do nothing if `batch` is not in use.
    void doWith(BottleAction action, const QString& batch);
    /// Labels for these bottles, or for all in use for none.
    void printLabels(const QStringList& batches);
    /// Of a fixer just mixed and clear: whether a leader is to be tested now, since that is the
    /// fresh value. Nothing for any other bottle.
    void offerFreshTest(const QString& batch);
    /// False if it cannot be done; that has been said by then.
    bool undo();
    void redo();
    /// What the Edit menu says of them; again when the words for it change.
    void showUndo();

signals:
    /// A batch was entered, and is to be selected on the shelf.
    void bottleMade(const QString& batch, bool ofGuide);
    /// Plan a run with it on the Bench; show what film went through it.
    void benchRequested(const QString& batch);
    void filmsRequested(const QString& batch, const QString& name);
    /// What was just done, in words.
    void deedDone(const QString& what);

private:
    WindowParts m_parts;

    void oneMore(const Bottle& bottle);
    [[nodiscard]] QString hindranceText(const ledger::OneMore& more);
    void openMix(const std::vector<MixChoice>& ofGuide);
    void openDeed(QDialog* dialog);
};

} // namespace ullage::app
