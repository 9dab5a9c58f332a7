// The look of the whole program: colours, fonts and spacing, changed live.
//
// One Theme serves the application. Widgets that paint themselves read colours() while painting,
// so they need no wiring: a change of theme sends every widget a palette change and a repaint.
// What keeps colours (charts) listens to changed().
#pragma once

#include "app/widgets/colours.h"

#include <QFont>
#include <QObject>
#include <QString>

class QApplication;
class QWidget;

namespace ullage::app
{

enum class ThemeMode { System, Light, Dark };

/// Ranks of text, from the big time of the next film down to a chart's axis.
enum class TextRole { Hero, PageTitle, Wordmark, Heading, Strong, Body, Small, CardTitle, Axis };

/// Spacing and radii in device-independent pixels.
struct Space {
    static constexpr int kTight = 4;
    static constexpr int kSmall = 8;
    static constexpr int kGap = 14;   ///< between cards
    static constexpr int kInset = 18; ///< from a card's edge to what it holds
    static constexpr int kPage = 28;  ///< from the page's edge to what it holds
    static constexpr int kRail = 168; ///< width of the rail
    static constexpr int kRadius = 8;
    static constexpr int kCardRadius = 12;
};

class Theme : public QObject
{
    Q_OBJECT

public:
    static Theme& instance();

    /// Style, palette, font and style sheet for the application; call once after it is made.
    void install(QApplication& application);

    void setMode(ThemeMode mode);
    [[nodiscard]] ThemeMode mode() const { return m_mode; }
    [[nodiscard]] bool isDark() const { return m_dark; }
    [[nodiscard]] const Colours& colours() const;

    /// Deep red on black, whatever the mode, in every window; for work under a safelight.
    void setDarkRoom(bool on);
    [[nodiscard]] bool isDarkRoom() const { return m_darkRoom; }

    /// Looks again whether the system is dark; matters only in ThemeMode::System.
    void systemChanged();

    static QFont font(TextRole role);

signals:
    void changed();

private:
    Theme() = default;
    void apply();

    ThemeMode m_mode = ThemeMode::System;
    bool m_dark = false;
    bool m_darkRoom = false;
    bool m_installed = false;
};

/// Colours of the theme in force.
inline const Colours& colours() { return Theme::instance().colours(); }

/// The style sheet for one set of colours (theme_style.cpp).
QString styleSheet(const Colours& colours, bool dark);

// Names the style sheet knows. They are set as a dynamic property on the widget.
enum class ButtonLook { Plain, Primary, Quiet, Danger, Chip };
void setButtonLook(QWidget* button, ButtonLook look);
enum class Tone { Ink, Quiet, Good, Test, Near, Discard };
/// Colour of a label's words by its meaning; follows the theme.
void setTone(QWidget* label, Tone tone);

} // namespace ullage::app
