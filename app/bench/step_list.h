// The run sheet as a list: done steps ticked, the current one on a ground, the times at the right.
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

namespace ullage::app
{

struct StepRow {
    QString title;
    QString time;
    bool done = false;
    bool skipped = false;
    bool current = false;
    bool operator==(const StepRow&) const = default;
};

class StepList : public QWidget
{
    Q_OBJECT

public:
    explicit StepList(QWidget* parent = nullptr);

    void setRows(std::vector<StepRow> rows);
    [[nodiscard]] const std::vector<StepRow>& rows() const { return m_rows; }
    /// Where a row stands, for scrolling to it.
    [[nodiscard]] QRect rowRect(int row) const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintRow(QPainter& painter, int index, bool small) const;
    [[nodiscard]] double rowHeight() const;

    std::vector<StepRow> m_rows;
};

} // namespace ullage::app
