#include "app/window/journal_import.h"

#include "app/dialogs/import_dialog.h"
#include "app/widgets/prompts.h"
#include "app/words/error_words.h"
#include "app/words/merge_words.h"
#include "core/store/file_moves.h"

#include <QFile>
#include <QFileInfo>
#include <QProgressDialog>
#include <QThread>

#include <atomic>

namespace ullage::app
{

namespace
{

constexpr int kWhole = 1000; // of the progress
constexpr int kLookMs = 100;
constexpr int kQuickMs = 400; // what is done by then shows no progress

std::pair<qint64, QDateTime> stateOf(const QString& file)
{
    const QFileInfo info(file);
    return {info.size(), info.lastModified()};
}

} // namespace

/// What the thread and the window both know.
struct JournalImport::Shared {
    std::atomic<int> done{0};
    std::atomic<bool> stop{false};
    std::optional<Error> uncopied; ///< why no copy of the book could be made before
    Result<store::ImportOutcome> outcome = refuse({.code = ErrorCode::Cancelled});
};

JournalImport::JournalImport(QWidget& window, Session& session, QObject* parent)
    : QObject(parent), m_window(window), m_session(session)
{
    m_look.setInterval(kLookMs);
    connect(&m_look, &QTimer::timeout, this, [this] {
        if (m_progress && m_shared)
            m_progress->setValue(m_shared->done);
    });
}

JournalImport::~JournalImport()
{
    if (m_thread) {
        m_shared->stop = true;
        m_thread->wait();
    }
    delete m_dialog;
}

bool JournalImport::running() const { return m_thread || m_dialog; }

void JournalImport::start(const QString& journal, const Wording& wording)
{
    if (running())
        return;
    m_journal = journal;
    m_wording = wording;
    m_asJudged = stateOf(journal);
    m_copied = false;
    m_uncopied.reset();
    work(false, true, [this](auto outcome) { first(std::move(outcome)); });
}

void JournalImport::work(bool trial, bool showProgress, const Done& done)
{
    m_shared = std::make_shared<Shared>();
    if (showProgress) {
        m_progress = new QProgressDialog(tr("Import a journal"), tr("Stop"), 0, kWhole, &m_window);
        m_progress->setWindowModality(Qt::WindowModal);
        m_progress->setMinimumDuration(kQuickMs);
        m_progress->setAutoReset(false);
        m_progress->setValue(0);
        connect(m_progress, &QProgressDialog::canceled, this,
                [shared = m_shared] { shared->stop = true; });
    }
    store::ImportOptions options;
    options.name = QFileInfo(m_journal).fileName();
    options.trial = trial;
    options.sameRefuse = true;
    if (m_dialog)
        options.settled = m_dialog->settlement();
    options.watch = [shared = m_shared](const store::Progress& progress) {
        shared->done = static_cast<int>(progress.done * kWhole / progress.all);
        return !shared->stop;
    };
    const auto& places = m_session.copies().places();
    const bool copies = places && !trial && !m_copied;
    m_copied = m_copied || !trial;
    const auto job = [path = m_session.path(), journal = m_journal, options, shared = m_shared,
                      places = copies ? places : std::nullopt,
                      this]() -> Result<store::ImportOutcome> {
        QFile file(journal);
        if (!QFileInfo(journal).isFile() || !file.open(QIODevice::ReadOnly)) {
            return refuse(store::fileFailure(journal, file.errorString()));
        }
        if (places)
            shared->uncopied = copyBefore(path, *places, m_session.now());
        auto store = store::SqlStore::open(path);
        if (!store)
            return tl::unexpected(store.error());
        auto book = ledger::Book::open(
            **store, [this] { return m_session.now(); }, [this] { return m_session.newId(); });
        if (!book)
            return tl::unexpected(book.error());
        return store::readJournal(**book, **store, file, options);
    };
    m_thread = QThread::create([job, shared = m_shared] { shared->outcome = job(); });
    m_thread->setParent(this);
    connect(m_thread, &QThread::finished, this, [this, done, shared = m_shared] {
        m_thread->deleteLater();
        m_thread = nullptr;
        m_look.stop();
        if (m_progress) {
            m_progress->close();
            m_progress->deleteLater();
        }
        if (shared->uncopied)
            m_uncopied = shared->uncopied;
        done(std::move(shared->outcome));
    });
    m_look.start();
    m_thread->start();
}

void JournalImport::first(Result<store::ImportOutcome> outcome)
{
    if (!outcome || outcome->entered)
        finish(std::move(outcome));
    else
        ask(*outcome);
}

void JournalImport::ask(const store::ImportOutcome& outcome)
{
    m_dialog = new ImportDialog(
        QFileInfo(m_journal).fileName(), m_session.formulary(), [this] { return m_session.now(); },
        m_wording, &m_window);
    m_dialog->setAttribute(Qt::WA_DeleteOnClose);
    m_dialog->setModal(true);
    m_dialog->setOutcome(outcome);
    connect(m_dialog, &ImportDialog::decided, this, &JournalImport::judge);
    connect(m_dialog, &ImportDialog::importWanted, this, [this] {
        if (m_thread)
            return;
        if (changedMeanwhile())
            return judge();
        work(false, true, [this](auto done) { finish(std::move(done)); });
    });
    connect(m_dialog, &QDialog::rejected, this, [this] {
        if (m_shared)
            m_shared->stop = true;
    });
    m_dialog->open();
}

bool JournalImport::changedMeanwhile()
{
    const auto now = stateOf(m_journal);
    if (now == m_asJudged)
        return false;
    m_asJudged = now;
    m_dialog->forget();
    return true;
}

// What follows from what was decided so far.
void JournalImport::judge()
{
    if (!m_dialog)
        return;
    if (m_thread) {
        m_again = true;
        m_shared->stop = true;
        return;
    }
    m_again = false;
    changedMeanwhile();
    m_dialog->setJudging(true);
    work(true, false, [this](Result<store::ImportOutcome> outcome) {
        if (!m_dialog)
            return;
        m_dialog->setJudging(false);
        if (m_again)
            return judge();
        if (outcome)
            m_dialog->setOutcome(*outcome);
        else
            fail(outcome.error());
    });
}

void JournalImport::finish(Result<store::ImportOutcome> outcome)
{
    if (!outcome)
        return fail(outcome.error());
    if (!outcome->entered) { // others wrote meanwhile
        if (m_dialog)
            m_dialog->setOutcome(*outcome);
        return;
    }
    if (m_dialog)
        m_dialog->accept(); // all of it is in
    m_session.lookForChanges();
    const QString entered = tr("%Ln new entry(s).", nullptr, outcome->added);
    prompts().tell(&m_window, tr("Import a journal"),
                   m_uncopied ? entered + u'\n' +
                                    tr("No copy of the book could be made before: %1")
                                        .arg(errorSentence(*m_uncopied, m_wording))
                              : entered);
}

void JournalImport::fail(const Error& error)
{
    if (error.code == ErrorCode::Cancelled)
        return;
    prompts().fail(m_dialog ? static_cast<QWidget*>(m_dialog) : &m_window, tr("Import a journal"),
                   errorSentence(error, m_wording));
}

} // namespace ullage::app
