// Taking an entry of the day book back, or bringing it back: why, and what follows from it.
#pragma once

#include "app/dialogs/voiding_dialog.h"

namespace ullage::app
{

class TakeBackDialog : public VoidingDialog
{
    Q_OBJECT

public:
    /// `what` says what it is about, in a line; `with`, one line each, what goes along. All of
    /// `events` go together; to bring something back, they are the voidings that took it back.
    TakeBackDialog(Door& door, const QString& what, const QStringList& with,
                   std::vector<TakingBack> events, bool bringBack, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<TakingBack> events() const override { return m_events; }

private:
    std::vector<TakingBack> m_events;
};

} // namespace ullage::app
