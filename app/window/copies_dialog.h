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

struct CopiesView {
    QString book; ///< name of its file
    CopyStanding standing;
    CopyPlaces places;
    bool open = false;    ///< only of an open book can a copy be made
    bool looking = false; ///< the list is still being made
    std::vector<store::Copy> copies;
    chemistry::Instant now;
};

class CopiesDialog : public QDialog
{
    Q_OBJECT

public:
    explicit CopiesDialog(const Wording& wording, QWidget* parent = nullptr);

    void setView(const CopiesView& view);

signals:
    void copyRequested();
    void restoreRequested(const ullage::store::Copy& copy);
    /// Some other file as a copy.
    void otherRequested();
    void salvageRequested();
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
