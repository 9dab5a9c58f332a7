// The strip of weeks: work as tally marks, and for each solution what stands, what to mix from a
// packet that is here, and what is missing.
#pragma once

#include "app/cupboard/need_views.h"

#include <QFontMetricsF>
#include <QWidget>

namespace ullage::app
{

class NeedStrip : public QWidget
{
    Q_OBJECT

public:
    explicit NeedStrip(QWidget* parent = nullptr);

    void setStrip(StripView strip);
    /// What of a bar's words stands in so much room: all, some of them, or none. None is cut.
    [[nodiscard]] static QString wordsIn(const NeedBar& bar, const QFontMetricsF& metrics,
                                         double width);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRectF room() const;
    [[nodiscard]] double xOf(double place) const;
    [[nodiscard]] QRectF barRect(const NeedRow& row, double top, const NeedBar& bar) const;
    [[nodiscard]] static QStringList nameLines(const NeedRow& row);
    [[nodiscard]] double heightOf(const NeedRow& row) const;
    [[nodiscard]] QString spokenAt(const QPointF& at) const;
    [[nodiscard]] QString paceWords() const;
    [[nodiscard]] double workHeight() const;
    void paintWork(QPainter& painter) const;
    void paintPace(QPainter& painter) const;
    void paintBar(QPainter& painter, const QRectF& rect, const NeedRow& row,
                  const NeedBar& bar) const;

    StripView m_strip;
};

} // namespace ullage::app
