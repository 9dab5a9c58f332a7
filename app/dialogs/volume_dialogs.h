// Deeds that change how much is in a bottle, or which bottle it is in.
#pragma once

#include "app/dialogs/bottle_choice.h"
#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

class TopUpDialog : public BottleDialog
{
    Q_OBJECT

public:
    TopUpDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    Result<void> act() override;

private:
    QuantityEdit* m_volume;
    QComboBox* m_from;
};

class DrawOffDialog : public BottleDialog
{
    Q_OBJECT

public:
    DrawOffDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    Result<void> act() override;

private:
    QuantityEdit* m_volume;
    QLineEdit* m_why;
};

class MoveDialog : public BottleDialog
{
    Q_OBJECT

public:
    MoveDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    QComboBox* m_vessel;
};

/// Fills a combo with vessels in the order of vesselsFor(): "Amber 1, 1,030 ml, glass (Dev 14)".
/// The data of each is its id. A batch in `own` is left out.
void fillVessels(QComboBox& combo, const std::vector<VesselChoice>& choices, const std::string& own,
                 const Wording& wording);

} // namespace ullage::app
