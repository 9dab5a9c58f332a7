// What all dialogs that do something have in common: fields with their labels above and what is
// wrong with them below, when it happened, cautions at the side, and one button that does it.
//
// A dialog holds no rules. It asks the Book, and what the Book refuses stands under the field it is
// about while the dialog stays open with everything typed.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QDialog>

#include "app/dialogs/when_edit.h"
#include "app/session/preferences.h"
#include "app/session/session.h"
#include "app/widgets/quantity_edit.h"

#include <functional>
#include <map>

class QGridLayout;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

/// What a dialog works with; all of it outlives the dialog.
struct DialogContext {
    Session& session;
    Preferences& preferences;
    Wording wording;
};

class DeedDialog : public QDialog
{
    Q_OBJECT

public:
    /// Does the deed, closes if it was done, and else says why not. Checks quantities and moments
    /// that can be seen, then fieldsAreFine(), then act().
    void accept() override;
    /// What stands under a field, or under all of them for "" ; empty if nothing is wrong.
    [[nodiscard]] QString problemOf(const QString& field) const;

protected:
    enum class Width { Whole, Half }; ///< of the form

    DeedDialog(const DialogContext& context, const QString& title, QWidget* parent);

    // Building ------------------------------------------------------------------------------------
    /// Adds a field under its label (with "&" for its key). `name` is the journal's for it: a
    /// refusal of that field is shown here. Two half-width rows after one another share a line.
    void addRow(const QString& name, const QString& label, QWidget* field,
                Width width = Width::Whole);
    /// A quantity, checked before the deed is done. Its range is the caller's to set.
    QuantityEdit* addQuantity(const QString& name, const QString& label, QuantityKind kind,
                              Width width = Width::Whole);
    /// Words across the form, quiet.
    QLabel* addText(const QString& text);
    void addHeading(const QString& text);
    /// Anything else across the form.
    void addWide(QWidget* widget);
    /// When it happened, not before `earliest`.
    WhenEdit* addWhen(std::optional<chemistry::Instant> earliest = {}, const QString& what = {},
                      Width width = Width::Whole);
    /// "Air left", optional, for a bottle that is closed again; 0 to 1 000 000 mL.
    QuantityEdit* addAir(Width width = Width::Whole);
    /// One sentence each, at the side.
    void addCautions(const QString& heading, const QStringList& cautions);
    /// The column at the right; made when first asked for.
    QVBoxLayout* side();
    /// The button's words.
    void setDeed(const QString& text, bool danger = false);
    /// Shows or hides a row with its label; hidden fields are not checked. `name` was added.
    void setRowVisible(const QString& name, bool visible);
    void setRowLabel(const QString& name, const QString& label);

    // Doing ---------------------------------------------------------------------------------------
    /// Checks that need no Book, beyond those of quantities and moments: showProblem() and false.
    virtual bool fieldsAreFine() { return true; }
    /// The deed. A refusal is shown under the field that it names.
    virtual Result<void> act() = 0;

    /// Under the field, which gets the keyboard; under all of them if there is none of that name to
    /// be seen.
    void showProblem(const QString& field, const QString& problem);
    /// The same of what the Book refused.
    void showError(const Error& error);
    void clearProblems();

    [[nodiscard]] Session& session() const { return m_context.session; }
    [[nodiscard]] Preferences& preferences() const { return m_context.preferences; }
    [[nodiscard]] const Wording& wording() const { return m_context.wording; }
    [[nodiscard]] const DialogContext& context() const { return m_context; }
    /// Of addWhen() and addAir(); now, and nothing said, without them.
    [[nodiscard]] ledger::When when() const;

private:
    struct Row {
        QLabel* label = nullptr;
        QWidget* field = nullptr;
        QLabel* problem = nullptr;
    };
    bool quantitiesAreFine();
    QLabel* newProblemLabel();

    DialogContext m_context;
    QGridLayout* m_form;
    QHBoxLayout* m_body;
    QVBoxLayout* m_side = nullptr;
    QLabel* m_problem; ///< what is about no field
    QPushButton* m_do;
    std::map<QString, Row> m_rows;
    std::vector<QString> m_order;
    int m_line = 0;
    bool m_half = false;
    WhenEdit* m_when = nullptr;    ///< of addWhen()
    QuantityEdit* m_air = nullptr; ///< of addAir()
};

/// A deed on one batch that is in use. The batch may end or change while the dialog is open; then
/// the Book refuses.
class BottleDialog : public DeedDialog
{
    Q_OBJECT

protected:
    BottleDialog(const DialogContext& context, const Bottle& bottle, const QString& title,
                 QWidget* parent);

    // As they were when the dialog was opened.
    [[nodiscard]] const ledger::Batch& batch() const { return m_bottle.batch; }
    [[nodiscard]] const ledger::Assessment& assessment() const { return m_bottle.assessment; }
    [[nodiscard]] QString batchName() const { return QString::fromStdString(batch().name); }
    /// addWhen() from the mixing on.
    WhenEdit* addWhenSinceMixing(Width width = Width::Whole);
    /// Enters one happening at when(); refuses as Book::record() does.
    Result<void> record(const ledger::Happening& what);

private:
    Bottle m_bottle;
};

} // namespace ullage::app
