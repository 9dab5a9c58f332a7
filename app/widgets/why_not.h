// What cannot be done now is grey and says why where it is met.
#pragma once

#include <QString>

class QAbstractButton;
class QAction;

namespace ullage::app
{

/// The words of a menu entry, with the "&" of its key, as they are while it can be chosen.
void setEntryWords(QAction* entry, const QString& words);

/// Greys a menu entry and says why in its own words: "Measure silver… (fixers only)", since menus
/// show no tool tips to the keyboard or to a screen reader. An empty reason: it can be chosen. The
/// reason may hold what a person typed. setEntryWords() comes first.
void setWhyNot(QAction* entry, const QString& reason);

/// Why it is grey; empty if it is not, or does not say.
[[nodiscard]] QString whyNot(const QAction* entry);

/// The same of a button, in its tool tip and its accessible description.
void setWhyNot(QAbstractButton* button, const QString& reason);
/// What stands there while it can be pressed.
void setButtonTip(QAbstractButton* button, const QString& tip);

/// Keeps the button as its entry is: grey with the same reason. Pressing it chooses the entry.
void followEntry(QAbstractButton* button, QAction* entry);

} // namespace ullage::app
