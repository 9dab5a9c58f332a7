// Room that scrolls where what is in it would be squeezed, and only there: the body of a dialog
// between its heading and its buttons, a step of a guide.
#pragma once

#include <QScrollArea>

namespace ullage::app
{

class ScrollRoom : public QScrollArea
{
    Q_OBJECT

public:
    /// `content` is the room's own from now on, and keeps its layout.
    explicit ScrollRoom(QWidget* content, QWidget* parent = nullptr);

    /// As large as what is in it.
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// How low it can be made, whatever is in it.
    void setLowest(int height);
    /// Scrolls, if need be, until the widget within can be seen.
    void reveal(QWidget& within);

protected:
    /// The least that what is in it can be at that width, or wider; its words take the height that
    /// they need when wrapped.
    [[nodiscard]] virtual QSize leastAt(int width) const;
    void fit();

    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    int m_lowest;
    bool m_fitting = false;
};

} // namespace ullage::app
