#include "app/dialogs/test_forms.h"

#include "app/charts/strip_chart.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "core/chemistry/process_constants.h"
#include "core/formulary/field_of.h"
#include "core/ledger/load_times.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalBlocker>

#include <cmath>
#include <utility>

namespace ullage::app
{

namespace
{

constexpr double kUsualTemperature = 20; // °C; common practice, no source

// What a test came to; a failed one condemns the bottle.
QComboBox* addResult(FieldForm& form)
{
    auto* passed = new QComboBox(&form);
    passed->addItem(StripForm::tr("Passed: fit for film"), 1);
    passed->addItem(StripForm::tr("Failed: to be discarded"), 0);
    passed->addItem(StripForm::tr("Neither: only noted"), -1);
    form.addRow(QStringLiteral("passed"), StripForm::tr("R&esult"), passed);
    return passed;
}

std::optional<bool> resultOf(const QComboBox& passed)
{
    const int chosen = passed.currentData().toInt();
    return chosen < 0 ? std::nullopt : std::optional(chosen == 1);
}

void showResult(QComboBox& passed, std::optional<bool> result)
{
    passed.setCurrentIndex(passed.findData(result ? (*result ? 1 : 0) : -1));
}

void say(QLabel& judgement, const QString& text, Tone tone)
{
    judgement.setText(text);
    judgement.setVisible(!text.isEmpty());
    setTone(&judgement, tone);
}

QString failedText()
{
    return StripForm::tr("A failed test marks the bottle for discarding; a later pass does not "
                         "undo it, taking the test back does.");
}

} // namespace

ClearingForm::ClearingForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    addText(tr("How long a piece of film takes to clear."));
    m_seconds = addFigure<chemistry::Seconds>(formulary::fieldOf(&ledger::ClearingTested::time),
                                              tr("&Cleared after (m:ss)"));
    m_seconds->setMinutesUpTo(kMostClearingSeconds);
    m_temperature = addFigure<chemistry::Celsius>(
        formulary::fieldOf(&ledger::ClearingTested::temperature), tr("Te&mperature of the bath"));
    m_temperature->setValue(kUsualTemperature);
    m_judgement = addText({});
    addAirOf<ledger::ClearingTested>();
    connect(this, &FieldForm::changed, this, &ClearingForm::judge);
}

std::optional<ledger::Happening> ClearingForm::happening() const
{
    if (!m_seconds->value() || !m_temperature->value())
        return std::nullopt;
    return ledger::ClearingTested{*m_seconds->quantity(), *m_temperature->quantity(), m_film};
}

HappeningForm::Caution ClearingForm::caution() const
{
    return {tr("Before you test"), clearingTestCautions()};
}

QString ClearingForm::judgement() const { return m_judgement->text(); }

void ClearingForm::judge()
{
    if (!batch() || !m_seconds->value() || !m_temperature->value())
        return say(*m_judgement, {}, Tone::Quiet);
    const auto so = ledger::outlookOf(*batch(), *m_seconds->quantity(), *m_temperature->quantity());
    const auto seconds = [&](chemistry::Seconds time) {
        return numberText(time.value(), 0, wording().locale);
    };
    const QString brought = tr("%1 s at 20 °C").arg(seconds(so.at20));
    if (so.clearing.doubled)
        say(*m_judgement,
            tr("%1: at least twice the fresh %2 s. This fixer is to be discarded.")
                .arg(brought, seconds(so.clearing.doubled->fresh)),
            Tone::Discard);
    else if (so.clearing.fresh)
        say(*m_judgement,
            tr("%1: under twice the fresh %2 s. Fix for %3.")
                .arg(brought, seconds(*so.clearing.fresh), timeText(so.fixing)),
            Tone::Good);
    else
        say(*m_judgement, tr("%1. No fresh time is known to compare it with.").arg(brought),
            Tone::Quiet);
}

StripForm::StripForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent), m_reference(new QComboBox(this)),
      m_accept(new QCheckBox(this))
{
    m_density =
        addQuantity(formulary::fieldOf(&ledger::StripTested::density), tr("&Density, if measured"));
    addRow(QStringLiteral("reference"), tr("Co&mpared with"), m_reference, Width::Half);
    m_factor = addQuantity(formulary::fieldOf(&ledger::StripTested::factor),
                           tr("&Factor on the time from now on, if any"));
    m_passed = addResult(*this);
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
                               resultOf(*m_passed)};
}

bool StripForm::restIsFine()
{
    if (m_density->value() || m_factor->value() || resultOf(*m_passed))
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
    const auto passed = resultOf(*m_passed);
    if (passed == false) {
        tone = Tone::Discard;
        text += (text.isEmpty() ? QString() : QStringLiteral(" ")) + failedText();
    } else if (passed == true && m_byLimits == false) {
        text += u' ' + tr("So it is passed against its limits, and the bottle's card will say so.");
    }
    say(*m_judgement, text, tone);
    // What was accepted was another factor.
    if (m_proposed != before)
        m_accept->setChecked(false);
    m_accept->setVisible(m_proposed.has_value());
    if (m_proposed)
        m_accept->setText(
            tr("Accept: develop %1 from now on").arg(factorText(*m_proposed, wording().locale)));
}

MeasuredForm::MeasuredForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    m_counted = addText({});
    m_silver = addFigure<chemistry::GramsPerLitre>(formulary::fieldOf(&ledger::Measured::silver),
                                                   tr("&Silver, grams in a litre"));
    m_method = new QComboBox(this);
    m_method->setEditable(true);
    m_method->addItems({tr("test paper"), tr("analysis")});
    addRow(QStringLiteral("method"), tr("B&y what"), m_method, Width::Half);
    m_judgement = addText({});
    addAirOf<ledger::Measured>();
    connect(this, &FieldForm::changed, this, &MeasuredForm::judge);
}

void MeasuredForm::bottleChanged()
{
    m_counted->setText(tr("By the films counted so far there is %1 g of silver in a litre. What is "
                          "measured takes its place.")
                           .arg(numberText(batch()->silver.value(), 2, wording().locale)));
    judge();
}

std::optional<ledger::Happening> MeasuredForm::happening() const
{
    if (!m_silver->value())
        return std::nullopt;
    return ledger::Measured{*m_silver->quantity(), m_method->currentText().trimmed().toStdString()};
}

QString MeasuredForm::judgement() const { return m_judgement->text(); }

void MeasuredForm::judge()
{
    const auto limit = batch() ? batch()->solution->silverLimit : std::nullopt;
    if (!limit || !m_silver->value())
        return say(*m_judgement, {}, Tone::Quiet);
    const QString most = numberText(limit->value(), 2, wording().locale);
    if (*m_silver->quantity() > *limit)
        say(*m_judgement,
            tr("Over the limit of %1 g/l that is set for it: it is to be discarded.").arg(most),
            Tone::Discard);
    else
        say(*m_judgement, tr("Within the limit of %1 g/l that is set for it.").arg(most),
            Tone::Good);
}

LookForm::LookForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent), m_what(new QComboBox(this))
{
    m_advice = addText({});
    m_what->setEditable(true);
    addRow(QStringLiteral("why"), tr("What was looked &at"), m_what);
    m_passed = addResult(*this);
    m_judgement = addText({});
    addAirOf<ledger::Looked>();
    connect(this, &FieldForm::changed, this, &LookForm::judge);
    judge();
}

void LookForm::bottleChanged()
{
    const auto role = batch()->solution->role;
    if (m_role == role)
        return;
    m_role = role;
    using ledger::LookedAt;
    m_what->clear();
    const auto offer = [this](const QString& text, LookedAt what) {
        m_what->addItem(text, static_cast<int>(what));
    };
    // What tells most of such a bath stands first.
    if (role == formulary::Role::Stop)
        offer(tr("its indicator"), LookedAt::Indicator);
    offer(tr("colour"), LookedAt::Colour);
    offer(tr("smell"), LookedAt::Smell);
    offer(tr("sediment or flakes"), LookedAt::Precipitate);
    if (role == formulary::Role::Developer || role == formulary::Role::Fixer)
        offer(tr("leader test"), LookedAt::Leader);
    if (role == formulary::Role::Fixer)
        m_what->addItem(tr("iodide test: lasting cloudiness")); // the journal has no code for it
    m_advice->setText(role == formulary::Role::Stop
                          ? tr("An indicator stop bath is spent when its colour has turned: mark "
                               "it failed then.")
                          : tr("Sediment that filtering takes away is no reason to discard: mark "
                               "it filtered afterwards, and the failed look is taken back."));
}

std::optional<ledger::Happening> LookForm::happening() const
{
    const QString what = m_what->currentText().trimmed();
    const QVariant code = m_what->itemData(m_what->findText(what));
    return ledger::Looked{
        resultOf(*m_passed), what.toStdString(),
        code.isValid() ? std::optional(static_cast<ledger::LookedAt>(code.toInt())) : std::nullopt};
}

HappeningForm::Caution LookForm::caution() const { return {tr("Before you test"), lookCautions()}; }

QString LookForm::judgement() const { return m_judgement->text(); }

void LookForm::judge()
{
    say(*m_judgement, resultOf(*m_passed) == false ? failedText() : QString(), Tone::Discard);
}

QWidget* LookForm::first() const { return m_what; }

// What was entered, to be corrected -------------------------------------------------------------

void ClearingForm::fill(const ledger::Happening& what)
{
    const auto* test = std::get_if<ledger::ClearingTested>(&what);
    if (!test)
        return;
    m_seconds->setQuantity(test->time);
    m_temperature->setQuantity(test->temperature);
    m_film = test->film;
    judge();
}

void StripForm::fill(const ledger::Happening& what)
{
    const auto* strip = std::get_if<ledger::StripTested>(&what);
    if (!strip)
        return;
    m_density->setValue(strip->density);
    m_factor->setValue(strip->factor);
    judge();
    showResult(*m_passed, strip->passed); // what was entered, whatever the limits say
}

void MeasuredForm::fill(const ledger::Happening& what)
{
    const auto* measured = std::get_if<ledger::Measured>(&what);
    if (!measured)
        return;
    m_silver->setQuantity(measured->silver);
    m_method->setEditText(QString::fromStdString(measured->method));
    judge();
}

void LookForm::fill(const ledger::Happening& what)
{
    const auto* look = std::get_if<ledger::Looked>(&what);
    if (!look)
        return;
    const int place = look->what ? m_what->findData(static_cast<int>(*look->what)) : -1;
    if (place >= 0 &&
        (look->why.empty() || m_what->findText(QString::fromStdString(look->why)) < 0))
        m_what->setCurrentIndex(place); // written in another language, or not at all
    else
        m_what->setEditText(QString::fromStdString(look->why));
    showResult(*m_passed, look->passed);
    judge();
}

} // namespace ullage::app
