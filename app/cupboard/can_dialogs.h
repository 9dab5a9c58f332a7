// What happens to cans for waste: a new one, pouring in, handing over.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

/// Enters a can, or gives one anew; what is in it stays.
class CanDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `can`: the one whose place it takes; without an id a new one.
    CanDialog(Door& door, const ledger::Container& can, QWidget* parent = nullptr);

protected:
    bool restIsFine() override;
    Result<void> act() override;

private:
    std::string m_replaces;
    QLineEdit* m_name;
    QComboBox* m_holds;
    QuantityField<chemistry::Millilitres>* m_capacity;
    QLineEdit* m_place;
};

/// A part of a bottle, or what never was in one; a whole bottle is discarded instead.
class PourInDialog : public DeedDialog
{
    Q_OBJECT

public:
    PourInDialog(Door& door, const ledger::CanHere& can, QWidget* parent = nullptr);

protected:
    Result<void> act() override;

private:
    void showDoubts();

    ledger::CanHere m_can;
    QuantityField<chemistry::Millilitres>* m_volume;
    QComboBox* m_from;
    QLabel* m_doubts;
};

class HandOverDialog : public DeedDialog
{
    Q_OBJECT

public:
    HandOverDialog(Door& door, const ledger::CanHere& can, QWidget* parent = nullptr);

protected:
    bool restIsFine() override;
    Result<void> act() override;

private:
    std::string m_can;
    QLineEdit* m_to;
    QuantityField<chemistry::Millilitres>* m_volume;
    QLineEdit* m_document;
};

} // namespace ullage::app
