// A stack that needs no more room than the page that is seen: what lies under it may be larger.
#pragma once

#include <QStackedWidget>

namespace ullage::app
{

class SeenStack : public QStackedWidget
{
public:
    explicit SeenStack(QWidget* parent = nullptr) : QStackedWidget(parent)
    {
        connect(this, &QStackedWidget::currentChanged, this, [this] { updateGeometry(); });
    }

    [[nodiscard]] QSize sizeHint() const override
    {
        return currentWidget() ? currentWidget()->sizeHint() : QStackedWidget::sizeHint();
    }
    [[nodiscard]] QSize minimumSizeHint() const override
    {
        return currentWidget()
                   ? currentWidget()->minimumSizeHint().expandedTo(currentWidget()->minimumSize())
                   : QStackedWidget::minimumSizeHint();
    }
    /// The layout of a stack answers for all pages: the highest would count.
    [[nodiscard]] bool hasHeightForWidth() const override { return false; }
};

} // namespace ullage::app
