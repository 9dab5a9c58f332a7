#include "app/charts/chart_table_dialog.h"

#include "app/charts/chart_table_model.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/table_export.h"
#include "app/widgets/theme.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>

namespace ullage::app
{

ChartTableDialog::ChartTableDialog(const ChartSpec& spec, QWidget* parent)
    : QDialog(parent), m_model(new ChartTableModel(spec, this))
{
    setWindowTitle(plainTitle(spec.title));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kInset, Space::kInset, Space::kInset, Space::kInset);
    column->setSpacing(Space::kGap);
    auto* summary = new PlainLabel(spec.summary, this);
    summary->setWordWrap(true);
    summary->setVisible(!spec.summary.isEmpty());
    setTone(summary, Tone::Quiet);
    column->addWidget(summary);
    auto* table = new QTableView(this);
    table->setModel(m_model);
    table->setAccessibleName(spec.title);
    table->setAccessibleDescription(spec.summary);
    table->setTabKeyNavigation(false);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setAlternatingRowColors(true);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(table);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* copy = buttons->addButton(tr("Copy"), QDialogButtonBox::ActionRole);
    auto* keep = buttons->addButton(tr("E&xport…"), QDialogButtonBox::ActionRole);
    keep->setAccessibleName(tr("Export table"));
    for (QPushButton* button : {copy, keep})
        button->setAutoDefault(false);
    buttons->button(QDialogButtonBox::Close)->setDefault(true);
    QAction* entry = TableExport::offer(table);
    connect(keep, &QPushButton::clicked, entry, &QAction::trigger);
    const auto toClipboard = [this] { QApplication::clipboard()->setText(asText()); };
    connect(copy, &QPushButton::clicked, this, toClipboard);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(new QShortcut(QKeySequence::Copy, this), &QShortcut::activated, this, toClipboard);
    column->addWidget(buttons);
    resize(560, 460);
    table->setFocus();
}

QString ChartTableDialog::asText() const
{
    QString text;
    const int columns = m_model->columnCount();
    for (int row = -1; row < m_model->rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < columns; ++column)
            cells << (row < 0 ? m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole)
                              : m_model->index(row, column).data())
                         .toString();
        text += cells.join(u'\t') + u'\n';
    }
    return text;
}

} // namespace ullage::app
