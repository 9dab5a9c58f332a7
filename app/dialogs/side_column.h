// The column at the right of a dialog: cards and cautions, as tall as they need to be, and
// scrolling where that would be taller than a small screen.
#pragma once

#include <QScrollArea>

class QVBoxLayout;

namespace ullage::app
{

/// 300 pixels wide besides room for its bar, and never taller than 580, so that a dialog stays
/// within 800.
class SideColumn : public QScrollArea
{
    Q_OBJECT

public:
    explicit SideColumn(QWidget* parent = nullptr);

    /// To add to; the layout belongs to it.
    [[nodiscard]] QVBoxLayout* column() const { return m_column; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();

    QVBoxLayout* m_column;
};

} // namespace ullage::app
