#include "app/dialogs/strip_form.h"

#include "app/charts/strip_chart.h"
#include "app/dialogs/test_result.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "core/chemistry/process_constants.h"
#include "core/formulary/field_of.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalBlocker>

#include <cmath>
#include <utility>

namespace ullage::app
{

StripForm::StripForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent), m_reference(new QComboBox(this)),
      m_accept(new QCheckBox(this))
{
    m_density =
        addQuantity(formulary::fieldOf(&ledger::StripTested::density), tr("&Density, if measured"));
    addRow(QStringLiteral("reference"), tr("Co&mpared with"), m_reference, Width::Half);
    m_factor = addQuantity(formulary::fieldOf(&ledger::StripTested::factor),
                           tr("&Factor on the time from now on, if any"));
    m_passed = addTestResult(*this);
    m_judgement = addText({});
    m_accept->setObjectName(QStringLiteral("accept"));
    addWide(m_accept);
    addAirOf<ledger::StripTested>();
    m_accept->hide();
    connect(this, &FieldForm::changed, this, &StripForm::judge);
    connect(m_accept, &QCheckBox::toggled, m_factor, &QWidget::setDisabled);
    connect(m_accept, &QCheckBox::toggled, this, &FieldForm::changed);
}

void StripForm::bottleChanged()
{
    fillReferences();
    judge();
}

std::optional<ledger::Happening> StripForm::happening() const
{
    return ledger::StripTested{m_density->value(),
                               m_accept->isChecked() ? m_proposed : m_factor->value(),
                               testResultOf(*m_passed)};
}

bool StripForm::restIsFine()
{
    if (m_density->value() || m_factor->value() || testResultOf(*m_passed))
        return true;
    showProblem(QStringLiteral("density"), tr("Density, factor or result: one of them is needed."));
    return false;
}

HappeningForm::Caution StripForm::caution() const
{
    return {tr("Before you test"), stripTestCautions()};
}

QString StripForm::judgement() const { return m_judgement->text(); }

// The strips before the moment of this one: a forgotten strip is judged as it would have been then.
ledger::StripRecord StripForm::recordBefore() const
{
    auto readings = door().strips(batch()->solution->id);
    std::erase_if(readings, [this](const auto& one) { return one.strip.at >= at(); });
    return ledger::stripRecord(std::move(readings));
}

// Every strip read fresh, newest first, and the centre; the usual one is chosen.
void StripForm::fillReferences()
{
    const QSignalBlocker quiet(m_reference);
    m_reference->clear();
    if (batch()->solution->role == formulary::Role::Developer) {
        const auto record = recordBefore();
        const auto usual = ledger::referenceStrip(record, batch()->id);
        for (std::size_t i = record.readings.size(); i-- > 0;) {
            const auto& reading = record.readings[i];
            if (reading.strip.wear > ledger::kReferenceWear)
                continue;
            m_reference->addItem(stripName(reading, at(), wording()), reading.strip.density);
            if (i == usual)
                m_reference->setCurrentIndex(m_reference->count() - 1);
        }
        if (record.next)
            m_reference->addItem(tr("Mean of the control strips: %1")
                                     .arg(densityText(record.next->centre, wording().locale)),
                                 record.next->centre);
    }
    m_reference->setEnabled(m_reference->count() > 0);
    if (m_reference->count() == 0)
        m_reference->addItem(tr("no control strip yet"));
}

QString StripForm::proposalText(const ledger::StripProposal& proposal, double reference) const
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
QString StripForm::judgeStrip(Tone& tone)
{
    m_proposed.reset();
    if (!m_density->value())
        return {};
    const double density = *m_density->value();
    const auto record = recordBefore();
    const QVariant reference = m_reference->currentData();
    if (!record.next)
        return tr("%Ln control strip(s) before this one: limits need %1, so nothing is proposed "
                  "yet.",
                  nullptr, static_cast<int>(record.readings.size()))
            .arg(ledger::kStripsForLimits);
    const auto& chart = *record.next;
    const QString limits = tr("limits %1 to %2 from the control strips before")
                               .arg(densityText(chart.lower, wording().locale),
                                    densityText(chart.upper, wording().locale));
    if (density >= chart.lower && density <= chart.upper)
        return tr("Within the %1: the time stays as it is.").arg(limits);
    tone = Tone::Near;
    const QString out = tr("Out of control, %1.").arg(limits);
    if (!reference.isValid())
        return out + u' ' +
               tr("Without a control strip read fresh there is nothing to compare with.");
    const double inForce = batch()->stripFactor.value_or(1);
    const auto asked = ledger::proposal(record, density, reference.toDouble(), inForce);
    if (asked && *asked) {
        m_proposed = (*asked)->factor;
        return out + u' ' + proposalText(**asked, reference.toDouble());
    }
    return out + u' ' +
           tr("That is more than a factor of %1 in time can make up for: look for the cause "
              "(temperature, agitation, dilution, the control strip itself).")
               .arg(numberText(chemistry::kStripMost.value, 1, wording().locale));
}

// A factor that was accepted makes up for what is beyond the limits.
void StripForm::presetResult()
{
    constexpr int kPassed = 0;
    constexpr int kFailed = 1;
    if (m_passed->currentIndex() != m_preset)
        m_resultChosen = true;
    m_byLimits = m_density->value() ? recordBefore().preset(*m_density->value()) : std::nullopt;
    if (m_resultChosen)
        return;
    const QSignalBlocker quiet(m_passed);
    m_preset = m_byLimits == false && !m_accept->isChecked() ? kFailed : kPassed;
    m_passed->setCurrentIndex(m_preset);
}

void StripForm::judge()
{
    if (!batch())
        return;
    presetResult();
    const auto before = std::exchange(m_proposed, std::nullopt);
    Tone tone = Tone::Quiet;
    QString text = judgeStrip(tone);
    const auto passed = testResultOf(*m_passed);
    if (passed == false) {
        tone = Tone::Discard;
        text += (text.isEmpty() ? QString() : QStringLiteral(" ")) + failedTestText();
    } else if (passed == true && m_byLimits == false) {
        text += u' ' + tr("So it is passed against its limits, and the bottle's card will say so.");
    }
    sayJudgement(*m_judgement, text, tone);
    // What was accepted was another factor.
    if (m_proposed != before)
        m_accept->setChecked(false);
    m_accept->setVisible(m_proposed.has_value());
    if (m_proposed)
        m_accept->setText(
            tr("Accept: develop %1 from now on").arg(factorText(*m_proposed, wording().locale)));
}

void StripForm::fill(const ledger::Happening& what)
{
    const auto* strip = std::get_if<ledger::StripTested>(&what);
    if (!strip)
        return;
    m_density->setValue(strip->density);
    m_factor->setValue(strip->factor);
    judge();
    showTestResult(*m_passed, strip->passed); // what was entered, whatever the limits say
}

} // namespace ullage::app
