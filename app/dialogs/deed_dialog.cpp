#include "app/dialogs/deed_dialog.h"

#include "app/dialogs/side_column.h"
#include "app/widgets/card.h"
#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kFormWidth = 400;

} // namespace

DeedDialog::DeedDialog(const DialogContext& context, const QString& title, QWidget* parent)
    : QDialog(parent), m_context(context)
{
    setWindowTitle(plainTitle(title));
    setAttribute(Qt::WA_DeleteOnClose, false);
    QVBoxLayout* whole = dialogColumn(*this);
    whole->setSpacing(Space::kInset);

    auto* heading = new PlainLabel(title, this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);

    m_body = new QHBoxLayout;
    m_body->setSpacing(Space::kPage);
    auto* left = new QVBoxLayout;
    left->setSpacing(Space::kGap);
    m_form = new QGridLayout;
    m_form->setHorizontalSpacing(Space::kGap);
    m_form->setVerticalSpacing(Space::kTight);
    m_form->setColumnMinimumWidth(0, kFormWidth / 2);
    m_form->setColumnMinimumWidth(1, kFormWidth / 2);
    m_form->setColumnStretch(0, 1);
    m_form->setColumnStretch(1, 1);
    left->addLayout(m_form);
    left->addStretch(1);
    m_body->addLayout(left, 1);
    whole->addLayout(m_body, 1);

    m_problem = newProblemLabel();
    whole->addWidget(m_problem);

    auto* buttons = new QDialogButtonBox(this);
    m_do = buttons->addButton(tr("Save"), QDialogButtonBox::AcceptRole);
    auto* back = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    m_do->setDefault(true);
    back->setAutoDefault(false);
    setButtonLook(m_do, ButtonLook::Primary);
    connect(buttons, &QDialogButtonBox::accepted, this, &DeedDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
}

QLabel* DeedDialog::newProblemLabel()
{
    auto* label = new PlainLabel(this);
    label->setWordWrap(true);
    label->setFont(Theme::font(TextRole::Small));
    setTone(label, Tone::Discard);
    label->hide();
    return label;
}

void DeedDialog::addRow(const QString& name, const QString& label, QWidget* field, Width width)
{
    Row row;
    row.label = new PlainLabel(label, this);
    row.label->setFont(Theme::font(TextRole::Small));
    setTone(row.label, Tone::Quiet);
    row.label->setBuddy(field);
    row.field = field;
    row.problem = newProblemLabel();
    if (field->accessibleName().isEmpty())
        field->setAccessibleName(QString(label).remove(u'&'));

    const bool second = width == Width::Half && m_half;
    if (!second)
        m_line += 4; // label, field, problem, air between
    const int column = second ? 1 : 0;
    const int span = width == Width::Half ? 1 : 2;
    m_form->addWidget(row.label, m_line, column, 1, span);
    m_form->addWidget(field, m_line + 1, column, 1, span, Qt::AlignTop);
    m_form->addWidget(row.problem, m_line + 2, column, 1, span, Qt::AlignTop);
    m_form->setRowMinimumHeight(m_line + 3, Space::kTight);
    m_half = width == Width::Half && !second;
    m_rows[name] = row;
    m_order.push_back(name);
}

QuantityEdit* DeedDialog::addQuantity(const QString& name, const QString& label, QuantityKind kind,
                                      Width width)
{
    auto* edit = new QuantityEdit(kind, QString(label).remove(u'&'), wording(), this);
    addRow(name, label, edit, width);
    return edit;
}

QLabel* DeedDialog::addText(const QString& text)
{
    auto* label = new PlainLabel(text, this);
    label->setWordWrap(true);
    setTone(label, Tone::Quiet);
    addWide(label);
    return label;
}

void DeedDialog::addHeading(const QString& text)
{
    auto* label = new PlainLabel(text, this);
    label->setFont(Theme::font(TextRole::Heading));
    addWide(label);
}

void DeedDialog::addWide(QWidget* widget)
{
    m_line += 4;
    m_half = false;
    m_form->addWidget(widget, m_line, 0, 1, 2);
    m_form->setRowMinimumHeight(m_line + 3, Space::kTight);
}

WhenEdit* DeedDialog::addWhen(std::optional<chemistry::Instant> earliest, const QString& what,
                              Width width)
{
    m_when = new WhenEdit([&session = session()] { return session.now(); }, wording().locale, this);
    m_when->setEarliest(earliest, what);
    addRow(QStringLiteral("at"), tr("W&hen"), m_when, width);
    return m_when;
}

QuantityEdit* DeedDialog::addAir(Width width)
{
    m_air = addQuantity(QStringLiteral("air_ml"), tr("Air left in the bottle, if you know"),
                        QuantityKind::Volume, width);
    m_air->setRange(0, 1'000'000);
    setPlainToolTip(m_air,
                    tr("After squeezing, marbles or gas. Left empty: all the room there is, or "
                       "none in a bottle that is always squeezed."));
    return m_air;
}

void DeedDialog::addCautions(const QString& heading, const QStringList& cautions)
{
    auto* box = new CautionBox(heading, this);
    box->setLines(cautions);
    side()->addWidget(box);
}

QVBoxLayout* DeedDialog::side()
{
    if (!m_side) {
        auto* column = new SideColumn(this);
        m_side = column->column();
        m_body->addWidget(column);
    }
    return m_side;
}

void DeedDialog::setDeed(const QString& text, bool danger)
{
    m_do->setText(text);
    setButtonLook(m_do, danger ? ButtonLook::Danger : ButtonLook::Primary);
}

void DeedDialog::setRowVisible(const QString& name, bool visible)
{
    const Row& row = m_rows.at(name);
    row.label->setVisible(visible);
    row.field->setVisible(visible);
    row.problem->setVisible(visible && !row.problem->text().isEmpty());
}

void DeedDialog::setRowLabel(const QString& name, const QString& label)
{
    const Row& row = m_rows.at(name);
    row.label->setText(label);
    const QString plain = QString(label).remove(u'&');
    if (auto* edit = qobject_cast<QuantityEdit*>(row.field))
        edit->setName(plain);
    else
        row.field->setAccessibleName(plain);
}

ledger::When DeedDialog::when() const
{
    ledger::When when;
    when.at = m_when ? m_when->moment() : session().now();
    if (m_air && m_air->value())
        when.airLeft = chemistry::Millilitres(*m_air->value());
    return when;
}

QString DeedDialog::problemOf(const QString& field) const
{
    const auto found = m_rows.find(field);
    return found == m_rows.end() ? m_problem->text() : found->second.problem->text();
}

void DeedDialog::clearProblems()
{
    for (auto& [name, row] : m_rows) {
        row.problem->clear();
        row.problem->hide();
    }
    m_problem->clear();
    m_problem->hide();
}

void DeedDialog::showProblem(const QString& field, const QString& problem)
{
    const auto found = m_rows.find(field);
    const bool known = found != m_rows.end() && !found->second.field->isHidden();
    QLabel* label = known ? found->second.problem : m_problem;
    label->setText(problem);
    label->show();
    if (known)
        found->second.field->setFocus(Qt::OtherFocusReason);
}

void DeedDialog::showError(const Error& error)
{
    showProblem(QString::fromStdString(error.field), errorSentence(error, wording()));
}

bool DeedDialog::quantitiesAreFine()
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
        if (problem.isEmpty())
            continue;
        showProblem(*name, problem);
        fine = false;
    }
    return fine;
}

void DeedDialog::accept()
{
    clearProblems();
    if (!quantitiesAreFine() || !fieldsAreFine())
        return;
    if (const auto done = act(); !done) {
        showError(done.error());
        return;
    }
    QDialog::accept();
}

BottleDialog::BottleDialog(const DialogContext& context, const Bottle& bottle, const QString& title,
                           QWidget* parent)
    : DeedDialog(context, title, parent), m_bottle(bottle)
{
}

WhenEdit* BottleDialog::addWhenSinceMixing(Width width)
{
    return addWhen(batch().mixedAt, tr("%1 was mixed").arg(batchName()), width);
}

Result<void> BottleDialog::record(const ledger::Happening& what)
{
    return session().doing(
        [&](ledger::Book& book) { return book.record(batch().id, what, when()); });
}

} // namespace ullage::app
