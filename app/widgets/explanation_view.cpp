#include "app/widgets/explanation_view.h"

#include "app/widgets/grade_badge.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QTextDocument>

#include <cmath>

namespace ullage::app
{

namespace
{

QString coloured(const QColor& colour, const QString& html)
{
    return QStringLiteral("<span style=\"color:%1\">%2</span>").arg(colour.name(), html);
}

QString paragraph(const QString& html, int above = 0)
{
    return QStringLiteral("<p style=\"margin:%1px 0 4px 0\">%2</p>").arg(above).arg(html);
}

QString row(const QString& name, const QString& value)
{
    return QStringLiteral("<tr><td style=\"padding:1px 12px 1px 0\">%1</td>"
                          "<td align=\"right\" style=\"padding:1px 0\"><b>%2</b></td></tr>")
        .arg(name, value);
}

// A figure with its unit, or a range of them, stays on one line: the name beside it gives way.
QString unbroken(QString figure)
{
    constexpr qsizetype kLongest = 32; // what is longer is words
    constexpr char16_t kJoiner = 0x2060;
    if (figure.size() > kLongest)
        return figure;
    return figure.replace(u' ', QChar(QChar::Nbsp))
        .replace(QStringLiteral("–"), QStringLiteral("–") + QChar(kJoiner))
        .replace(QStringLiteral("/"), QStringLiteral("/") + QChar(kJoiner));
}

} // namespace

ExplanationView::ExplanationView(Heading heading, QWidget* parent)
    : QTextBrowser(parent), m_heading(heading)
{
    setOpenLinks(false);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setStyleSheet(QStringLiteral(
        "QTextBrowser { background: transparent; border: none; padding: 0; border-radius: 0; }"
        "QTextBrowser:focus { border: none; padding: 0; }"));
    viewport()->setAutoFillBackground(false);
    document()->setDocumentMargin(1);
    connect(&Theme::instance(), &Theme::changed, this, &ExplanationView::render);
}

void ExplanationView::setExplanation(const Explanation& explanation)
{
    m_explanation = explanation;
    setAccessibleName(tr("Where from? %1").arg(explanation.title));
    setAccessibleDescription(explanation.lines().join(u'\n'));
    render();
}

int ExplanationView::heightFor(int width) const
{
    const std::unique_ptr<QTextDocument> copy(document()->clone());
    copy->setTextWidth(width);
    return static_cast<int>(std::ceil(copy->size().height()));
}

void ExplanationView::changeEvent(QEvent* event)
{
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        render();
}

void ExplanationView::showWhole(bool whole)
{
    if (whole == m_whole)
        return;
    m_whole = whole;
    setVerticalScrollBarPolicy(whole ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    if (!whole)
        setMinimumHeight(0);
    takeHeight();
}

void ExplanationView::takeHeight()
{
    if (!m_whole)
        return;
    const int height = heightFor(viewport()->width());
    if (height != minimumHeight())
        setMinimumHeight(height);
}

void ExplanationView::resizeEvent(QResizeEvent* event)
{
    QTextBrowser::resizeEvent(event);
    takeHeight();
}

void ExplanationView::render()
{
    document()->setDefaultFont(Theme::font(TextRole::Body));
    setHtml(html());
    takeHeight();
}

QString ExplanationView::html() const
{
    const Colours& c = colours();
    const Explanation& why = m_explanation;
    const auto text = [](const QString& plain) { return plain.toHtmlEscaped(); };
    QString html;
    if (m_heading == Heading::Shown)
        html += paragraph(coloured(c.quiet, QStringLiteral("<b>%1</b>").arg(text(why.title))));
    html += paragraph(
        QStringLiteral("<span style=\"font-size:15px\"><b>%1</b></span>").arg(text(why.value)));
    html += paragraph(text(why.equation), 6);
    if (!why.inputs.empty()) {
        html +=
            paragraph(coloured(c.quiet, QStringLiteral("<b>%1</b>").arg(tr("In this case"))), 8);
        html += QStringLiteral("<table width=\"100%\" cellspacing=\"0\" cellpadding=\"0\">");
        for (const ExplainedInput& input : why.inputs)
            html += row(text(input.name), text(unbroken(input.value)));
        html += QStringLiteral("</table>");
    }
    if (!why.constants.empty())
        html +=
            paragraph(coloured(c.quiet, QStringLiteral("<b>%1</b>").arg(tr("It is based on"))), 8);
    for (const ExplainedConstant& constant : why.constants) {
        QString value = text(unbroken(constant.value));
        if (!constant.range.isEmpty())
            value += coloured(c.quiet, QStringLiteral(" (%1)").arg(text(unbroken(constant.range))));
        html += QStringLiteral("<table width=\"100%\" cellspacing=\"0\" cellpadding=\"0\">") +
                row(text(constant.name), value) + QStringLiteral("</table>");
        // Under the figure: beside it there is no room for the grade where the view is narrow.
        QStringList from;
        if (const QString grade = gradeName(constant.grade); !grade.isEmpty())
            from << coloured(gradeColour(constant.grade),
                             QStringLiteral("<b>%1</b>").arg(text(grade)));
        if (!constant.source.isEmpty())
            from << coloured(c.quiet, text(constant.source));
        html += QStringLiteral("<p style=\"margin:0 0 5px 0; font-size:12px\">%1</p>")
                    .arg(from.join(coloured(c.quiet, QStringLiteral(" · "))));
    }
    int above = 8;
    for (const QString& note : why.notes) {
        html += paragraph(text(note), above);
        above = 0;
    }
    if (why.hasGrade)
        html += paragraph(coloured(gradeColour(why.grade), text(gradeMeaning(why.grade))), 8);
    return html;
}

} // namespace ullage::app
