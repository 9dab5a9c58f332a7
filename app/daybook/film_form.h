// What film went through, and which bottles.
#pragma once

#include "app/daybook/bath_rows.h"
#include "app/dialogs/field_form.h"
#include "core/ledger/book.h"

class QListWidget;

namespace ullage::app
{

class FilmsEdit;

/// Every piece of film leaves a line, as any run does.
class FilmForm : public FieldForm
{
    Q_OBJECT

public:
    explicit FilmForm(const Wording& wording, QWidget* parent = nullptr);

    /// Names of films that are completed as one types.
    void setKnownNames(const QStringList& names);
    /// The bottle that it went through, and those that it may also have gone through; those ticked
    /// stay so.
    void setBottles(const BathRows::Bottle& first, const std::vector<BathRows::Bottle>& others);
    /// Through that bottle and those ticked, if the fields can be read.
    [[nodiscard]] std::optional<ledger::FilmRun> run() const;
    /// What is wrong with the films, or the figures of the bottles, in words; empty for nothing.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString problemOfBaths() const;

private:
    void showRows();

    FilmsEdit* m_films;
    QListWidget* m_also;
    BathRows* m_baths;
    BathRows::Bottle m_first;
    std::vector<BathRows::Bottle> m_others; ///< in the order of the list
};

} // namespace ullage::app
