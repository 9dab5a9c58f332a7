// The Shelf: the bottles in use, and what is to be known of the selected one.
//
// The page shows what it is given and says what the user wants; it changes nothing itself.
#pragma once

#include "app/shelf/selected_bottle.h"
#include "app/shelf/shelf_model.h"

#include <QWidget>

#include <optional>
#include <vector>

class QGridLayout;
class QPushButton;
class QSplitter;
class QStackedWidget;

namespace ullage::app
{

class DoneLine;
class EmptyState;
class NextFilmCard;
class PageHeader;
class ShelfView;

class ShelfPage : public QWidget
{
    Q_OBJECT

public:
    explicit ShelfPage(QWidget* parent = nullptr);

    /// "5 bottles in use · 1 to discard · next to discard 9 Dec".
    void setSummary(const QString& summary);
    /// The selected bottle stays selected if it is still there, else the most urgent one is.
    void setBottles(std::vector<BottleView> bottles);
    /// What was just done, in the place of the summary and with the way to take it back; empty for
    /// nothing.
    void tellDone(const QString& text, const QString& undo = {});
    /// To be called in answer to bottleSelected().
    void setSelected(const SelectedBottle& bottle);

    [[nodiscard]] QString currentBottle() const;
    bool selectBottle(const QString& id);

    /// For the menu bar; the page's own menu and buttons use the same.
    [[nodiscard]] BottleActions* actions() const { return m_actions; }
    [[nodiscard]] ShelfView* view() const { return m_view; }

    /// How shelf and cards share the height, where that was chosen by hand; else empty.
    [[nodiscard]] QByteArray split() const;
    void restoreSplit(const QByteArray& state);

signals:
    void bottleSelected(const QString& id);
    void mixRequested();
    /// A bottle that stands there already.
    void enterRequested();
    /// To look around where no bottle stands yet.
    void demoRequested();
    void actionRequested(ullage::app::BottleAction action, const QString& batch);
    /// Of what was told to be done.
    void undoRequested();
    // Of a bottle that is not as it was entered.
    void checkRequested();
    void copiesRequested();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    class ChartCard;

    void retranslate();
    void placeCards();
    void giveRoom();
    void shareHeight();

    SelectedBottle m_selected; // as shown
    ShelfModel* m_model;
    BottleActions* m_actions;
    PageHeader* m_header;
    DoneLine* m_done;
    QPushButton* m_run;
    QPushButton* m_plan;
    QPushButton* m_mix;
    QStackedWidget* m_stack;
    EmptyState* m_empty;
    QPushButton* m_mixFirst;
    QPushButton* m_enterFirst;
    QPushButton* m_demoFirst;
    QSplitter* m_splitter;
    bool m_splitByHand = false;
    ShelfView* m_view;
    QWidget* m_cards;
    QGridLayout* m_grid;        ///< of the cards
    std::optional<bool> m_wide; ///< whether they stand side by side
    NextFilmCard* m_next;
    ChartCard* m_left;
    ChartCard* m_perFilm;
    QPushButton* m_films;
};

} // namespace ullage::app
