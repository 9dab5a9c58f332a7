// The Cupboard: what is not mixed yet, and what can be done with it.
#pragma once

#include "app/cupboard/cupboard_views.h"
#include "app/cupboard/needs_card.h"
#include "app/cupboard/waste_card.h"
#include "app/paper/book_papers.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace ullage::app
{

class BuyCard;
class EmptyState;
class ItemCard;
class ItemList;
class PageHeader;

class CupboardPage : public QWidget
{
    Q_OBJECT

public:
    explicit CupboardPage(QWidget* parent = nullptr);

    /// What was chosen stays chosen.
    void setShown(CupboardShown shown);
    /// In the place of everything, why the cupboard could not be read.
    void setUnreadable(const QString& why);
    /// Of the thing that is chosen; empty for none.
    [[nodiscard]] QString chosen() const;
    bool choose(const QString& item);
    /// What is to be planned for; planForChanged() tells of another.
    [[nodiscard]] PlanFor planFor() const;
    void setPlanFor(const PlanFor& planFor);
    [[nodiscard]] ItemList* list() const { return m_list; }
    [[nodiscard]] CupboardActions* actions() const { return m_actions; }
    [[nodiscard]] QWidget* firstForKeys() const;

signals:
    void addRequested();
    /// `items` are of one kind, the first to end in front.
    void actionRequested(ullage::app::CupboardAction action, const QStringList& items);
    /// As the cards have them.
    void canRequested(ullage::app::CanAction action, const QString& can);
    void workRequested(ullage::app::WorkAction action, const QString& work);
    void planForChanged();
    void paperRequested(ullage::app::PaperKind kind);
    void tableOfListRequested();

private:
    QWidget* newParts();

    CupboardActions* m_actions;
    PageHeader* m_header;
    QPushButton* m_add;
    QStackedWidget* m_stack;
    EmptyState* m_empty;
    QLabel* m_unreadable;
    ItemList* m_list;
    ItemCard* m_card;
    NeedsCard* m_needs;
    BuyCard* m_buy;
    WasteCard* m_waste;
    QWidget* m_parts;
};

} // namespace ullage::app
