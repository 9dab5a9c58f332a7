#include "app/widgets/red_paper.h"

#include "app/widgets/theme.h"

#include <QGraphicsEffect>
#include <QImage>
#include <QPainter>
#include <QPixmap>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QToolBar>
#include <QWidget>

#include <algorithm>

namespace ullage::app
{

namespace
{

// A sheet is much larger than the letters of a window: as bright as those it would light a room.
constexpr double kOfPaper = 0.35;
constexpr double kOfPictures = 1;

class RedAlone : public QGraphicsEffect
{
public:
    RedAlone(double share, QObject* parent) : QGraphicsEffect(parent), m_share(share) {}

protected:
    void draw(QPainter* painter) override
    {
        QPoint at;
        const QPixmap drawn = sourcePixmap(Qt::LogicalCoordinates, &at, NoPad);
        QImage image = drawn.toImage().convertToFormat(QImage::Format_ARGB32_Premultiplied);
        for (int y = 0; y < image.height(); ++y) {
            auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
            std::transform(line, line + image.width(), line, [this](QRgb pixel) {
                const int most = std::max({qRed(pixel), qGreen(pixel), qBlue(pixel)});
                return qRgba(static_cast<int>(most * m_share), 0, 0, qAlpha(pixel));
            });
        }
        image.setDevicePixelRatio(drawn.devicePixelRatio());
        painter->drawImage(at, image);
    }

private:
    double m_share;
};

void showInRed(QWidget& widget, double share)
{
    auto* effect = new RedAlone(share, &widget);
    effect->setEnabled(Theme::instance().isDarkRoom());
    widget.setGraphicsEffect(effect);
    QObject::connect(&Theme::instance(), &Theme::changed, effect,
                     [effect] { effect->setEnabled(Theme::instance().isDarkRoom()); });
}

} // namespace

void showPaperInRed(QWidget& paper) { showInRed(paper, kOfPaper); }

void showPreviewInRed(QPrintPreviewDialog& preview)
{
    for (auto* pages : preview.findChildren<QPrintPreviewWidget*>())
        showPaperInRed(*pages);
    for (auto* buttons : preview.findChildren<QToolBar*>())
        showInRed(*buttons, kOfPictures);
}

void showTypingInRed(QWidget& words)
{
    const auto follow = [&words] {
        const bool red = Theme::instance().isDarkRoom();
        if (red != (words.graphicsEffect() != nullptr))
            words.setGraphicsEffect(red ? new RedAlone(kOfPictures, &words) : nullptr);
    };
    QObject::connect(&Theme::instance(), &Theme::changed, &words, follow);
    follow();
}

// A window itself takes no effect; its parts do.
void showQtDialogInRed(QWidget& dialog)
{
    for (auto* part : dialog.findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
        if (!part->isWindow())
            showTypingInRed(*part);
    }
}

} // namespace ullage::app
