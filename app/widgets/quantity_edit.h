// A field for one quantity, with its unit.
//
// The field keeps the exact value it was given. Opening it, reading it, changing the units or the
// language changes nothing; only words that the user really typed become a new value. What cannot
// be read or is out of range is no value, and problem() says why, naming field, value and range.
// What can be read in two ways is what is allowed of the two; where both are, problem() asks.
#pragma once

#include "app/words/quantity_words.h"

#include <QLineEdit>

#include <limits>
#include <optional>

namespace ullage::app
{

class QuantityEdit : public QLineEdit
{
    Q_OBJECT

public:
    /// Pixels for a figure with its unit, or "not known" in the longer language.
    static constexpr int kRoom = 110;

    /// `name` is the field's own, as its label says ("Volume used").
    QuantityEdit(QuantityKind kind, const QString& name, const Wording& wording,
                 QWidget* parent = nullptr);
    /// For a field of the journal: its kind by its unit, its range, and whether it must be there.
    QuantityEdit(const formulary::FieldDescription& is, const QString& name, const Wording& wording,
                 QWidget* parent = nullptr);

    [[nodiscard]] QuantityKind kind() const { return m_kind; }

    void setName(const QString& name);
    void setWording(const Wording& wording);
    /// Both ends allowed, in the stored unit; the smallest double stands for "more than nothing".
    void setRange(double least, double most);
    /// Whole numbers only.
    void setWhole(bool whole);
    /// Of a time: a number alone is minutes up to here, and seconds where it would be more.
    void setMinutesUpTo(double most);
    /// An empty field is a problem; else it is simply no value.
    void setRequired(bool required);

    /// Shows a value, or empties the field. Does not emit valueChanged().
    void setValue(std::optional<double> value);
    /// In the stored unit; none when the field is empty or its words are no allowed value.
    [[nodiscard]] std::optional<double> value() const;

    [[nodiscard]] bool isValid() const { return problem().isEmpty(); }
    /// Why the words are no value, for the user; empty if all is well.
    [[nodiscard]] QString problem() const;
    /// While what is typed could have meant something else: as what it is taken. Else empty.
    [[nodiscard]] QString understood() const;
    /// Both ways to read it are allowed: problem() asks which is meant.
    [[nodiscard]] bool isOpen() const;

signals:
    /// The user typed something else; the value may have become none.
    void valueChanged();

protected:
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void showValue();
    void readTyped();
    void showValidity();
    [[nodiscard]] QString rangeText() const;
    [[nodiscard]] bool inRange(double value) const;
    [[nodiscard]] bool couldBe(double value) const;
    [[nodiscard]] std::optional<double> current() const;

    QuantityKind m_kind;
    QString m_name;
    Wording m_wording;
    double m_least = -std::numeric_limits<double>::infinity();
    double m_most = std::numeric_limits<double>::infinity();
    double m_mostMinutes = std::numeric_limits<double>::infinity();
    bool m_required = false;
    bool m_whole = false;

    std::optional<double> m_value; // exact, before the range is looked at
    QString m_shown;               // the words that stand for m_value
    ReadQuantity m_read;           // of what was typed since
    bool m_typed = false;
};

/// The same for a quantity of the core: `QuantityField<chemistry::Millilitres> volume(...)`.
template <class Quantity>
class QuantityField : public QuantityEdit
{
public:
    using QuantityEdit::QuantityEdit;

    void setQuantity(std::optional<Quantity> quantity)
    {
        setValue(quantity ? std::optional(quantity->value()) : std::nullopt);
    }
    [[nodiscard]] std::optional<Quantity> quantity() const
    {
        const auto stored = value();
        return stored ? std::optional(Quantity(*stored)) : std::nullopt;
    }
};

} // namespace ullage::app
