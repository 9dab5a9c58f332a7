// A dialog that is filled in: Esc, Cancel and the window's frame let go of what somebody has
// changed only after asking.
#pragma once

#include <QDialog>
#include <QStringList>

#include <optional>

namespace ullage::app
{

class AskingDialog : public QDialog
{
    Q_OBJECT

public:
    using QDialog::QDialog;

    /// Closes; where something was changed since it was opened, asks first.
    void reject() override;

protected:
    void showEvent(QShowEvent* event) override;
    /// When it is shown for the first time, with all that stands in it.
    virtual void opened() {}

private:
    std::optional<QStringList> m_atFirst; ///< what stood in the fields when it was opened
};

/// What stands in all fields within that can be seen, in a fixed order: equal to what it was before
/// exactly where nothing was changed, or was changed back.
QStringList enteredIn(const QWidget& within);

} // namespace ullage::app
