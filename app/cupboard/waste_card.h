// The cans for waste: how full each is, drawn and said, and what is done with them.
#pragma once

#include "app/cupboard/can_views.h"
#include "app/widgets/card.h"

class QPushButton;

namespace ullage::app
{

enum class CanAction { New, Edit, PourIn, HandOver };

class WasteCard : public Card
{
    Q_OBJECT

public:
    explicit WasteCard(QWidget* parent = nullptr);

    /// `year`: its totals, line by line, under `yearTitle`; `handed`: what was handed over in it.
    void setCans(const std::vector<CanView>& cans, const QString& yearTitle,
                 const QStringList& year, const QStringList& handed);

signals:
    /// `can` is empty for a new one.
    void canRequested(ullage::app::CanAction action, const QString& can);
    /// The hand-over list on paper.
    void printRequested();

private:
    QWidget* newCan(const CanView& can);

    QWidget* m_cans = nullptr;
    QPushButton* m_print;
    QVBoxLayout* m_place;
};

} // namespace ullage::app
