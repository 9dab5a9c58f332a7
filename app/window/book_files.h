// Books and journals: which one is open, and what the File menu does with one.
#pragma once

#include <QObject>

#include "app/window/background_job.h"
#include "app/window/window_parts.h"
#include "core/store/copies.h"

#include <vector>

namespace ullage::app
{

class JournalImport;
class SheetImporter;

/// For the window's thread. Asks for files, works on a thread, and tells in dialogs how it went.
class BookFiles : public QObject
{
    Q_OBJECT

public:
    explicit BookFiles(const WindowParts& parts, QObject* parent = nullptr);

    /// Opens a book and remembers it as the last one; says why if it cannot be. False then.
    bool openBook(const QString& path);
    /// The same for a book that must have been there before: if it is missing or empty, asks what
    /// to do once its copies are found.
    void openKnownBook(const QString& path);
    void newBook();
    void chooseBook();
    void importInto();
    void exportTo();
    void checkBook();
    /// Puts a copy in the place of `path`, or makes it anew from it. If that is the open book it is
    /// let go meanwhile, and what is then there is opened.
    void putBack(const QString& copy, const QString& path);

    /// The open book; or the one that could not be opened; or the one used last.
    [[nodiscard]] QString bookInHand() const;
    /// The book that was to be opened last, whether it could be or not; empty for none.
    [[nodiscard]] const QString& wanted() const { return m_wanted; }
    /// Where copies of the book lie.
    [[nodiscard]] QStringList copyFolders() const;
    /// Runs a job and tells what `done` says of it, or why it was refused. Nothing while another
    /// is under way.
    void run(const QString& doing, BookJob job, std::function<QString(int)> done);
    [[nodiscard]] bool isBusy() const { return m_job->isUnderWay(); }
    /// True, and said, if `file` is the open book. That is never read or written as anything else:
    /// opened once more it would lose its locks, written over it would be gone.
    bool isOpenBook(const QString& title, const QString& file) const;

signals:
    /// A copy is put in the place of the book: whatever shows copies goes.
    void puttingBack();
    /// After a check that found faults: the copies are wanted, or what is left in a new book.
    void copiesRequested();
    void salvageRequested();

private:
    void showFindings(const store::BookCheck& check);
    void insteadOf(const QString& path, const std::vector<store::Copy>& copies);
    void fail(const QString& title, const Error& error) const { m_parts.fail(title, error); }

    WindowParts m_parts;
    BackgroundJob* m_job;
    JournalImport* m_import;
    SheetImporter* m_sheets;
    QString m_wanted;
};

} // namespace ullage::app
