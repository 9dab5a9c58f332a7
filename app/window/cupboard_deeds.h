// What is done with the cupboard from the window: each deed opens its dialog.
#pragma once

#include <QObject>

#include "app/cupboard/cupboard_actions.h"
#include "app/cupboard/needs_card.h"
#include "app/cupboard/waste_card.h"
#include "app/window/window_parts.h"

namespace ullage::app
{

class CupboardDeeds : public QObject
{
    Q_OBJECT

public:
    explicit CupboardDeeds(const WindowParts& parts, QObject* parent = nullptr);

    // None does anything while no book is open.
    void add();
    /// With things of one kind; what is not there any more is passed over.
    void doWith(CupboardAction action, const QStringList& items);
    /// `can` is empty for a new one; one that is not there any more is passed over.
    void doWithCan(CanAction action, const QString& can);
    /// Likewise.
    void doWithWork(WorkAction action, const QString& work);

signals:
    /// It was entered, and is to be chosen on the page.
    void entered(const QString& item);
    /// Mix a batch from it.
    void mixRequested(const QString& item);

private:
    /// Empty, and told, where it cannot be read.
    [[nodiscard]] std::optional<ledger::CupboardState> state() const;
    void skipOnce(const ledger::Work& work);
    void takeWorkAway(ledger::Work work);
    void readCalendar(const ledger::CupboardState& state);

    WindowParts m_parts;
};

} // namespace ullage::app
