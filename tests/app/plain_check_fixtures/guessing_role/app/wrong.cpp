// A model whose tooltips would take a bottle's name for markup: the check must notice it.
#include <QVariant>

QVariant wrong(int role, const QString& name)
{
    return role == Qt::ToolTipRole ? QVariant(name) : QVariant();
}
