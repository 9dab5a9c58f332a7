#include "app/window/book_copies.h"

#include "app/session/file_names.h"
#include "app/widgets/prompts.h"
#include "app/window/book_files.h"
#include "app/window/copies_dialog.h"
#include "app/window/copy_words.h"
#include "app/window/main_window.h"
#include "app/window/salvage_dialog.h"

#include <QDir>
#include <QFileInfo>
#include <QThread>

#include <algorithm>

namespace ullage::app
{

BookCopies::BookCopies(const WindowParts& parts, BookFiles& files, QObject* parent)
    : QObject(parent), m_parts(parts), m_files(files)
{
    connect(&m_parts.session.copies(), &CopyKeeper::changed, this, [this] {
        showStanding();
        listCopies();
    });
    connect(&m_parts.session, &Session::standingChanged, this, &BookCopies::showStanding);
    connect(&m_files, &BookFiles::puttingBack, this, &BookCopies::closeDialog);
}

BookCopies::~BookCopies()
{
    if (m_listing)
        m_listing->wait();
}

// In the rail: how the copies stand.
void BookCopies::showStanding()
{
    const StandingText text =
        standingText(m_parts.session.copies().standing(), m_parts.session.now(), m_parts.wording(),
                     isFaulty() ? FaultSaid::Already : FaultSaid::NotYet);
    m_parts.window.setBackup(text.line, text.trouble);
}

bool BookCopies::isFaulty() const
{
    const Session& session = m_parts.session;
    const auto& why = session.readOnly();
    return session.isOpen() &&
           (why ? why->code == ErrorCode::BookDamaged : session.fault().has_value());
}

void BookCopies::closeDialog()
{
    if (m_dialog)
        m_dialog->close();
}

void BookCopies::backUpTo()
{
    const Session& session = m_parts.session;
    if (!session.isOpen())
        return;
    const QString name = QFileInfo(session.path()).completeBaseName() + tr("-copy") + kBookEnding;
    const auto file =
        prompts().saveFile(&m_parts.window, tr("Back up the book"), name, tr("Books (*.ullage)"));
    if (!file || m_files.isOpenBook(tr("Back up the book"), withEnding(*file, kBookEnding)))
        return;
    auto fault = std::make_shared<std::optional<Error>>();
    m_files.run(tr("Back up the book"),
                copyJob(session.path(), withEnding(*file, kBookEnding), session.now(), fault),
                [this, fault](int) {
                    return *fault ? tr("A whole copy was made; but something is wrong in the book, "
                                       "and so in the copy of it: %1")
                                        .arg(m_parts.sentence(**fault))
                                  : tr("A whole copy was made and checked.");
                });
}

void BookCopies::openCopies()
{
    if (!m_dialog) {
        m_dialog = new CopiesDialog(m_parts.wording(), &m_parts.window);
        CopiesDialog* dialog = m_dialog;
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        connect(dialog, &CopiesDialog::copyRequested, &m_parts.session.copies(),
                &CopyKeeper::copyNow);
        connect(dialog, &CopiesDialog::restoreRequested, this, &BookCopies::restoreCopy);
        connect(dialog, &CopiesDialog::otherRequested, this, &BookCopies::restoreFrom);
        connect(dialog, &CopiesDialog::salvageRequested, this, &BookCopies::salvage);
        connect(dialog, &CopiesDialog::secondRequested, this, &BookCopies::chooseSecondFolder);
        connect(dialog, &CopiesDialog::noSecondRequested, this, [this] { setSecondFolder({}); });
    }
    m_copies.clear();
    listCopies();
    showCopies();
    m_dialog->open();
}

// Every copy is opened to count its entries: on a thread.
void BookCopies::listCopies()
{
    if (!m_dialog)
        return;
    m_listAgain = m_listing != nullptr;
    if (m_listing)
        return;
    auto found = std::make_shared<std::vector<store::Copy>>();
    m_listing =
        QThread::create([found, book = m_files.bookInHand(), folders = m_files.copyFolders()] {
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

void BookCopies::showCopies()
{
    if (!m_dialog)
        return;
    const Session& session = m_parts.session;
    const CopyKeeper& keeper = m_parts.session.copies();
    const auto& places = keeper.places();
    m_dialog->setView({QFileInfo(m_files.bookInHand()).fileName(), keeper.standing(),
                       places.value_or(CopyPlaces()), session.isOpen() && places,
                       m_listing != nullptr, m_copies, session.now()});
}

void BookCopies::chooseSecondFolder()
{
    const auto folder = prompts().openFolder(&m_parts.window, tr("A second folder for copies"));
    if (folder)
        setSecondFolder(*folder);
}

void BookCopies::setSecondFolder(const QString& folder)
{
    CopyKeeper& keeper = m_parts.session.copies();
    auto places = keeper.places();
    if (!places)
        return;
    const QString own = QFileInfo(places->own).canonicalFilePath();
    if (!folder.isEmpty() && QFileInfo(folder).canonicalFilePath() == own) {
        prompts().fail(&m_parts.window, tr("A second folder for copies"),
                       tr("Copies go there already. Choose a folder on a stick, on another disk "
                          "or in a synced place."));
        return;
    }
    m_parts.preferences.setSecondCopies(folder);
    places->second = folder;
    keeper.setPlaces(places);
    keeper.copyNow();
    listCopies();
    showCopies();
}

void BookCopies::restoreFrom()
{
    const auto file = prompts().openFile(&m_parts.window, tr("Restore a copy"),
                                         tr("Books (*.ullage);;All files (*)"));
    if (!file || m_files.isBusy() || m_files.isOpenBook(tr("Restore a copy"), *file))
        return;
    auto copy = std::make_shared<store::Copy>();
    const auto look = [copy, file = *file]() -> Result<int> {
        *copy = store::readCopy(file);
        return 0;
    };
    m_files.run(tr("Restore a copy"), look, [this, copy](int) {
        restoreCopy(*copy);
        return QString();
    });
}

// Only of a copy of this very book: what another has more or less says nothing.
qint64 BookCopies::entriesLostBy(const store::Copy& copy) const
{
    Session& session = m_parts.session;
    const bool ofThis = std::any_of(m_copies.begin(), m_copies.end(),
                                    [&](const store::Copy& one) { return one.path == copy.path; });
    return ofThis && session.isOpen() && session.path() == m_files.bookInHand()
               ? session.entries() - copy.entries
               : 0;
}

void BookCopies::restoreCopy(const store::Copy& copy)
{
    if (m_files.isBusy())
        return;
    const QString path = m_files.bookInHand();
    const bool there = QFileInfo::exists(path);
    const QString name = QFileInfo(path).fileName();
    const QString what = QFileInfo(copy.path).fileName();
    const QString of = copy.state == store::CopyState::Unreadable
                           ? QString()
                           : copyText(copy, m_parts.session.now(), m_parts.wording());
    // The names of our own copies say nothing to a person.
    const bool named = !of.isEmpty() && store::copyName(what);
    const QString ask = named ? (there ? tr("Put this copy in the place of %1?").arg(name)
                                       : tr("Make %1 again from this copy?").arg(name))
                              : (there ? tr("Put %1 in the place of %2?").arg(what, name)
                                       : tr("Make %2 again from %1?").arg(what, name));
    QStringList detail;
    if (!of.isEmpty())
        detail << tr("The copy: %1.").arg(of);
    if (const qint64 more = entriesLostBy(copy); more > 0)
        detail << tr("The book has %Ln entry(s) more; they will be missing.", nullptr,
                     static_cast<int>(more));
    if (there && !m_parts.session.elsewhere().isEmpty())
        detail << tr("It is also open elsewhere: there the copy takes its place, too.");
    if (there)
        detail << tr("The book as it is now is kept beside it under another name.");
    const Question question{tr("Restore a copy"), ask, detail.join(u'\n'), tr("Restore"), true};
    if (prompts().confirm(&m_parts.window, question))
        m_files.putBack(copy.path, path);
}

void BookCopies::salvage()
{
    if (m_files.isBusy())
        return;
    // The one that is faulty, or could not be opened, needs no choosing.
    QString damaged;
    if (isFaulty())
        damaged = m_parts.session.path();
    else if (!m_parts.session.isOpen() && QFileInfo(m_files.wanted()).isFile())
        damaged = m_files.wanted();
    if (damaged.isEmpty()) {
        const auto file = prompts().openFile(&m_parts.window, tr("The damaged book"),
                                             tr("Books (*.ullage);;All files (*)"));
        if (!file)
            return;
        damaged = *file;
    }
    const QString name = QFileInfo(damaged).dir().filePath(QFileInfo(damaged).completeBaseName() +
                                                           tr("-salvaged") + kBookEnding);
    const auto file =
        prompts().saveFile(&m_parts.window, tr("The new book"), name, tr("Books (*.ullage)"));
    if (!file)
        return;
    const QString fresh = withEnding(*file, kBookEnding);
    if (QFileInfo::exists(fresh)) {
        prompts().fail(&m_parts.window, tr("The new book"),
                       tr("%1 is there already; a book is never overwritten. Choose another name.")
                           .arg(QFileInfo(fresh).fileName()));
        return;
    }
    auto done = std::make_shared<store::Salvaged>();
    m_files.run(tr("Salvage a damaged book"),
                salvageJob(damaged, fresh, m_files.copyFolders(), m_parts.session.now(), done),
                [this, done, fresh](int) {
                    showSalvaged(*done, fresh);
                    return QString();
                });
}

void BookCopies::showSalvaged(const store::Salvaged& done, const QString& fresh)
{
    auto* dialog =
        new SalvageDialog(done, fresh, m_parts.session.now(), m_parts.wording(), &m_parts.window);
    connect(dialog, &QDialog::accepted, this, [this, fresh] {
        closeDialog();
        m_files.openBook(fresh);
    });
    openOnce(dialog);
}

} // namespace ullage::app
