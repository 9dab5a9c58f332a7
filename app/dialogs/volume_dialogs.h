// Deeds that change how much is in a bottle, or which bottle it is in.
#pragma once

#include "app/dialogs/bottle_choice.h"
#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

// Volumes are 0.1 to 1 000 000 mL; whether they fit the bottle is the Book's business (TooMuch,
// NotEnough).

/// Adds fresh solution, mixed for it or from another batch of the same solution.
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

/// Takes some out; what for may stay empty.
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

/// Into another vessel, all of it. Those in use are offered last; the Book says whether it goes.
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

/// Adds vessels to a combo in their order: "Amber 1 · holds 1,030 ml · glass · in use by Dev 14".
/// The data of each is its id. The vessel `own` is left out.
void fillVessels(QComboBox& combo, const std::vector<VesselChoice>& choices, const std::string& own,
                 const Wording& wording);

} // namespace ullage::app
