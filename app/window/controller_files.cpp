// Books, journals and copies: choosing the file, and the work on a thread.
#include "app/widgets/prompts.h"
#include "app/window/controller.h"
#include "app/window/journal_import.h"
#include "app/window/main_window.h"
#include "app/window/missing_book.h"
#include "core/store/book_file.h"
#include "core/store/file_identity.h"

#include <QFile>
#include <QFileInfo>
#include <QProgressDialog>
#include <QThread>

#include <utility>

namespace ullage::app
{

namespace
{

const QString kBookEnding = QStringLiteral(".ullage");
const QString kJournalEnding = QStringLiteral(".jsonl");

QString withEnding(const QString& file, const QString& ending)
{
    return QFileInfo(file).suffix().isEmpty() ? file + ending : file;
}

} // namespace

// The window waits for the job but stays alive; a job that is quick shows nothing.
void Controller::run(const QString& doing, BookJob job, std::function<QString(int)> done)
{
    if (m_job)
        return;
    auto* progress = new QProgressDialog(doing, QString(), 0, 0, &m_window);
    progress->setWindowModality(Qt::WindowModal);
    progress->setMinimumDuration(400);
    progress->setCancelButton(nullptr);
    progress->setValue(0);
    auto result = std::make_shared<Result<int>>(0);
    m_job = QThread::create([job = std::move(job), result] { *result = job(); });
    m_job->setParent(this);
    connect(m_job, &QThread::finished, this, [this, progress, result, doing, done] {
        m_job->deleteLater();
        m_job = nullptr;
        progress->close();
        progress->deleteLater();
        if (m_restored.isEmpty()) {
            m_session.lookForChanges();
        } else {
            m_window.setEnabled(true);
            const QString path = std::exchange(m_restored, {});
            if (*result && !openBook(path))
                return;
            if (!*result && m_reopens)
                openBook(path);
        }
        if (!*result)
            return fail(doing, result->error());
        if (const QString told = done(**result); !told.isEmpty())
            prompts().tell(&m_window, doing, told);
    });
    m_job->start();
}

// The open book is never read or written as anything else: opened once more it would lose its
// locks, written over it would be gone.
bool Controller::isOpenBook(const QString& title, const QString& file)
{
    if (!store::isOpenHere(file))
        return false;
    fail(title, {.code = ErrorCode::BookItself, .file = file.toStdString()});
    return true;
}

// One that was used before: where it is missing or empty nothing is made without asking.
void Controller::openKnownBook(const QString& path)
{
    const auto found = store::inspect(path);
    if (!found || found->kind == store::FileKind::Book) {
        openBook(path);
        return;
    }
    m_wanted = path;
    auto copies = std::make_shared<std::vector<store::Copy>>();
    const auto look = [copies, path, folders = copyFolders()]() -> Result<int> {
        *copies = copiesOnOffer(path, folders);
        return 0;
    };
    run(tr("Open book"), look, [this, copies, path](int) {
        insteadOf(path, *copies);
        return QString();
    });
}

void Controller::insteadOf(const QString& path, const std::vector<store::Copy>& copies)
{
    const InsteadOfBook instead = askInsteadOf(path, copies, m_session.now(), m_wording, &m_window);
    switch (instead.what) {
    case InsteadOfBook::Nothing:
        return;
    case InsteadOfBook::Another:
        return openKnownBook(instead.file);
    case InsteadOfBook::Copy:
        return putBack(instead.file, path);
    case InsteadOfBook::Anew:
        break;
    }
    if (setRemainsAside(path))
        openBook(path);
    else
        fail(tr("The book cannot be opened"),
             {.code = ErrorCode::FileFailed, .text = path.toStdString()});
}

void Controller::newBook()
{
    const auto file = prompts().saveFile(&m_window, tr("New book"), tr("darkroom") + kBookEnding,
                                         tr("Books (*.ullage)"));
    if (!file)
        return;
    const QString path = withEnding(*file, kBookEnding);
    if (QFile::exists(path)) {
        prompts().fail(&m_window, tr("New book"),
                       tr("%1 is there already; a book is never overwritten. Choose another name.")
                           .arg(QFileInfo(path).fileName()));
        return;
    }
    openBook(path);
}

void Controller::chooseBook()
{
    const auto file =
        prompts().openFile(&m_window, tr("Open book"), tr("Books (*.ullage);;All files (*)"));
    if (!file)
        return;
    if (!QFile::exists(*file)) {
        prompts().fail(&m_window, tr("Open book"),
                       tr("There is no %1.").arg(QFileInfo(*file).fileName()));
        return;
    }
    openKnownBook(*file);
}

void Controller::importInto()
{
    if (!m_session.isOpen())
        return;
    const auto file = prompts().openFile(&m_window, tr("Import a journal"),
                                         tr("Journals (*.jsonl);;All files (*)"));
    if (!file || isOpenBook(tr("Import a journal"), *file))
        return;
    m_import->start(*file, m_wording);
}

void Controller::exportTo()
{
    if (!m_session.isOpen())
        return;
    const QString name = QFileInfo(m_session.path()).completeBaseName() + kJournalEnding;
    const auto file = prompts().saveFile(&m_window, tr("Export a journal"), name,
                                         tr("Journals (*.jsonl);;Tables (*.csv)"));
    if (!file || isOpenBook(tr("Export a journal"), withEnding(*file, kJournalEnding)))
        return;
    run(tr("Export a journal"), exportJob(m_session.path(), withEnding(*file, kJournalEnding)),
        [](int count) { return tr("%Ln entry(s) written.", nullptr, count); });
}

void Controller::checkBook()
{
    if (!m_session.isOpen())
        return;
    run(tr("Check the book"), checkJob(m_session.path(), m_session.lastSeen()), [](int count) {
        return tr("The book is sound; %Ln batch(s) were reckoned anew.", nullptr, count);
    });
}

} // namespace ullage::app
