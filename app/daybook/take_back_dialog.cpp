#include "app/daybook/take_back_dialog.h"

#include <QLineEdit>

namespace ullage::app
{

TakeBackDialog::TakeBackDialog(Door& door, const QString& what, const QStringList& with,
                               std::vector<TakingBack> events, bool bringBack, QWidget* parent)
    : VoidingDialog(door, bringBack ? tr("Bring an entry back") : tr("Take an entry back"), parent),
      m_events(std::move(events))
{
    addHeading(what);
    addText(bringBack ? tr("It counts again, at its own time, as if it had never been taken back.")
                      : tr("It stays in the book, struck out, and no longer counts."));
    if (!with.isEmpty())
        addText((bringBack ? tr("With it comes back: %1.") : tr("With it goes: %1."))
                    .arg(with.join(tr("; ", "between entries"))));
    QLineEdit* why = addWhy(tr("&Why"));
    setDeed(bringBack ? tr("Bring back") : tr("Take back"), !bringBack);
    showFollows(Follows::Always);
    why->setFocus();
}

} // namespace ullage::app
