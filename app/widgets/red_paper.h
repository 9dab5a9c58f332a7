// What would not be red by itself on the red screen: white light fogs film.
#pragma once

class QPrintPreviewDialog;
class QWidget;

namespace ullage::app
{

/// While the red screen is on, what `paper` draws is shown in red alone, and its white dim.
void showPaperInRed(QWidget& paper);

/// The same of a print preview's pages; the pictures on its buttons in red too.
void showPreviewInRed(QPrintPreviewDialog& preview);

/// The same of words that are typed in several lines: Qt paints the place of typing there as the
/// ground turned round, which on the red screen is nearly white.
void showTypingInRed(QWidget& words);

/// The same of a dialog of Qt's own with its pictures, as it stands now.
void showQtDialogInRed(QWidget& dialog);

} // namespace ullage::app
