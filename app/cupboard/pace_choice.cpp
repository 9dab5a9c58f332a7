#include "app/cupboard/pace_choice.h"

#include "app/widgets/count_box.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QComboBox>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

using cupboard::Beside;

namespace
{

constexpr int kMostAWeek = 500;
constexpr double kDaysOfWeek = 7;

} // namespace

PaceChoice::PaceChoice(QWidget* parent)
    : QWidget(parent), m_kind(new QComboBox(this)),
      m_films(new CountBox(tr("Films a week"), 1, kMostAWeek, this))
{
    auto* row = new FlowLayout(this, Space::kSmall);
    auto* label = new PlainLabel(tr("Besides the known work"), this);
    setTone(label, Tone::Quiet);
    row->addWidget(label);
    m_kind->addItem(tr("what usually comes"), static_cast<int>(Beside::Kind::Usual));
    m_kind->addItem(tr("this many films a week"), static_cast<int>(Beside::Kind::Given));
    m_kind->addItem(tr("nothing"), static_cast<int>(Beside::Kind::Nothing));
    m_kind->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_kind->setAccessibleName(tr("Film beside the known work"));
    setPlainToolTip(m_kind,
                    tr("The usual pace is that of the last half year; it is known after three "
                       "loads. What the known work brings of it is not counted twice."));
    row->addWidget(m_kind);
    row->addWidget(m_films);
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        showFilms();
        emit changed();
    });
    connect(m_films, &QSpinBox::valueChanged, this, &PaceChoice::changed);
    showFilms();
}

void PaceChoice::showFilms()
{
    m_films->setVisible(m_kind->currentData().toInt() == static_cast<int>(Beside::Kind::Given));
}

void PaceChoice::setUsual(const QString& words)
{
    if (words.isEmpty())
        return;
    const QSignalBlocker quiet(m_kind);
    m_kind->setItemText(m_kind->findData(static_cast<int>(Beside::Kind::Usual)),
                        plainCaption(words));
}

// A figure that is out of range is taken for the nearest that is not, as its arrows do.
Beside PaceChoice::beside() const
{
    const auto kind = static_cast<Beside::Kind>(m_kind->currentData().toInt());
    if (kind != Beside::Kind::Given)
        return {kind, 0};
    return {kind, std::clamp(m_films->value(), 1, kMostAWeek) / kDaysOfWeek};
}

void PaceChoice::setBeside(const Beside& beside)
{
    const QSignalBlocker quiet(m_kind);
    const QSignalBlocker still(m_films);
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(beside.kind)));
    if (beside.kind == Beside::Kind::Given)
        m_films->setValue(std::clamp(
            static_cast<int>(std::lround(beside.filmsPerDay * kDaysOfWeek)), 1, kMostAWeek));
    showFilms();
}

} // namespace ullage::app
