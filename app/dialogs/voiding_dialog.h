// Taking entries back: why, and what follows from it. Which ones is for whoever derives from it.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QLineEdit;

namespace ullage::app
{

/// An event to take back, and the bottle whose it is (empty for a packet's).
struct TakingBack {
    std::string event;
    std::string batch;
};

class VoidingDialog : public DeedDialog
{
    Q_OBJECT

protected:
    VoidingDialog(Door& door, const QString& title, QWidget* parent);

    /// The reason, which must be given.
    QLineEdit* addWhy(const QString& label);

    /// All of them go together; none as long as none is chosen.
    [[nodiscard]] virtual std::vector<TakingBack> events() const = 0;
    /// Those, and what goes with them: of a filling the half in the other bottle.
    [[nodiscard]] std::vector<TakingBack> allEvents() const;

    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    Result<void> act() override;
    /// Its button is not live while it would be refused.
    void followed(const std::optional<Error>& refused) override;

private:
    QLineEdit* m_why = nullptr;
};

} // namespace ullage::app
