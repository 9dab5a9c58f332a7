// The Day book: everything that happened, newest first, with what the chosen entry was about; and
// behind a button the statistics of the same book, which are a page of their own.
#pragma once

#include <QWidget>

#include "app/session/door.h"
#include "app/session/store_thread.h"
#include "core/store/day_book.h"

#include <memory>
#include <optional>

class QDialog;
class QListView;
class QPushButton;
class QStackedWidget;
class QTimer;

namespace ullage::app
{

class DayDetail;
class DayFilterBar;
class DayModel;
class EmptyState;
class ForgottenDialog;
class LookingStrip;
class PageHeader;
class TakeBackDialog;

/// Reads on threads of its own, and only while it is seen, but for an export or a print under way.
/// What fails is told in a dialog.
class DayBookPage : public QWidget
{
    Q_OBJECT

public:
    /// The door outlives the page; `statistics` is the widget behind the button, the
    /// page's own from now on.
    DayBookPage(Door& door, QWidget* statistics, QWidget* parent = nullptr);
    ~DayBookPage() override;

    /// Statistics, or the entries again.
    void showStatistics(bool on);
    /// Shows what happened to one bottle: the filter is set to it, the rest of it stays.
    void showBottle(const QString& id, const QString& name);

    [[nodiscard]] DayFilterBar* filterBar() const { return m_filter; }
    [[nodiscard]] QListView* list() const { return m_list; }
    /// What the keys are for when the page is opened.
    [[nodiscard]] QWidget* firstForKeys() const;
    [[nodiscard]] DayModel* model() const { return m_model; }
    /// The chosen entry; null for none.
    [[nodiscard]] const store::DayEntry* chosen() const;

    // What the buttons do; each opens its dialog or asks for its file, and does nothing while no
    // book is open. Export and print are of all that the filter lets through, read or not.
    void addEntry();
    void takeBack();
    /// Enters the chosen entry anew with other values.
    void correct();
    /// Of a mark on a film, the film's run.
    void correctFilm();
    /// `entry` is a mark on a film; brings it back if it was taken back.
    void takeMarkBack(const store::DayEntry& entry);
    void exportShown();
    void printShown();

signals:
    /// Show the card of a film; show a bottle on the shelf.
    void filmRequested(const QString& id);
    void shelfRequested(const QString& id, const QString& name);
    /// Show all films that went through a bottle.
    void filmsRequested(const QString& id, const QString& name);
    /// The book is empty and the user wants to begin.
    void mixRequested();
    /// A file was written: rows. For tests and whoever tells of it.
    void exported(int rows);
    /// The lines of a print are there, before the preview opens.
    void printReady(int lines);

protected:
    void hideEvent(QHideEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void build();
    void connectAll();
    void wordAnew();
    void bookOpened();
    void bookClosing();
    void refresh();
    void applyFilter();
    void pageRead(bool anew);
    void count();
    void readChoices();
    void keepIndex();
    void leaveIndex();
    void showIndexing(int percent);
    void showLooking();
    void showChosen();
    void openCorrection(QDialog* dialog);
    void showMenu(const QPoint& at);
    void showHeader();
    void fail(const QString& title, const Error& error);
    /// Who opens another book meanwhile, or closes the window, wants no word about it.
    void failUnlessStopped(const QString& title, const Error& error);
    [[nodiscard]] store::DayFilter shownFilter() const;

    Door& m_door;
    Wording m_wording;
    // For pages as they come into sight, and for what takes longer; gone before what they tell.
    std::unique_ptr<StoreThread> m_pages;
    std::unique_ptr<StoreThread> m_slow;
    std::unique_ptr<StoreThread> m_keeper; // of the index
    std::shared_ptr<std::atomic<int>> m_counting = std::make_shared<std::atomic<int>>(0);
    std::shared_ptr<std::atomic<int>> m_keeping = std::make_shared<std::atomic<int>>(0);
    bool m_indexLeft = false; ///< the user wants none now
    QTimer* m_again;
    std::optional<store::DayTotals> m_totals;
    bool m_stale = true;   ///< to be read when the page is next seen
    QString m_keep;        ///< event that stays chosen while rows are read anew
    std::string m_keepRun; ///< and the run that it is of: another bath may come to stand for it
    struct Corrected {
        ledger::Event was;
        bool mark;         ///< it was a mark on a film
        std::int64_t last; ///< entry of the book before it
    };
    std::optional<Corrected> m_corrected; ///< what comes in its place is to be chosen

    PageHeader* m_header;
    QPushButton* m_toggle;
    QPushButton* m_export;
    QPushButton* m_print;
    QPushButton* m_add;
    QStackedWidget* m_stack;
    QWidget* m_entries;
    DayFilterBar* m_filter;
    LookingStrip* m_looking;
    LookingStrip* m_indexing;
    QStackedWidget* m_lists;
    QListView* m_list;
    DayModel* m_model;
    DayDetail* m_detail;
    EmptyState* m_empty;
    QPushButton* m_mixFirst;
    EmptyState* m_none;
    QPushButton* m_all;
    QWidget* m_statistics;
};

} // namespace ullage::app
