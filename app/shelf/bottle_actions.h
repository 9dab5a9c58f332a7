// What can be done with the selected bottle, as actions shared by the menu bar, the bottle's own
// menu and the buttons of its card.
#pragma once

#include <QAction>
#include <QObject>
#include <QString>

#include <array>
#include <map>

class QMenu;

namespace ullage::app
{

enum class BottleAction {
    RunFilm,
    OneMore, ///< one more film as the last one, without a dialog
    Bench,   ///< plan a run with this bottle
    TopUp,
    DrawOff,
    Decant, ///< into bottles of their own
    Move,
    Test,
    Measured, ///< silver
    Filtered,
    Dissolved,
    Contaminated,
    Note,
    Opened,
    StoodOpen,
    StoredAt,
    Films, ///< all that went through it
    History,
    Label,         ///< printed
    ExchangeBaths, ///< of two fixing baths
    Discard
};
inline constexpr int kBottleActions = 21;

/// Each with a few words that stand in brackets after its own: "fixers only".
using RefusedActions = std::map<BottleAction, QString>;

class BottleActions : public QObject
{
    Q_OBJECT

public:
    explicit BottleActions(QObject* parent = nullptr);

    /// Which bottle they are about, and why it does not allow some of them; empty id for none.
    void setBottle(const QString& id, const RefusedActions& refused = {});
    [[nodiscard]] const QString& bottle() const { return m_bottle; }
    [[nodiscard]] QAction* action(BottleAction which) const;
    /// Adds all of them, parted by what they are about.
    void fill(QMenu& menu) const;
    void retranslate();

signals:
    void requested(ullage::app::BottleAction action, const QString& batch);

private:
    std::array<QAction*, kBottleActions> m_actions;
    QString m_bottle;
};

/// All of them, for the same reason.
RefusedActions refuseAll(const QString& reason);

} // namespace ullage::app
