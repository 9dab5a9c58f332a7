// What every part behind the window works with: the window itself, the open book, the settings.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QDialog>

#include "app/session/door.h"
#include "app/session/preferences.h"
#include "app/session/session.h"

namespace ullage::app
{

class MainWindow;

/// All of it outlives whoever holds it; copied freely.
struct WindowParts {
    MainWindow& window;
    Session& session;
    Preferences& preferences;
    Door& door; ///< to both, for pages and dialogs

    /// As the settings are now.
    [[nodiscard]] Wording wording() const { return preferences.wording(); }
    [[nodiscard]] QString sentence(const Error& error) const;
    /// Tells it in a dialog.
    void fail(const QString& title, const Error& error) const;
    /// The same of a sum or a list with one: where the book is damaged, also why there is none and
    /// what to do.
    void failSum(const QString& title, const Error& error) const;
};

/// Opens it over the window; it goes when it is closed.
void openOnce(QDialog* dialog);

} // namespace ullage::app
