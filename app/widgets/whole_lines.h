// Room for lines of text that scrolls by whole lines: where not all of them are seen, none is cut
// in half at an edge.
#pragma once

#include <QScrollArea>

namespace ullage::app
{

class WholeLines : public QScrollArea
{
    Q_OBJECT

public:
    /// `content` is the room's own from now on; its lines are of this room's font.
    explicit WholeLines(QWidget* content, QWidget* parent = nullptr);

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();

    int m_below = 0; ///< what is less than a line and stays empty
};

} // namespace ullage::app
