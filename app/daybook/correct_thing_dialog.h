// Correcting what happened to a thing of the cupboard or a can, or that a test was asked for.
#pragma once

#include "app/daybook/correcting_dialog.h"

#include <functional>

namespace ullage::app
{

/// Whether this dialog asks for what such an event says.
bool isOfThings(const ledger::Event& event);

class QuantityEdit;

class CorrectThingDialog : public CorrectingDialog
{
    Q_OBJECT

public:
    /// `entered` is one event, for which isOfThings() holds.
    CorrectThingDialog(Door& door, const QString& what, std::vector<ledger::Event> entered,
                       QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::optional<std::vector<ledger::Event>> instead() const override;

private:
    struct Fields;
    QuantityEdit* addAmount(const std::string& item, double amount);

    FieldForm* m_fields;
    /// What the fields say; empty while one cannot be read.
    std::function<std::optional<ledger::Happening>()> m_now;
};

} // namespace ullage::app
