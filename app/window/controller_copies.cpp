// Copies of the book: what there is, putting one back, and what a damaged book still holds. All of
// it works where no book can be opened.
#include "app/widgets/prompts.h"
#include "app/window/controller.h"
#include "app/window/copies_dialog.h"
#include "app/window/copy_words.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "app/window/salvage_dialog.h"

#include <QDir>
#include <QFileInfo>
#include <QThread>

namespace ullage::app
{

namespace
{

const QString kBookEnding = QStringLiteral(".ullage");

QString withEnding(const QString& file)
{
    return QFileInfo(file).suffix().isEmpty() ? file + kBookEnding : file;
}

} // namespace

// The open one, or the one that could not be opened.
QString Controller::bookInHand() const
{
    if (m_session.isOpen())
        return m_session.path();
    if (!m_wanted.isEmpty())
        return m_wanted;
    const QString last = m_preferences.lastBook();
    return last.isEmpty() ? usualBook() : last;
}

QStringList Controller::copyFolders() const
{
    const auto& places = m_session.copies().places();
    return places ? places->folders() : QStringList();
}

void Controller::showBackup()
{
    const StandingText text =
        standingText(m_session.copies().standing(), m_session.now(), m_wording);
    m_window.setBackup(text.line, text.trouble);
}

void Controller::backUpTo()
{
    if (!m_session.isOpen())
        return;
    const QString name = QFileInfo(m_session.path()).completeBaseName() + tr("-copy") + kBookEnding;
    const auto file =
        prompts().saveFile(&m_window, tr("Back up the book"), name, tr("Books (*.ullage)"));
    if (!file || isOpenBook(tr("Back up the book"), withEnding(*file)))
        return;
    auto fault = std::make_shared<std::optional<Error>>();
    run(tr("Back up the book"),
        copyJob(m_session.path(), withEnding(*file), m_session.now(), fault), [this, fault](int) {
            return *fault ? tr("A whole copy was made; but something is wrong in the book, and so "
                               "in the copy of it: %1")
                                .arg(sentence(**fault))
                          : tr("A whole copy was made and checked.");
        });
}

void Controller::openCopies()
{
    if (!m_copiesDialog) {
        m_copiesDialog = new CopiesDialog(m_wording, &m_window);
        CopiesDialog* dialog = m_copiesDialog;
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        connect(dialog, &CopiesDialog::copyRequested, &m_session.copies(), &CopyKeeper::copyNow);
        connect(dialog, &CopiesDialog::restoreRequested, this, &Controller::restoreCopy);
        connect(dialog, &CopiesDialog::otherRequested, this, &Controller::restoreFrom);
        connect(dialog, &CopiesDialog::salvageRequested, this, &Controller::salvage);
        connect(dialog, &CopiesDialog::secondRequested, this, &Controller::chooseSecondFolder);
        connect(dialog, &CopiesDialog::noSecondRequested, this, [this] { setSecondFolder({}); });
    }
    m_copies.clear();
    listCopies();
    showCopies();
    m_copiesDialog->open();
}

// Every copy is opened to count its entries: on a thread.
void Controller::listCopies()
{
    if (!m_copiesDialog)
        return;
    m_listAgain = m_listing != nullptr;
    if (m_listing)
        return;
    auto found = std::make_shared<std::vector<store::Copy>>();
    m_listing = QThread::create([found, book = bookInHand(), folders = copyFolders()] {
        *found = store::copies(book, store::readCopy(book).bookId, folders);
    });
    connect(m_listing, &QThread::finished, this, [this, found] {
        m_listing->deleteLater();
        m_listing = nullptr;
        m_copies = std::move(*found);
        if (m_listAgain)
            listCopies();
        showCopies();
    });
    m_listing->start();
}

void Controller::showCopies()
{
    if (!m_copiesDialog)
        return;
    const auto& places = m_session.copies().places();
    m_copiesDialog->setView({QFileInfo(bookInHand()).fileName(), m_session.copies().standing(),
                             places.value_or(CopyPlaces()), m_session.isOpen() && places,
                             m_listing != nullptr, m_copies, m_session.now()});
}

void Controller::chooseSecondFolder()
{
    const auto folder = prompts().openFolder(&m_window, tr("A second folder for copies"));
    if (folder)
        setSecondFolder(*folder);
}

void Controller::setSecondFolder(const QString& folder)
{
    auto places = m_session.copies().places();
    if (!places)
        return;
    const QString own = QFileInfo(places->own).canonicalFilePath();
    if (!folder.isEmpty() && QFileInfo(folder).canonicalFilePath() == own) {
        prompts().fail(&m_window, tr("A second folder for copies"),
                       tr("Copies go there already. Choose a folder on a stick, on another disk "
                          "or in a synced place."));
        return;
    }
    m_preferences.setSecondCopies(folder);
    places->second = folder;
    m_session.copies().setPlaces(places);
    m_session.copies().copyNow();
    listCopies();
    showCopies();
}

void Controller::restoreFrom()
{
    const auto file =
        prompts().openFile(&m_window, tr("Restore a copy"), tr("Books (*.ullage);;All files (*)"));
    if (!file || m_job || isOpenBook(tr("Restore a copy"), *file))
        return;
    auto copy = std::make_shared<store::Copy>();
    const auto look = [copy, file = *file]() -> Result<int> {
        *copy = store::readCopy(file);
        return 0;
    };
    run(tr("Restore a copy"), look, [this, copy](int) {
        restoreCopy(*copy);
        return QString();
    });
}

void Controller::restoreCopy(const store::Copy& copy)
{
    if (m_job)
        return;
    const QString path = bookInHand();
    const bool there = QFileInfo::exists(path);
    const QString name = QFileInfo(path).fileName();
    const QString what = QFileInfo(copy.path).fileName();
    const QString of = copy.state == store::CopyState::Unreadable
                           ? QString()
                           : copyText(copy, m_session.now(), m_wording);
    // The names of our own copies say nothing to a person.
    const bool named = !of.isEmpty() && store::copyName(what);
    const QString ask = named ? (there ? tr("Put this copy in the place of %1?").arg(name)
                                       : tr("Make %1 anew from this copy?").arg(name))
                              : (there ? tr("Put %1 in the place of %2?").arg(what, name)
                                       : tr("Make %2 anew from %1?").arg(what, name));
    const Question question{
        tr("Restore a copy"), ask,
        (of.isEmpty() ? QString() : tr("The copy: %1.").arg(of) + u'\n') +
            (there ? tr("The book as it is now is kept beside it under another name.") : QString()),
        tr("Restore"), true};
    if (!prompts().confirm(&m_window, question))
        return;
    putBack(copy.path, path);
}

void Controller::putBack(const QString& copy, const QString& path)
{
    if (m_copiesDialog)
        m_copiesDialog->close();
    // What is shown must not be of two books: run() opens what is then there.
    m_reopens = m_session.isOpen() && m_session.path() == path;
    if (m_reopens)
        m_session.close();
    m_window.setEnabled(false);
    m_restored = path;
    auto done = std::make_shared<store::Restored>();
    run(tr("Restore a copy"), restoreJob(copy, path, m_session.now(), done, m_session.lastSeen()),
        [done](int count) {
            const QString restored = tr("%Ln entry(s) restored.", nullptr, count);
            return done->kept.isEmpty() ? restored
                                        : restored + u' ' +
                                              tr("The book as it was is kept as %1.")
                                                  .arg(QFileInfo(done->kept).fileName());
        });
}

void Controller::salvage()
{
    if (m_job)
        return;
    // The one that is faulty, or could not be opened, needs no choosing.
    QString damaged;
    if (isFaulty())
        damaged = m_session.path();
    else if (!m_session.isOpen() && QFileInfo(m_wanted).isFile())
        damaged = m_wanted;
    if (damaged.isEmpty()) {
        const auto file = prompts().openFile(&m_window, tr("The damaged book"),
                                             tr("Books (*.ullage);;All files (*)"));
        if (!file)
            return;
        damaged = *file;
    }
    const QString name = QFileInfo(damaged).dir().filePath(QFileInfo(damaged).completeBaseName() +
                                                           tr("-salvaged") + kBookEnding);
    const auto file =
        prompts().saveFile(&m_window, tr("The new book"), name, tr("Books (*.ullage)"));
    if (!file)
        return;
    const QString fresh = withEnding(*file);
    if (QFileInfo::exists(fresh)) {
        prompts().fail(&m_window, tr("The new book"),
                       tr("%1 is there already; a book is never overwritten. Choose another name.")
                           .arg(QFileInfo(fresh).fileName()));
        return;
    }
    auto done = std::make_shared<store::Salvaged>();
    run(tr("Salvage a damaged book"),
        salvageJob(damaged, fresh, copyFolders(), m_session.now(), done), [this, done, fresh](int) {
            showSalvaged(*done, fresh);
            return QString();
        });
}

void Controller::showSalvaged(const store::Salvaged& done, const QString& fresh)
{
    auto* dialog = new SalvageDialog(done, fresh, m_wording, &m_window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, fresh] {
        if (m_copiesDialog)
            m_copiesDialog->close();
        openBook(fresh);
    });
    dialog->open();
}

} // namespace ullage::app
