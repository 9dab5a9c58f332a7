// Which events of a calendar are known work.
#pragma once

#include "app/widgets/form_dialog.h"

#include "app/calendar/calendar_offer.h"

#include <vector>

class QListWidget;

namespace ullage::app
{

class Door;

/// A line for each with what was understood of it; those that are likely to be work are ticked.
class OfferedWorkDialog : public FormDialog
{
    Q_OBJECT

public:
    /// `works`: at least one. `notRead`: what cannot be taken, in words, or empty.
    OfferedWorkDialog(Door& door, std::vector<OfferedWork> works, const QString& notRead,
                      QWidget* parent = nullptr);

    [[nodiscard]] QListWidget* list() const { return m_list; }

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    void tickAll(bool on);
    void countTicked();
    [[nodiscard]] std::vector<ledger::CupboardLine> ticked() const;

    Door& m_door;
    std::vector<OfferedWork> m_works;
    QListWidget* m_list;
};

} // namespace ullage::app
