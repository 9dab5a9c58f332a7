#include "app/paper/label_paint.h"
#include "tests/app/paper/label_samples.h"
#include "tests/app/paper/paper_reader.h"

#include <cmath>

namespace ullage::app
{

using namespace testing;

namespace
{

constexpr int kDpi = 300;
constexpr double kDot = 25.4 / kDpi; // mm

LabelJob jobOf(const QString& sheet, int labels, int firstFree = 0)
{
    std::vector<LabelWords> words;
    for (int i = 0; i < labels; ++i) {
        words.push_back(sampleLabel());
        words.back().name = QStringLiteral("HEL %1").arg(i + 1);
        words.back().code.front() = QStringLiteral("%1-%2").arg(kSampleId).arg(i + 1);
    }
    const auto job = labelJob(*labelSheet(sheet), words, firstFree);
    if (!job)
        qFatal("no labels");
    return *job;
}

// Where the first dark dot of a picture's middle row, or column, stands in mm; −1 for none.
double firstDark(const QImage& page, const QRectF& mm, bool across)
{
    const QRect dark = darkIn(part(page, mm, kDpi));
    if (dark.isEmpty())
        return -1;
    return across ? mm.left() + toMillimetres(dark.left(), kDpi)
                  : mm.top() + toMillimetres(dark.top(), kDpi);
}

} // namespace

TEST(LabelPdf, everySheetHasItsSizeAndEveryLabelItsPlaceInMillimetres)
{
    for (const LabelSheet& sheet : labelSheets()) {
        SCOPED_TRACE(sheet.id.toStdString());
        LabelJob job = jobOf(sheet.id, sheet.labels());
        job.outlines = true;
        const QImage page = rendered(labelsPdf(job, "labels"), 0, kDpi);
        ASSERT_FALSE(page.isNull());
        // A page of a PDF is whole points.
        EXPECT_NEAR(toMillimetres(page.width(), kDpi), sheet.sheet.width(), 0.3);
        EXPECT_NEAR(toMillimetres(page.height(), kDpi), sheet.sheet.height(), 0.3);
        // The last label's edges, where they are not the sheet's own.
        const QRectF last = sheet.place(sheet.labels() - 1);
        const double halfWay = last.top() + 1; // above the letters
        if (last.left() > 1) {
            const QRectF look(last.left() - 0.8, halfWay - 0.2, 1.6, 0.4);
            EXPECT_NEAR(firstDark(page, look, true), last.left() - 0.1, 2 * kDot);
        }
        if (last.top() > 1) {
            const QRectF look(last.left() + 0.6, last.top() - 0.8, 0.4, 1.6);
            EXPECT_NEAR(firstDark(page, look, false), last.top() - 0.1, 2 * kDot);
        }
    }
}

TEST(LabelPdf, theCodesAreReadBackAndTheirModulesMeasure)
{
    for (const LabelSheet& sheet : labelSheets()) {
        SCOPED_TRACE(sheet.id.toStdString());
        const LabelJob job = jobOf(sheet.id, sheet.labels());
        const QImage page = rendered(labelsPdf(job, "labels"), 0, kDpi);
        const int last = sheet.labels() - 1;
        const LabelFace& face = job.faces.back();
        const QRectF at = sheet.place(last);
        const QString text = decoded(part(page, at, kDpi));
        EXPECT_EQ(text, face.code.text);
        EXPECT_EQ(text.section('\n', 0, 0), kSampleId + QStringLiteral("-%1").arg(last + 1));
        // The square in a code's upper left corner is seven modules wide.
        const double quiet = kQuietModules * face.module;
        const QPointF corner = at.topLeft() + face.codeAt.topLeft() + QPointF(quiet, quiet);
        const QRectF look(corner + QPointF(-quiet / 2, face.module * 0.25),
                          QSizeF(quiet / 2 + 7.9 * face.module, face.module * 0.5));
        const QRect dark = darkIn(part(page, look, kDpi));
        EXPECT_NEAR(toMillimetres(dark.width(), kDpi), 7 * face.module, 2 * kDot);
        EXPECT_GE(toMillimetres(dark.width(), kDpi) / 7, kSmallestModule - kDot / 3);
    }
}

TEST(LabelPdf, theNameIsAsHighAsItIsToBe)
{
    const LabelJob job = jobOf("70x36", 1);
    const QImage page = rendered(labelsPdf(job, "label"), 0, kDpi);
    const LabelLine& name = job.faces.front().lines.front();
    const QRectF look(name.baseline - QPointF(0.5, name.letters.mm * 0.9),
                      QSizeF(textWidth("HEL", name.letters), name.letters.mm));
    const QRect dark = darkIn(part(page, look, kDpi));
    EXPECT_GE(toMillimetres(dark.height(), kDpi), kNameCapitals - 2 * kDot);
    EXPECT_NEAR(toMillimetres(dark.height(), kDpi), kCapitals * name.letters.mm, 0.3);
}

TEST(LabelPdf, printingBeginsAtTheFirstFreeLabelAndGoesOnOnTheNextSheet)
{
    const LabelSheet& sheet = *labelSheet("a4-105x74");
    const LabelJob job = jobOf(sheet.id, 4, 6); // of eight
    EXPECT_EQ(sheetsOf(job), 2);
    const QByteArray pdf = labelsPdf(job, "labels");
    const QImage first = rendered(pdf, 0, kDpi);
    const QImage second = rendered(pdf, 1, kDpi);
    ASSERT_FALSE(second.isNull());
    for (int i = 0; i < 6; ++i)
        EXPECT_TRUE(darkIn(part(first, sheet.place(i).adjusted(1, 1, -1, -1), kDpi)).isEmpty())
            << i;
    const auto idAt = [&](const QImage& page, int place) {
        return decoded(part(page, sheet.place(place), kDpi)).section('\n', 0, 0);
    };
    EXPECT_EQ(idAt(first, 6), kSampleId + "-1");
    EXPECT_EQ(idAt(first, 7), kSampleId + "-2");
    EXPECT_EQ(idAt(second, 0), kSampleId + "-3");
    EXPECT_EQ(idAt(second, 1), kSampleId + "-4");
    EXPECT_TRUE(darkIn(part(second, sheet.place(2).adjusted(1, 1, -1, -1), kDpi)).isEmpty());
}

TEST(LabelPdf, whatCannotBePrintedIsRefusedByName)
{
    const LabelSheet& sheet = *labelSheet("a4-70x36");
    using Why = LabelRefusal::Why;
    EXPECT_EQ(labelJob(sheet, {}, 0).error().why, Why::None);
    EXPECT_EQ(labelJob(sheet, {sampleLabel()}, 24).error().why, Why::NotOnSheet);
    LabelWords endless = sampleLabel();
    endless.name = QString(300, u'W');
    const auto refused = labelJob(sheet, {sampleLabel(), endless}, 0);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().why, Why::WordsTooLong);
    EXPECT_EQ(refused.error().name, endless.name);
    EXPECT_TRUE(refusalText(refused.error()).contains("choose a larger"));
}

} // namespace ullage::app
