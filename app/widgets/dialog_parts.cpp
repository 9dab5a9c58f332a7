#include "app/widgets/dialog_parts.h"

#include "app/widgets/theme.h"

#include <QDialog>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

namespace ullage::app
{

QVBoxLayout* dialogColumn(QDialog& dialog)
{
    constexpr int kUpright = Space::kPage - Space::kTight;
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(Space::kPage, kUpright, Space::kPage, kUpright);
    column->setSpacing(Space::kGap);
    return column;
}

QScrollArea* readingArea(QDialog& dialog, const QString& accessibleName)
{
    auto* area = new QScrollArea(&dialog);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setAccessibleName(accessibleName);
    return area;
}

void showReading(QScrollArea& area, QWidget* page)
{
    const int place = area.verticalScrollBar()->value();
    if (QWidget* before = area.takeWidget())
        before->deleteLater();
    area.setWidget(page);
    area.verticalScrollBar()->setValue(place);
}

} // namespace ullage::app
