#include "app/bench/template_dialog.h"

#include "app/bench/bench_words.h"
#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

using chemistry::Seconds;

namespace
{

constexpr int kKindWidth = 164;
constexpr int kChangesWidth = 76;
constexpr int kSecondsWidth = 122; // three of them in a row of a small screen

QSpinBox* seconds(const QString& prefix, const QString& name, int least, int most)
{
    auto* box = new QSpinBox;
    box->setRange(least, most);
    box->setPrefix(prefix);
    box->setSuffix(TemplateDialog::tr(" s"));
    box->setAccessibleName(name);
    box->setFixedWidth(kSecondsWidth);
    return box;
}

QPushButton* small(const QString& text, const QString& name)
{
    auto* button = new QPushButton(text);
    button->setAccessibleName(name);
    setPlainToolTip(button, name);
    button->setAutoDefault(false);
    setButtonLook(button, ButtonLook::Quiet);
    return button;
}

// "My water stop, running wash": small letters only where the name does not come first.
QString ownName(const QString& name)
{
    const QString my = TemplateDialog::tr("My %1");
    return my.arg(my.startsWith(QStringLiteral("%1")) ? name : name.toLower());
}

} // namespace

TemplateDialog::TemplateDialog(const ledger::RunTemplate& sheet, const Wording& wording,
                               QWidget* parent)
    : AskingDialog(parent), m_wording(wording), m_name(new QLineEdit), m_lines(new QVBoxLayout),
      m_problem(new PlainLabel)
{
    setWindowTitle(tr("Run sheet"));
    resize(1010, 740); // its ten steps and the button below them; less on a small screen
    QVBoxLayout* column = dialogColumn(*this);
    column->setSpacing(12);
    auto* heading = new PlainLabel(tr("Run sheet"));
    heading->setFont(Theme::font(TextRole::PageTitle));
    column->addWidget(heading);
    auto* head = new QHBoxLayout;
    auto* label = new PlainLabel(tr("&Name"));
    label->setBuddy(m_name);
    m_name->setText(sheet.name.empty() ? ownName(templateName(sheet))
                                       : QString::fromStdString(sheet.name));
    m_name->setAccessibleName(tr("Name of the template"));
    head->addWidget(label);
    head->addWidget(m_name, 1);
    column->addLayout(head);
    auto* inside = new QWidget;
    auto* lines = new QVBoxLayout(inside);
    lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(6);
    lines->addLayout(m_lines);
    auto* add = small(tr("Add step"), tr("Add a step"));
    lines->addWidget(add, 0, Qt::AlignLeft);
    lines->addStretch();
    auto* area = new QScrollArea;
    area->setWidget(inside);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    column->addWidget(area, 1);
    auto* note =
        new PlainLabel(tr("Developing time, and fixing time where a clearing time is known, "
                          "come from the bottles; the time given for Fix serves where none "
                          "is."));
    note->setWordWrap(true);
    setTone(note, Tone::Quiet);
    column->addWidget(note);
    m_problem->setWordWrap(true);
    setTone(m_problem, Tone::Discard);
    column->addWidget(m_problem);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_keep = buttons->addButton(tr("Save"), QDialogButtonBox::AcceptRole);
    m_keep->setDefault(true);
    setButtonLook(m_keep, ButtonLook::Primary);
    if (!sheet.name.empty()) {
        auto* forget = buttons->addButton(tr("Delete template"), QDialogButtonBox::DestructiveRole);
        connect(forget, &QPushButton::clicked, this, [this] {
            m_forgotten = true;
            accept();
        });
    }
    column->addWidget(buttons);
    for (const ledger::TemplateStep& step : sheet.steps)
        addRow(step);
    connect(add, &QPushButton::clicked, this, [this] {
        addRow({ledger::StepKind::Rinse, Seconds(60), 1, {}});
        orderTabs(*this);
        check();
    });
    connect(m_name, &QLineEdit::textChanged, this, &TemplateDialog::check);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    check();
}

void TemplateDialog::addRow(const ledger::TemplateStep& step)
{
    Row row{new QWidget,
            new QComboBox,
            new QuantityField<Seconds>(QuantityKind::Time, tr("Time"), m_wording),
            new QSpinBox,
            new QComboBox,
            seconds(tr("first "), tr("Agitate first for"), 0, 600),
            seconds(tr("then "), tr("Then for"), 1, 600),
            seconds(tr("every "), tr("Every"), 5, 3600)};
    for (std::size_t i = 0; i < ledger::kStepCodes.size(); ++i)
        row.kind->addItem(stepKindName(static_cast<ledger::StepKind>(i)));
    row.kind->setAccessibleName(tr("Step"));
    row.kind->setMaximumWidth(kKindWidth);
    row.time->setRange(1, 14'400);
    row.time->setMaximumWidth(84);
    row.time->setAccessibleName(tr("Time of the step"));
    row.changes->setRange(1, 20);
    row.changes->setFixedWidth(kChangesWidth);
    row.changes->setSuffix(tr(" ×"));
    row.changes->setAccessibleName(tr("Changes"));
    row.agitation->addItems({tr("still"), tr("all the time"), tr("at times")});
    row.agitation->setAccessibleName(tr("Agitation"));
    auto* line = new QHBoxLayout(row.line);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(4);
    for (QWidget* field : {static_cast<QWidget*>(row.kind), static_cast<QWidget*>(row.time),
                           static_cast<QWidget*>(row.changes), static_cast<QWidget*>(row.agitation),
                           static_cast<QWidget*>(row.first), static_cast<QWidget*>(row.each),
                           static_cast<QWidget*>(row.every)})
        line->addWidget(field);
    line->addStretch();
    auto* up = small(QStringLiteral("↑"), tr("Move up"));
    auto* down = small(QStringLiteral("↓"), tr("Move down"));
    auto* away = small(QStringLiteral("×"), tr("Remove this step"));
    for (QPushButton* button : {up, down, away})
        line->addWidget(button);
    fillRow(row, step);
    m_lines->addWidget(row.line);
    m_rows.push_back(row);
    connect(up, &QPushButton::clicked, this, [this, w = row.line] { move(w, -1); });
    connect(down, &QPushButton::clicked, this, [this, w = row.line] { move(w, 1); });
    connect(away, &QPushButton::clicked, this, [this, w = row.line] { remove(w); });
    connect(row.kind, &QComboBox::currentIndexChanged, this, &TemplateDialog::check);
    connect(row.agitation, &QComboBox::currentIndexChanged, this, &TemplateDialog::check);
    connect(row.time, &QuantityEdit::valueChanged, this, &TemplateDialog::check);
    for (QSpinBox* box : {row.changes, row.first, row.each, row.every})
        connect(box, &QSpinBox::valueChanged, this, &TemplateDialog::check);
}

void TemplateDialog::fillRow(Row& row, const ledger::TemplateStep& step)
{
    row.kind->setCurrentIndex(static_cast<int>(step.kind));
    if (step.time > Seconds(0))
        row.time->setQuantity(step.time);
    row.changes->setValue(step.changes);
    row.agitation->setCurrentIndex(static_cast<int>(step.agitation.kind));
    const bool beat = step.agitation.kind == ledger::AgitationKind::Intervals;
    row.first->setValue(beat ? int(step.agitation.first.value()) : 30);
    row.each->setValue(beat ? int(step.agitation.each.value()) : 10);
    row.every->setValue(beat ? int(step.agitation.every.value()) : 60);
}

void TemplateDialog::move(QWidget* line, int by)
{
    const auto at = std::find_if(m_rows.begin(), m_rows.end(),
                                 [line](const Row& row) { return row.line == line; });
    const auto from = at - m_rows.begin();
    const auto to = from + by;
    if (to < 0 || to >= std::ptrdiff_t(m_rows.size()))
        return;
    std::swap(m_rows[std::size_t(from)], m_rows[std::size_t(to)]);
    m_lines->removeWidget(line);
    m_lines->insertWidget(int(to), line);
    check();
}

void TemplateDialog::remove(QWidget* line)
{
    std::erase_if(m_rows, [line](const Row& row) { return row.line == line; });
    line->hide();
    line->deleteLater();
    check();
}

ledger::RunTemplate TemplateDialog::sheet() const
{
    ledger::RunTemplate sheet{m_name->text().trimmed().toStdString(), {}, {}};
    for (const Row& row : m_rows) {
        ledger::TemplateStep step{static_cast<ledger::StepKind>(row.kind->currentIndex()),
                                  row.time->quantity().value_or(Seconds()),
                                  row.changes->value(),
                                  {}};
        step.agitation.kind = static_cast<ledger::AgitationKind>(row.agitation->currentIndex());
        if (step.agitation.kind == ledger::AgitationKind::Intervals)
            step.agitation = {step.agitation.kind, Seconds(row.first->value()),
                              Seconds(row.each->value()), Seconds(row.every->value())};
        sheet.steps.push_back(step);
    }
    return sheet;
}

void TemplateDialog::check()
{
    QString problem = m_name->text().trimmed().isEmpty() ? tr("It needs a name.") : QString();
    for (const Row& row : m_rows) {
        const bool develop =
            static_cast<ledger::StepKind>(row.kind->currentIndex()) == ledger::StepKind::Develop;
        const bool beat = row.agitation->currentIndex() == int(ledger::AgitationKind::Intervals);
        row.time->setEnabled(!develop);
        for (QSpinBox* box : {row.first, row.each, row.every})
            box->setVisible(beat);
        if (problem.isEmpty() && !develop && !row.time->value())
            problem = tr("%1 needs a time.").arg(row.kind->currentText());
    }
    if (problem.isEmpty()) {
        if (const auto fine = ledger::check(sheet()); !fine) {
            const auto kind = ledger::stepFromCode(fine.error().text);
            problem = kind == ledger::StepKind::PourBack ? tr("Pour back has no bath before it.")
                      : kind ? tr("%1 can be in the sheet only once.").arg(stepKindName(*kind))
                             : refusalText(fine.error(), m_wording);
        }
    }
    m_problem->setText(problem);
    m_keep->setEnabled(problem.isEmpty());
}

} // namespace ullage::app
