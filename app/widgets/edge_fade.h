// What scrolls fades at an edge beyond which there is more: a line that is cut there is seen to go
// on.
#pragma once

#include <QWidget>

#include <functional>

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
    EdgeFade(QAbstractScrollArea& area, Qt::Edge edge, FadeGround ground,
             std::function<bool(Qt::Edge)> cuts = {});

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();

    QAbstractScrollArea& m_area;
    Qt::Edge m_edge;
    FadeGround m_ground;
    std::function<bool(Qt::Edge)> m_cuts;
};

/// Both edges. With `cuts` only while that says that something is cut there; what only ends there,
/// as a row of a list, is seen as clearly as the others.
void fadeEdges(QAbstractScrollArea& area, FadeGround ground,
               std::function<bool(Qt::Edge)> cuts = {});

} // namespace ullage::app
