// Film that is known to come: when, how much, whether it comes again.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

class MomentField;

class WorkDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `work`: the one whose place it takes; without an id a new one.
    WorkDialog(Door& door, const ledger::Work& work, QWidget* parent = nullptr);

protected:
    bool restIsFine() override;
    Result<void> act() override;

private:
    void addRepeats(const std::string& rule);
    void showUntil();
    [[nodiscard]] std::string rule() const;

    std::string m_replaces;
    QLineEdit* m_name;
    MomentField* m_at;
    QuantityField<chemistry::Films>* m_films;
    QComboBox* m_developer;
    QComboBox* m_repeats;
    MomentField* m_until;
};

} // namespace ullage::app
