#include "app/formulary/source_edit.h"

#include "app/widgets/plain_text.h"
#include "app/words/figure_words.h"
#include "app/words/shown_names.h"
#include "core/formulary/source_line.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>

namespace ullage::app
{

using chemistry::Grade;

namespace
{

constexpr int kBetweenGradeAndText = 6;
constexpr int kLeastText = 190; // what a source can be typed into

} // namespace

SourceEdit::SourceEdit(const QString& name, QWidget* parent, Qt::Orientation lie)
    : QWidget(parent), m_name(name), m_lie(lie),
      m_row(new QBoxLayout(QBoxLayout::TopToBottom, this)), m_grade(new QComboBox(this)),
      m_text(new QLineEdit(this))
{
    m_grade->addItem(tr("not given", "grade of a source"));
    for (const Grade grade :
         {Grade::Published, Grade::Computed, Grade::CommonPractice, Grade::FromMemory}) {
        m_grade->addItem(gradeName(grade), static_cast<int>(grade));
        m_grade->setItemData(m_grade->count() - 1, plainToolTip(gradeMeaning(grade)),
                             Qt::ToolTipRole);
    }
    m_grade->setAccessibleName(tr("Kind of source of %1").arg(name));
    m_text->setAccessibleName(tr("Where %1 is from").arg(name));
    setPlaceholderText(tr("no source given"));
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(kBetweenGradeAndText);
    m_row->addWidget(m_grade);
    m_row->addWidget(m_text, 1);
    setFocusProxy(m_grade);
    // A source is often longer than any field: it is read whole where the pointer rests.
    connect(m_text, &QLineEdit::textChanged, m_text,
            [this](const QString& text) { setPlainToolTip(m_text, text); });
    connect(m_grade, &QComboBox::currentIndexChanged, this, [this] {
        m_touched = true;
        emit changed();
    });
    connect(m_text, &QLineEdit::textEdited, this, [this] {
        m_touched = true;
        emit changed();
    });
}

// Beside one another only where the text has room.
void SourceEdit::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    const int least = m_grade->sizeHint().width() + kBetweenGradeAndText + kLeastText;
    m_row->setDirection(m_lie == Qt::Horizontal && width() >= least ? QBoxLayout::LeftToRight
                                                                    : QBoxLayout::TopToBottom);
}

void SourceEdit::setPlaceholderText(const QString& text) { m_text->setPlaceholderText(text); }

void SourceEdit::setLine(const std::string& line)
{
    const QSignalBlocker quiet(m_grade);
    m_start = line;
    m_touched = false;
    const auto source = formulary::splitSource(line);
    m_grade->setCurrentIndex(source.grade ? m_grade->findData(static_cast<int>(*source.grade)) : 0);
    m_kept = source.text;
    m_text->setText(shownSource(QString::fromStdString(m_kept)));
    m_text->setCursorPosition(0);
}

std::string SourceEdit::line() const
{
    if (!m_touched)
        return m_start;
    const QVariant grade = m_grade->currentData();
    const QString typed = m_text->text().trimmed();
    return formulary::joinSource(
        {grade.isValid() ? std::optional(static_cast<Grade>(grade.toInt())) : std::nullopt,
         typed == shownSource(QString::fromStdString(m_kept)) ? m_kept : typed.toStdString()});
}

QString SourceEdit::problem() const
{
    // What stood there is no fault of whoever changes something else.
    if (!m_touched)
        return {};
    const bool named = !m_text->text().trimmed().isEmpty();
    const QVariant grade = m_grade->currentData();
    if (named && !grade.isValid())
        return tr("%1: say where it is from.").arg(m_name);
    if (!named && grade.isValid() && static_cast<Grade>(grade.toInt()) == Grade::Published)
        return tr("%1: name the published source.").arg(m_name);
    return {};
}

} // namespace ullage::app
