#include <QFile>

bool isBook(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && file.read(16).startsWith("SQLite");
}
