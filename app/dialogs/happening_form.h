// The form of one kind of happening: its fields, what they may hold and what they come to. The
// bottle's dialog asks by it, and so does the form for forgotten entries.
#pragma once

#include "app/dialogs/field_form.h"

#include "app/session/door.h"
#include "core/ledger/event_fields.h"

#include <memory>

class QLineEdit;

namespace ullage::app
{

/// In the order in which they are offered.
enum class HappeningKind {
    Film, ///< the one that has no form here: what went through, which is about several bottles
    TopUp,
    DrawOff,
    Move,
    Opened,
    StoodOpen,
    StoredAt,
    ClearingTest,
    StripTest,
    Look,
    Measured, ///< silver
    Filtered,
    Contaminated,
    Dissolved,
    Note,
    Discard
};
inline constexpr int kHappeningKinds = 16;

/// "Topped up", "Clearing test".
QString happeningName(HappeningKind kind);
/// "Top up Dev 1".
QString deedTitle(HappeningKind kind, const QString& bottle);
/// The button: "Top up".
QString deedText(HappeningKind kind);
/// Whether it ends a bottle, or all but.
bool isGrave(HappeningKind kind);

class HappeningForm : public FieldForm
{
    Q_OBJECT

public:
    /// A caution at the side and the words over it; no lines for none.
    struct Caution {
        QString heading;
        QStringList lines;
    };

    /// The bottle as it was at that moment. Asked again when the one or the other is changed; what
    /// was typed stays.
    void setBottle(const ledger::Batch& batch, chemistry::Instant at);
    [[nodiscard]] bool knowsBottle() const { return m_batch != nullptr; }
    /// What is entered, if the fields are complete and can be read.
    [[nodiscard]] virtual std::optional<ledger::Happening> happening() const = 0;
    /// Beyond figures: shows what is wrong.
    virtual bool restIsFine() { return true; }
    /// Of a bottle that is known.
    [[nodiscard]] virtual Caution caution() const { return {}; }
    /// What the figures typed so far mean; empty while they mean nothing.
    [[nodiscard]] virtual QString judgement() const { return {}; }
    /// Shows what was entered, to be corrected: after setBottle(). Another kind's is left alone.
    void setEntered(const ledger::Event& event);
    /// Where the keyboard goes first; null for nowhere in particular.
    [[nodiscard]] virtual QWidget* first() const { return nullptr; }

    /// The events that doing it would make; empty as happening().
    [[nodiscard]] virtual std::optional<std::vector<ledger::Event>>
    events(const std::string& batch, chemistry::Instant at, const ledger::IdMaker& newId) const;
    /// Enters it; refuses as the Book does. Only once happening() is there.
    virtual Result<void> enter(const std::string& batch, chemistry::Instant at) const;

protected:
    HappeningForm(Door& door, const Wording& wording, QWidget* parent);

    /// The fields of a happening of the form's own kind.
    virtual void fill(const ledger::Happening& what) = 0;
    /// The bottle is another, or was otherwise at another moment.
    virtual void bottleChanged() {}
    /// "Air left", where the bottle is open during such a happening.
    template <class Kind>
    void addAirOf()
    {
        if constexpr (formulary::Described<Kind>::open)
            m_air = addAir();
    }
    [[nodiscard]] ledger::When when(chemistry::Instant at) const;

    [[nodiscard]] Door& door() const { return m_door; }
    /// Of the open book.
    [[nodiscard]] const formulary::Formulary& formulary() const { return *m_door.formulary(); }
    /// Null before there was one.
    [[nodiscard]] const ledger::Batch* batch() const { return m_batch.get(); }
    [[nodiscard]] chemistry::Instant at() const { return m_at; }

private:
    Door& m_door;
    std::unique_ptr<ledger::Batch> m_batch;
    chemistry::Instant m_at{};
    QuantityField<chemistry::Millilitres>* m_air = nullptr;
};

/// The form of a kind; not of Film.
HappeningForm* newForm(HappeningKind kind, Door& door, const Wording& wording, QWidget* parent);

} // namespace ullage::app
