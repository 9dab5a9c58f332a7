// The dialog of one happening or another: its form, when it was, and what follows from it. Which
// bottle it was is given, or asked by whoever derives from it.
#pragma once

#include "app/dialogs/deed_dialog.h"
#include "app/dialogs/happening_form.h"

class QComboBox;

namespace ullage::app
{

class CautionBox;

class HappeningDialog : public DeedDialog
{
    Q_OBJECT

public:
    void setKind(HappeningKind kind);
    [[nodiscard]] HappeningKind kind() const { return m_kind; }
    /// The form that is shown; null for Film.
    [[nodiscard]] HappeningForm* shown() const;

protected:
    HappeningDialog(Door& door, const QString& title, QWidget* parent);

    /// A box of these kinds, of which the first is chosen; not added where there is one alone.
    void addKinds(const std::vector<HappeningKind>& kinds, const QString& label,
                  Width width = Width::Whole);
    /// The box; null where there is one kind alone.
    [[nodiscard]] QWidget* kindBox() const;
    /// Where the forms of the kinds take turns.
    void addForms();
    /// Shows the form of the kind chosen.
    virtual void kindChanged();
    /// The bottle, or when it was, is another: tells the form.
    void tellForm();

    /// Empty for none.
    [[nodiscard]] virtual std::string batch() const = 0;

    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    Result<void> act() override;

private:
    HappeningKind m_kind = HappeningKind::Note;
    QComboBox* m_kinds = nullptr;
    QWidget* m_place = nullptr;
    std::map<HappeningKind, HappeningForm*> m_made;
    CautionBox* m_cautions = nullptr;
};

/// A deed on one batch that is in use. The batch may end or change while the dialog is open; then
/// the Book refuses.
class BottleDialog : public HappeningDialog
{
    Q_OBJECT

public:
    BottleDialog(HappeningKind kind, Door& door, const Bottle& bottle, QWidget* parent = nullptr);
    /// One of several, such as testsOf(); named by the first.
    BottleDialog(const std::vector<HappeningKind>& kinds, Door& door, const Bottle& bottle,
                 QWidget* parent = nullptr);

protected:
    void kindChanged() override;
    [[nodiscard]] std::string batch() const override { return m_batch; }

private:
    std::string m_batch;
};

/// The tests there are for a bottle of this role: clearing for a fixer, a strip for a developer, a
/// look for all.
std::vector<HappeningKind> testsOf(formulary::Role role);

} // namespace ullage::app
