#include "app/formulary/vessels_tab.h"

#include "app/formulary/formulary_table.h"
#include "app/formulary/problem_words.h"
#include "app/formulary/vessel_editor.h"
#include "app/formulary/vessel_words.h"
#include "app/widgets/card.h"
#include "app/widgets/explanation_view.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/prompts.h"
#include "app/widgets/shown_table.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_not.h"
#include "app/words/figure_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/formulary/implied.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

VesselsTab::VesselsTab(Door& door, QWidget* parent)
    : QWidget(parent), m_door(&door), m_row(new FoldingRow(this)),
      m_table(new FormularyTable(tr("Bottles"),
                                 {tr("Bottle"), tr("Holds"), tr("Material"), tr("Wall, mmol/day"),
                                  tr("Cap, mmol/day"), tr("Air")},
                                 {1, 3, 4}, 0, this)),
      m_why(new ExplanationView(ExplanationView::Heading::Shown, this)),
      m_edit(new QPushButton(tr("Edit…"), this)), m_retire(new QPushButton(tr("Retire…"), this))
{
    auto* list = new Card({}, this);
    list->body()->addWidget(m_table, 1);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_edit, m_retire}) {
        setButtonLook(button, ButtonLook::Quiet);
        buttons->addWidget(button);
    }
    m_edit->setAccessibleName(tr("Edit the bottle"));
    m_retire->setAccessibleName(tr("Retire the bottle"));
    buttons->addStretch();
    list->body()->addLayout(buttons);
    auto* implied = new Card(tr("Where from?"), this);
    implied->body()->addWidget(m_why);
    implied->setMinimumWidth(320);
    m_row->addColumn(list, 2);
    m_row->addColumn(implied, 1);
    connect(m_table, &FormularyTable::rowChosen, this, &VesselsTab::showVessel);
    connect(m_table, &FormularyTable::rowOpened, this, &VesselsTab::edit);
    connect(m_edit, &QPushButton::clicked, this, &VesselsTab::edit);
    connect(m_retire, &QPushButton::clicked, this, &VesselsTab::retire);
}

// Under the table it does not scroll by itself: the page does.
bool VesselsTab::event(QEvent* event)
{
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest)
        m_why->showWhole(m_row->isFolded());
    return done;
}

void VesselsTab::setFormulary(const formulary::Formulary& formulary, const Wording& wording)
{
    m_formulary = formulary;
    m_wording = wording;
    const auto before = formulary.vesselNow(m_table->chosen().toStdString());
    std::vector<FormularyTableModel::Row> rows;
    for (const auto& vessel : formulary.currentVessels()) {
        const auto flow = formulary::flows(*vessel);
        rows.push_back({QString::fromStdString(vessel->id),
                        {{shownName(vessel->name), {}},
                         {volumeText(vessel->capacity, wording), vessel->capacity.value(),
                          shownVolume(vessel->capacity, wording)},
                         {materialName(vessel->material).section(QStringLiteral(" ("), 0, 0), {}},
                         {plainNumber(flow.wall, wording.locale), flow.wall, flow.wall},
                         {plainNumber(flow.cap, wording.locale), flow.cap, flow.cap},
                         {vessel->squeezed ? tr("squeezed out") : tr("stays in"), {}}}});
    }
    m_table->setUnits({{1, volumeUnitName(wording)}});
    m_table->setRows(std::move(rows));
    if (before)
        m_table->choose(QString::fromStdString(before->id));
    showVessel(m_table->chosen());
}

std::shared_ptr<const formulary::Vessel> VesselsTab::chosen() const
{
    return m_formulary.vessel(m_table->chosen().toStdString());
}

void VesselsTab::makeNew() { openEditor({}); }

void VesselsTab::edit()
{
    if (const auto vessel = chosen())
        openEditor(*vessel);
}

void VesselsTab::openEditor(const formulary::Vessel& start)
{
    auto* editor = new VesselEditor(start, *m_door, m_wording, this);
    editor->setAttribute(Qt::WA_DeleteOnClose);
    connect(editor, &QDialog::accepted, this, [this, editor] { m_table->choose(editor->saved()); });
    editor->open();
}

// Names of the batches in it, under whichever of its lines they were put there.
QStringList VesselsTab::standIn(const formulary::Vessel& vessel) const
{
    QStringList names;
    for (const Bottle& judged : m_door->bottles()) {
        const auto now = m_formulary.vesselNow(judged.batch.vessel->id);
        if (now && now->id == vessel.id)
            names << QString::fromStdString(judged.batch.name);
    }
    return names;
}

void VesselsTab::retire()
{
    const auto vessel = chosen();
    if (!vessel)
        return;
    const QString title = tr("Retire a bottle");
    if (const QStringList names = standIn(*vessel); !names.isEmpty())
        return prompts().tell(
            this, title,
            tr("%1 stands in %2. Move it to another bottle, or discard it, first.",
               "batches, bottle")
                .arg(names.join(QStringLiteral(", ")), shownName(vessel->name)));
    if (!prompts().confirm(
            this, {.title = title,
                   .text = tr("Retire %1?", "bottle").arg(shownName(vessel->name)),
                   .detail = tr("It is offered no more. What stood in it stays in the Day book."),
                   .yes = tr("Retire"),
                   .danger = true}))
        return;
    formulary::Vessel gone = *vessel;
    gone.id = m_door->newId();
    gone.replaces = vessel->id;
    gone.withdrawn = true;
    if (const auto done = m_door->add(gone); !done)
        prompts().fail(this, title, formularyProblem(done.error(), m_wording));
}

void VesselsTab::showVessel(const QString& id)
{
    const auto vessel = m_formulary.vessel(id.toStdString());
    m_why->setVisible(vessel != nullptr);
    for (QPushButton* button : {m_edit, m_retire})
        setWhyNot(button, vessel ? QString() : tr("Choose a bottle first."));
    if (vessel)
        m_why->setExplanation(explainVessel(*vessel, m_wording));
}

} // namespace ullage::app
