// What film went through, and which bottles.
#pragma once

#include "app/dialogs/field_form.h"
#include "core/ledger/book.h"

class QListWidget;

namespace ullage::app
{

class FilmsEdit;

/// The same volume used and lost in each bottle; every piece of film leaves a line, as any run
/// does.
class FilmForm : public FieldForm
{
    Q_OBJECT

public:
    struct Other {
        QString id;
        QString name;
    };

    explicit FilmForm(const Wording& wording, QWidget* parent = nullptr);

    /// Names of films that are completed as one types.
    void setKnownNames(const QStringList& names);
    /// Bottles that it may also have gone through; those ticked stay so.
    void setOthers(const std::vector<Other>& others);
    /// Through that bottle and those ticked, if the fields can be read.
    [[nodiscard]] std::optional<ledger::FilmRun> run(const std::string& first) const;
    /// What is wrong with the films, in words; empty for nothing.
    [[nodiscard]] QString problem() const;

private:
    FilmsEdit* m_films;
    QListWidget* m_also;
    QuantityEdit* m_used;
    QuantityEdit* m_lost;
    QuantityEdit* m_air;
};

} // namespace ullage::app
