// Figures that do not dance: digits laid out at one advance, so that a number that changes keeps
// its place. For fonts whose default figures are proportional (Qt 6.4 cannot ask for a font's own
// tabular ones).
#pragma once

#include <QRectF>
#include <QString>
#include <QWidget>

class QFont;
class QPainter;

namespace ullage::app
{

/// Width of `text` with every digit as wide as the widest.
double figuresWidth(const QFont& font, const QString& text);

/// Paints one line with the painter's font and pen, aligned in `rect` (Qt::Alignment flags).
void drawFigures(QPainter& painter, const QRectF& rect, Qt::Alignment alignment,
                 const QString& text);

/// One line of text with such figures; its accessible name is the text.
class FigureLabel : public QWidget
{
    Q_OBJECT

public:
    explicit FigureLabel(QWidget* parent = nullptr);

    void setText(const QString& text);
    [[nodiscard]] QString text() const { return m_text; }
    void setAlignment(Qt::Alignment alignment);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QString m_text;
    Qt::Alignment m_alignment = Qt::AlignLeft | Qt::AlignVCenter;
};

} // namespace ullage::app
