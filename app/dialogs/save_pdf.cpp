#include "app/dialogs/save_pdf.h"

#include "app/session/whole_file.h"

namespace ullage::app
{

Result<void> savePdf(const QString& file, const QByteArray& pdf) { return writeWhole(file, pdf); }

} // namespace ullage::app
