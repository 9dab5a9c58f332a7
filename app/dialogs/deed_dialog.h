// What all dialogs that do something with a book have in common: a form, when it happened, cautions
// at the side, and there too what follows from it, before it is done.
#pragma once

#include "app/widgets/form_dialog.h"

#include "app/dialogs/field_form.h"
#include "app/dialogs/when_edit.h"
#include "app/session/door.h"

class QTimer;

namespace ullage::app
{

class ConsequenceCard;
class FoldingRow;

class DeedDialog : public FormDialog
{
    Q_OBJECT

public:
    /// What stands under a field, or above the buttons for "" ; empty if nothing is wrong.
    [[nodiscard]] QString problemOf(const QString& field) const;
    /// What is said to follow, line by line; empty where nothing is said.
    [[nodiscard]] QStringList consequences() const;

protected:
    using Width = FieldForm::Width;
    enum class Follows { Always, WhenDatedBack };

    /// `door` outlives the dialog; a book is open, and stays so.
    DeedDialog(Door& door, const QString& title, QWidget* parent);

    // Building ------------------------------------------------------------------------------------
    [[nodiscard]] FieldForm* form() const { return m_form; }
    /// A form that stands somewhere within form(); it is checked and asked as that one is, while it
    /// can be seen.
    void heed(FieldForm* form);
    // As FieldForm's, of form().
    void addRow(const QString& name, const QString& label, QWidget* field,
                Width width = Width::Whole)
    {
        m_form->addRow(name, label, field, width);
    }
    template <class Quantity>
    QuantityField<Quantity>* addFigure(const formulary::FieldDescription& is, const QString& label,
                                       Width width = Width::Half)
    {
        return m_form->addFigure<Quantity>(is, label, width);
    }
    QLabel* addText(const QString& text) { return m_form->addText(text); }
    void addHeading(const QString& text) { m_form->addHeading(text); }
    void addWide(QWidget* widget) { m_form->addWide(widget); }
    void setRowVisible(const QString& name, bool visible) { m_form->setRowVisible(name, visible); }
    /// When it happened, not before `earliest`.
    WhenEdit* addWhen(std::optional<chemistry::Instant> earliest = {}, const QString& what = {},
                      Width width = Width::Whole);
    /// One sentence each, at the side; nothing for none.
    void addCautions(const QString& heading, const QStringList& cautions);
    /// The column at the right; made when first asked for.
    QVBoxLayout* side();
    /// Shows at the side what would follow from wouldEnter(), anew a moment after each change of a
    /// form. Once it is asked for everything has been added that wouldEnter() looks at.
    void showFollows(Follows when);
    /// Shows it at once; or when nothing has been typed for a moment.
    void lookAhead();
    void lookAheadSoon();

    // Doing ---------------------------------------------------------------------------------------
    /// Checks figures and moments that can be seen, then what else needs no Book.
    bool fieldsAreFine() override;
    /// The rest of them: showProblem() and false.
    virtual bool restIsFine() { return true; }
    /// The entries that doing it now would make, with any ids; empty as long as fields are missing
    /// or cannot be read.
    [[nodiscard]] virtual std::optional<std::vector<ledger::Event>> wouldEnter() const
    {
        return std::nullopt;
    }
    /// Ids for them, each another.
    [[nodiscard]] static ledger::IdMaker wouldBeIds();
    /// What was looked at is refused, or is not; for whoever keeps the button by it.
    virtual void followed(const std::optional<Error>& /*refused*/) {}
    /// What is refused, in words. Where something was to be taken back, what rests on it by name.
    [[nodiscard]] QString refusedText(const Error& error) const;
    /// Why nothing can be said to follow, in words.
    [[nodiscard]] virtual QString nothingFollows() const;

    /// Under the field, which gets the keyboard; above the buttons if there is none of that name to
    /// be seen.
    void showProblem(const QString& field, const QString& problem);
    /// The same of what the Book refused.
    void showError(const Error& error) override;
    void clearProblems() override;

    [[nodiscard]] Door& door() const { return m_door; }
    /// Of the open book.
    [[nodiscard]] const formulary::Formulary& formulary() const { return *m_door.formulary(); }
    /// Of addWhen(); now without it.
    [[nodiscard]] chemistry::Instant moment() const;

private:
    void showStanding();
    [[nodiscard]] Result<std::vector<ledger::Event>>
    enteredFor(const std::vector<std::string>& batches) const;
    [[nodiscard]] std::optional<Error> follow(const std::vector<ledger::Event>& events);

    Door& m_door;
    FieldForm* m_form;
    std::vector<FieldForm*> m_forms; ///< that one and those within
    FoldingRow* m_row;
    QVBoxLayout* m_side = nullptr;
    WhenEdit* m_when = nullptr; ///< of addWhen()
    ConsequenceCard* m_follows = nullptr;
    Follows m_whenFollows = Follows::Always;
    bool m_cannot = false; ///< the book can only be read
    QTimer* m_later;
};

} // namespace ullage::app
