// Entering something that was forgotten, at its right time: what it was, which bottle, when; what
// follows for every bottle stands beside before it is accepted.
#pragma once

#include "app/daybook/bath_rows.h"
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/load_question.h"

class QComboBox;

namespace ullage::app
{

class FilmForm;

class ForgottenDialog : public HappeningDialog
{
    Q_OBJECT

public:
    using Kind = HappeningKind; ///< every one of them

    /// `batch` is chosen if it stood then; empty for none in particular.
    ForgottenDialog(Door& door, const std::string& batch, QWidget* parent = nullptr);

protected:
    void kindChanged() override;
    [[nodiscard]] std::string batch() const override;
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    [[nodiscard]] QString nothingFollows() const override;
    Result<void> act() override;

private:
    void fillBottles();
    void fillAlso();
    [[nodiscard]] bool sureOfLoad();

    std::vector<BathRows::Bottle> m_standing; ///< at that moment
    WhenEdit* m_moment;
    QComboBox* m_bottle;
    FilmForm* m_film;
    LoadQuestion m_question;
    std::string m_wanted; ///< the bottle chosen last: chosen again where it is offered
};

} // namespace ullage::app
