// Entering an entry anew with other values: what was entered with it is taken back, and the new
// entries come in its place, as one deed. Later entries stay where they still fit; else it is
// refused and says which does not.
#pragma once

#include "app/dialogs/happening_dialog.h"

namespace ullage::app
{

/// The moment that was entered, unless another minute was chosen: fields count in minutes, and what
/// was not changed keeps its seconds, and so its turn.
chemistry::Instant unlessSameMinute(chemistry::Instant was, chemistry::Instant chosen);

class CorrectingDialog : public HappeningDialog
{
    Q_OBJECT

protected:
    /// `what` names the entry. `entered`: what stands for it, the entry first, and what was entered
    /// with it.
    CorrectingDialog(Door& door, const QString& what, std::vector<ledger::Event> entered,
                     QWidget* parent);

    /// When it was, and below it why it is corrected.
    WhenEdit* addWhenAndWhy();

    [[nodiscard]] const std::vector<ledger::Event>& entered() const { return m_entered; }
    [[nodiscard]] std::string batch() const override { return m_entered.front().batch; }
    /// When it was, as entered now.
    [[nodiscard]] chemistry::Instant correctedMoment() const;
    /// What comes instead; empty while fields are missing.
    [[nodiscard]] virtual std::optional<std::vector<ledger::Event>> instead() const = 0;
    /// Lines of films that come with it.
    [[nodiscard]] virtual std::vector<ledger::FilmRecord> filmLines() const { return {}; }

    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    Result<void> act() override;

private:
    std::vector<ledger::Event> m_entered;
    QLineEdit* m_why = nullptr;
};

} // namespace ullage::app
