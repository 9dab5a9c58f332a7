// A film's card: its bottles as they were, times planned and real, and what is wrong with it.
#pragma once

#include "app/films/film_views.h"
#include "app/session/door.h"
#include "app/widgets/asking_dialog.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace ullage::app
{

/// Fills itself anew when the book grows, and shows what it showed last once the book is closed.
/// What the Book refuses is told in a dialog.
class FilmCard : public AskingDialog
{
    Q_OBJECT

public:
    /// `film` is its id.
    FilmCard(Door& door, const QString& film, QWidget* parent = nullptr);

    [[nodiscard]] const QString& film() const { return m_film; }
    /// What it shows; empty name if the film is not in the book.
    [[nodiscard]] const FilmView& view() const { return m_view; }

    /// A note on the negatives that was not kept with a mark is asked about.
    void reject() override;

signals:
    /// The user wants to see a bottle.
    void bottleRequested(const QString& id, const QString& name);
    /// What went wrong with the films marked around this one?
    void compareRequested(const QString& film);

private:
    void build();
    void fill();
    void fillMarks(QVBoxLayout* column);
    void fillBottles(QVBoxLayout* column);
    void readCost(const ledger::FilmTrace& film);
    void fillCost(QVBoxLayout* column);
    void fillTimes(QVBoxLayout* column);
    QLabel* addText(QVBoxLayout* column, const QString& text);
    void mark(ledger::FilmFault fault);
    void takeBack(const ledger::FilmMark& mark);
    void fail(const Error& error);

    Door& m_door;
    QString m_film;
    std::int64_t m_seen = 0; ///< entries in the book when it was filled
    FilmView m_view;
    chemistry::Films m_units; ///< in this one; 0 where its format is not known
    std::vector<FilmBottleCost> m_paid;
    std::vector<std::string> m_ofRun; ///< ids of the films of its run
    QLabel* m_name;
    QLabel* m_detail;
    QScrollArea* m_area;
    QLineEdit* m_note;
    QPushButton* m_mark;
    QCheckBox* m_all;
    QPushButton* m_compare;
};

} // namespace ullage::app
