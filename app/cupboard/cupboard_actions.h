// What can be done with the thing that is chosen in the cupboard, as actions shared by its menu and
// the buttons of its card.
#pragma once

#include <QObject>
#include <QString>

#include <array>
#include <map>

class QAction;
class QMenu;

namespace ullage::app
{

enum class CupboardAction {
    Mix, ///< a batch from it
    Open,
    Take,
    Count,
    ThrowAway,
    TeachCode, ///< a code on it stands for its kind
    Edit,      ///< give its line anew
    Withdraw,  ///< it was entered by mistake
};
inline constexpr int kCupboardActions = 8;

/// Each with a few words that stand in brackets after its own: "a whole packet only".
using RefusedCupboardActions = std::map<CupboardAction, QString>;

class CupboardActions : public QObject
{
    Q_OBJECT

public:
    explicit CupboardActions(QObject* parent = nullptr);

    /// Which thing they are about, and why it does not allow some of them; empty id for none.
    void setItem(const QString& id, const RefusedCupboardActions& refused = {});
    [[nodiscard]] QAction* action(CupboardAction which) const;
    void fill(QMenu& menu) const;

signals:
    void requested(ullage::app::CupboardAction action, const QString& item);

private:
    std::array<QAction*, kCupboardActions> m_actions;
    QString m_item;
};

} // namespace ullage::app
