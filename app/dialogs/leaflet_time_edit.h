// The film maker's time for the load in hand: picked from the notebook, taken up from the last load
// or typed, with what it is for beside it.
#pragma once

#include "app/dialogs/base_times_edit.h"
#include "core/formulary/leaflet_time.h"
#include "core/ledger/next_load.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

class QLabel;

namespace ullage::app
{

/// Keeps times and load together. A time belongs to film, developer, dilution and exposure index:
/// where one of them becomes another, the row that the notebook has for just that is taken, else
/// the time used last for it, else none.
class LeafletTimeEdit : public QWidget
{
    Q_OBJECT

public:
    /// What was used last with a solution at 1+parts, and for which films.
    struct Last {
        std::vector<chemistry::TimeAtTemperature> pairs;
        std::vector<formulary::FilmWanted> films;
    };
    using LastUsed = std::function<Last(const std::string& solution, double parts)>;

    LeafletTimeEdit(LastUsed lastUsed, const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    /// What a time is wanted for; fills in the one that fits, and none while the films of `next`
    /// (reckoned for just that) want different ones and nobody said which rules. No developer: all
    /// stays as it is. Says nothing; true if the times are others than before.
    bool setWanted(const formulary::TimeFor& wanted, const ledger::NextLoad& next,
                   const formulary::Formulary& formulary);
    /// Looks for a time again when it is next told what is wanted.
    void lookAgain() { m_seen.reset(); }
    /// One film's own time rules for all of the load.
    void rule(const formulary::FilmTime& film);

    [[nodiscard]] std::vector<chemistry::TimeAtTemperature> pairs() const;
    [[nodiscard]] QString problem() const;
    /// What the time shown is for; empty and hidden without one. To be laid out by the owner.
    [[nodiscard]] QLabel* forLabel() const { return m_for; }
    /// The notebook's time that is shown; null where it was typed. Good until setWanted().
    [[nodiscard]] const BaseTimesEdit::Known* chosen() const { return m_base->chosen(); }
    /// The notebook has times for this developer.
    [[nodiscard]] bool offersKnown() const;
    /// The films it is used for, to be remembered with it.
    [[nodiscard]] std::vector<formulary::FilmWanted> usedFor() const;

signals:
    void changed();
    /// A time for this dilution was picked. Comes before changed().
    void dilutionPicked(double parts);

private:
    void takeKnown();
    void offerKnown(const formulary::Formulary& formulary);
    void showFor(const formulary::Formulary& formulary);
    void fill(const formulary::TimeFor& now, const ledger::NextLoad& next,
              const formulary::Formulary& formulary);
    [[nodiscard]] bool rulerGone(const formulary::TimeFor& now) const;

    LastUsed m_lastUsed;
    Wording m_wording;
    BaseTimesEdit* m_base;
    QLabel* m_for;
    formulary::TimeFor m_wanted;                   ///< as it was told last
    formulary::TimeFor m_timeFor;                  ///< what the time shown is for
    std::optional<formulary::TimeFor> m_seen;      ///< what a time was last looked for
    std::optional<formulary::FilmWanted> m_picked; ///< whose time was picked
    bool m_rules = false;                          ///< and rules other films of the load
    bool m_typed = false;                          ///< by the user, for m_timeFor
    bool m_takePicked = false; ///< what is told next is what the time picked is for
};

} // namespace ullage::app
