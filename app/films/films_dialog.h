// All films that went through one bottle, newest first; each leads to its card.
#pragma once

#include "app/session/door.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace ullage::app
{

/// Only films that have a line of their own; fills itself anew when the book grows.
class FilmsDialog : public QDialog
{
    Q_OBJECT

public:
    /// `batch` is the bottle's id, `name` what it is called.
    FilmsDialog(Door& door, const QString& batch, const QString& name, QWidget* parent = nullptr);

    [[nodiscard]] QTreeWidget* list() const { return m_list; }

signals:
    /// A click or the key; where a second click activates too, told twice.
    void filmRequested(const QString& film);
    /// What went wrong with the films marked? `film` is the newest of them.
    void compareRequested(const QString& film);

private:
    void fill();
    [[nodiscard]] QString shownOf(const std::vector<ledger::FilmTrace>& films) const;

    Door& m_door;
    QString m_batch;
    std::int64_t m_seen = 0; ///< entries in the book when it was filled
    QString m_newestMarked;  ///< id of a film, or empty
    QTreeWidget* m_list;
    QLabel* m_count;
    QPushButton* m_compare;
};

} // namespace ullage::app
