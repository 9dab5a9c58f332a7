// A test of a bottle: a clearing test, a control strip, or a look (and smell, and leader test).
#pragma once

#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace ullage::app
{

class TestDialog : public BottleDialog
{
    Q_OBJECT

public:
    enum class Kind { Clearing, Strip, Look };

    TestDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

    void setKind(Kind kind);
    /// What the figures typed so far mean; empty while they mean nothing.
    [[nodiscard]] QString judgement() const;

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    [[nodiscard]] Kind kind() const;
    void showFields();
    void judge();
    [[nodiscard]] std::optional<bool> passed() const;

    QComboBox* m_kind;
    QuantityEdit* m_seconds;
    QuantityEdit* m_temperature;
    QuantityEdit* m_density;
    QuantityEdit* m_factor;
    QComboBox* m_what;
    QComboBox* m_passed;
    QLabel* m_judgement;
};

} // namespace ullage::app
