#include "app/formulary/vessels_tab.h"

#include "app/formulary/formulary_table.h"
#include "app/formulary/vessel_words.h"
#include "app/widgets/card.h"
#include "app/widgets/explanation_view.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/theme.h"
#include "app/words/figure_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/formulary/implied.h"

#include <QVBoxLayout>

namespace ullage::app
{

VesselsTab::VesselsTab(QWidget* parent)
    : QWidget(parent),
      m_table(new FormularyTable(tr("Bottles"),
                                 {tr("Bottle"), tr("Holds"), tr("Material"), tr("Wall, mmol/day"),
                                  tr("Cap, mmol/day"), tr("Air")},
                                 {1, 3, 4}, 0, this)),
      m_why(new ExplanationView(ExplanationView::Heading::Shown, this))
{
    auto* row = new FoldingRow(this);
    auto* list = new Card({}, this);
    list->body()->addWidget(m_table);
    auto* implied = new Card(tr("Where from?"), this);
    implied->body()->addWidget(m_why);
    implied->setMinimumWidth(320);
    implied->setMaximumWidth(460);
    row->addColumn(list, 2);
    row->addColumn(implied, 1);
    connect(m_table, &FormularyTable::rowChosen, this, &VesselsTab::showVessel);
}

void VesselsTab::setFormulary(const formulary::Formulary& formulary, const Wording& wording)
{
    m_formulary = formulary;
    m_wording = wording;
    std::vector<FormularyTableModel::Row> rows;
    for (const auto& vessel : formulary.vessels()) {
        const auto flow = formulary::flows(*vessel);
        rows.push_back({QString::fromStdString(vessel->id),
                        {{shownName(vessel->name), {}},
                         {volumeText(vessel->capacity, wording), vessel->capacity.value()},
                         {materialName(vessel->material).section(QStringLiteral(" ("), 0, 0), {}},
                         {plainNumber(flow.wall, wording.locale), flow.wall},
                         {plainNumber(flow.cap, wording.locale), flow.cap},
                         {vessel->squeezed ? tr("squeezed out") : tr("stays in"), {}}}});
    }
    m_table->setRows(std::move(rows));
    showVessel(m_table->chosen());
}

void VesselsTab::showVessel(const QString& id)
{
    const auto vessel = m_formulary.vessel(id.toStdString());
    m_why->setVisible(vessel != nullptr);
    if (vessel)
        m_why->setExplanation(explainVessel(*vessel, m_wording));
}

} // namespace ullage::app
