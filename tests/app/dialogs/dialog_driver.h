// Driving a dialog as a person would: fields by their names, keys, and the button at the end.
#pragma once

#include "app/dialogs/deed_dialog.h"
#include "tests/app/desk.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

namespace ullage::app
{

inline Bottle bottleOf(Desk& desk, const std::string& id)
{
    const Bottle* bottle = desk.session().bottle(QString::fromStdString(id));
    EXPECT_NE(bottle, nullptr);
    return *bottle;
}

/// The child of this type with this accessible name.
template <class Widget>
Widget* named(const QWidget& within, const QString& name)
{
    for (Widget* widget : within.findChildren<Widget*>()) {
        if (widget->accessibleName() == name)
            return widget;
    }
    ADD_FAILURE() << "no field named " << name.toStdString();
    return nullptr;
}

/// Types over what is in a field.
inline void type(const QWidget& within, const QString& name, const QString& text)
{
    auto* edit = named<QLineEdit>(within, name);
    ASSERT_NE(edit, nullptr);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClick(edit, Qt::Key_Delete);
    QTest::keyClicks(edit, text);
}

/// Sets a box that counts, as its arrows would.
inline void spin(const QWidget& within, const QString& name, int value)
{
    auto* box = named<QSpinBox>(within, name);
    ASSERT_NE(box, nullptr);
    box->setValue(value);
}

inline void setMoment(const QWidget& within, chemistry::Instant at)
{
    within.findChild<WhenEdit*>()->setMoment(at);
}

} // namespace ullage::app
