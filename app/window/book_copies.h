// Copies of the book: what there is, putting one back, and what a damaged book still holds. All of
// it works where no book can be opened.
#pragma once

#include <QObject>
#include <QPointer>

#include "app/window/window_parts.h"
#include "core/store/copies.h"
#include "core/store/salvage.h"

#include <vector>

class QThread;

namespace ullage::app
{

class BookFiles;
class CopiesDialog;

/// For the window's thread.
class BookCopies : public QObject
{
    Q_OBJECT

public:
    /// `files` outlives it.
    BookCopies(const WindowParts& parts, BookFiles& files, QObject* parent = nullptr);
    ~BookCopies() override;

    /// A copy to a file of the user's choice.
    void backUpTo();
    /// The dialog of all copies there are.
    void openCopies();
    /// Asks for a file and puts it in the place of the book.
    void restoreFrom();
    /// Reads what is left of a damaged book into a new one: of the one that is faulty or could not
    /// be opened, or of one that is asked for.
    void salvage();
    /// Something is wrong in the open book.
    [[nodiscard]] bool isFaulty() const;

    /// In the rail: how the copies stand; again when the words for it change.
    void showStanding();

private:
    void listCopies();
    void showCopies();
    void closeDialog();
    void chooseSecondFolder();
    void setSecondFolder(const QString& folder);
    void restoreCopy(const store::Copy& copy);
    /// How many entries the book in hand has more than a copy of it; 0 where that is not known.
    [[nodiscard]] qint64 entriesLostBy(const store::Copy& copy) const;
    void showSalvaged(const store::Salvaged& done, const QString& fresh);

    WindowParts m_parts;
    BookFiles& m_files;
    QPointer<CopiesDialog> m_dialog;
    std::vector<store::Copy> m_copies; ///< of the book in hand, as they were last listed
    QThread* m_listing = nullptr;
    bool m_listAgain = false; ///< something changed while they were listed
};

} // namespace ullage::app
