// A verdict as a shape, a word and a colour; any one of the three is enough to tell them apart.
#pragma once

#include <QColor>
#include <QIcon>
#include <QRectF>
#include <QString>
#include <QWidget>

class QPainter;

namespace ullage::app
{

enum class VerdictLook { Good, NearItsEnd, TestFirst, Discard };

QString verdictWord(VerdictLook look);
QColor verdictColour(VerdictLook look);

/// The shape alone: circle with a tick, triangle with "!", rounded square with "?", octagon with a
/// cross. It fills the largest square centred in `rect`.
void paintVerdictShape(QPainter& painter, const QRectF& rect, VerdictLook look);

/// Shape and word on one line, left-aligned and centred vertically in `rect`; uses the painter's
/// font. Returns the width used.
double paintVerdict(QPainter& painter, const QRectF& rect, VerdictLook look);

/// For menus and lists; follows the theme in force when it is made.
QIcon verdictIcon(VerdictLook look);

class VerdictLabel : public QWidget
{
    Q_OBJECT

public:
    explicit VerdictLabel(QWidget* parent = nullptr);

    void setLook(VerdictLook look);
    [[nodiscard]] VerdictLook look() const { return m_look; }
    /// Words in place of the verdict's own ("Why: Good"); empty for its own.
    void setText(const QString& text);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void describe();

    VerdictLook m_look = VerdictLook::Good;
    QString m_text;
};

} // namespace ullage::app
