#include "app/formulary/solution_kind.h"

#include "app/formulary/source_edit.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/problem_line.h"
#include "app/widgets/theme.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/formulary/figures.h"
#include "core/formulary/solution_fields.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>

#include <algorithm>
#include <initializer_list>

namespace ullage::app
{

using formulary::Solution;

namespace
{

const std::string kForm = "form";
const std::string kFixerKind = "fixer_kind";
const std::string kFixMin = "fix_min_s";
const std::string kOneShot = "one_shot_ml_per_film";
const std::string kReplenisher = "replenisher";
const std::string kTurnovers = "turnover_limit";

// What is usual need not be written down.
template <class Choice>
std::optional<Choice> chosen(const QComboBox* box, std::optional<Choice> given)
{
    const auto choice = static_cast<Choice>(box->currentIndex());
    return choice == Choice() && !given ? std::nullopt : std::optional(choice);
}

} // namespace

SolutionKind::SolutionKind(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_grid(new QGridLayout(this)),
      m_form(new QComboBox(this)), m_fixerKind(new QComboBox(this)),
      m_fixMin(new QuantityField<chemistry::Seconds>(formulary::fieldOf(&Solution::fixMin),
                                                     tr("Shortest fixing time"), wording, this)),
      m_oneShot(
          new QuantityField<chemistry::Millilitres>(formulary::fieldOf(&Solution::oneShotPerFilm),
                                                    tr("For each film, used once"), wording, this)),
      m_replenisher(new QComboBox(this)),
      m_turnovers(new QuantityEdit(formulary::fieldOf(&Solution::turnoverLimit),
                                   tr("Replenisher it takes at most"), wording, this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(Space::kGap);
    m_grid->setVerticalSpacing(3);
    m_grid->setColumnStretch(2, 1);
    m_form->addItems({tr("powder"), tr("liquid"), tr("crystals")});
    m_fixerKind->addItems({tr("acid"), tr("alkaline")});
    m_turnovers->setPlaceholderText(tr("times its volume"));
    addRow(kForm, tr("Comes as"), m_form, false);
    addRow(kFixerKind, tr("Kind of fixer"), m_fixerKind, false);
    addRow(kFixMin, tr("Shortest fixing time,\nas the packet says"), m_fixMin, true);
    addRow(kOneShot, tr("For each film,\nused once and poured away"), m_oneShot, true);
    addRow(kReplenisher, tr("Replenished with"), m_replenisher, false);
    addRow(kTurnovers, tr("Replenisher it takes at most,\ntimes its volume"), m_turnovers, true);
    for (QComboBox* box : {m_form, m_fixerKind, m_replenisher})
        connect(box, &QComboBox::currentIndexChanged, this, &SolutionKind::changed);
    for (QuantityEdit* edit :
         std::initializer_list<QuantityEdit*>{m_fixMin, m_oneShot, m_turnovers})
        connect(edit, &QuantityEdit::valueChanged, this, &SolutionKind::changed);
    setOthers({});
}

void SolutionKind::addRow(const std::string& field, const QString& name, QWidget* edit,
                          bool sourced)
{
    const QString plain = QString(name).replace(u'\n', u' ');
    const int line = m_grid->rowCount();
    Row row{field, new PlainLabel(name, this), edit, nullptr, newProblemLine(this)};
    row.label->setBuddy(edit);
    edit->setAccessibleName(plain);
    edit->setMinimumWidth(160);
    m_grid->addWidget(row.label, line, 0);
    m_grid->addWidget(edit, line, 1);
    if (sourced) {
        row.source = new SourceEdit(plain, this);
        m_grid->addWidget(row.source, line, 2);
        connect(row.source, &SourceEdit::changed, this, &SolutionKind::changed);
    }
    m_grid->addWidget(row.problem, line + 1, 1, 1, 2);
    m_rows.push_back(row);
}

bool SolutionKind::isFor(const std::string& field) const
{
    const bool ofFixers = field == kFixerKind || field == kFixMin;
    return !ofFixers || m_role == formulary::Role::Fixer;
}

void SolutionKind::setRole(formulary::Role role)
{
    m_role = role;
    for (const Row& row : m_rows) {
        const bool shown = isFor(row.field);
        row.label->setVisible(shown);
        row.edit->setVisible(shown);
        if (row.source)
            row.source->setVisible(shown);
    }
}

void SolutionKind::setOthers(const std::vector<std::pair<std::string, std::string>>& others)
{
    m_others = others;
    const QSignalBlocker quiet(m_replenisher);
    const QVariant before = m_replenisher->currentData();
    m_replenisher->clear();
    m_replenisher->addItem(tr("nothing of its own"), QString());
    for (const auto& [id, name] : m_others) {
        if (id != m_self)
            m_replenisher->addItem(shownName(name), QString::fromStdString(id));
    }
    m_replenisher->setCurrentIndex(std::max(0, m_replenisher->findData(before)));
}

void SolutionKind::setSolution(const Solution& solution)
{
    const QSignalBlocker quiet(this);
    m_self = solution.id;
    m_given = solution.form;
    m_givenKind = solution.fixerKind;
    setOthers(m_others);
    m_form->setCurrentIndex(static_cast<int>(solution.form.value_or(formulary::Form::Powder)));
    m_fixerKind->setCurrentIndex(
        static_cast<int>(solution.fixerKind.value_or(formulary::FixerKind::Acid)));
    m_fixMin->setQuantity(solution.fixMin);
    m_oneShot->setQuantity(solution.oneShotPerFilm);
    const QString with = QString::fromStdString(solution.replenisher);
    if (!with.isEmpty() && m_replenisher->findData(with) < 0)
        m_replenisher->addItem(with, with); // one that is no longer offered stays
    m_replenisher->setCurrentIndex(std::max(0, m_replenisher->findData(with)));
    m_turnovers->setValue(solution.turnoverLimit);
    for (const Row& row : m_rows) {
        if (row.source)
            row.source->setLine(formulary::sourceLine(solution, row.field));
    }
    setRole(solution.role);
}

void SolutionKind::put(Solution& solution) const
{
    const bool fixer = m_role == formulary::Role::Fixer;
    solution.form = chosen(m_form, m_given);
    solution.fixerKind = fixer ? chosen(m_fixerKind, m_givenKind) : std::nullopt;
    solution.fixMin = fixer ? m_fixMin->quantity() : std::nullopt;
    solution.oneShotPerFilm = m_oneShot->quantity();
    solution.replenisher = m_replenisher->currentData().toString().toStdString();
    solution.turnoverLimit = m_turnovers->value();
    for (const Row& row : m_rows) {
        if (!row.source)
            continue;
        const std::string line = isFor(row.field) ? row.source->line() : std::string();
        if (line.empty())
            solution.sources.erase(row.field);
        else
            solution.sources[row.field] = line;
    }
}

QString SolutionKind::problem(std::string& field) const
{
    for (const Row& row : m_rows) {
        if (!isFor(row.field))
            continue;
        field = row.field;
        const auto* edit = qobject_cast<const QuantityEdit*>(row.edit);
        if (edit && !edit->isValid())
            return edit->problem();
        if (row.source && !row.source->problem().isEmpty())
            return row.source->problem();
    }
    field.clear();
    return {};
}

void SolutionKind::showProblem(const std::string& field, const QString& problem)
{
    for (const Row& row : m_rows)
        showIn(*row.problem, row.field == field ? problem : QString());
}

} // namespace ullage::app
