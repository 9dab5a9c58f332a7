#include "app/dialogs/sheet_columns_step.h"

#include "app/dialogs/sheet_dialog.h"
#include "app/widgets/dialog_parts.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kShownFirst = 3; // cells of a column beside its heading
constexpr int kFieldWidth = 190;

QString saidIn(QStringList cells)
{
    cells.removeAll(QString());
    return cells.join(QStringLiteral(" · "));
}

} // namespace

SheetColumnsStep::SheetColumnsStep(QDialog& dialog)
    : QWidget(&dialog), m_mapping(sheetWords({}, this, Tone::Quiet)), m_page(new QWidget),
      m_grid(new QGridLayout(m_page))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_mapping);
    QScrollArea* area = readingArea(dialog, SheetDialog::tr("What each column is"));
    m_grid->setContentsMargins(0, 0, Space::kSmall, 0);
    m_grid->setHorizontalSpacing(Space::kGap);
    m_grid->setColumnStretch(2, 1);
    area->setWidget(m_page);
    column->addWidget(area, 1);
}

void SheetColumnsStep::setView(const SheetView& view)
{
    m_mapping->setText(view.mapping);
    QStringList headings;
    for (const SheetColumn& column : view.columns)
        headings << column.heading;
    m_boxes.ask(headings, *m_grid, [&](int row) {
        return addColumn(view.columns[static_cast<std::size_t>(row)], row);
    });
    m_grid->setRowStretch(static_cast<int>(m_boxes.size()), 1);
    for (std::size_t i = 0; i < m_boxes.size(); ++i)
        m_boxes.fill(i, view.fields, view.columns[i].field);
}

QComboBox* SheetColumnsStep::addColumn(const SheetColumn& column, int row)
{
    const QString heading =
        column.heading.isEmpty() ? SheetDialog::tr("Column %1").arg(row + 1) : column.heading;
    auto* box = new QComboBox(m_page);
    box->setMinimumWidth(kFieldWidth);
    box->setAccessibleName(SheetDialog::tr("What the column %1 is").arg(heading));
    m_grid->addWidget(sheetWords(heading, m_page), row, 0);
    m_grid->addWidget(box, row, 1);
    m_grid->addWidget(sheetWords(saidIn(column.first.mid(0, kShownFirst)), m_page, Tone::Quiet),
                      row, 2);
    m_grid->setRowStretch(row, 0); // where a shorter sheet ended
    connect(box, &QComboBox::currentIndexChanged, this, &SheetColumnsStep::chosen);
    return box;
}

} // namespace ullage::app
