#include "app/dialogs/label_preview.h"

#include "app/paper/paper_ink.h"
#include "app/widgets/red_paper.h"

#include <QPainter>

#include <algorithm>

namespace ullage::app
{

LabelPreview::LabelPreview(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("How it will be printed"));
    showPaperInRed(*this);
}

void LabelPreview::setJob(std::optional<LabelJob> job)
{
    m_job = std::move(job);
    update();
}

void LabelPreview::paintEvent(QPaintEvent*)
{
    if (!m_job)
        return;
    const QSizeF paper = m_job->sheet.sheet;
    const double scale = std::min(width() / paper.width(), height() / paper.height());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate((width() - paper.width() * scale) / 2,
                      (height() - paper.height() * scale) / 2);
    painter.scale(scale / kUnitsPerMillimetre, scale / kUnitsPerMillimetre);
    // Paper is white and its print black, whatever the window looks like; but for the red screen.
    painter.fillRect(units(QRectF({}, paper)), Qt::white);
    painter.setPen(QPen(Qt::lightGray, 0));
    for (int i = 0; i < m_job->sheet.labels(); ++i)
        painter.drawRect(units(m_job->sheet.place(i)));
    paintSheet(painter, *m_job, 0);
}

} // namespace ullage::app
