// What the dialogs are made of that is the same in all of them.
#pragma once

class QDialog;
class QScrollArea;
class QString;
class QVBoxLayout;
class QWidget;

namespace ullage::app
{

/// The dialog's column from its heading to its buttons, with the margins of a page.
QVBoxLayout* dialogColumn(QDialog& dialog);
/// A part of a dialog to read, as long as it likes: it scrolls up and down and never sideways.
QScrollArea* readingArea(QDialog& dialog, const QString& accessibleName);
/// Puts another page in a reading area and stays at the place that was read. The page before is
/// deleted later: it may hold the button that led here.
void showReading(QScrollArea& area, QWidget* page);

} // namespace ullage::app
