// Statistics in columns: one table at a time, its sums last and bold.
#pragma once

#include "app/words/statistics_tables.h"

#include <QAbstractTableModel>
#include <QTableView>

namespace ullage::app
{

class FiguresHeader;

/// The table as it is shown; what its words mean under kRawRole.
class FiguresModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setTable(const FiguresTable& table);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    FiguresTable m_table;
};

/// Can be exported from its menu, under the table's title.
class FiguresView : public QTableView
{
    Q_OBJECT

public:
    explicit FiguresView(QWidget* parent = nullptr);

    void setTable(const FiguresTable& table);
    /// "Export table…", as its menu has it.
    [[nodiscard]] QAction* exportEntry() const { return m_export; }

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitColumns();

    FiguresModel* m_model;
    FiguresHeader* m_header;
    QAction* m_export;
};

} // namespace ullage::app
