// What scrolls fades at an edge beyond which there is more: a line that is cut there is seen to go
// on.
#pragma once

#include <QWidget>

class QAbstractScrollArea;

namespace ullage::app
{

/// What the area lies on: there the fading ends.
enum class FadeGround { Page, Card };

class EdgeFade : public QWidget
{
    Q_OBJECT

public:
    /// Over the upper or lower edge of what is seen of the area, whose own it is.
    EdgeFade(QAbstractScrollArea& area, Qt::Edge edge, FadeGround ground);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();

    QAbstractScrollArea& m_area;
    Qt::Edge m_edge;
    FadeGround m_ground;
};

/// Both edges.
void fadeEdges(QAbstractScrollArea& area, FadeGround ground);

} // namespace ullage::app
