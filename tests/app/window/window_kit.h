// The whole window on a desk's book, its questions scripted.
#pragma once

#include "app/shelf/shelf_model.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_view.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"
#include "tests/app/dialogs/dialog_driver.h"
#include "tests/app/scripted_prompts.h"

#include <QAction>

#include <gtest/gtest.h>

namespace ullage::app
{

struct Window {
    explicit Window(Desk& desk)
        : controller(window, desk.session(), desk.preferences()), force(asked)
    {
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    template <class Dialog>
    Dialog* dialog()
    {
        auto* found = window.findChild<Dialog*>();
        EXPECT_NE(found, nullptr);
        return found;
    }
    const BottleView* bottle(const QString& name)
    {
        auto* model = qobject_cast<ShelfModel*>(window.shelf()->view()->model());
        for (const BottleView& view : model->bottles()) {
            if (view.name == name)
                return &view;
        }
        return nullptr;
    }
    QAction* action(const QString& start)
    {
        for (QAction* action : window.findChildren<QAction*>()) {
            if (action->text().remove(u'&').startsWith(start))
                return action;
        }
        return nullptr;
    }
    // A dialog that has closed is deleted on the next turn of the loop.
    static void settle()
    {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }

    MainWindow window;
    ScriptedPrompts asked;
    Controller controller;
    PromptsInForce force;
};

} // namespace ullage::app
