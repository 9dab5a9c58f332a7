#include "app/dialogs/field_form.h"

#include "app/dialogs/when_edit.h"
#include "app/widgets/count_box.h"
#include "app/widgets/form_dialog.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/problem_line.h"
#include "app/widgets/theme.h"
#include "core/ledger/event_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QListWidget>
#include <QPlainTextEdit>

namespace ullage::app
{

namespace
{

constexpr int kFormWidth = 400;
constexpr int kLinesOfARow = 4; // label, field, problem, air between

QString nameIn(const formulary::FieldDescription& is)
{
    return QString::fromUtf8(is.name.data(), static_cast<qsizetype>(is.name.size()));
}

} // namespace

FieldForm::FieldForm(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(Space::kGap);
    m_grid->setVerticalSpacing(Space::kTight);
    for (const int column : {0, 1}) {
        m_grid->setColumnMinimumWidth(column, kFormWidth / 2);
        m_grid->setColumnStretch(column, 1);
    }
}

void FieldForm::addRow(const QString& name, const QString& label, QWidget* field, Width width)
{
    Row row;
    row.label = new PlainLabel(label, this);
    row.label->setFont(Theme::font(TextRole::Small));
    setTone(row.label, Tone::Quiet);
    row.label->setBuddy(field);
    row.field = field;
    row.problem = newProblemLine(this);
    if (field->accessibleName().isEmpty())
        field->setAccessibleName(QString(label).remove(u'&'));

    const bool second = width == Width::Half && m_half;
    if (!second)
        m_line += kLinesOfARow;
    const int column = second ? 1 : 0;
    const int span = width == Width::Half ? 1 : 2;
    m_grid->addWidget(row.label, m_line, column, 1, span);
    m_grid->addWidget(field, m_line + 1, column, 1, span, Qt::AlignTop);
    m_grid->addWidget(row.problem, m_line + 2, column, 1, span, Qt::AlignTop);
    m_grid->setRowMinimumHeight(m_line + 3, Space::kTight);
    m_half = width == Width::Half && !second;
    m_rows[name] = row;
    m_order.push_back(name);
    tellOf(field);
    if (auto* figure = qobject_cast<QuantityEdit*>(field)) {
        const auto say = [this, name] { sayReading(name); };
        connect(figure, &QuantityEdit::valueChanged, this, say);
        connect(figure, &QLineEdit::editingFinished, this, say);
    }
}

// At once, as for a moment; a refusal stays until it is tried again.
void FieldForm::sayReading(const QString& name)
{
    Row& row = m_rows.at(name);
    const auto& figure = static_cast<const QuantityEdit&>(*row.field);
    const QString says = figure.isOpen() ? figure.problem() : figure.understood();
    if (says.isEmpty() && !row.reading)
        return;
    row.reading = !says.isEmpty();
    setTone(row.problem, figure.isOpen() ? Tone::Discard : Tone::Quiet);
    showIn(*row.problem, says);
}

// Whatever the field is, its being changed is the form's.
void FieldForm::tellOf(QWidget* field)
{
    if (auto* figure = qobject_cast<QuantityEdit*>(field))
        connect(figure, &QuantityEdit::valueChanged, this, &FieldForm::changed);
    else if (auto* line = qobject_cast<QLineEdit*>(field))
        connect(line, &QLineEdit::textChanged, this, &FieldForm::changed);
    else if (auto* words = qobject_cast<QPlainTextEdit*>(field))
        connect(words, &QPlainTextEdit::textChanged, this, &FieldForm::changed);
    else if (auto* check = qobject_cast<QAbstractButton*>(field))
        connect(check, &QAbstractButton::toggled, this, &FieldForm::changed);
    else if (auto* list = qobject_cast<QListWidget*>(field))
        connect(list, &QListWidget::itemChanged, this, &FieldForm::changed);
    else if (auto* box = qobject_cast<QComboBox*>(field)) {
        connect(box, &QComboBox::currentIndexChanged, this, &FieldForm::changed);
        connect(box, &QComboBox::editTextChanged, this, &FieldForm::changed);
    } else if (field->metaObject()->indexOfSignal("changed()") >= 0) {
        connect(field, SIGNAL(changed()), this, SIGNAL(changed()));
    }
}

QuantityEdit* FieldForm::addQuantity(const formulary::FieldDescription& is, const QString& label,
                                     Width width)
{
    auto* edit = new QuantityEdit(is, QString(label).remove(u'&'), m_wording, this);
    addDescribed(is, label, edit, width);
    return edit;
}

void FieldForm::addDescribed(const formulary::FieldDescription& is, const QString& label,
                             QuantityEdit* edit, Width width)
{
    addRow(nameIn(is), label, edit, width);
}

QLineEdit* FieldForm::addWords(const formulary::FieldDescription& is, const QString& label,
                               Width width)
{
    auto* line = new QLineEdit(this);
    // The texts of a list stand in one line: how long each may be is looked at when it is entered.
    if (is.holds != formulary::Holds::Texts)
        line->setMaxLength(static_cast<int>(is.longest));
    addRow(nameIn(is), label, line, width);
    return line;
}

QuantityField<chemistry::Millilitres>* FieldForm::addAir()
{
    auto* air = addFigure<chemistry::Millilitres>(ledger::kEventAir,
                                                  tr("Air left in the bottle, if you know"));
    setPlainToolTip(air, tr("After squeezing, marbles or gas. Left empty: all the room there is, "
                            "or none in a bottle that is always squeezed."));
    return air;
}

QLabel* FieldForm::addText(const QString& text)
{
    auto* label = new PlainLabel(text, this);
    label->setWordWrap(true);
    setTone(label, Tone::Quiet);
    addWide(label);
    return label;
}

void FieldForm::addHeading(const QString& text)
{
    auto* label = new PlainLabel(text, this);
    label->setFont(Theme::font(TextRole::Heading));
    addWide(label);
}

void FieldForm::addWide(QWidget* widget)
{
    m_line += kLinesOfARow;
    m_half = false;
    m_grid->addWidget(widget, m_line, 0, 1, 2);
    m_grid->setRowMinimumHeight(m_line + 3, Space::kTight);
    tellOf(widget);
}

void FieldForm::setRowVisible(const QString& name, bool visible)
{
    const Row& row = m_rows.at(name);
    row.label->setVisible(visible);
    row.field->setVisible(visible);
    row.problem->setVisible(visible && !row.problem->text().isEmpty());
}

void FieldForm::setRowLabel(const QString& name, const QString& label)
{
    const Row& row = m_rows.at(name);
    row.label->setText(label);
    const QString plain = QString(label).remove(u'&');
    if (auto* edit = qobject_cast<QuantityEdit*>(row.field))
        edit->setName(plain);
    else
        row.field->setAccessibleName(plain);
}

bool FieldForm::figuresAreFine()
{
    bool fine = true;
    // Last first, so that the first wrong field ends with the keyboard.
    for (auto name = m_order.rbegin(); name != m_order.rend(); ++name) {
        QWidget* field = m_rows.at(*name).field;
        QString problem;
        if (field->isHidden() || !field->isEnabled())
            continue;
        if (auto* quantity = qobject_cast<QuantityEdit*>(field))
            problem = quantity->problem();
        else if (auto* moment = qobject_cast<WhenEdit*>(field))
            problem = moment->problem();
        else if (auto* count = qobject_cast<CountBox*>(field))
            problem = count->problem();
        if (problem.isEmpty())
            continue;
        showProblem(*name, problem);
        fine = false;
    }
    return fine;
}

bool FieldForm::showProblem(const QString& field, const QString& problem)
{
    const auto found = m_rows.find(field);
    if (isHidden() || found == m_rows.end() || found->second.field->isHidden())
        return false;
    found->second.reading = false;
    setTone(found->second.problem, Tone::Discard);
    showIn(*found->second.problem, problem);
    found->second.field->setFocus(Qt::OtherFocusReason);
    return true;
}

void FieldForm::clearProblems()
{
    for (auto& [name, row] : m_rows) {
        row.reading = false;
        showIn(*row.problem, {});
    }
}

QString FieldForm::problemOf(const QString& field) const
{
    const auto found = m_rows.find(field);
    return found == m_rows.end() ? QString() : found->second.problem->text();
}

} // namespace ullage::app
