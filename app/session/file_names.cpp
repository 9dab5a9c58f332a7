#include "app/session/file_names.h"

#include <QFileInfo>

namespace ullage::app
{

QString withEnding(const QString& file, const QString& ending)
{
    return QFileInfo(file).suffix().isEmpty() ? file + ending : file;
}

} // namespace ullage::app
