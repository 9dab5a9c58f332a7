// The copies of a book: which there are, where they go, and putting one back.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QDialog>

#include "app/session/copy_keeper.h"
#include "app/words/units.h"

class QLabel;
class QPushButton;
class QTreeWidget;

namespace ullage::app
{

/// What the dialog shows.
struct CopiesView {
    QString book; ///< name of its file
    CopyStanding standing;
    CopyPlaces places;
    bool open = false;               ///< only of an open book can a copy be made
    bool looking = false;            ///< the list is still being made
    std::vector<store::Copy> copies; ///< in the order shown
    chemistry::Instant now;          ///< moments are worded as seen from it
};

/// Only says what is wanted; who made it does that, and sets the view again.
class CopiesDialog : public QDialog
{
    Q_OBJECT

public:
    explicit CopiesDialog(const Wording& wording, QWidget* parent = nullptr);

    /// Chooses the first copy.
    void setView(const CopiesView& view);

signals:
    /// A copy now.
    void copyRequested();
    /// One that can be read.
    void restoreRequested(const ullage::store::Copy& copy);
    /// Some other file as a copy.
    void otherRequested();
    void salvageRequested();
    /// Another second folder, or none any more.
    void secondRequested();
    void noSecondRequested();

private:
    void showChosen();
    [[nodiscard]] const store::Copy* chosen() const;

    Wording m_wording;
    CopiesView m_view;
    QLabel* m_heading;
    QLabel* m_standing;
    QTreeWidget* m_list;
    QLabel* m_own;
    QLabel* m_second;
    QPushButton* m_none;
    QPushButton* m_copy;
    QPushButton* m_restore;
};

} // namespace ullage::app
