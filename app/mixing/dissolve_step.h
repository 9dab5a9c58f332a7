// Fourth step of mixing: pour and dissolve, with a clock for shaking.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>

#include "core/chemistry/quantities.h"
#include "core/cupboard/weighing.h"

#include <QLocale>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <optional>

class QCheckBox;
class QLabel;
class QPushButton;

namespace ullage::app
{

class FigureLabel;
class WeighList;

/// Beeps and says so every kDissolvingCheck from pouring on, until it is clear. Nothing is logged
/// here.
class DissolveStep : public QWidget
{
    Q_OBJECT

public:
    /// As BathClockBox::Now.
    using Now = std::function<chemistry::Instant()>;

    explicit DissolveStep(Now now, QWidget* parent = nullptr);

    /// The language changed; the clock goes on.
    void retranslate();
    /// What is weighed out, in the order of addition; without parts for a packet.
    void setWeighOut(const cupboard::WeighOut& out, const QLocale& locale);
    /// Of a liquid what is measured and poured; then there is nothing to shake and nothing to wait
    /// for. Empty for a powder.
    void setPouring(const QString& what);
    /// Below all that, in the room that is left.
    void addPicture(QWidget* picture);
    /// Begins anew: nothing poured yet.
    void reset();
    /// The powder went in, all that is weighed: now. The clock starts anew if it went before.
    void pour();
    [[nodiscard]] bool isPoured() const { return m_poured.has_value(); }
    /// The user looked and it is clear; a liquid is once it is in.
    [[nodiscard]] bool isClear() const;
    /// Looks at the clock; called by a timer every half second.
    void tick();

    [[nodiscard]] QPushButton* pourButton() const { return m_pour; }
    [[nodiscard]] WeighList* list() const { return m_list; }
    [[nodiscard]] QCheckBox* clearBox() const { return m_clear; }
    /// It is to be shaken now.
    [[nodiscard]] bool shakeNow() const { return m_shakeNow; }
    /// Time to the next shake, "9:41"; "clear" when it is.
    [[nodiscard]] QString clockText() const;

signals:
    /// It was poured, or called clear or not.
    void changed();

private:
    void showKind();

    Now m_now;
    std::optional<chemistry::Instant> m_poured;
    std::optional<chemistry::Instant> m_nextCheck;
    bool m_shakeNow = false; ///< since the last check, until it has been read for a while
    QString m_pouring;
    QLabel* m_how;
    QLabel* m_measure; ///< of a liquid
    WeighList* m_list;
    QLabel* m_wait;
    FigureLabel* m_clock;
    QLabel* m_say;
    QPushButton* m_pour;
    QCheckBox* m_clear;
    QTimer m_timer;
};

} // namespace ullage::app
