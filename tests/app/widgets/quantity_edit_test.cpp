#include "app/widgets/quantity_edit.h"
#include "core/chemistry/quantities.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

#include <memory>
#include <utility>

using namespace ullage::app;

namespace
{

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);
const Units kUs{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit};

// A field with something to move the keyboard to.
struct Form {
    QWidget window;
    QuantityEdit* edit;
    QPushButton* other;

    Form(QuantityKind kind, const Wording& wording)
    {
        auto* column = new QVBoxLayout(&window);
        edit = new QuantityEdit(kind, QStringLiteral("Volume used"), wording);
        other = new QPushButton(QStringLiteral("x"));
        column->addWidget(edit);
        column->addWidget(other);
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        other->setFocus();
    }

    void visit()
    {
        edit->setFocus();
        QTest::qWait(1);
        other->setFocus();
    }

    void type(const QString& text)
    {
        edit->setFocus();
        QTest::qWait(1);
        edit->selectAll();
        QTest::keyClicks(edit, text);
    }
};

} // namespace

TEST(QuantityEdit, OpeningAndClosingChangesNothing)
{
    for (const Units& units : {Units{}, kUs}) {
        for (const QLocale& locale : {kBritish, kGerman}) {
            for (const auto kind :
                 {QuantityKind::Volume, QuantityKind::Temperature, QuantityKind::Time,
                  QuantityKind::Count, QuantityKind::Area, QuantityKind::Number}) {
                Form form(kind, {units, locale});
                QSignalSpy changed(form.edit, &QuantityEdit::valueChanged);
                const double exact = 20.123456789;
                form.edit->setValue(exact);
                form.visit();
                EXPECT_EQ(form.edit->value(), exact);
                // Typing the same words again is no change either.
                form.type(form.edit->text());
                form.other->setFocus();
                EXPECT_EQ(form.edit->value(), exact);
                form.edit->setWording({kUs, kGerman});
                form.edit->setWording({units, locale});
                form.visit();
                EXPECT_EQ(form.edit->value(), exact);
            }
        }
    }
}

TEST(QuantityEdit, TypingReplacesTheNumberAndKeepsTheUnit)
{
    Form form(QuantityKind::Volume, {{}, kBritish});
    form.edit->setValue(600);
    EXPECT_EQ(form.edit->text(), QStringLiteral("600 ml"));
    form.edit->setFocus();
    QTest::qWait(5);
    QTest::keyClicks(form.edit, QStringLiteral("450"));
    EXPECT_EQ(form.edit->text(), QStringLiteral("450 ml"));
    EXPECT_EQ(form.edit->value(), 450);
}

TEST(QuantityEdit, TypedWordsAreShownInTheUsersUnit)
{
    Form form(QuantityKind::Temperature, {{}, kGerman});
    form.type(QStringLiteral("68F"));
    EXPECT_NEAR(form.edit->value().value(), 20, 1e-12);
    form.other->setFocus();
    EXPECT_EQ(form.edit->text(), QStringLiteral("20 °C"));
    form.type(QStringLiteral("20,5"));
    EXPECT_EQ(form.edit->value(), 20.5);
}

TEST(QuantityEdit, SaysWhatIsWrong)
{
    Form form(QuantityKind::Volume, {{}, kGerman});
    form.edit->setRange(0, 1000);
    form.type(QStringLiteral("1200"));
    EXPECT_FALSE(form.edit->value());
    EXPECT_EQ(form.edit->problem().toStdString(),
              "Volume used: 1200 is not allowed; allowed is from 0 ml to 1000 ml.");
    form.type(QStringLiteral("1.200"));
    EXPECT_FALSE(form.edit->value()) << "thousands, as one writes them there";
    EXPECT_TRUE(form.edit->problem().contains(QStringLiteral("1.200 is not allowed")));
    form.type(QStringLiteral("abc"));
    EXPECT_TRUE(form.edit->problem().contains(QStringLiteral("abc")));
    EXPECT_TRUE(form.edit->property("invalid").toBool());
    form.other->setFocus();
    EXPECT_EQ(form.edit->text(), QStringLiteral("abc")) << "wrong words stay to be mended";
    form.type(QStringLiteral("600"));
    EXPECT_TRUE(form.edit->isValid());
    EXPECT_FALSE(form.edit->property("invalid").toBool());
}

TEST(QuantityEdit, TakesThousandsAsTheyAreShown)
{
    Form form(QuantityKind::Volume, {{}, kBritish});
    form.edit->setRange(0, 100'000);
    form.type(QStringLiteral("1,000 ml"));
    EXPECT_EQ(form.edit->value(), 1000);
    EXPECT_EQ(form.edit->understood().toStdString(), "Read as 1000 ml.");
    form.other->setFocus();
    EXPECT_EQ(form.edit->text(), QStringLiteral("1,000 ml")) << "as it was understood";
    EXPECT_TRUE(form.edit->understood().isEmpty());
    form.type(QStringLiteral("1000"));
    EXPECT_TRUE(form.edit->understood().isEmpty()) << "nothing else could be meant";
}

TEST(QuantityEdit, ShowsThousandsAsEveryTextDoesUntilItIsTypedIn)
{
    const std::pair<QLocale, QString> ways[] = {{kBritish, QStringLiteral("1,%1 ml")},
                                                {kGerman, QStringLiteral("1.%1 ml")}};
    for (const auto& [locale, grouped] : ways) {
        Form form(QuantityKind::Volume, {{}, locale});
        QSignalSpy changed(form.edit, &QuantityEdit::valueChanged);
        form.edit->setValue(1000);
        EXPECT_EQ(form.edit->text(), grouped.arg(QStringLiteral("000")));
        form.edit->setFocus();
        QTest::qWait(5);
        EXPECT_EQ(form.edit->text(), QStringLiteral("1000 ml"));
        form.other->setFocus();
        EXPECT_EQ(form.edit->text(), grouped.arg(QStringLiteral("000")));
        EXPECT_EQ(changed.count(), 0);
        form.edit->setFocus();
        QTest::qWait(5);
        QTest::keyClicks(form.edit, QStringLiteral("1200"));
        EXPECT_EQ(form.edit->value(), 1200) << "one reading only";
        form.other->setFocus();
        EXPECT_EQ(form.edit->text(), grouped.arg(QStringLiteral("200")));
        EXPECT_EQ(form.edit->value(), 1200);
    }
    Form index(QuantityKind::Number, {{}, kBritish});
    index.edit->setValue(3200);
    EXPECT_EQ(index.edit->text(), QStringLiteral("3200")) << "an exposure index has no signs";
}

TEST(QuantityEdit, AsksWhichOfTwoReadingsIsMeant)
{
    Form form(QuantityKind::Volume, {{}, kBritish});
    form.edit->setRange(0, 100'000);
    form.type(QStringLiteral("1.000"));
    EXPECT_TRUE(form.edit->isOpen());
    EXPECT_FALSE(form.edit->value()) << "1 ml was mixed so";
    EXPECT_EQ(form.edit->problem().toStdString(),
              "Volume used: “1.000” can mean 1 ml or 1000 ml; write the one that is meant.");
    form.other->setFocus();
    EXPECT_EQ(form.edit->text(), QStringLiteral("1.000")) << "it stays to be mended";
    EXPECT_FALSE(form.edit->isValid());
    // What only one of them allows is not asked.
    form.edit->setRange(10, 100'000);
    EXPECT_EQ(form.edit->value(), 1000);
    EXPECT_EQ(form.edit->understood().toStdString(), "Read as 1000 ml.");
    form.edit->setRange(0, 100);
    EXPECT_EQ(form.edit->value(), 1);
    form.edit->setRange(10, 100);
    EXPECT_FALSE(form.edit->value());
    EXPECT_TRUE(form.edit->problem().contains(QStringLiteral("not allowed")));

    QuantityEdit warm(QuantityKind::Temperature, QStringLiteral("Temperature"), {{}, kBritish});
    warm.setRange(0, 45);
    QTest::keyClicks(&warm, QStringLiteral("20.125"));
    EXPECT_EQ(warm.value(), 20.125) << "no bath has twenty thousand degrees";
    EXPECT_TRUE(warm.understood().isEmpty());
}

TEST(QuantityEdit, TakesSecondsWhereMinutesCannotBe)
{
    Form form(QuantityKind::Time, {{}, kBritish});
    form.edit->setRange(1, 7200);
    form.type(QStringLiteral("45"));
    EXPECT_EQ(form.edit->value(), 45 * 60);
    form.edit->setMinutesUpTo(kMostClearingSeconds);
    EXPECT_EQ(form.edit->value(), 45);
    EXPECT_EQ(form.edit->understood().toStdString(), "Read as 0:45.");
    form.other->setFocus();
    EXPECT_EQ(form.edit->text(), QStringLiteral("0:45"));
    form.type(QStringLiteral("5"));
    EXPECT_EQ(form.edit->value(), 300);
    EXPECT_TRUE(form.edit->understood().isEmpty());
    for (const char* text : {"45 min", "45:00"}) {
        form.type(QString::fromUtf8(text));
        EXPECT_EQ(form.edit->value(), 45 * 60) << text << ", as it was written";
    }
    form.edit->setMinutesUpTo(1e9);
    form.type(QStringLiteral("600"));
    EXPECT_EQ(form.edit->value(), 600) << "600 minutes are out of range";
}

TEST(QuantityEdit, DoesNotAllowWhatItRefuses)
{
    Form form(QuantityKind::Number, {{}, kBritish});
    const auto allowed = [&](double least, double most) {
        form.edit->setRange(least, most);
        return form.edit->problem().section(QStringLiteral("allowed is "), -1).toStdString();
    };
    form.type(QStringLiteral("0"));
    const double little = std::numeric_limits<double>::min();
    EXPECT_EQ(allowed(little, 10), "more than 0, at most 10.");
    EXPECT_EQ(allowed(little / 30, 10), "more than 0, at most 10.") << "the same in months";
    EXPECT_EQ(allowed(little, std::numeric_limits<double>::infinity()), "more than 0.");
    EXPECT_EQ(allowed(0.001, 10), "from 0.001 to 10.") << "shown as nothing, it would be allowed";
    EXPECT_EQ(allowed(0.1, 10), "from 0.1 to 10.");
}

TEST(QuantityEdit, EmptyIsNoValueAndAProblemOnlyWhereNeeded)
{
    Form form(QuantityKind::Time, {{}, kBritish});
    form.edit->setValue(570);
    form.type(QStringLiteral("0"));
    form.edit->selectAll();
    QTest::keyClick(form.edit, Qt::Key_Delete);
    EXPECT_FALSE(form.edit->value());
    EXPECT_TRUE(form.edit->isValid());
    form.edit->setRequired(true);
    EXPECT_FALSE(form.edit->isValid());
}

TEST(QuantityEdit, ALimitTypedAsShownIsAllowed)
{
    Form form(QuantityKind::Volume, {kUs, kBritish});
    form.edit->setRange(0, 20 * 29.5735295625);
    form.type(QStringLiteral("20 fl oz"));
    EXPECT_TRUE(form.edit->value());
}

TEST(QuantityEdit, GoesByTheJournalsField)
{
    using namespace ullage::ledger;
    using ullage::formulary::fieldOf;
    const Wording wording{{}, kBritish};
    QuantityEdit hours(fieldOf(&StoodOpen::time), QStringLiteral("Hours open"), wording);
    EXPECT_EQ(hours.kind(), QuantityKind::Hours);
    EXPECT_FALSE(hours.isValid()) << "it must be there";
    QTest::keyClicks(&hours, QStringLiteral("0"));
    EXPECT_EQ(hours.problem().toStdString(),
              "Hours open: 0 is not allowed; allowed is more than 0, at most 87600 h.");
    hours.setValue(0.004);
    EXPECT_TRUE(hours.isValid()) << "what the journal takes, the field takes";
    EXPECT_EQ(hours.text(), QStringLiteral("0.004 h")) << "little is not nothing";

    QuantityEdit count(fieldOf(&FilmCount::count), QStringLiteral("Count"), wording);
    EXPECT_EQ(count.kind(), QuantityKind::Count);
    QTest::keyClicks(&count, QStringLiteral("1/2"));
    EXPECT_EQ(count.problem().toStdString(),
              "Count: 1/2 is not allowed; allowed is a whole number from 1 to 10000.");
    count.setValue(3);
    EXPECT_TRUE(count.isValid());

    QuantityEdit warm(fieldOf(&ClearingTested::temperature), QStringLiteral("Temperature"),
                      wording);
    warm.setValue(50);
    EXPECT_FALSE(warm.isValid());
    QuantityEdit air(kEventAir, QStringLiteral("Air left"), wording);
    EXPECT_TRUE(air.isValid()) << "it may be left out";
    air.setValue(0);
    EXPECT_TRUE(air.isValid());
}

TEST(QuantityEdit, AHintOfItsOwnOutlivesOtherUnits)
{
    QuantityEdit volume(QuantityKind::Volume, QStringLiteral("Volume"), Wording{{}, kBritish});
    EXPECT_EQ(volume.placeholderText(), "ml");
    volume.setWording(Wording{kUs, kBritish});
    EXPECT_EQ(volume.placeholderText(), "fl oz");
    QuantityEdit time(QuantityKind::Time, QStringLiteral("Time"), Wording{{}, kBritish});
    time.setPlaceholderText(QStringLiteral("m:ss"));
    time.setWording(Wording{kUs, kBritish});
    EXPECT_EQ(time.placeholderText(), "m:ss");
}

TEST(QuantityField, SpeaksTheCoresTypes)
{
    QuantityField<ullage::chemistry::Millilitres> field(QuantityKind::Volume,
                                                        QStringLiteral("Volume"), {{}, kBritish});
    field.setQuantity(ullage::chemistry::Millilitres(985.25));
    EXPECT_EQ(field.quantity(), ullage::chemistry::Millilitres(985.25));
    field.setQuantity(std::nullopt);
    EXPECT_FALSE(field.quantity());
}
