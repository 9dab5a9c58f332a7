#include "app/dialogs/test_dialog.h"

#include "app/shelf/strip_chart.h"
#include "app/words/number_text.h"
#include "core/chemistry/process_constants.h"
#include "core/ledger/load_times.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include <cmath>
#include <utility>

namespace ullage::app
{

namespace
{

const QString kSeconds = QStringLiteral("seconds");
const QString kTemperature = QStringLiteral("temperature_c");
const QString kDensity = QStringLiteral("density");
const QString kReference = QStringLiteral("reference");
const QString kFactor = QStringLiteral("factor");
const QString kWhat = QStringLiteral("why");
const QString kPassed = QStringLiteral("passed");

} // namespace

TestDialog::TestDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle, tr("Test %1").arg(QString::fromStdString(bottle.batch.name)),
                   parent)
{
    m_kind = new QComboBox(this);
    const auto role = batch().solution->role;
    if (role == formulary::Role::Fixer)
        m_kind->addItem(tr("Clearing test: how long a piece of film takes to clear"),
                        static_cast<int>(Kind::Clearing));
    if (role == formulary::Role::Developer)
        m_kind->addItem(tr("Control strip"), static_cast<int>(Kind::Strip));
    m_kind->addItem(tr("A look: colour, smell, sediment, a leader"), static_cast<int>(Kind::Look));
    addRow(QStringLiteral("kind"), tr("&Kind of test"), m_kind);

    m_seconds = addQuantity(kSeconds, tr("&Cleared after (m:ss)"), QuantityKind::Time, Width::Half);
    m_seconds->setRange(1, 7200);
    m_seconds->setRequired(true);
    m_temperature = addQuantity(kTemperature, tr("&Temperature of the bath"),
                                QuantityKind::Temperature, Width::Half);
    m_temperature->setRange(0, 45);
    m_temperature->setRequired(true);
    m_temperature->setValue(20);
    m_density =
        addQuantity(kDensity, tr("&Density, if measured"), QuantityKind::Number, Width::Half);
    m_density->setRange(0, 10);
    m_reference = new QComboBox(this);
    addRow(kReference, tr("Co&mpared with"), m_reference, Width::Half);
    m_factor = addQuantity(kFactor, tr("&Factor on the time from now on, if any"),
                           QuantityKind::Number, Width::Half);
    m_factor->setRange(0.1, 10);
    m_what = new QComboBox(this);
    m_what->setEditable(true);
    m_what->addItems({tr("colour"), tr("smell"), tr("sediment or flakes"), tr("leader test")});
    if (role == formulary::Role::Fixer)
        m_what->addItem(tr("iodide test: lasting cloudiness"));
    addRow(kWhat, tr("What was looked &at"), m_what);
    m_passed = new QComboBox(this);
    m_passed->addItem(tr("Passed: fit for film"), 1);
    m_passed->addItem(tr("Failed: to be discarded"), 0);
    m_passed->addItem(tr("Neither: only noted"), -1);
    addRow(kPassed, tr("&Result"), m_passed);

    m_judgement = addText({});
    m_accept = new QCheckBox(this);
    m_accept->setObjectName(QStringLiteral("accept"));
    addWide(m_accept);
    addAir(Width::Half);
    connect(addWhenSinceMixing(Width::Half), &WhenEdit::changed, this, [this] {
        fillReferences();
        judge();
    });
    setDeed(tr("Save test"));

    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] { showFields(); });
    for (QuantityEdit* edit : {m_seconds, m_temperature, m_density})
        connect(edit, &QuantityEdit::valueChanged, this, &TestDialog::judge);
    connect(m_reference, &QComboBox::currentIndexChanged, this, &TestDialog::judge);
    connect(m_accept, &QCheckBox::toggled, m_factor, &QWidget::setDisabled);
    connect(m_passed, &QComboBox::currentIndexChanged, this, &TestDialog::judge);
    fillReferences();
    showFields();
    if (kind() == Kind::Clearing)
        m_seconds->setFocus();
    else
        m_kind->setFocus();
}

TestDialog::Kind TestDialog::kind() const
{
    return static_cast<Kind>(m_kind->currentData().toInt());
}

void TestDialog::setKind(Kind kind)
{
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(kind)));
}

void TestDialog::showFields()
{
    const bool clearing = kind() == Kind::Clearing;
    const bool strip = kind() == Kind::Strip;
    setRowVisible(kSeconds, clearing);
    setRowVisible(kTemperature, clearing);
    setRowVisible(kDensity, strip);
    setRowVisible(kReference, strip);
    setRowVisible(kFactor, strip);
    setRowVisible(kWhat, kind() == Kind::Look);
    setRowVisible(kPassed, !clearing);
    // A look does not open the bottle, so there is no air to speak of.
    setRowVisible(QStringLiteral("air_ml"), kind() != Kind::Look);
    judge();
}

std::optional<bool> TestDialog::passed() const
{
    const int chosen = m_passed->currentData().toInt();
    return chosen < 0 ? std::nullopt : std::optional(chosen == 1);
}

QString TestDialog::judgement() const { return m_judgement->text(); }

// The strips before the moment of this one: a forgotten strip is judged as it would have been then.
ledger::StripRecord TestDialog::recordBefore() const
{
    auto readings = session().strips(batch().solution->id);
    std::erase_if(readings, [at = when().at](const auto& one) { return one.strip.at >= at; });
    return ledger::stripRecord(std::move(readings));
}

// Every strip read fresh, newest first, and the centre; the usual one is chosen.
void TestDialog::fillReferences()
{
    const QSignalBlocker quiet(m_reference);
    m_reference->clear();
    if (batch().solution->role != formulary::Role::Developer)
        return;
    const auto record = recordBefore();
    const auto usual = ledger::referenceStrip(record, batch().id);
    for (std::size_t i = record.readings.size(); i-- > 0;) {
        const auto& reading = record.readings[i];
        if (reading.strip.wear > ledger::kReferenceWear)
            continue;
        m_reference->addItem(stripName(reading, when().at, wording()), reading.strip.density);
        if (i == usual)
            m_reference->setCurrentIndex(m_reference->count() - 1);
    }
    if (record.next)
        m_reference->addItem(
            tr("Mean of the strips: %1").arg(densityText(record.next->centre, wording().locale)),
            record.next->centre);
    m_reference->setEnabled(m_reference->count() > 0);
    if (m_reference->count() == 0)
        m_reference->addItem(tr("no strip yet"));
}

QString TestDialog::proposalText(const ledger::StripProposal& proposal, double reference) const
{
    const auto factor = [&](double value) { return factorText(value, wording().locale); };
    const double inForce = proposal.factor / proposal.correction;
    QString text =
        tr("To reach the reference the time would have to be taken %1 (%2 ÷ %3): density is taken "
           "to grow in proportion to time, which is an assumption.")
            .arg(factor(proposal.correction), densityText(reference, wording().locale),
                 densityText(*m_density->value(), wording().locale));
    if (std::abs(inForce - 1) > 0.0005)
        text +=
            u' ' +
            tr("With the %1 in force that makes %2.").arg(factor(inForce), factor(proposal.factor));
    return text;
}

// Sets the proposal as well: it is what the words are about.
QString TestDialog::judgeStrip(Tone& tone)
{
    m_proposed.reset();
    if (!m_density->value())
        return {};
    const double density = *m_density->value();
    const auto record = recordBefore();
    const QVariant reference = m_reference->currentData();
    if (!record.next)
        return tr("%Ln strip(s) before this one: limits need %1, so nothing is proposed yet.",
                  nullptr, static_cast<int>(record.readings.size()))
            .arg(ledger::kStripsForLimits);
    const auto& chart = *record.next;
    const QString limits = tr("limits %1 to %2 from the strips before")
                               .arg(densityText(chart.lower, wording().locale),
                                    densityText(chart.upper, wording().locale));
    if (density >= chart.lower && density <= chart.upper)
        return tr("Within the %1: the time stays as it is.").arg(limits);
    tone = Tone::Near;
    const QString out = tr("Out of control, %1.").arg(limits);
    if (!reference.isValid())
        return out + u' ' + tr("Without a strip read fresh there is nothing to compare with.");
    const auto then = session().book().batch(batch().id, when().at);
    const double inForce = then ? then->stripFactor.value_or(1) : 1;
    const auto asked = ledger::proposal(record, density, reference.toDouble(), inForce);
    if (asked && *asked) {
        m_proposed = (*asked)->factor;
        return out + u' ' + proposalText(**asked, reference.toDouble());
    }
    return out + u' ' +
           tr("That is more than a factor of %1 in time can make up for: look for the cause "
              "(temperature, agitation, dilution, the strip itself).")
               .arg(numberText(chemistry::kStripMost.value, 1, wording().locale));
}

// Judged by the same function that judges the batch once the test is in the book.
void TestDialog::judge()
{
    QString text;
    Tone tone = Tone::Quiet;
    const auto before = std::exchange(m_proposed, std::nullopt);
    if (kind() == Kind::Clearing && m_seconds->value() && m_temperature->value()) {
        const auto so = ledger::outlookOf(batch(), chemistry::Seconds(*m_seconds->value()),
                                          chemistry::Celsius(*m_temperature->value()));
        const chemistry::Clearing& clearing = so.clearing;
        const QString brought =
            tr("%1 s at 20 °C").arg(numberText(so.at20.value(), 0, wording().locale));
        if (clearing.doubled) {
            text = tr("%1: at least twice the fresh %2 s. This fixer is to be discarded.")
                       .arg(brought, numberText(clearing.fresh->value(), 0, wording().locale));
            tone = Tone::Discard;
        } else if (clearing.fresh) {
            text = tr("%1: under twice the fresh %2 s. Fix for %3.")
                       .arg(brought, numberText(clearing.fresh->value(), 0, wording().locale),
                            timeText(so.fixing));
            tone = Tone::Good;
        } else {
            text = tr("%1. No fresh time is known to compare it with.").arg(brought);
        }
    } else if (kind() == Kind::Strip && passed() != false) {
        text = judgeStrip(tone);
    } else if (kind() != Kind::Clearing && passed() == false) {
        text = tr("A failed test marks the bottle for discarding; a later pass does not undo it, "
                  "taking the test back does.");
        tone = Tone::Discard;
    }
    // What was accepted was another factor.
    if (m_proposed != before)
        m_accept->setChecked(false);
    m_accept->setVisible(m_proposed.has_value());
    if (m_proposed)
        m_accept->setText(
            tr("Accept: develop %1 from now on").arg(factorText(*m_proposed, wording().locale)));
    m_judgement->setText(text);
    m_judgement->setVisible(!text.isEmpty());
    setTone(m_judgement, tone);
}

bool TestDialog::fieldsAreFine()
{
    if (kind() != Kind::Strip || m_density->value() || m_factor->value() || passed())
        return true;
    showProblem(kDensity, tr("Density, factor or result: one of them is needed."));
    return false;
}

Result<void> TestDialog::act()
{
    switch (kind()) {
    case Kind::Clearing:
        return record(ledger::ClearingTested{chemistry::Seconds(*m_seconds->value()),
                                             chemistry::Celsius(*m_temperature->value())});
    case Kind::Strip:
        return record(ledger::StripTested{
            m_density->value(), m_accept->isChecked() ? m_proposed : m_factor->value(), passed()});
    case Kind::Look:
        break;
    }
    return record(ledger::Looked{passed(), m_what->currentText().trimmed().toStdString()});
}

} // namespace ullage::app
