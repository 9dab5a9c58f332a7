#include "app/widgets/quantity_edit.h"

#include "app/widgets/plain_text.h"
#include "app/words/number_text.h"

#include <QFocusEvent>
#include <QStyle>
#include <QTimer>

#include <cmath>

namespace ullage::app
{

namespace
{

constexpr double kHardlyMore = 1e-100; // a lower end that means "more than nothing"

} // namespace

QuantityEdit::QuantityEdit(QuantityKind kind, const QString& name, const Wording& wording,
                           QWidget* parent)
    : QLineEdit(parent), m_kind(kind), m_wording(wording)
{
    setName(name);
    setPlaceholderText(unitText(kind, wording));
    connect(this, &QLineEdit::textEdited, this, [this] {
        readTyped();
        emit valueChanged();
    });
}

QuantityEdit::QuantityEdit(const formulary::FieldDescription& is, const QString& name,
                           const Wording& wording, QWidget* parent)
    : QuantityEdit(quantityKind(is), name, wording, parent)
{
    setRange(is.low, is.high);
    setWhole(is.whole);
    setRequired(is.presence == formulary::Presence::Required);
}

void QuantityEdit::setName(const QString& name)
{
    m_name = name;
    setAccessibleName(name);
    showValidity(); // a problem names the field
}

void QuantityEdit::setWording(const Wording& wording)
{
    // What is typed and can be read becomes the value first, read as it was meant.
    if (m_typed && m_read.value && !isOpen()) {
        m_value = current();
        m_typed = false;
    }
    const bool ownHint = placeholderText() != unitText(m_kind, m_wording); // "m:ss", "all of it"
    m_wording = wording;
    if (!ownHint)
        setPlaceholderText(unitText(m_kind, wording));
    if (!m_typed)
        showValue();
    showValidity();
}

void QuantityEdit::setRange(double least, double most)
{
    m_least = least;
    m_most = most;
    showValidity();
}

void QuantityEdit::setWhole(bool whole)
{
    m_whole = whole;
    showValidity();
}

void QuantityEdit::setMinutesUpTo(double most)
{
    m_mostMinutes = most;
    showValidity();
}

void QuantityEdit::setRequired(bool required)
{
    m_required = required;
    showValidity();
}

void QuantityEdit::setValue(std::optional<double> value)
{
    m_value = value;
    m_typed = false;
    showValue();
    showValidity();
}

std::optional<double> QuantityEdit::value() const
{
    const auto now = current();
    return now && inRange(*now) && !isOpen() ? now : std::nullopt;
}

// Of two readings the first, unless only the other is allowed.
std::optional<double> QuantityEdit::current() const
{
    if (!m_typed)
        return m_value;
    // What the locale writes between thousands is that: 1.200 is not 1.2 where 1200 is too much.
    const bool either = m_read.open || m_kind == QuantityKind::Time;
    const bool other = either && m_read.other && !couldBe(*m_read.value) && inRange(*m_read.other);
    return other ? m_read.other : m_read.value;
}

bool QuantityEdit::couldBe(double value) const
{
    // With a colon or a unit there is one reading only, and it is not asked.
    return inRange(value) && (m_kind != QuantityKind::Time || value <= m_mostMinutes);
}

bool QuantityEdit::isOpen() const
{
    return m_typed && m_read.open && couldBe(*m_read.value) && inRange(*m_read.other);
}

QString QuantityEdit::understood() const
{
    const auto taken = value();
    if (!m_typed || !m_read.other || !taken)
        return {};
    // A number alone is minutes, and what only one reading allows goes without saying.
    if (taken == m_read.value && (m_kind == QuantityKind::Time || !inRange(*m_read.other)))
        return {};
    return tr("Read as %1.", "what was typed").arg(editText(m_kind, *taken, m_wording));
}

bool QuantityEdit::inRange(double value) const
{
    if (m_whole && value != std::floor(value))
        return false;
    if (m_least > 0 && value <= 0)
        return false; // however little the limit is
    // A limit shown rounded in the user's unit must be accepted when it is typed as shown.
    const auto asShown = [&](double limit) {
        return editText(m_kind, value, m_wording) == editText(m_kind, limit, m_wording) &&
               std::abs(value - limit) <= 1e-6 * std::max(1.0, std::abs(limit));
    };
    return (value >= m_least || asShown(m_least)) && (value <= m_most || asShown(m_most));
}

QString QuantityEdit::rangeText() const
{
    const bool least = std::isfinite(m_least);
    const bool most = std::isfinite(m_most);
    // However little a limit is, it is not shown as nothing: "from 0" would allow 0.
    const auto shown = [this](double limit) {
        const QString text = editText(m_kind, limit, m_wording);
        if (limit == 0 || text != editText(m_kind, 0, m_wording))
            return text;
        const QString unit = unitText(m_kind, m_wording);
        const QString figure = m_wording.locale.toString(limit, 'g', 2);
        return unit.isEmpty() ? figure : figure + u' ' + unit;
    };
    // A range in another unit has its lower end divided.
    const bool above = m_least > 0 && m_least <= kHardlyMore;
    if (m_whole && least && most)
        return tr("a whole number from %1 to %2").arg(shown(above ? 1 : m_least), shown(m_most));
    if (above && most)
        return tr("more than 0, at most %1").arg(shown(m_most));
    if (above)
        return tr("more than 0");
    if (least && most)
        return tr("from %1 to %2").arg(shown(m_least), shown(m_most));
    if (least)
        return tr("%1 or more").arg(shown(m_least));
    return most ? tr("%1 or less").arg(shown(m_most)) : QString();
}

QString QuantityEdit::problem() const
{
    const QString typed = text().trimmed();
    if (isOpen())
        return tr("%1: “%2” can mean %3 or %4; write the one that is meant.")
            .arg(m_name, typed, editText(m_kind, *m_read.value, m_wording),
                 editText(m_kind, *m_read.other, m_wording));
    if (const auto now = current()) {
        if (inRange(*now))
            return {};
        return tr("%1: %2 is not allowed; allowed is %3.")
            .arg(m_name, m_typed ? typed : m_shown, rangeText());
    }
    if (!m_typed || m_read.problem == ReadProblem::Empty)
        return m_required ? tr("%1: a value is needed.").arg(m_name) : QString();
    switch (m_read.problem) {
    case ReadProblem::OtherUnit: {
        const QString unit = unitText(m_kind, m_wording);
        return unit.isEmpty() ? tr("%1: “%2” has a unit that does not fit here.").arg(m_name, typed)
                              : tr("%1: “%2” has a unit that does not fit here; use %3.")
                                    .arg(m_name, typed, unit);
    }
    case ReadProblem::Empty:
    case ReadProblem::NotANumber:
        break;
    }
    const QString example = editText(m_kind, m_kind == QuantityKind::Time ? 570 : 20.5, m_wording);
    return tr("%1: “%2” is not understood; write it like %3.").arg(m_name, typed, example);
}

void QuantityEdit::showValue()
{
    const auto words = hasFocus() ? editText : restText;
    m_shown = m_value ? words(m_kind, *m_value, m_wording) : QString();
    if (text() != m_shown)
        setText(m_shown);
}

void QuantityEdit::readTyped()
{
    // Back at the words that were shown: nothing was changed after all.
    m_typed = text() != m_shown;
    if (m_typed)
        m_read = readQuantity(m_kind, text(), m_wording);
    showValidity();
}

void QuantityEdit::showValidity()
{
    const QString trouble = problem();
    // An empty field that is needed is not shown as wrong before anything was typed.
    const bool invalid = !trouble.isEmpty() && (m_typed || m_value);
    setPlainToolTip(this, invalid ? trouble : QString());
    setAccessibleDescription(trouble);
    if (property("invalid").toBool() == invalid)
        return;
    setProperty("invalid", invalid);
    style()->unpolish(this);
    style()->polish(this);
}

void QuantityEdit::focusInEvent(QFocusEvent* event)
{
    if (!m_typed)
        showValue(); // without group signs: between them a figure is hard to change
    QLineEdit::focusInEvent(event);
    // The number is selected, the unit stays: typing replaces the number alone.
    const qsizetype unit = unitText(m_kind, m_wording).size();
    if (unit > 0 && text() == m_shown && !m_shown.isEmpty())
        QTimer::singleShot(0, this, [this, unit] {
            if (hasFocus() && text() == m_shown)
                setSelection(0, static_cast<int>(m_shown.size() - unit - 1));
        });
}

void QuantityEdit::focusOutEvent(QFocusEvent* event)
{
    if (m_typed && !isOpen() && (m_read.value || m_read.problem == ReadProblem::Empty)) {
        m_value = current();
        m_typed = false;
        showValidity();
    }
    if (!m_typed)
        showValue();
    QLineEdit::focusOutEvent(event);
}

} // namespace ullage::app
