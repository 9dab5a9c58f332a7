// One line of a journal that does not come in as it stands, and what is to be done about it.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QWidget>

#include "app/widgets/card.h"
#include "core/ledger/contradiction.h"

#include <QLocale>

#include <functional>

class QComboBox;
class QLabel;

namespace ullage::app
{

class WhenEdit;

/// What the row is about, in words and in codes.
struct ImportRowView {
    int line = 0; ///< of the journal, from 1; 0 for a taking back of ours
    QString what; ///< what stands on the line; empty where it cannot be read
    QString why;  ///< what it stands against
    std::vector<ledger::WayOut> ways;
    bool sameBottle = false;              ///< it asks whether two bottles are one
    std::string ours;                     ///< event that TakeBack takes back
    std::optional<chemistry::Instant> at; ///< of their event: where ChangeTime begins
};

class ImportRow : public Card
{
    Q_OBJECT

public:
    enum class Choice { None, LeaveOut, ChangeTime, TakeBack, KeepBoth };

    using Clock = std::function<chemistry::Instant()>;

    ImportRow(const ImportRowView& view, Clock clock, const QLocale& locale, QWidget* parent);

    [[nodiscard]] int line() const { return m_view.line; }
    /// It asks whether two bottles are one; then KeepBoth is among the choices.
    [[nodiscard]] bool sameBottle() const { return m_view.sameBottle; }
    [[nodiscard]] const std::string& ours() const { return m_view.ours; }
    /// None too while another time was chosen and what stands for it is not understood.
    [[nodiscard]] Choice choice() const;
    /// Of ChangeTime.
    [[nodiscard]] chemistry::Instant moment() const;

    /// Chooses without telling anybody. One that is not offered leaves nothing chosen.
    void choose(Choice choice);
    /// What was chosen does not help, or something else is wrong now: to be decided again.
    void reopen(const ImportRowView& view);
    /// Nothing is wrong any more with what was chosen.
    void settle();

signals:
    /// The user chose something, or another moment.
    void decided();

private:
    void show(const ImportRowView& view);
    void offer();
    void chosen();
    [[nodiscard]] Choice picked() const;

    ImportRowView m_view;
    QLabel* m_what;
    QLabel* m_why;
    QComboBox* m_way;
    WhenEdit* m_when;
};

} // namespace ullage::app
