// The guide to mixing in the window: one at a time, left and found again where it was.
#pragma once

#include <QObject>
#include <QPointer>
#include <QTimer>

#include "app/dialogs/mix_dialog.h"
#include "app/paper/paper_document.h"
#include "app/window/window_parts.h"
#include "core/ledger/run_clock.h"

namespace ullage::app
{

class MixingPage;

class MixingPlace : public QObject
{
    Q_OBJECT

public:
    /// `steady` is what the guide's clocks count by.
    MixingPlace(const WindowParts& parts, ledger::SteadyClock steady, QObject* parent = nullptr);

    /// Opens the guide, or goes back to the one under way; nothing while no book is open.
    void open();
    /// The same with this packet of the cupboard chosen, where the guide still asks.
    void openWith(const QString& packet);
    /// A batch was logged in the plain dialog: a guide that has only begun to ask is taken away,
    /// and so is one `inItsPlace`, that led to the dialog.
    void loggedPlainly(bool inItsPlace);

signals:
    /// The plain dialog is wanted instead, with what the guide has chosen for each bottle.
    void plainLogWanted(const std::vector<ullage::app::MixChoice>& begun);
    /// The guide logged them in one go; it may still be gone back to.
    void batchesLogged(const QStringList& batches);
    /// A page about what is being mixed, to be looked at and printed.
    void paperMade(const ullage::app::PaperDocument& document);
    /// Labels for what was just mixed are wanted.
    void labelsRequested(const QStringList& batches);
    /// The guide is left; `batch` is empty if nothing was mixed.
    void finished(const QString& batch);

private:
    void logPlainly();
    void takeAway();
    void showLine();

    WindowParts m_parts;
    QTimer m_timer; ///< of the line in the rail, while a guide is in hand
    ledger::SteadyClock m_steady;
    QPointer<MixingPage> m_guide;
};

} // namespace ullage::app
