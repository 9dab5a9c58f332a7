// The baths of a run, one line each: which bottle, how much was used and lost, what air was left.
#pragma once

#include "app/dialogs/bath_figures.h"
#include "app/dialogs/deed_dialog.h"
#include "core/ledger/next_load.h"

#include <QWidget>

#include <set>
#include <vector>

class QComboBox;
class QGridLayout;

namespace ullage::app
{

/// Developer and fixer always have a line, a second fixing bath where there is more than one bottle
/// of fixer, other roles if there is a bottle of it. Bottles stand in
/// the order of bottlesFor(), as they were when the table was made.
class BathTable : public QWidget
{
    Q_OBJECT

public:
    /// Proposes proposedBottle(), unless the user chose last to go without one of its role, and the
    /// volumes used and lost last. A second fixing bath is proposed once one has been used.
    BathTable(Door& door, QWidget* parent = nullptr);

    /// Lines with a bottle chosen. What is used once has lost nothing besides; no volume used is
    /// all.
    [[nodiscard]] std::vector<ledger::Bath> baths() const;
    /// The bottle chosen for a bath; null for none. Good until readAnew().
    [[nodiscard]] const Bottle* chosen(ledger::BathPlace place) const;
    /// What each line asks of a bottle, and what the user chose for it.
    [[nodiscard]] std::vector<ledger::BathNeed> needs() const;
    /// Puts the bottles proposed into the lines that the user has left alone. Says nothing.
    void propose(const ledger::NextLoad& next);
    /// The developer's dilution 1+`parts`; what is diluted cannot be poured back. Says nothing.
    void setDilution(double parts);
    /// Other bottles stand on the shelf than when it was made: offers those. Says nothing.
    void readAnew();
    /// Chooses a bottle in the line of its role, as the user would; nothing if it is not offered.
    void choose(const Bottle& bottle);
    /// What is wrong with the bottles chosen and the volumes of their lines, in words; empty if
    /// nothing.
    [[nodiscard]] QStringList problems() const;
    /// For the next run: which roles go without because the user chose so, and what the developer's
    /// line says was used and lost.
    void remember() const;

signals:
    void changed();

private:
    struct Line {
        ledger::BathPlace place;
        QComboBox* bottle;
        BathFigures figures;
    };
    void addLine(ledger::BathPlace place);
    void fillBottles(const Line& line) const;
    [[nodiscard]] bool wanted(ledger::BathPlace place) const;
    void showUse(const Line& line);
    void showOnce(const Line& line) const;
    [[nodiscard]] const Bottle* bottleOf(const Line& line) const;
    [[nodiscard]] std::optional<chemistry::Millilitres> usualVolume(const Line& line) const;

    Door& m_door;
    QGridLayout* m_grid;
    std::vector<Line> m_lines;
    std::vector<Bottle> m_bottles;        ///< as they were when the dialog opened
    std::set<ledger::BathPlace> m_chosen; ///< lines in which the user chose
    double m_parts = 0;                   ///< of the developer
    bool m_proposing = false;
};

} // namespace ullage::app
