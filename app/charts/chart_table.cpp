#include "app/charts/chart_table.h"

#include "app/charts/chart_figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

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

ChartTableModel::ChartTableModel(const ChartSpec& spec, QObject* parent)
    : QAbstractTableModel(parent), m_spec(spec), m_x(allX(spec))
{
    for (std::size_t i = 0; i < spec.series.size(); ++i) {
        if (spec.series[i].inFigures)
            m_columns.push_back(i);
    }
}

int ChartTableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_x.size());
}

int ChartTableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : 1 + static_cast<int>(m_columns.size());
}

QVariant ChartTableModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(index.column() == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                            : Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    const double x = m_x[static_cast<std::size_t>(index.row())];
    if (index.column() == 0)
        return xText(m_spec, x, QLocale());
    const auto& series = m_spec.series[m_columns[static_cast<std::size_t>(index.column() - 1)]];
    const QString text = seriesText(m_spec, series, x, QLocale());
    return text.isEmpty() ? QStringLiteral("–") : text;
}

QVariant ChartTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal || section < 0 ||
        section >= columnCount())
        return {};
    if (section == 0)
        return m_spec.xName;
    return m_spec.series[m_columns[static_cast<std::size_t>(section - 1)]].name;
}

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
