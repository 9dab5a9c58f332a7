#include "app/daybook/bath_rows.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QCheckBox>
#include <QGridLayout>

#include <algorithm>
#include <array>

namespace ullage::app
{

using chemistry::Millilitres;

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
    const auto figure = [&](const formulary::FieldDescription& is, const QString& name,
                            const QString& empty) {
        auto* edit = new QuantityField<Millilitres>(is, name, m_wording, this);
        edit->setPlaceholderText(empty);
        edit->setMinimumWidth(QuantityEdit::kRoom);
        connect(edit, &QuantityEdit::valueChanged, this, &BathRows::changed);
        return edit;
    };
    const auto box = [&](const QString& name, const QString& means) {
        auto* made = new QCheckBox(this);
        made->setAccessibleName(name);
        setPlainToolTip(made, means);
        connect(made, &QCheckBox::toggled, this, &BathRows::changed);
        return made;
    };
    Row row{};
    row.name = new PlainLabel(bottle.name, this);
    row.used = figure(formulary::fieldOf(&ledger::Processed::used),
                      tr("%1: volume used").arg(bottle.name), tr("all of it"));
    row.lost =
        figure(formulary::fieldOf(&ledger::Processed::lost), tr("%1: lost").arg(bottle.name), {});
    row.air = figure(ledger::kEventAir, tr("%1: air left").arg(bottle.name), tr("not known"));
    row.oneShot = box(tr("%1: one-shot").arg(bottle.name),
                      tr("Thrown away after this load instead of poured back"));
    row.second = box(tr("%1: second fixing bath").arg(bottle.name),
                     tr("The film had been in another fixing bath before"));
    connect(row.oneShot, &QCheckBox::toggled, this, [this, row] { showUse(row); });
    return row;
}

// What is thrown away after use has lost nothing besides, and is not closed over any air.
void BathRows::showUse(const Row& row)
{
    row.lost->setEnabled(!row.oneShot->isChecked());
    row.air->setEnabled(!row.oneShot->isChecked());
}

void BathRows::setBottles(const std::vector<Bottle>& bottles)
{
    for (const auto& [id, row] : m_rows) {
        for (QWidget* widget : std::array<QWidget*, 6>{row.name, row.used, row.lost, row.air,
                                                       row.oneShot, row.second}) {
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
        const std::pair<Column, QWidget*> cells[]{{Name, row.name},    {Used, row.used},
                                                  {Lost, row.lost},    {Air, row.air},
                                                  {Once, row.oneShot}, {Second, row.second}};
        for (const auto& [column, widget] : cells) {
            const bool ticked = column == Once || column == Second;
            m_grid->addWidget(widget, line, column, ticked ? Qt::AlignCenter : Qt::Alignment());
            widget->setVisible(column != Second || (bottle.fixer && twoFixers));
            if (before && column != Name)
                setTabOrder(before, widget);
            if (column != Name)
                before = widget;
        }
        showUse(row);
    }
    setFocusProxy(m_shown.empty() ? nullptr : m_rows[m_shown.front()].used);
    m_secondHeading->setVisible(twoFixers);
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
        for (const QuantityEdit* edit :
             std::array<const QuantityEdit*, 3>{row->used, row->lost, row->air}) {
            if (edit->isEnabled() && !edit->isValid())
                return edit->problem();
        }
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
        const bool once = row.oneShot->isChecked();
        baths.push_back(
            {.batch = id.toStdString(),
             .used = row.used->quantity(),
             .lost = once ? Millilitres(0) : row.lost->quantity().value_or(Millilitres(0)),
             .oneShot = once,
             .airLeft = once ? std::nullopt : row.air->quantity(),
             .second = !row.second->isHidden() && row.second->isChecked()});
    }
    return baths;
}

} // namespace ullage::app
