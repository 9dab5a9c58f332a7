#include "app/dialogs/base_times_edit.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "core/formulary/field_of.h"
#include "core/formulary/notebook_fields.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

BaseTimesEdit::BaseTimesEdit(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_choice(new QComboBox(this)), m_lines(new QVBoxLayout)
{
    setFocusPolicy(Qt::ClickFocus); // a label can be its buddy; Tab goes to the fields themselves
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(Space::kSmall);
    m_choice->setAccessibleName(tr("Times of the Formulary"));
    // Long names must not widen the form; the list itself is as wide as they are.
    m_choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_choice->setMinimumContentsLength(12);
    m_choice->hide();
    connect(m_choice, &QComboBox::activated, this, &BaseTimesEdit::take);
    connect(this, &BaseTimesEdit::changed, this, &BaseTimesEdit::showChosen);
    whole->addWidget(m_choice);
    m_lines->setSpacing(Space::kSmall);
    whole->addLayout(m_lines);
    auto* add = new QPushButton(tr("Add a time at another tem&perature"), this);
    add->setAutoDefault(false);
    setButtonLook(add, ButtonLook::Chip);
    whole->addWidget(add, 0, Qt::AlignLeft);
    connect(add, &QPushButton::clicked, this, [this] {
        addRow({});
        m_rows.back().time->setFocus();
    });
    addRow({});
}

void BaseTimesEdit::addRow(const std::optional<chemistry::TimeAtTemperature>& pair)
{
    Row row{new QWidget(this), nullptr, nullptr};
    row.time = new QuantityField<chemistry::Seconds>(
        formulary::fieldOf(&chemistry::TimeAtTemperature::time), tr("Leaflet time"), m_wording,
        row.line);
    row.time->setRequired(false); // an empty row is left out
    row.time->setObjectName(QStringLiteral("baseTime"));
    row.time->setPlaceholderText(tr("m:ss"));
    row.temperature = new QuantityField<chemistry::Celsius>(
        formulary::fieldOf(&chemistry::TimeAtTemperature::temperature), tr("Leaflet temperature"),
        m_wording, row.line);
    row.temperature->setRequired(false);
    if (pair) {
        row.time->setQuantity(pair->time);
        row.temperature->setQuantity(pair->temperature);
    } else {
        constexpr chemistry::Celsius kUsual(20);
        row.temperature->setQuantity(m_rows.empty() ? std::optional(kUsual) : std::nullopt);
    }
    auto* line = new QHBoxLayout(row.line);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(Space::kSmall);
    line->addWidget(row.time, 1);
    line->addWidget(new PlainLabel(tr("at", "a time at a temperature"), row.line));
    line->addWidget(row.temperature, 1);
    m_lines->addWidget(row.line);
    m_rows.push_back(row);
    if (m_rows.size() == 1)
        setFocusProxy(row.time);
    connect(row.time, &QuantityEdit::valueChanged, this, &BaseTimesEdit::changed);
    connect(row.temperature, &QuantityEdit::valueChanged, this, &BaseTimesEdit::changed);
}

void BaseTimesEdit::setWording(const Wording& wording)
{
    m_wording = wording;
    for (const Row& row : m_rows) {
        row.time->setWording(wording);
        row.temperature->setWording(wording);
    }
}

void BaseTimesEdit::setKnown(std::vector<Known> known)
{
    m_known = std::move(known);
    m_choice->clear();
    m_choice->addItem(tr("as typed below"));
    for (const Known& one : m_known) {
        m_choice->addItem(one.name);
        m_choice->setItemData(m_choice->count() - 1, plainToolTip(one.source), Qt::ToolTipRole);
    }
    m_choice->setVisible(!m_known.empty());
    showChosen();
}

const BaseTimesEdit::Known* BaseTimesEdit::chosen() const
{
    const int at = m_choice->currentIndex() - 1;
    return at < 0 ? nullptr : &m_known[static_cast<std::size_t>(at)];
}

void BaseTimesEdit::take(int choice)
{
    if (choice <= 0)
        return;
    setPairs(m_known[static_cast<std::size_t>(choice - 1)].pairs);
    emit knownTaken();
}

// Two films can have the same times: the one that was picked stays picked.
void BaseTimesEdit::showChosen()
{
    const auto now = pairs();
    const Known* before = chosen();
    if (before && before->pairs == now)
        return;
    const auto found = std::find_if(m_known.begin(), m_known.end(),
                                    [&](const Known& one) { return one.pairs == now; });
    m_choice->setCurrentIndex(
        found == m_known.end() ? 0 : static_cast<int>(found - m_known.begin()) + 1);
}

void BaseTimesEdit::setPairs(const std::vector<chemistry::TimeAtTemperature>& pairs)
{
    while (!m_rows.empty()) {
        delete m_rows.back().line;
        m_rows.pop_back();
    }
    for (const auto& pair : pairs)
        addRow(pair);
    if (m_rows.empty())
        addRow({});
    emit changed();
}

std::vector<chemistry::TimeAtTemperature> BaseTimesEdit::pairs() const
{
    std::vector<chemistry::TimeAtTemperature> pairs;
    for (const Row& row : m_rows) {
        if (row.time->quantity() && row.temperature->quantity())
            pairs.push_back({*row.temperature->quantity(), *row.time->quantity()});
    }
    return pairs;
}

QString BaseTimesEdit::problem() const
{
    for (const Row& row : m_rows) {
        for (const QuantityEdit* edit :
             std::initializer_list<QuantityEdit*>{row.time, row.temperature}) {
            if (const QString problem = edit->problem(); !problem.isEmpty())
                return problem;
        }
        if (row.time->value() && !row.temperature->value())
            return tr("Leaflet temperature: the time needs its temperature.");
    }
    return {};
}

} // namespace ullage::app
