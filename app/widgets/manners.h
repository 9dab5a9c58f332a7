// How every window of ours behaves, whoever made it.
#pragma once

class QWidget;

namespace ullage::app
{

/// Called once for each widget, when it is about to be shown for the first time.
/// - A button on a page answers to Enter as well as to Space, as it would in a dialog.
/// - A dialog opens as large as its words need, and never reaches past the edge of the screen,
///   not when it grows either.
void teachManners(QWidget* widget);

} // namespace ullage::app
