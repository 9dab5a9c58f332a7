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

// In the way it is seen; nothing of it stays when the screen is not red.
void showAllInRed(QWidget& part)
{
    const auto follow = [&part] {
        const bool red = Theme::instance().isDarkRoom();
        if (red != (part.graphicsEffect() != nullptr))
            part.setGraphicsEffect(red ? new RedAlone(kOfPictures, &part) : nullptr);
    };
    QObject::connect(&Theme::instance(), &Theme::changed, &part, follow);
    follow();
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
    // The place of typing turns the ground round that it finds: there has to be one.
    const auto fill = [&words] { words.setAutoFillBackground(Theme::instance().isDarkRoom()); };
    QObject::connect(&Theme::instance(), &Theme::changed, &words, fill);
    fill();
    showAllInRed(words);
}

// A window itself takes no effect; its parts do.
void showQtDialogInRed(QWidget& dialog)
{
    for (auto* part : dialog.findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
        if (!part->isWindow())
            showAllInRed(*part);
    }
}

} // namespace ullage::app
