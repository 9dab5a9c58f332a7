// The column at the right of a dialog: cards and cautions, as tall as they need to be, and
// scrolling where that would be taller than a small screen; below the form it is seen whole.
#pragma once

#include <QScrollArea>

class QVBoxLayout;

namespace ullage::app
{

/// 300 pixels wide besides room for its bar, less where the form needs it; asks for 580 pixels of
/// height at most, so that a dialog stays within 800, for more on a taller screen, and makes do
/// with less on a small one.
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
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    [[nodiscard]] int tallest() const;

    QVBoxLayout* m_column;
    int m_wanted = 0; ///< height of all that is in it
};

} // namespace ullage::app
