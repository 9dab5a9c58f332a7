// The figures of a chart in a window, for whoever would rather read or copy them.
#pragma once

#include "app/charts/chart.h"

#include <QDialog>

namespace ullage::app
{

class ChartTableModel;

/// The table in a window; Ctrl+C copies it as text that a spreadsheet reads.
class ChartTableDialog : public QDialog
{
    Q_OBJECT

public:
    explicit ChartTableDialog(const ChartSpec& spec, QWidget* parent = nullptr);

    /// The whole table, columns parted by tabs.
    [[nodiscard]] QString asText() const;

private:
    ChartTableModel* m_model;
};

} // namespace ullage::app
