// The way of the Tab key through a page.
#pragma once

class QWidget;

namespace ullage::app
{

/// Lets Tab go through what lies in `root` as it is laid out, whatever the order in which it was
/// made. To be called again when something was added.
void orderTabs(QWidget& root);

} // namespace ullage::app
