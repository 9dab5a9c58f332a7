// A plain table of texts with the raw value of each cell for sorting, as the tabs of the Formulary
// show bottles and times.
#pragma once

#include <QAbstractTableModel>
#include <QMap>
#include <QStringList>
#include <QTableView>

#include <vector>

namespace ullage::app
{

class FormularyTableModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    struct Cell {
        QString text;
        QVariant sort; ///< compared when sorted; the text if invalid
        /// What a spreadsheet gets; the text if invalid, nothing for an empty text.
        QVariant raw = {};
    };
    struct Row {
        QString id;              ///< of what the row shows
        std::vector<Cell> cells; ///< one a column
    };
    enum Role { SortRole = Qt::UserRole + 1, IdRole };

    using QAbstractTableModel::QAbstractTableModel;

    /// Columns whose positions stand in `numbers` are aligned right.
    void setColumns(const QStringList& columns, const QList<int>& numbers);
    /// Units of what a spreadsheet gets, by the position of the column.
    void setUnits(const QMap<int, QString>& units);
    void setRows(std::vector<Row> rows);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    QStringList m_columns;
    QList<int> m_numbers;
    QMap<int, QString> m_units;
    std::vector<Row> m_rows;
};

/// Shows such a model, one row chosen at a time; tells the id of the row. Its menu exports it.
class FormularyTable : public QTableView
{
    Q_OBJECT

public:
    /// `name` is what a screen reader calls it. The column at `stretched` takes the width that the
    /// others leave. Where there is too little, columns of words break them over more lines; those
    /// in `numbers` never. Rows stand as they were given until a heading is pressed.
    FormularyTable(const QString& name, const QStringList& columns, const QList<int>& numbers,
                   int stretched, QWidget* parent = nullptr);

    /// As FormularyTableModel::setUnits() has it.
    void setUnits(const QMap<int, QString>& units) { m_model->setUnits(units); }
    /// Keeps the row chosen if it is still there, else chooses the first; tells it by rowChosen().
    void setRows(std::vector<FormularyTableModel::Row> rows);
    /// Empty for none.
    [[nodiscard]] QString chosen() const;
    /// Nothing for an id that is not there.
    void choose(const QString& id);

    /// Narrow enough that no word and no figure is cut; a few rows high.
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

signals:
    void rowChosen(const QString& id);
    /// Return or a double click.
    void rowOpened(const QString& id);

private:
    struct Width {
        int wanted; // on one line
        int least;  // by its longest word
    };

    void measure();
    // No column is ever narrower than the least: then the table scrolls.
    void fitColumns();
    void fitRows();
    [[nodiscard]] std::vector<int> widthsIn(int room) const;
    [[nodiscard]] int roomOfColumns() const;

    FormularyTableModel* m_model;
    QList<int> m_numbers;
    int m_stretched;
    std::vector<Width> m_widths; // one a column
    int m_seenHeight = 0;        // of the rows that are seen at least
    int m_fitted = 0;            // the room that the columns were fitted to
};

} // namespace ullage::app
