// How every window of ours behaves, whoever made it.
#pragma once

class QWidget;

namespace ullage::app
{

/// Called once for each widget, when it is about to be shown for the first time.
/// - A button on a page answers to Enter as well as to Space, as it would in a dialog.
/// - A box to choose from wants room for the longest of its choices, whenever they came into it;
///   tabs are shown whole, without arrows. In one that can be typed into, Enter does what it does
///   in any other field, whatever is selected.
/// - Where words are typed in several lines, nothing white shows on the red screen.
/// - A dialog opens as large as its words need and grows with them.
/// - Neither it nor the main window opens larger than its screen or past an edge of it, whatever
///   size was remembered; a dialog does not grow past one either.
void teachManners(QWidget* widget);

} // namespace ullage::app
