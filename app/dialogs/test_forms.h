// Forms of the tests of a bottle: a clearing test, a control strip, a look (and smell, and leader
// test).
//
// A strip out of control gets a factor on the development time proposed, with how it comes about.
// It is the user's to accept; without that the time stays as it is.
#pragma once

#include "app/dialogs/happening_form.h"
#include "app/widgets/theme.h"
#include "core/ledger/strip_record.h"

class QCheckBox;
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

/// One of density, factor and result is needed. The limits preset the result, until somebody
/// chooses another.
class StripForm : public HappeningForm
{
    Q_OBJECT

public:
    StripForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    bool restIsFine() override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QString judgement() const override;
    [[nodiscard]] QWidget* first() const override { return m_density; }
    /// The factor proposed for the strip typed in; empty for none.
    [[nodiscard]] std::optional<double> proposedFactor() const { return m_proposed; }

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    void judge();
    void presetResult();
    [[nodiscard]] ledger::StripRecord recordBefore() const;
    void fillReferences();
    QString judgeStrip(Tone& tone);
    [[nodiscard]] QString proposalText(const ledger::StripProposal& proposal,
                                       double reference) const;

    std::optional<double> m_proposed;
    std::optional<bool> m_byLimits; ///< what the limits say of the density
    int m_preset = 0;               ///< place of the result that was preset last
    bool m_resultChosen = false;
    QuantityEdit* m_density;
    QComboBox* m_reference;
    QuantityEdit* m_factor;
    QComboBox* m_passed;
    QLabel* m_judgement;
    QCheckBox* m_accept;
};

/// What there is of silver, by test paper or analysis: it takes the place of what was counted.
class MeasuredForm : public HappeningForm
{
    Q_OBJECT

public:
    MeasuredForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
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
