#include "app/bench/wash_edit.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"
#include "core/chemistry/process_constants.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <cmath>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Millilitres;
using ledger::WashKind;

namespace
{

constexpr double kMostMl = 100'000;
constexpr double kUsualCarried = 25; // what a drained reel and tank hold back; to be measured
constexpr double kUsualWater = 20;

QString kindText(WashKind kind)
{
    switch (kind) {
    case WashKind::AsTemplate:
        return WashEdit::tr("as the template says");
    case WashKind::Running:
        return WashEdit::tr("running water, 30 min");
    case WashKind::Changes:
        return WashEdit::tr("20 min, full change every 3 min");
    case WashKind::Aid:
        return WashEdit::tr("rinse, wash aid 2 min, wash 5 min");
    case WashKind::FillAndDump:
        break;
    }
    return WashEdit::tr("fill and dump");
}

QuantityField<Millilitres>* volumeEdit(const QString& name, const QString& object, double value,
                                       const Wording& wording)
{
    auto* edit = new QuantityField<Millilitres>(QuantityKind::Volume, name, wording);
    edit->setRange(1, kMostMl);
    edit->setRequired(true);
    edit->setValue(value);
    edit->setObjectName(object);
    edit->setAccessibleName(name);
    return edit;
}

} // namespace

QString shareLeftText(double share, const QLocale& locale)
{
    // Beyond this no mixing is full enough for the number to mean anything.
    constexpr double kMostParts = 1e6;
    const double parts = 1 / share;
    if (parts > kMostParts)
        return WashEdit::tr("less than 1 part in a million");
    // Two figures, whatever the size.
    const double step = std::pow(10, std::floor(std::log10(parts)) - 1);
    return WashEdit::tr("1 part in %1")
        .arg(locale.toString(std::round(parts / step) * step, 'f', parts < 10 ? 1 : 0));
}

WashEdit::WashEdit(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_kind(new QComboBox),
      m_water(new QuantityField<Celsius>(QuantityKind::Temperature, tr("Tap"), wording)),
      m_dumps(new QWidget), m_fills(new QSpinBox), m_note(new PlainLabel), m_warning(new PlainLabel)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    auto* label = new PlainLabel(tr("&Wash"));
    label->setBuddy(m_kind);
    m_kind->setObjectName(QStringLiteral("wash"));
    m_kind->setAccessibleName(tr("Way of washing"));
    m_kind->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    for (const WashKind kind : ledger::kWashKinds)
        m_kind->addItem(kindText(kind));
    m_water->setRange(0, 60);
    m_water->setObjectName(QStringLiteral("tap"));
    m_water->setAccessibleName(tr("Tap water"));
    setPlainToolTip(m_water, tr("How warm the tap is; left empty it is taken to be as warm as the "
                                "thermometer's reading"));
    row->addWidget(label);
    row->addWidget(m_kind, 1);
    column->addLayout(row);
    auto* tap = new QHBoxLayout;
    tap->setSpacing(6);
    auto* tapLabel = new PlainLabel(tr("Tap wate&r, if known"));
    tapLabel->setBuddy(m_water);
    m_water->setMaximumWidth(110);
    tap->addWidget(tapLabel, 1);
    tap->addWidget(m_water);
    column->addLayout(tap);

    auto* form = new QFormLayout(m_dumps);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(6);
    m_fills->setRange(1, 20);
    m_fills->setValue(10);
    m_fills->setObjectName(QStringLiteral("fills"));
    m_fills->setAccessibleName(tr("Number of fillings"));
    m_filling = volumeEdit(tr("Water of one filling"), QStringLiteral("filling"), 500, wording);
    m_carried = volumeEdit(tr("Held back by film and tank"), QStringLiteral("carried"),
                           kUsualCarried, wording);
    form->addRow(tr("Fillings"), m_fills);
    form->addRow(tr("Water of one filling"), m_filling);
    form->addRow(tr("Held back by film and tank"), m_carried);
    column->addWidget(m_dumps);
    m_note->setWordWrap(true);
    m_note->setFont(Theme::font(TextRole::Small));
    setTone(m_note, Tone::Quiet);
    column->addWidget(m_note);
    m_warning->setWordWrap(true);
    setTone(m_warning, Tone::Near);
    column->addWidget(m_warning);

    const auto again = [this] {
        refresh();
        emit changed();
    };
    connect(m_kind, &QComboBox::currentIndexChanged, this, again);
    connect(m_fills, &QSpinBox::valueChanged, this, again);
    connect(m_water, &QuantityEdit::valueChanged, this, again);
    connect(m_carried, &QuantityEdit::valueChanged, this, again);
    connect(m_filling, &QuantityEdit::valueChanged, this, [this, again] {
        m_ownFilling = true;
        again();
    });
    refresh();
}

void WashEdit::setWording(const Wording& wording)
{
    m_wording = wording;
    for (QuantityEdit* edit : std::initializer_list<QuantityEdit*>{m_water, m_filling, m_carried})
        edit->setWording(wording);
    refresh();
}

void WashEdit::setKind(WashKind kind) { m_kind->setCurrentIndex(static_cast<int>(kind)); }

ledger::WashPlan WashEdit::plan() const
{
    ledger::WashPlan plan{.kind = ledger::kWashKinds[std::size_t(m_kind->currentIndex())],
                          .fills = m_fills->value()};
    plan.filling = m_filling->quantity().value_or(plan.filling);
    plan.carried = m_carried->quantity().value_or(plan.carried);
    plan.water = m_water->quantity();
    return plan;
}

void WashEdit::setRun(std::optional<Celsius> fixer, Millilitres tank)
{
    m_fixer = fixer;
    if (!m_ownFilling && tank.value() >= 1) {
        const QSignalBlocker quiet(m_filling);
        m_filling->setQuantity(tank);
    }
    refresh();
}

QString WashEdit::problem() const
{
    const bool dumps = plan().kind == WashKind::FillAndDump;
    for (const QuantityEdit* edit :
         std::initializer_list<QuantityEdit*>{m_water, m_filling, m_carried}) {
        if (const QString problem = edit->problem();
            !problem.isEmpty() && (dumps || edit == m_water))
            return problem;
    }
    return {};
}

QString WashEdit::note() const { return m_note->text(); }
QString WashEdit::warning() const { return m_warning->text(); }

void WashEdit::refresh()
{
    const ledger::WashPlan now = plan();
    m_dumps->setVisible(now.kind == WashKind::FillAndDump);
    QString note;
    if (const auto way = ledger::wayOf(now.kind)) {
        const auto steps = chemistry::washSteps(*way, Celsius(kUsualWater));
        const auto source = steps->front().source;
        note = tr("Source: %1.")
                   .arg(QString::fromUtf8(source.data(), static_cast<qsizetype>(source.size())));
    } else if (const auto share = ledger::shareLeft(now); share && problem().isEmpty()) {
        note = tr("Leaves %1 of the fixer that film and tank hold back. Computed, if every filling "
                  "mixes fully: what has yet to come out of the film is not in it, so let each "
                  "stand and turn it.")
                   .arg(shareLeftText(*share, m_wording.locale));
    }
    m_note->setText(note);
    m_note->setVisible(!note.isEmpty());
    QString warning;
    if (m_fixer && now.water && chemistry::mayReticulate(*m_fixer, *now.water)) {
        const auto source = chemistry::kReticulation.source;
        warning = tr("Tap and fixer are more than %1 °C apart: the emulsion may wrinkle (%2).")
                      .arg(numberText(chemistry::kReticulation.value, 0, m_wording.locale),
                           QString::fromUtf8(source.data(), static_cast<qsizetype>(source.size())));
    }
    m_warning->setText(warning);
    m_warning->setVisible(!warning.isEmpty());
}

} // namespace ullage::app
