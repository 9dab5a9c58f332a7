#include "app/widgets/theme.h"

#include "app/paper/paper_ink.h"
#include "app/widgets/manners.h"

#include <QApplication>
#include <QListWidget>
#include <QPalette>
#include <QProxyStyle>
#include <QStyle>
#include <QStyleFactory>
#include <QVariant>
#include <QWidget>

namespace ullage::app
{

namespace
{

QPalette paletteFor(const Colours& c)
{
    QPalette palette;
    palette.setColor(QPalette::Window, c.paper);
    palette.setColor(QPalette::WindowText, c.ink);
    palette.setColor(QPalette::Base, c.card);
    palette.setColor(QPalette::AlternateBase, c.raised);
    palette.setColor(QPalette::Text, c.ink);
    palette.setColor(QPalette::PlaceholderText, c.quiet);
    palette.setColor(QPalette::Button, c.card);
    palette.setColor(QPalette::ButtonText, c.ink);
    palette.setColor(QPalette::BrightText, c.red);
    palette.setColor(QPalette::ToolTipBase, c.card);
    palette.setColor(QPalette::ToolTipText, c.ink);
    palette.setColor(QPalette::Highlight, c.selected);
    palette.setColor(QPalette::HighlightedText, c.ink);
    palette.setColor(QPalette::Link, c.blue);
    palette.setColor(QPalette::LinkVisited, c.blue);
    palette.setColor(QPalette::Light, blend(c.card, c.ink, 0.02));
    palette.setColor(QPalette::Midlight, c.hairline);
    palette.setColor(QPalette::Mid, c.border);
    palette.setColor(QPalette::Dark, blend(c.border, c.ink, 0.3));
    palette.setColor(QPalette::Shadow, blend(c.ink, c.paper, 0.2));
    const QColor faded = blend(c.quiet, c.card, 0.4);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, faded);
    return palette;
}

class RoomStyle : public QProxyStyle
{
public:
    using QProxyStyle::QProxyStyle;

    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override
    {
        // The caret is painted by inverting what is under it: on black it would be a white lamp.
        if (metric == PM_TextCursorWidth && Theme::instance().isDarkRoom())
            return 0;
        // Air between a box to tick and its words: style sheets know none for lists.
        if (metric == PM_FocusFrameHMargin && qobject_cast<const QListWidget*>(widget))
            return 5;
        return QProxyStyle::pixelMetric(metric, option, widget);
    }

    using QProxyStyle::polish;
    void polish(QWidget* widget) override
    {
        QProxyStyle::polish(widget);
        teachManners(widget);
    }
};

void setLook(QWidget* widget, const char* name, const QString& value)
{
    widget->setProperty(name, value);
    // Selectors on properties are read when a widget is polished.
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
}

} // namespace

Theme& Theme::instance()
{
    static Theme theme;
    return theme;
}

void Theme::install(QApplication& application)
{
    application.setStyle(new RoomStyle(QStyleFactory::create(QStringLiteral("Fusion"))));
    QApplication::setFont(font(TextRole::Body));
    m_installed = true;
    apply();
}

void Theme::setMode(ThemeMode mode)
{
    if (mode == m_mode)
        return;
    m_mode = mode;
    apply();
}

void Theme::setDarkRoom(bool on)
{
    if (on == m_darkRoom)
        return;
    m_darkRoom = on;
    apply();
}

const Colours& Theme::colours() const
{
    return m_darkRoom ? darkRoomColours() : m_dark ? darkColours() : lightColours();
}

void Theme::systemChanged()
{
    if (m_mode == ThemeMode::System)
        apply();
}

void Theme::apply()
{
    if (!m_installed)
        return;
    if (m_mode == ThemeMode::System) {
        // An empty palette brings back the platform's own, which tells whether it is dark.
        QApplication::setPalette(QPalette());
        const QPalette system = QApplication::palette();
        m_dark = system.color(QPalette::Window).lightness() <
                 system.color(QPalette::WindowText).lightness();
    } else {
        m_dark = m_mode == ThemeMode::Dark;
    }
    QApplication::setPalette(paletteFor(colours()));
    QString sheet = styleSheet(colours(), m_dark || m_darkRoom);
    if (m_darkRoom) {
        // A block in full red would shine like a lamp: the primary button is framed instead.
        sheet.replace(QStringLiteral("/dark-"), QStringLiteral("/darkroom-"));
        sheet +=
            QStringLiteral("QPushButton[look=\"primary\"], QPushButton[look=\"primary\"]:hover, "
                           "QPushButton[look=\"chip\"]:checked, QDialog QPushButton:default, "
                           "QDialog QPushButton:default:hover { background: %1; color: %2; }")
                .arg(colours().selected.name(), colours().ink.name());
    }
    qApp->setStyleSheet(sheet);
    emit changed();
}

QFont Theme::font(TextRole role)
{
    struct Spec {
        int pixels;
        QFont::Weight weight;
    };
    const Spec spec = [role]() -> Spec {
        switch (role) {
        case TextRole::Hero:
            return {46, QFont::Bold};
        case TextRole::PageTitle:
            return {24, QFont::Bold};
        case TextRole::Wordmark:
            return {22, QFont::Bold};
        case TextRole::Heading:
            return {18, QFont::Bold};
        case TextRole::Strong:
            return {14, QFont::DemiBold};
        case TextRole::Body:
            return {13, QFont::Normal};
        case TextRole::Small:
            return {12, QFont::Normal};
        case TextRole::CardTitle:
            return {13, QFont::DemiBold};
        case TextRole::Axis:
            return {11, QFont::Normal};
        }
        return {13, QFont::Normal};
    }();
    QFont font(houseFamily());
    font.setPixelSize(spec.pixels);
    font.setWeight(spec.weight);
    return font;
}

void setButtonLook(QWidget* button, ButtonLook look)
{
    const QString name = [look] {
        switch (look) {
        case ButtonLook::Plain:
            return QStringLiteral("plain");
        case ButtonLook::Primary:
            return QStringLiteral("primary");
        case ButtonLook::Quiet:
            return QStringLiteral("quiet");
        case ButtonLook::Danger:
            return QStringLiteral("danger");
        case ButtonLook::Chip:
            return QStringLiteral("chip");
        }
        return QString();
    }();
    setLook(button, "look", name);
}

void setTone(QWidget* label, Tone tone)
{
    const QString name = [tone] {
        switch (tone) {
        case Tone::Ink:
            return QStringLiteral("ink");
        case Tone::Quiet:
            return QStringLiteral("quiet");
        case Tone::Good:
            return QStringLiteral("good");
        case Tone::Test:
            return QStringLiteral("test");
        case Tone::Near:
            return QStringLiteral("near");
        case Tone::Discard:
            return QStringLiteral("discard");
        }
        return QString();
    }();
    setLook(label, "tone", name);
}

} // namespace ullage::app
