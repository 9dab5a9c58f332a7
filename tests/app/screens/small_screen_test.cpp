// Every page and dialog on a screen of 1024 by 700, in English and German: nothing reaches past the
// screen, and a dialog's buttons are in view.
#include "app/cli/demo_book.h"
#include "app/session/starter.h"
#include "app/widgets/theme.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "app/window/run_window.h"
#include "tests/app/desktop_leaks.h"
#include "tests/app/screens/every_screen.h"
#include "tests/app/screens/offscreen_screen.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScreen>
#include <QScrollArea>
#include <QStandardPaths>
#include <QTabBar>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

class SmallScreen : public testing::TestWithParam<const char*>
{
protected:
    void SetUp() override
    {
        const QString language = QString::fromLatin1(GetParam());
        installLanguage(language);
        const auto clock = [] {
            return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
        };
        const auto book = createDemoBook(m_folder.path(), clock);
        ASSERT_TRUE(book);
        m_preferences = std::make_unique<Preferences>(m_folder.filePath("settings.ini"));
        m_preferences->setLanguage(language);
        SessionOptions options;
        options.clock = clock;
        options.starter = kStarterFormulary;
        m_session = std::make_unique<Session>(options);
        m_window = std::make_unique<MainWindow>();
        m_controller = std::make_unique<Controller>(*m_window, *m_session, *m_preferences);
        ASSERT_TRUE(m_controller->openBook(*book));
    }

    QTemporaryDir m_folder;
    std::unique_ptr<Preferences> m_preferences;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<MainWindow> m_window;
    std::unique_ptr<Controller> m_controller;
};

void expectOnScreen(const QWidget& window, const QString& name)
{
    const QRect room = window.screen()->availableGeometry();
    EXPECT_TRUE(room.contains(window.frameGeometry()))
        << name.toStdString() << " is " << window.frameGeometry().width() << " x "
        << window.frameGeometry().height() << " at " << window.x() << ", " << window.y();
}

// Where Tab stops in a dialog, in its turn.
std::vector<const QWidget*> stopsOf(const QWidget& dialog)
{
    std::vector<const QWidget*> stops;
    for (const QWidget* at = dialog.nextInFocusChain(); at != &dialog;
         at = at->nextInFocusChain()) {
        if (at->window() == &dialog && at->isVisible() && at->isEnabled() && !at->focusProxy() &&
            (at->focusPolicy() & Qt::TabFocus))
            stops.push_back(at);
    }
    return stops;
}

QString nameOf(const QWidget& widget)
{
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    return QStringLiteral("%1 “%2”").arg(
        QLatin1String(widget.metaObject()->className()),
        button && !button->text().isEmpty() ? button->text() : widget.accessibleName());
}

// Lines from above to below, each from left to right; a column at the side comes after.
bool isBefore(const QRect& one, const QRect& other)
{
    if (other.bottom() < one.top())
        return other.left() > one.right();
    const bool sameLine = other.top() <= one.bottom() && one.top() <= other.bottom();
    return !sameLine || other.left() >= one.left();
}

// What is scrolled in a room that the other one does not share stands where the room does.
QRect placeOf(const QWidget& widget, const QWidget& beside, const QWidget& dialog)
{
    const QWidget* seen = &widget;
    for (const QWidget* at = widget.parentWidget(); at != &dialog; at = at->parentWidget()) {
        if (qobject_cast<const QScrollArea*>(at) && at != &beside && !at->isAncestorOf(&beside))
            seen = at;
    }
    return {seen->mapTo(&dialog, QPoint()), seen->size()};
}

void expectTabInReadingOrder(const QWidget& dialog, const QString& name)
{
    const auto stops = stopsOf(dialog);
    QStringList back; // from the last to the first it goes back once
    for (std::size_t i = 0; i < stops.size(); ++i) {
        const QWidget& one = *stops[i];
        const QWidget& next = *stops[(i + 1) % stops.size()];
        if (&one != &next && !isBefore(placeOf(one, next, dialog), placeOf(next, one, dialog)))
            back << nameOf(one) + QStringLiteral(" → ") + nameOf(next);
    }
    EXPECT_LE(back.size(), 1) << name.toStdString() << ": "
                              << back.join(QStringLiteral("; ")).toStdString();
}

bool isField(const QWidget& widget)
{
    const QWidget* whole = widget.parentWidget();
    if (qobject_cast<const QAbstractSpinBox*>(whole) || qobject_cast<const QComboBox*>(whole) ||
        qobject_cast<const QLineEdit*>(whole) || qobject_cast<const QTabBar*>(whole))
        return false; // a part of one
    return qobject_cast<const QAbstractButton*>(&widget) ||
           qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QPlainTextEdit*>(&widget);
}

void expectReachableByKeys(const QWidget& dialog, const QString& name)
{
    for (const QWidget* field : dialog.findChildren<QWidget*>()) {
        if (!field->isVisible() || !field->isEnabled() || !isField(*field))
            continue;
        const auto* button = qobject_cast<const QAbstractButton*>(field);
        const bool byKey = button && !button->shortcut().isEmpty(); // a mnemonic is one
        EXPECT_TRUE(byKey || (field->focusPolicy() & Qt::TabFocus))
            << name.toStdString() << ": " << nameOf(*field).toStdString();
    }
}

} // namespace

TEST_P(SmallScreen, TabGoesThroughEveryFieldInReadingOrder)
{
    seeDialogs(*m_session, *m_preferences, [&](QWidget& dialog, const QString& name) {
        expectTabInReadingOrder(dialog, name);
        expectReachableByKeys(dialog, name);
    });
}

TEST_P(SmallScreen, NoDialogGrowsWhenSomethingIsRefused)
{
    QSize before;
    int refused = 0;
    seeDialogs(*m_session, *m_preferences, [&](QWidget& dialog, const QString& name) {
        if (name.endsWith(QStringLiteral("-refused"))) {
            ++refused;
            EXPECT_EQ(dialog.width(), before.width()) << name.toStdString();
            EXPECT_EQ(dialog.height(), before.height()) << name.toStdString();
        }
        before = dialog.size();
    });
    EXPECT_GT(refused, 4);
}

TEST_P(SmallScreen, TheWindowStaysOnItAsLargeAsItWasElsewhere)
{
    m_window->resize(1900, 1000);
    m_window->show();
    letSettle();
    expectOnScreen(*m_window, QStringLiteral("window"));
}

TEST_P(SmallScreen, EveryDialogHasItsButtonsInView)
{
    int dialogs = 0;
    int buttons = 0;
    seeDialogs(*m_session, *m_preferences, [&](QWidget& dialog, const QString& name) {
        ++dialogs;
        expectOnScreen(dialog, name);
        for (const auto* box : dialog.findChildren<QDialogButtonBox*>()) {
            for (const auto* button : box->buttons()) {
                if (!button->isVisible())
                    continue;
                ++buttons;
                const QRect place(button->mapTo(&dialog, QPoint()), button->size());
                EXPECT_TRUE(dialog.rect().contains(place))
                    << name.toStdString() << ": " << button->text().toStdString();
                EXPECT_EQ(button->visibleRegion().boundingRect(), button->rect())
                    << name.toStdString() << ": " << button->text().toStdString();
            }
        }
    });
    EXPECT_GT(dialogs, 40);
    EXPECT_GT(buttons, 60);
}

INSTANTIATE_TEST_SUITE_P(Languages, SmallScreen, testing::Values("en", "de"));

} // namespace ullage::app

int main(int argc, char** argv)
{
    const QTemporaryDir folder;
    ullage::app::useOffscreen({1024, 700}, folder.path());
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    auto& theme = ullage::app::Theme::instance();
    theme.setMode(ullage::app::ThemeMode::Light);
    theme.install(application);
    return RUN_ALL_TESTS();
}
