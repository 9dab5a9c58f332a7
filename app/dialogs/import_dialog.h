// A colleague's journal that does not go together with the book: what would come in, what does
// not, line by line, and what is to be done about each. Then all comes in, or nothing.
//
// The dialog judges nothing. It says what was decided (settlement()), and is told what follows.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QTimer>

#include "app/dialogs/import_row.h"
#include "app/widgets/asking_dialog.h"
#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/store/journal_reader.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

class ImportDialog : public AskingDialog
{
    Q_OBJECT

public:
    /// `formulary` outlives the dialog.
    ImportDialog(const QString& journal, const formulary::Formulary& formulary, ledger::Clock clock,
                 const Wording& wording, QWidget* parent);

    /// What was decided so far.
    [[nodiscard]] ledger::Settlement settlement() const;
    /// What an import with settlement() would do.
    void setOutcome(const store::ImportOutcome& outcome);
    /// The journal itself is another now: what was decided about its lines no longer holds.
    void forget();
    /// While it is judged.
    void setJudging(bool judging); ///< importing waits for it

    /// Decisions are asked about before they are let go of.
    void reject() override;

signals:
    /// Something was decided: judge again. Told once decisions pause for a quarter of a second.
    void decided();
    /// Nothing is left to decide, and the user wants all of it in.
    void importWanted();

private:
    ImportRow* rowOf(int line) const;
    [[nodiscard]] ImportRow* rowTakingBack(const std::string& ours) const;
    ImportRow* addRow(const ImportRowView& view);
    [[nodiscard]] ImportRowView view(const ledger::Contradiction& contradiction) const;
    void take(const ledger::Contradiction& contradiction);
    void leaveAllOut();
    void showState();

    const formulary::Formulary& m_formulary;
    ledger::Clock m_clock;
    Wording m_wording;
    QLabel* m_coming;
    QLabel* m_state;
    QVBoxLayout* m_column;
    QPushButton* m_allOut;
    QPushButton* m_import;
    QTimer m_rest; ///< between a decision and its being told
    std::vector<ImportRow*> m_rows;
    std::set<ImportRow*> m_open; ///< those that the last outcome found fault with
    store::ImportOutcome m_outcome;
    bool m_judging = false;
    bool m_leavingAllOut = false; ///< further ones that turn up too
};

} // namespace ullage::app
