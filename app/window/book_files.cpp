#include "app/window/book_files.h"

#include "app/session/file_names.h"
#include "app/sheet/sheet_words.h"
#include "app/widgets/prompts.h"
#include "app/window/findings_dialog.h"
#include "app/window/journal_import.h"
#include "app/window/main_window.h"
#include "app/window/missing_book.h"
#include "app/window/run_window.h"
#include "app/window/sheet_importer.h"
#include "core/store/book_file.h"
#include "core/store/file_identity.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>

namespace ullage::app
{

BookFiles::BookFiles(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts), m_job(new BackgroundJob(parts.window, this)),
      m_import(new JournalImport(parts.window, parts.session, this)),
      m_sheets(new SheetImporter(parts, this))
{
}

bool BookFiles::openBook(const QString& path)
{
    m_wanted = path;
    if (const auto opened = m_parts.session.open(path); !opened) {
        QString told = tr("%1: %2", "file, what is wrong with it")
                           .arg(QFileInfo(path).fileName(), m_parts.sentence(opened.error()));
        if (!m_parts.session.isOpen())
            told +=
                u'\n' + tr("In the File menu, “Copies…” puts a copy in its place, and “Salvage a "
                           "damaged book…” reads what is left of it into a new one.");
        prompts().fail(&m_parts.window, tr("The book cannot be opened"), told);
        return false;
    }
    m_parts.preferences.setLastBook(m_parts.session.path());
    return true;
}

void BookFiles::run(const QString& doing, BookJob job, std::function<QString(int)> done)
{
    m_job->run(doing, std::move(job), [this, doing, done](const Result<int>& result) {
        m_parts.session.lookForChanges();
        if (!result)
            return fail(doing, result.error());
        if (const QString told = done(*result); !told.isEmpty())
            prompts().tell(&m_parts.window, doing, told);
    });
}

bool BookFiles::isOpenBook(const QString& title, const QString& file) const
{
    if (!store::isOpenHere(file))
        return false;
    fail(title, {.code = ErrorCode::BookItself, .file = file.toStdString()});
    return true;
}

QString BookFiles::bookInHand() const
{
    if (m_parts.session.isOpen())
        return m_parts.session.path();
    if (!m_wanted.isEmpty())
        return m_wanted;
    const QString last = m_parts.preferences.lastBook();
    return last.isEmpty() ? usualBook() : last;
}

QStringList BookFiles::copyFolders() const
{
    const auto& places = m_parts.session.copies().places();
    return places ? places->folders() : QStringList();
}

// One that was used before: where it is missing or empty nothing is made without asking.
void BookFiles::openKnownBook(const QString& path)
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

void BookFiles::insteadOf(const QString& path, const std::vector<store::Copy>& copies)
{
    const InsteadOfBook instead =
        askInsteadOf(path, copies, m_parts.session.now(), m_parts.wording(), &m_parts.window);
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

// What is shown must not be of two books: the one that is there afterwards is opened anew.
void BookFiles::putBack(const QString& copy, const QString& path)
{
    if (isBusy())
        return;
    emit puttingBack();
    Session& session = m_parts.session;
    const bool reopens = session.isOpen() && session.path() == path;
    if (reopens)
        session.close();
    m_parts.window.setEnabled(false);
    auto restored = std::make_shared<store::Restored>();
    const QString doing = tr("Restore a copy");
    const auto done = [this, restored, path, reopens, doing](const Result<int>& count) {
        m_parts.window.setEnabled(true);
        if (!count) {
            if (reopens)
                openBook(path);
            return fail(doing, count.error());
        }
        if (!openBook(path))
            return;
        QString told = tr("%Ln entry(s) restored.", nullptr, *count);
        if (!restored->kept.isEmpty())
            told +=
                u' ' +
                tr("The book as it was is kept as %1.").arg(QFileInfo(restored->kept).fileName());
        prompts().tell(&m_parts.window, doing, told);
    };
    m_job->run(doing, restoreJob(copy, path, session.now(), restored, session.lastSeen()), done);
}

void BookFiles::newBook()
{
    // A book is something of the user's own, not of the program's.
    const QDir documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    const auto file = prompts().saveFile(&m_parts.window, tr("New book"),
                                         documents.filePath(tr("darkroom") + kBookEnding),
                                         tr("Books (*.ullage)"));
    if (!file)
        return;
    const QString path = withEnding(*file, kBookEnding);
    if (QFile::exists(path)) {
        prompts().fail(&m_parts.window, tr("New book"),
                       tr("%1 is there already; a book is never overwritten. Choose another name.")
                           .arg(QFileInfo(path).fileName()));
        return;
    }
    openBook(path);
}

void BookFiles::chooseBook()
{
    const auto file =
        prompts().openFile(&m_parts.window, tr("Open book"), tr("Books (*.ullage);;All files (*)"));
    if (!file)
        return;
    if (!QFile::exists(*file)) {
        prompts().fail(&m_parts.window, tr("Open book"),
                       tr("%1 is not there.").arg(QFileInfo(*file).fileName()));
        return;
    }
    openKnownBook(*file);
}

void BookFiles::importInto()
{
    if (!m_parts.session.isOpen())
        return;
    const auto file = prompts().openFile(
        &m_parts.window, tr("Import a journal or a spreadsheet"),
        tr("Journals and spreadsheets (*.jsonl *.csv *.tsv *.txt);;All files (*)"));
    if (!file || isOpenBook(tr("Import a journal or a spreadsheet"), *file))
        return;
    if (isSheetName(*file))
        m_sheets->start(*file);
    else
        m_import->start(*file, m_parts.wording());
}

void BookFiles::exportTo()
{
    if (!m_parts.session.isOpen())
        return;
    const QString book = m_parts.session.path();
    const auto file = prompts().saveFile(&m_parts.window, tr("Export a journal"),
                                         QFileInfo(book).completeBaseName() + kJournalEnding,
                                         tr("Journals (*.jsonl);;Tables (*.csv)"));
    if (!file || isOpenBook(tr("Export a journal"), withEnding(*file, kJournalEnding)))
        return;
    run(tr("Export a journal"), exportJob(book, withEnding(*file, kJournalEnding)),
        [](int count) { return tr("%Ln entry(s) written.", nullptr, count); });
}

void BookFiles::showFindings(const store::BookCheck& check)
{
    auto* dialog =
        new FindingsDialog(check, m_parts.session.now(), m_parts.wording(), &m_parts.window);
    connect(dialog, &FindingsDialog::copiesRequested, this, &BookFiles::copiesRequested);
    connect(dialog, &FindingsDialog::salvageRequested, this, &BookFiles::salvageRequested);
    openOnce(dialog);
}

void BookFiles::checkBook()
{
    if (!m_parts.session.isOpen())
        return;
    const auto check = std::make_shared<store::BookCheck>();
    run(tr("Check the book"), checkJob(m_parts.session.path(), m_parts.session.lastSeen(), check),
        [this, check](int count) {
            if (!check->findings.empty()) {
                showFindings(*check);
                return QString();
            }
            return tr("The book is sound; %Ln batch(es) recalculated.", nullptr, count);
        });
}

} // namespace ullage::app
