// Every page and every dialog of the program on the demo's book, one after another, for whoever
// looks at how they are laid out.
#pragma once

#include <QString>

#include <functional>

class QWidget;

namespace ullage::app
{

class MainWindow;
class Preferences;
class Session;

/// Called with each as it is shown and has settled. The name serves for a file.
using SeenScreen = std::function<void(QWidget& screen, const QString& name)>;

/// The window's pages with their parts, and the guide for mixing. The session is the window's.
void seePages(MainWindow& window, Session& session, const SeenScreen& seen);
/// All dialogs, made by themselves. Something is entered into the book.
void seeDialogs(Session& session, Preferences& preferences, const SeenScreen& seen);

/// Those that are Qt's own, as they look in ours: the print preview, the chooser of files, a field
/// that is asked for, a calendar.
void seeQtDialogs(Session& session, Preferences& preferences, const SeenScreen& seen);
/// What `ask` opens and waits for: it is seen and closed.
void seeAsked(const QString& name, const SeenScreen& seen, const std::function<void()>& ask);

/// Until what is read on other threads has come back and been laid out.
void letSettle();
/// The same, and until `there` says so, or half a minute has passed: a machine may be busy.
void letSettle(const std::function<bool()>& there);

} // namespace ullage::app
