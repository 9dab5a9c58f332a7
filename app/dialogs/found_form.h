// What is known of a bottle that was found. Everything may stay empty: then it is not known, which
// is another thing than nothing.
#pragma once

#include "app/dialogs/field_form.h"
#include "core/chemistry/quantities.h"

#include <functional>

class QLineEdit;

namespace ullage::app
{

class FoundForm : public FieldForm
{
    Q_OBJECT

public:
    using Clock = std::function<chemistry::Instant()>;

    FoundForm(Clock clock, const Wording& wording, QWidget* parent = nullptr);

    /// When it was mixed; empty where nothing is written, or nothing that can be read.
    [[nodiscard]] std::optional<chemistry::Instant> mixedOn() const;
    /// Films a litre it is taken to have done; empty where nobody guesses.
    [[nodiscard]] std::optional<chemistry::FilmsPerLitre> assumed() const;
    /// Whether what is written can be: not mixed after it was found. Says under the field why not.
    bool isFine(chemistry::Instant found);
    /// How the day was understood; empty where nothing is written.
    [[nodiscard]] QString understood() const;

private:
    void showUnderstood();

    Clock m_clock;
    QLineEdit* m_mixedOn;
    QuantityEdit* m_assumed;
    QLabel* m_understood;
};

} // namespace ullage::app
