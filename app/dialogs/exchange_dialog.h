// Two fixing baths, the first of them spent: it is discarded and the second takes its place, as one
// action.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLabel;

namespace ullage::app
{

class DiscardForm;

class ExchangeDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `first` is the bath that goes.
    ExchangeDialog(Door& door, const Bottle& first, QWidget* parent = nullptr);

protected:
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    [[nodiscard]] QString nothingFollows() const override;
    Result<void> act() override;

private:
    void tellForm();
    /// The deed where there is a second bath, else what is lacking.
    void offer();
    [[nodiscard]] QString lacking() const;
    /// Empty for none.
    [[nodiscard]] std::string second() const;
    /// Where the first goes; empty while that is not said.
    [[nodiscard]] std::optional<ledger::Discarded> going() const;
    [[nodiscard]] std::string note() const;

    std::string m_first;
    QString m_name;
    std::optional<formulary::Role> m_role;
    QComboBox* m_second;
    QLabel* m_lacking = nullptr; ///< said where there is no second bath
    DiscardForm* m_discard;
};

} // namespace ullage::app
