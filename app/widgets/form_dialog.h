// What every dialog that enters something has in common: its heading, what is wrong in one line
// above the buttons, one button that does it, and Cancel, which Esc is too. What was filled in is
// not lost by that without being asked.
//
// A dialog holds no rules. What is refused is said while it stays open with everything typed.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include "app/widgets/asking_dialog.h"

#include "app/words/units.h"
#include "core/chemistry/result.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

class ScrollRoom;

class FormDialog : public AskingDialog
{
    Q_OBJECT

public:
    /// Enters it and closes; if it is refused, says why and stays. Checks fieldsAreFine() first.
    void accept() override;
    /// The line above the buttons; empty if nothing is wrong.
    [[nodiscard]] QString refusal() const;
    /// The button that does it.
    [[nodiscard]] QPushButton* deedButton() const { return m_do; }

protected:
    FormDialog(const Wording& wording, const QString& title, QWidget* parent);

    /// Between the heading and the refusal.
    [[nodiscard]] QVBoxLayout* body() const { return m_body; }
    /// The button's words; "Save" without.
    void setDeed(const QString& text, bool danger = false);
    void setRefusal(const QString& why);

    /// Checks that need no Book; says what is wrong.
    virtual bool fieldsAreFine() { return true; }
    /// Enters it.
    virtual Result<void> act() = 0;
    /// Says what act() refused; in the line above the buttons, where nothing better is known.
    virtual void showError(const Error& error);
    virtual void clearProblems();

    [[nodiscard]] const Wording& wording() const { return m_wording; }

    void opened() override;

private:
    Wording m_wording;
    QVBoxLayout* m_body;
    ScrollRoom* m_room;
    QLabel* m_refusal;
    QPushButton* m_do;
};

} // namespace ullage::app
