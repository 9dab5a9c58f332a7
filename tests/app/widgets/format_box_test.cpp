// Choosing a film's format by hand: from the list, by typing, by a strip's length, by any size.
#include "app/widgets/format_box.h"
#include "app/widgets/quantity_edit.h"

#include <QAbstractItemView>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

template <class Widget>
Widget* fieldNamed(const QWidget& within, const QString& name)
{
    for (Widget* widget : within.findChildren<Widget*>()) {
        if (widget->accessibleName() == name)
            return widget;
    }
    return nullptr;
}

void replaceText(QLineEdit& edit, const QString& text)
{
    edit.setFocus();
    edit.selectAll();
    QTest::keyClick(&edit, Qt::Key_Delete);
    QTest::keyClicks(&edit, text);
}

struct Shown {
    QWidget window;
    FormatBox* box;

    Shown() : box(new FormatBox({}, &window))
    {
        auto* column = new QVBoxLayout(&window);
        column->addWidget(box);
        column->addWidget(box->sizeLine());
        window.show();
    }
    void write(const QString& text) { replaceText(*box->lineEdit(), text); }
    void fill(const QString& field, const QString& text)
    {
        auto* edit = fieldNamed<QLineEdit>(window, field);
        ASSERT_NE(edit, nullptr);
        ASSERT_TRUE(edit->isVisible()) << field.toStdString();
        replaceText(*edit, text);
    }
    bool asksSize() const { return box->sizeLine()->isVisible(); }
};

} // namespace

TEST(FormatBox, EnterEntersTheFormAtOnce)
{
    QDialog form;
    auto* column = new QVBoxLayout(&form);
    auto* box = new FormatBox({}, &form);
    auto* log = new QPushButton(QStringLiteral("Log"), &form);
    column->addWidget(box);
    column->addWidget(log);
    log->setDefault(true);
    form.show();
    QSignalSpy logged(log, &QPushButton::clicked);
    box->setFocus(Qt::TabFocusReason);
    box->lineEdit()->selectAll(); // as Tab and the opening dialog leave it
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_EQ(logged.count(), 1);
    EXPECT_EQ(box->format(), "135-36");
}

TEST(FormatBox, OffersEveryFormatUnderItsGroup)
{
    Shown on;
    EXPECT_EQ(on.box->format(), "135-36");
    EXPECT_FALSE(on.asksSize());
    QStringList groups;
    std::size_t formats = 0;
    for (int i = 0; i < on.box->count(); ++i) {
        const auto index = on.box->model()->index(i, 0);
        if (!(on.box->model()->flags(index) & Qt::ItemIsSelectable))
            groups << on.box->itemText(i);
        else
            ++formats;
    }
    EXPECT_EQ(groups, (QStringList{"Rolls", "Sheets", "Other"}));
    EXPECT_EQ(formats, chemistry::usualFormats().size() + chemistry::filmStrips().size() + 1);
    for (const chemistry::FilmFormat& format : chemistry::usualFormats()) {
        on.box->setFormat(std::string(format.code));
        EXPECT_EQ(on.box->format(), format.code);
        EXPECT_TRUE(on.box->problem().isEmpty());
        EXPECT_FALSE(on.asksSize()) << format.code;
    }
}

TEST(FormatBox, KeysPassOverTheHeadings)
{
    Shown on;
    on.box->setFormat("220");
    QStringList passed;
    for (int i = 0; i < 5; ++i) {
        QTest::keyClick(on.box, Qt::Key_Down);
        passed << on.box->currentText();
    }
    EXPECT_EQ(passed, (QStringList{"127", "126", "16 mm", "110", "6.5×9\u00a0cm"}));
}

TEST(FormatBox, AStripGoesByItsLength)
{
    Shown on;
    QSignalSpy changed(on.box, &FormatBox::formatChanged);
    on.write("127");
    EXPECT_TRUE(on.asksSize());
    EXPECT_FALSE(changed.isEmpty());
    EXPECT_EQ(on.box->format(), "") << "without a length it is none";
    EXPECT_FALSE(on.box->problem().isEmpty());
    changed.clear();
    on.fill("Length of the film", "61");
    EXPECT_FALSE(changed.isEmpty());
    EXPECT_EQ(on.box->format(), "4.6x61cm");
    EXPECT_TRUE(on.box->problem().isEmpty()) << on.box->problem().toStdString();
    on.write("16 mm");
    on.fill("Length of the film", "100");
    fieldNamed<QComboBox>(on.window, "Unit of the film's size")->setCurrentIndex(2);
    EXPECT_EQ(on.box->format(), "1.6x3048cm") << "100 feet";
    on.write("120");
    EXPECT_FALSE(on.asksSize());
    EXPECT_EQ(on.box->format(), "120");
}

TEST(FormatBox, AnyOtherSizeIsTyped)
{
    Shown on;
    on.box->setCurrentIndex(on.box->count() - 1);
    EXPECT_TRUE(on.asksSize());
    EXPECT_FALSE(on.box->problem().isEmpty());
    on.fill("Width of the film", "11");
    on.fill("Length of the film", "14");
    fieldNamed<QComboBox>(on.window, "Unit of the film's size")->setCurrentIndex(1);
    EXPECT_EQ(on.box->format(), "11x14in");
    on.fill("Width of the film", "9000");
    EXPECT_TRUE(on.box->problem().contains("10 by 100 metres"));
    on.write("6,5 × 9 cm");
    EXPECT_FALSE(on.asksSize());
    EXPECT_EQ(on.box->format(), "6.5x9cm");
    on.write("135-12");
    EXPECT_TRUE(on.box->problem().contains("135-12"));
}

TEST(FormatBox, ShowsWhatItIsGivenAgain)
{
    Shown on;
    for (const char* code : {"4.6x61cm", "1.6x3048cm", "3.5x70.5cm", "11x14in", "9x12cm", "4x5"}) {
        on.box->setFormat(code);
        EXPECT_EQ(on.box->format(), code);
        EXPECT_TRUE(on.box->problem().isEmpty());
    }
    on.box->setFormat("4.6x61cm");
    EXPECT_EQ(on.box->currentText(), "127");
    EXPECT_TRUE(on.asksSize());
}

} // namespace ullage::app
