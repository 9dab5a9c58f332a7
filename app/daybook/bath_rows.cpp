#include "app/daybook/bath_rows.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QCheckBox>
#include <QGridLayout>

#include <algorithm>
#include <array>

namespace ullage::app
{

namespace
{

enum Column { Name, Used, Lost, Air, Once, Second };

} // namespace

BathRows::BathRows(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_grid(new QGridLayout(this)), m_secondHeading(nullptr)
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(Space::kSmall);
    m_grid->setVerticalSpacing(Space::kTight);
    m_grid->setColumnStretch(Name, 1);
    setFocusPolicy(Qt::StrongFocus); // so that a label can be its buddy
    const std::pair<Column, QString> headings[]{{Used, tr("Used")},
                                                {Lost, tr("Lost")},
                                                {Air, tr("Air left")},
                                                {Once, tr("One-shot")},
                                                {Second, tr("2nd bath")}};
    for (const auto& [column, text] : headings) {
        auto* label = new PlainLabel(text, this);
        label->setFont(Theme::font(TextRole::Small));
        setTone(label, Tone::Quiet);
        m_grid->addWidget(label, 0, column);
        if (column == Second)
            m_secondHeading = label; // shown where there are two fixing baths
    }
}

BathRows::Row BathRows::newRow(const Bottle& bottle)
{
    Row row{new PlainLabel(bottle.name, this), BathFigures::of(bottle.name, m_wording, this),
            new QCheckBox(this)};
    for (QuantityEdit* edit :
         std::array<QuantityEdit*, 3>{row.figures.used, row.figures.lost, row.figures.air}) {
        edit->setMinimumWidth(QuantityEdit::kRoom);
        connect(edit, &QuantityEdit::valueChanged, this, &BathRows::changed);
    }
    row.second->setAccessibleName(tr("%1: second fixing bath").arg(bottle.name));
    setPlainToolTip(row.second, tr("The film had been in another fixing bath before"));
    for (QCheckBox* box : {row.figures.oneShot, row.second})
        connect(box, &QCheckBox::toggled, this, &BathRows::changed);
    return row;
}

void BathRows::setBottles(const std::vector<Bottle>& bottles)
{
    for (const auto& [id, row] : m_rows) {
        for (QWidget* widget :
             std::array<QWidget*, 6>{row.name, row.figures.used, row.figures.lost, row.figures.air,
                                     row.figures.oneShot, row.second}) {
            m_grid->removeWidget(widget);
            widget->hide();
        }
    }
    m_shown.clear();
    const bool twoFixers = std::count_if(bottles.begin(), bottles.end(),
                                         [](const auto& one) { return one.fixer; }) > 1;
    QWidget* before = nullptr;
    for (const Bottle& bottle : bottles) {
        if (!m_rows.contains(bottle.id))
            m_rows[bottle.id] = newRow(bottle);
        const Row& row = m_rows[bottle.id];
        m_shown.push_back(bottle.id);
        const int line = static_cast<int>(m_shown.size());
        const BathFigures& figures = row.figures;
        const std::pair<Column, QWidget*> cells[]{{Name, row.name},        {Used, figures.used},
                                                  {Lost, figures.lost},    {Air, figures.air},
                                                  {Once, figures.oneShot}, {Second, row.second}};
        for (const auto& [column, widget] : cells) {
            const bool ticked = column == Once || column == Second;
            m_grid->addWidget(widget, line, column, ticked ? Qt::AlignCenter : Qt::Alignment());
            widget->setVisible(column != Second || (bottle.fixer && twoFixers));
            if (before && column != Name)
                setTabOrder(before, widget);
            if (column != Name)
                before = widget;
        }
    }
    setFocusProxy(m_shown.empty() ? nullptr : m_rows[m_shown.front()].figures.used);
    m_secondHeading->setVisible(twoFixers);
}

void BathRows::setBaths(const std::vector<ledger::Bath>& baths)
{
    for (const ledger::Bath& bath : baths) {
        const auto found = m_rows.find(QString::fromStdString(bath.batch));
        if (found == m_rows.end())
            continue;
        const BathFigures& figures = found->second.figures;
        figures.used->setQuantity(bath.used);
        if (bath.lost.value() > 0)
            figures.lost->setQuantity(bath.lost);
        figures.air->setQuantity(bath.airLeft);
        figures.oneShot->setChecked(bath.oneShot);
        found->second.second->setChecked(bath.second);
    }
}

std::vector<const BathRows::Row*> BathRows::shown() const
{
    std::vector<const Row*> rows;
    for (const QString& id : m_shown)
        rows.push_back(&m_rows.at(id));
    return rows;
}

QString BathRows::problem() const
{
    for (const Row* row : shown()) {
        if (const QString problem = row->figures.problem(); !problem.isEmpty())
            return problem;
    }
    return {};
}

std::optional<std::vector<ledger::Bath>> BathRows::baths() const
{
    if (!problem().isEmpty())
        return std::nullopt;
    std::vector<ledger::Bath> baths;
    for (const QString& id : m_shown) {
        const Row& row = m_rows.at(id);
        baths.push_back(
            row.figures.bath(id.toStdString(), !row.second->isHidden() && row.second->isChecked()));
    }
    return baths;
}

} // namespace ullage::app
