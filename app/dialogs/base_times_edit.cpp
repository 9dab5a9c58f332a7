#include "app/dialogs/base_times_edit.h"

#include "app/widgets/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

BaseTimesEdit::BaseTimesEdit(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_lines(new QVBoxLayout)
{
    setFocusPolicy(Qt::ClickFocus); // a label can be its buddy; Tab goes to the fields themselves
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(Space::kSmall);
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
    row.time = new QuantityEdit(QuantityKind::Time, tr("Film maker's time"), m_wording, row.line);
    row.time->setRange(10, 4 * 3600);
    row.time->setObjectName(QStringLiteral("baseTime"));
    row.time->setPlaceholderText(tr("m:ss"));
    row.temperature = new QuantityEdit(QuantityKind::Temperature, tr("Film maker's temperature"),
                                       m_wording, row.line);
    row.temperature->setRange(5, 60);
    if (pair) {
        row.time->setValue(pair->time.value());
        row.temperature->setValue(pair->temperature.value());
    } else {
        constexpr double kUsual = 20;
        row.temperature->setValue(m_rows.empty() ? std::optional(kUsual) : std::nullopt);
    }
    auto* line = new QHBoxLayout(row.line);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(Space::kSmall);
    line->addWidget(row.time, 1);
    line->addWidget(new QLabel(tr("at", "a time at a temperature"), row.line));
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
        if (row.time->value() && row.temperature->value())
            pairs.push_back({chemistry::Celsius(*row.temperature->value()),
                             chemistry::Seconds(*row.time->value())});
    }
    return pairs;
}

QString BaseTimesEdit::problem() const
{
    for (const Row& row : m_rows) {
        for (const QuantityEdit* edit : {row.time, row.temperature}) {
            if (const QString problem = edit->problem(); !problem.isEmpty())
                return problem;
        }
        if (row.time->value() && !row.temperature->value())
            return tr("Film maker's temperature: the time needs its temperature.");
    }
    return {};
}

} // namespace ullage::app
