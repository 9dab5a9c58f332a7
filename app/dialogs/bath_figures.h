// What is asked of a bath in every form for a run: how much of it was used and lost, what air was
// left, whether it was poured away.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QCheckBox>
#include <QCoreApplication>

#include "app/widgets/quantity_edit.h"
#include "core/ledger/book.h"

#include <string>

namespace ullage::app
{

/// The fields belong to the form that lays them out. What is poured away has lost nothing besides,
/// so that loss is asked of no such bath; the bottle it came from is closed over air all the same.
struct BathFigures {
    Q_DECLARE_TR_FUNCTIONS(BathFigures)

public:
    QuantityField<chemistry::Millilitres>* used = nullptr; ///< empty: all of it
    QuantityField<chemistry::Millilitres>* lost = nullptr; ///< empty: nothing
    QuantityField<chemistry::Millilitres>* air = nullptr;  ///< empty: not known
    QCheckBox* oneShot = nullptr;

    /// Their names begin with that of the bath, by which problems name them too.
    static BathFigures of(const QString& bath, const Wording& wording, QWidget* parent);

    /// Whether anything is asked of the bath.
    void setAsked(bool asked) const;
    /// The box was ticked or cleared without telling it.
    void followOnce() const;
    /// What is wrong with the first wrong figure that is asked for, in words; empty for nothing.
    [[nodiscard]] QString problem() const;
    /// What they say of that bottle; a figure that cannot be read is as if it were empty.
    [[nodiscard]] ledger::Bath bath(const std::string& bottle, bool second) const;
};

} // namespace ullage::app
