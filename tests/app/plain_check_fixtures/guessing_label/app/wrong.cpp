// A label that would take a bottle's name for markup: the check must notice it.
#include <QLabel>

QLabel* wrong(const QString& name) { return new QLabel(name); }
