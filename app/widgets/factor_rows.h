// A reckoning, line by line.
#pragma once

#include "app/words/factor_row.h"

#include <QWidget>

#include <vector>

namespace ullage::app
{

/// Rows of label and figure, a hairline under each.
class FactorRows : public QWidget
{
    Q_OBJECT

public:
    explicit FactorRows(QWidget* parent = nullptr);

    void setRows(const std::vector<FactorRow>& rows);
    /// Height of one row, 22 to 32 or so.
    void setRowHeight(int height);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] static QFont fontOf(const FactorRow& row);
    /// Of the label; the last is empty where the figure stands below it.
    [[nodiscard]] static QStringList linesOf(const FactorRow& row, int width);

    std::vector<FactorRow> m_rows;
    int m_rowHeight = 27;
};

} // namespace ullage::app
