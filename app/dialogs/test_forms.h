// Forms of the tests of a bottle: a clearing test, silver measured, a look (and smell, and leader
// test). A control strip has strip_form.h.
#pragma once

#include "app/dialogs/happening_form.h"

class QComboBox;

namespace ullage::app
{

/// Judged while it is typed, by the same function that judges the batch once it is in the book.
class ClearingForm : public HappeningForm
{
    Q_OBJECT

public:
    ClearingForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QString judgement() const override;
    [[nodiscard]] QWidget* first() const override { return m_seconds; }

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override { judge(); }

private:
    void judge();

    std::string m_film; ///< of the entry that is corrected
    QuantityField<chemistry::Seconds>* m_seconds;
    QuantityField<chemistry::Celsius>* m_temperature;
    QLabel* m_judgement;
};

/// What there is of silver, by test paper or analysis: it takes the place of what was counted.
class MeasuredForm : public HappeningForm
{
    Q_OBJECT

public:
    MeasuredForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QString judgement() const override;
    [[nodiscard]] QWidget* first() const override { return m_silver; }

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    void judge();

    QLabel* m_counted;
    QuantityField<chemistry::GramsPerLitre>* m_silver;
    QComboBox* m_method;
    QLabel* m_judgement;
};

/// A look at something: what it was is one of the journal's, or in words of one's own.
class LookForm : public HappeningForm
{
    Q_OBJECT

public:
    LookForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QString judgement() const override;
    [[nodiscard]] QWidget* first() const override;

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    void judge();

    QLabel* m_advice;
    QComboBox* m_what;
    QComboBox* m_passed;
    QLabel* m_judgement;
    std::optional<formulary::Role> m_role; ///< that the looks offered are for
};

} // namespace ullage::app
