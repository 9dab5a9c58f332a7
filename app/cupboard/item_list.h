// What stands in the cupboard, group by group; what ends soon or is past its day is marked and
// said.
#pragma once

#include "app/cupboard/cupboard_views.h"
#include "app/widgets/wrapping_list.h"

#include <QAbstractListModel>

#include <vector>

namespace ullage::app
{

/// Rows are headings and the things under them; headings cannot be chosen.
class ItemListModel : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role { IdRole = Qt::UserRole + 1, HeadingRole, DetailRole, KeepsRole };

    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<CupboardRow> rows);
    /// Null for a heading.
    [[nodiscard]] const CupboardRow* row(const QModelIndex& index) const;
    /// Of the row that has this thing in it; -1 if none has.
    [[nodiscard]] int rowOf(const QString& item) const;
    /// -1 where there is nothing.
    [[nodiscard]] int firstItem() const { return m_lines.empty() ? -1 : 1; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Line {
        QString heading; ///< empty for a thing
        std::size_t row = 0;
    };
    std::vector<CupboardRow> m_rows;
    std::vector<Line> m_lines;
};

class ItemList : public WrappingList
{
    Q_OBJECT

public:
    explicit ItemList(QWidget* parent = nullptr);

    /// What was chosen stays chosen where it is still there; else the first is. rowChosen() is told
    /// in any case.
    void setRows(std::vector<CupboardRow> rows);
    /// Null for none.
    [[nodiscard]] const CupboardRow* chosen() const;
    /// False for what is not there.
    bool choose(const QString& item);

signals:
    void rowChosen();
    /// Its menu is wanted, there on the screen.
    void menuWanted(const QPoint& at);

protected:
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    ItemListModel* m_model;
    QString m_chosen;
    bool m_filling = false;
};

} // namespace ullage::app
