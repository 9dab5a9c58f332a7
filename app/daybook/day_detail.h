// The chosen entry of the day book, with the bottles it went through and the way to take it back.
#pragma once

#include "app/widgets/card.h"
#include "app/words/explanation.h"
#include "app/words/factor_row.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;
class QLabel;
class QPushButton;
class QScrollArea;

namespace ullage::app
{

/// A bottle an entry is about, and what it was then.
struct DayBottle {
    QString id;
    QString name;
    QString then;          ///< "7 films before, time × 1.32"; may be empty
    bool onShelf = false;  ///< still in use
    QString cost = {};     ///< of one that has ended, where it is known
    Explanation paid = {}; ///< where that is from
};

/// A film of a run, or the one that a mark is on.
struct DayFilm {
    QString id;
    QString text;  ///< "Harbour 400 · 120 · EI 400"
    QString marks; ///< "thin: by half"; empty unless it is marked
};

/// All of the chosen entry, worded.
struct DayFacts {
    QString heading; ///< "Saturday, 14 November 2026, 18:20"
    QString title;
    QString detail;
    QString taken; ///< "taken back on … by …: why"; empty unless it was
    std::vector<DayFilm> films;
    std::vector<DayBottle> bottles;
    std::vector<FactorRow> times; ///< a run's steps, planned and real
    QString person;               ///< "by Ada"; empty if nobody is named
    bool bringBack = false;       ///< it is taken back and can be brought back
    QString whyNotCorrected;      ///< why it cannot be entered anew; empty if it can
    bool ofFilm = false;          ///< it is a mark: its film's run can be corrected besides
    QString whyNotFilm;           ///< why that cannot be
    bool fixed = false;           ///< it can be neither taken back nor brought back
};

class DayDetail : public Card
{
    Q_OBJECT

public:
    explicit DayDetail(QWidget* parent = nullptr);

    void setFacts(const DayFacts& facts);
    /// Words where nothing is chosen.
    void setNothing(const QString& text);

signals:
    /// Take the entry back, or bring it back.
    void takeBackRequested();
    /// Enter it anew with other values.
    void correctRequested();
    /// Enter the run of the film that it is on anew.
    void correctFilmRequested();
    void filmRequested(const QString& id);
    void shelfRequested(const QString& id, const QString& name);
    void filmsRequested(const QString& id, const QString& name);
    /// Show all that happened to this bottle.
    void bottleRequested(const QString& id, const QString& name);

private:
    void clear();
    QLabel* addText(const QString& text);
    QPushButton* addLink(const QString& text, const QString& spoken);

    QScrollArea* m_scroll;
    QWidget* m_content = nullptr;
    QVBoxLayout* m_column = nullptr;
    QPushButton* m_correctFilm;
    QPushButton* m_correct;
    QPushButton* m_takeBack;
};

} // namespace ullage::app
