// When something happened: now, unless the user says otherwise, in whatever words.
//
// Under the field stands how it was understood, or what was not; until all of it is, problem() says
// so and the words stay.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QWidget>

#include "core/chemistry/quantities.h"

#include <QLocale>

#include <functional>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QPushButton;

namespace ullage::app
{

class MomentField;

/// Shown on the user's clock, told in UTC.
class WhenEdit : public QWidget
{
    Q_OBJECT

public:
    using Clock = std::function<chemistry::Instant()>;

    WhenEdit(Clock clock, const QLocale& locale, QWidget* parent = nullptr);

    /// The field's own name; "When" without.
    void setName(const QString& name);
    /// Nothing can have happened before this (the mixing of the batch); `what` names it for the
    /// message ("Dev 14 was mixed").
    void setEarliest(std::optional<chemistry::Instant> earliest, const QString& what = {});

    /// The clock's moment until the user sets another. The field counts in minutes: within the
    /// minute of the earliest moment or of now, those are meant.
    [[nodiscard]] chemistry::Instant moment() const;
    /// As if the user had set it; emits changed().
    void setMoment(chemistry::Instant moment);
    [[nodiscard]] bool isNow() const { return !m_set; }

    /// In an hour that the clock repeats in autumn there are two; which one is asked beside the
    /// field.
    [[nodiscard]] bool isAsked() const;

    /// Whether all that was written is understood; if not, moment() is the last that was.
    [[nodiscard]] bool isUnderstood() const;
    /// "Wed 25 Nov 2026, 18:00 · 2 days ago", or what was not understood: what stands below.
    [[nodiscard]] QString understood() const;

    /// Why this cannot be, naming the value and what is allowed; empty if it can: not understood,
    /// still to come, too early, or a time that the clock skipped in spring.
    [[nodiscard]] QString problem() const;

signals:
    void changed();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void showNow();
    void put(chemistry::Instant moment);
    void ask();
    void say();
    [[nodiscard]] std::vector<chemistry::Instant> meant() const;

    Clock m_clock;
    QLocale m_locale;
    std::optional<chemistry::Instant> m_earliest;
    QString m_earliestWhat;
    bool m_set = false;
    MomentField* m_edit;
    QComboBox* m_which;
    QPushButton* m_now;
    QLabel* m_says;
};

} // namespace ullage::app
