// Everything that happened to one bottle, newest first, and taking any of it back.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QLineEdit;
class QTreeWidget;

namespace ullage::app
{

/// One entry at a time is taken back, with a reason, which must be given. What the Book refuses
/// (CannotVoid, AlreadyVoided) leaves the dialog open.
class HistoryDialog : public BottleDialog
{
    Q_OBJECT

public:
    HistoryDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    void fill();

    QTreeWidget* m_events;
    QLineEdit* m_why;
};

} // namespace ullage::app
