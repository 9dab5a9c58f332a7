// The font of the names in a list whose rows say more below them.
#pragma once

#include "app/widgets/theme.h"

#include <QFont>

namespace ullage::app
{

inline QFont nameFont(bool chosen)
{
    QFont font = Theme::font(TextRole::Body);
    font.setPixelSize(14);
    if (chosen)
        font.setWeight(QFont::DemiBold);
    return font;
}

} // namespace ullage::app
