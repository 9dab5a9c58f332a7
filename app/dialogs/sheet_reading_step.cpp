#include "app/dialogs/sheet_reading_step.h"

#include "app/dialogs/sheet_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kLeastHeight = 110; // of the rows

} // namespace

SheetReadingStep::SheetReadingStep(QWidget* parent)
    : QWidget(parent), m_form(new QFormLayout), m_rows(new QTableWidget(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(
        sheetWords(SheetDialog::tr("This is how the file was read. If the rows below look wrong, "
                                   "choose another way; they follow."),
                   this, Tone::Quiet));
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    column->addLayout(m_form);
    m_rows->setAccessibleName(SheetDialog::tr("First rows of the sheet"));
    m_rows->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_rows->setSelectionMode(QAbstractItemView::NoSelection);
    m_rows->setTabKeyNavigation(false);
    m_rows->setMinimumHeight(kLeastHeight);
    m_rows->verticalHeader()->hide();
    m_rows->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    column->addWidget(m_rows, 1);
}

void SheetReadingStep::setView(const SheetView& view)
{
    while (m_boxes.size() < view.reading.size())
        addChoice(view.reading[m_boxes.size()]);
    for (std::size_t i = 0; i < view.reading.size(); ++i) {
        const SheetChoice& choice = view.reading[i];
        QString name = choice.label;
        m_boxes[i]->setAccessibleName(name.remove(u'&'));
        m_boxes.fill(i, choice.ways, choice.chosen);
        m_notes[i]->setText(choice.note);
        m_boxes[i]->setAccessibleDescription(choice.note);
    }
    showRows(view.columns);
}

void SheetReadingStep::addChoice(const SheetChoice& choice)
{
    auto* box = new QComboBox(this);
    auto* note = sheetWords({}, this, Tone::Near);
    auto* row = new QHBoxLayout;
    row->addWidget(box);
    row->addWidget(note, 1);
    m_form->addRow(choice.label, row);
    if (auto* label = qobject_cast<QLabel*>(m_form->labelForField(row))) {
        label->setBuddy(box);
        label->setMinimumHeight(box->sizeHint().height()); // on the line of its box
    }
    connect(box, &QComboBox::currentIndexChanged, this, &SheetReadingStep::chosen);
    m_boxes.add(box);
    m_notes.push_back(note);
}

void SheetReadingStep::showRows(const std::vector<SheetColumn>& columns)
{
    qsizetype rows = 0;
    QStringList headings;
    for (const SheetColumn& column : columns) {
        headings << column.heading;
        rows = std::max(rows, column.first.size());
    }
    m_rows->clear();
    m_rows->setColumnCount(static_cast<int>(headings.size()));
    m_rows->setRowCount(static_cast<int>(rows));
    m_rows->setHorizontalHeaderLabels(headings);
    for (int column = 0; column < headings.size(); ++column) {
        const QStringList& cells = columns[static_cast<std::size_t>(column)].first;
        for (int row = 0; row < cells.size(); ++row)
            m_rows->setItem(row, column, new QTableWidgetItem(cells[row]));
    }
}

} // namespace ullage::app
