// The baths of a run, one line each: which bottle, how much was used and lost, what air was left.
#pragma once

#include "app/dialogs/deed_dialog.h"
#include "core/ledger/next_load.h"

#include <QWidget>

#include <set>
#include <vector>

class QCheckBox;
class QComboBox;
class QGridLayout;

namespace ullage::app
{

class BathTable : public QWidget
{
    Q_OBJECT

public:
    BathTable(const DialogContext& context, QWidget* parent = nullptr);

    /// Lines with a bottle chosen.
    [[nodiscard]] std::vector<ledger::Bath> baths() const;
    /// The bottle chosen for a role; null for none.
    [[nodiscard]] const Bottle* chosen(formulary::Role role) const;
    /// What each line asks of a bottle, and what the user chose for it.
    [[nodiscard]] std::vector<ledger::BathNeed> needs() const;
    /// Puts the bottles proposed into the lines that the user has left alone. Says nothing.
    void propose(const ledger::NextLoad& next);
    /// Chooses a bottle in the line of its role, as the user would.
    void choose(const Bottle& bottle);
    /// The roles in order of the process, and whether a bottle is chosen.
    [[nodiscard]] QStringList problems() const;
    void remember(Preferences& preferences) const;

signals:
    void changed();

private:
    struct Line {
        formulary::Role role;
        QComboBox* bottle;
        QuantityEdit* used;
        QuantityEdit* lost;
        QuantityEdit* air;
        QCheckBox* oneShot;
    };
    void addLine(formulary::Role role);
    void showUse(const Line& line);
    [[nodiscard]] const Bottle* bottleOf(const Line& line) const;
    QuantityEdit* field(const QString& name, int row, int column);

    DialogContext m_context;
    QGridLayout* m_grid;
    std::vector<Line> m_lines;
    std::vector<Bottle> m_bottles;      ///< as they were when the dialog opened
    std::set<formulary::Role> m_chosen; ///< lines in which the user chose
    bool m_proposing = false;
};

} // namespace ullage::app
