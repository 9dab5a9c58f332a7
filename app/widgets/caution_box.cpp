#include "app/widgets/caution_box.h"

#include "app/widgets/plain_label.h"

#include <QVBoxLayout>

namespace ullage::app
{

CautionBox::CautionBox(const QString& heading, QWidget* parent)
    : Card(heading, parent), m_text(new PlainLabel(this))
{
    setGround(Ground::Caution);
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    body()->addWidget(m_text);
    body()->addStretch();
}

void CautionBox::setLines(const QStringList& lines) { m_text->setText(lines.join(u"\n\n")); }

} // namespace ullage::app
