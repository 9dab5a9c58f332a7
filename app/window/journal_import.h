// Importing a journal in the window: on a thread, with progress and a way to stop, and with the
// dialog where something contradicts.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>
#include <QPointer>
#include <QTimer>

#include "app/session/session.h"
#include "app/words/units.h"
#include "core/store/journal_reader.h"

#include <QDateTime>

#include <functional>
#include <memory>

class QProgressDialog;
class QThread;
class QWidget;

namespace ullage::app
{

class ImportDialog;

/// For the window's thread. All of a journal comes in, or nothing. Where copies go somewhere, one
/// of the book is made before. Refusals and what came in are told in dialogs.
class JournalImport : public QObject
{
    Q_OBJECT

public:
    /// Both outlive it.
    JournalImport(QWidget& window, Session& session, QObject* parent);
    /// Stops what is under way: the book is as it was.
    ~JournalImport() override;

    /// `journal` is a file's path. Does nothing while another one is under way.
    void start(const QString& journal, const Wording& wording);
    /// At work, or waiting for decisions.
    [[nodiscard]] bool running() const;

private:
    struct Shared;
    using Done = std::function<void(Result<store::ImportOutcome>)>;

    void work(bool trial, bool showProgress, const Done& done);
    void first(Result<store::ImportOutcome> outcome);
    void ask(const store::ImportOutcome& outcome);
    void judge();
    void finish(Result<store::ImportOutcome> outcome);
    void fail(const Error& error);
    bool changedMeanwhile();

    QWidget& m_window;
    Session& m_session;
    Wording m_wording;
    QString m_journal;
    std::pair<qint64, QDateTime> m_asJudged; ///< the file's size and date
    std::shared_ptr<Shared> m_shared;
    QThread* m_thread = nullptr;
    QPointer<QProgressDialog> m_progress;
    QPointer<ImportDialog> m_dialog;
    QTimer m_look;
    std::optional<Error> m_uncopied; ///< why that could not be done everywhere
    bool m_copied = false;           ///< the book, before anything is entered
    bool m_again = false;            ///< something was decided while it was judged
};

} // namespace ullage::app
