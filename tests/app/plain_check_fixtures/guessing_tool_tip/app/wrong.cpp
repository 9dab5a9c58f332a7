// A tooltip that would take a bottle's name for markup: the check must notice it.
#include <QWidget>

void wrong(QWidget* widget, const QString& name) { widget->setToolTip(name); }
