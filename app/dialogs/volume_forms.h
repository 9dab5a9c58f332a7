// Forms of what changes how much is in a bottle, or which bottle it is in. Whether a volume fits is
// the Book's business (TooMuch, NotEnough).
#pragma once

#include "app/dialogs/bottle_choice.h"
#include "app/dialogs/happening_form.h"

#include <string>

class QComboBox;

namespace ullage::app
{

/// Adds something: freshly mixed, from another bottle for the same bath, or the replenisher that
/// its solution names.
class TopUpForm : public HappeningForm
{
    Q_OBJECT

public:
    TopUpForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>>
    events(const std::string& batch, chemistry::Instant at,
           const ledger::IdMaker& newId) const override;
    Result<void> enter(const std::string& batch, chemistry::Instant at) const override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QWidget* first() const override { return m_volume; }

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    /// What goes in, as far as it is chosen; the volume 0 while it cannot be read.
    [[nodiscard]] ledger::ToppedUp what() const;
    void proposeVolume();

    bool m_volumeTyped = false;
    QLabel* m_room;
    QuantityField<chemistry::Millilitres>* m_volume;
    QComboBox* m_from;
};

/// Takes some out; what for may stay empty.
class DrawOffForm : public HappeningForm
{
    Q_OBJECT

public:
    DrawOffForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QWidget* first() const override { return m_volume; }

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    QLabel* m_there;
    QuantityField<chemistry::Millilitres>* m_volume;
    QLineEdit* m_why;
    std::string m_kept; ///< the reason that is corrected: a code of the program stays one
};

/// Into another vessel, all of it. Those in use are offered last; the Book says whether it goes.
class MoveForm : public HappeningForm
{
    Q_OBJECT

public:
    MoveForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    bool restIsFine() override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QWidget* first() const override;

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    QLabel* m_where;
    QComboBox* m_vessel;
};

/// Adds vessels to a combo in their order: "Amber 1 · holds 1,030 ml · glass · in use by Dev 14".
/// The data of each is its id. The vessel `own` is left out.
void fillVessels(QComboBox& combo, const std::vector<VesselChoice>& choices, const std::string& own,
                 const Wording& wording);

} // namespace ullage::app
