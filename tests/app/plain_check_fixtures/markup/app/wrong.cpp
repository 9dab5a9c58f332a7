// Markup made where nobody has looked whether typed parts are escaped: the check must notice it.
#include <QTextDocument>

void wrong(QTextDocument& document, const QString& name) { document.setHtml("<b>" + name); }
