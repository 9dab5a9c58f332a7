// Where the window's pages lie: a page that is squeezed to the least it can be scrolls.
#pragma once

#include "app/widgets/scroll_room.h"

namespace ullage::app
{

class PageRoom : public ScrollRoom
{
    Q_OBJECT

public:
    /// `pages` may be a stack, or a stack of stacks: only the page that is seen counts.
    explicit PageRoom(QWidget* pages, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    [[nodiscard]] QSize leastAt(int width) const override;

private:
    [[nodiscard]] const QWidget& page() const;
};

} // namespace ullage::app
