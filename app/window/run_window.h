// The program with its window, from the open book to the last one closed.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QString>

#include "app/session/copy_keeper.h"
#include "app/session/preferences.h"
#include "core/ledger/book.h"

namespace ullage::app
{

struct WindowOptions {
    QString book;         ///< empty: the last one, or at the first start a new one in its place
    QString settingsFile; ///< empty: where the platform keeps settings
    ledger::Clock clock;  ///< empty: the system's
    bool remember = true; ///< the book becomes the last one used
    bool backUp = true;   ///< a copy is made at the start
    QString lastSeen;     ///< folder that remembers how far books had come; empty for none
    QString seats;        ///< folder for the seats of windows; empty for none
};

/// Needs a QApplication; runs its loop and returns what main() returns. Without a book that can be
/// opened the window still opens, says why, and offers another.
int runWindow(const WindowOptions& options);

/// The book that is used if nobody says otherwise; its folder is made.
QString usualBook();
/// A language in itself ("English", "Deutsch"), by its code: whatever country speaks it.
QString languageName(const QString& code);
/// Where their copies go: the folder of the program, and the user's second one.
CopyPlaces copyPlaces(const Preferences& preferences);
/// Where it is remembered how far books had come.
QString lastSeenFolder();
/// Where windows take their seats (seat.h).
QString seatFolder();
/// Installs the translation of a language ("de"), of the system's for "", with Qt's own words where
/// they are there, and makes its locale the default one. English is always there. Needs a
/// QCoreApplication.
void installLanguage(const QString& code);

} // namespace ullage::app
