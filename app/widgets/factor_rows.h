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

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<FactorRow> m_rows;
    int m_rowHeight = 27;
};

} // namespace ullage::app
