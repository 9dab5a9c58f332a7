// What film went through, and which bottles.
#pragma once

#include "app/daybook/bath_rows.h"
#include "app/dialogs/field_form.h"
#include "core/ledger/book.h"
#include "core/ledger/run_state.h"

#include <optional>

class QListWidget;

namespace ullage::app
{

class FilmsEdit;

/// Every piece of film leaves a line, as any run does.
class FilmForm : public FieldForm
{
    Q_OBJECT

public:
    enum class Bottles {
        BesideOne, ///< the first is chosen elsewhere
        All,       ///< each is ticked
    };
    explicit FilmForm(const Wording& wording, QWidget* parent = nullptr,
                      Bottles bottles = Bottles::BesideOne);

    /// Names of films that are completed as one types.
    void setKnownNames(const QStringList& names);
    /// The bottle that it went through, and those that it may also have gone through; those ticked
    /// stay so. Without an id there is no first.
    void setBottles(const BathRows::Bottle& first, const std::vector<BathRows::Bottle>& others);
    /// Fills in what was entered: films, or film by its area, and what it took of bottles that
    /// stand in the list, which are ticked. Only where all bottles are asked for.
    void setRun(const std::vector<ledger::RunFilm>& films,
                std::optional<chemistry::SquareCentimetres> area,
                const std::vector<ledger::Bath>& baths);

    /// Through that bottle and those ticked, if the fields can be read.
    [[nodiscard]] std::optional<ledger::FilmRun> run() const;
    /// The rows of film, and of each the place that it had in setRun(); empty for a new one.
    [[nodiscard]] std::vector<ledger::RunFilm> films() const;
    [[nodiscard]] std::vector<std::optional<std::size_t>> origins() const;
    /// What is wrong with the films, or the bottles and their figures, in words; empty for nothing.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString problemOfBaths() const;
    /// What the keys are for first.
    [[nodiscard]] QWidget* firstForKeys() const;

private:
    void showRows();
    [[nodiscard]] bool isTicked(int row) const;

    FilmsEdit* m_films;
    QuantityField<chemistry::SquareCentimetres>* m_area = nullptr;
    QListWidget* m_also;
    BathRows* m_baths;
    BathRows::Bottle m_first;
    std::vector<BathRows::Bottle> m_others; ///< in the order of the list
    bool m_byArea = false;
};

} // namespace ullage::app
