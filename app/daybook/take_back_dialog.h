// Taking an entry of the day book back, or bringing it back: why, and what follows from it.
#pragma once

#include "app/dialogs/deed_dialog.h"

#include <vector>

class QLineEdit;

namespace ullage::app
{

class ConsequenceCard;

/// An event to take back, and the bottle whose it is (empty for a packet's).
struct TakingBack {
    std::string event;
    std::string batch;
};

class TakeBackDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `what` says what it is about, in a line. All of `events` go together; to bring something
    /// back, they are the voidings that took it back. A reason must be given.
    TakeBackDialog(const DialogContext& context, const QString& what,
                   std::vector<TakingBack> events, bool bringBack, QWidget* parent = nullptr);

    /// What stands beside the fields, line by line.
    [[nodiscard]] QStringList consequences() const;

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    void showConsequences();

    std::vector<TakingBack> m_events;
    bool m_bringBack;
    QLineEdit* m_why;
    ConsequenceCard* m_follows;
};

} // namespace ullage::app
