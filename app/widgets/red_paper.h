// Paper on the screen while that has to stay red: white light fogs film.
#pragma once

class QPrintPreviewDialog;
class QWidget;

namespace ullage::app
{

/// While the red screen is on, what `paper` draws is shown in red alone, and its white dim.
void showPaperInRed(QWidget& paper);

/// The same of a print preview's pages; the pictures on its buttons in red too.
void showPreviewInRed(QPrintPreviewDialog& preview);

} // namespace ullage::app
