#include "app/dialogs/test_forms.h"

#include "app/dialogs/test_result.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "core/formulary/field_of.h"
#include "core/ledger/load_times.h"

#include <QComboBox>
#include <QLabel>

namespace ullage::app
{

namespace
{

constexpr double kUsualTemperature = 20; // °C; common practice, no source

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
        return sayJudgement(*m_judgement, {}, Tone::Quiet);
    const auto so = ledger::outlookOf(*batch(), *m_seconds->quantity(), *m_temperature->quantity());
    const auto seconds = [&](chemistry::Seconds time) {
        return numberText(time.value(), 0, wording().locale);
    };
    const QString brought = tr("%1 s at 20 °C").arg(seconds(so.at20));
    if (so.clearing.doubled)
        sayJudgement(*m_judgement,
                     tr("%1: at least twice the fresh %2 s. This fixer is to be discarded.")
                         .arg(brought, seconds(so.clearing.doubled->fresh)),
                     Tone::Discard);
    else if (so.clearing.fresh)
        sayJudgement(*m_judgement,
                     tr("%1: under twice the fresh %2 s. Fix for %3.")
                         .arg(brought, seconds(*so.clearing.fresh),
                              timeText(so.fixing, TimeStep::AtLeastFiveSeconds)),
                     Tone::Good);
    else
        sayJudgement(*m_judgement,
                     tr("%1. No fresh time is known to compare it with.").arg(brought),
                     Tone::Quiet);
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
    addRow(QStringLiteral("method"), tr("By wh&at"), m_method, Width::Half);
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

HappeningForm::Caution MeasuredForm::caution() const
{
    return {tr("Before you test"), clearingTestCautions()};
}

QString MeasuredForm::judgement() const { return m_judgement->text(); }

void MeasuredForm::judge()
{
    const auto limit = batch() ? batch()->solution->silverLimit : std::nullopt;
    if (!limit || !m_silver->value())
        return sayJudgement(*m_judgement, {}, Tone::Quiet);
    const QString most = numberText(limit->value(), 2, wording().locale);
    if (*m_silver->quantity() > *limit)
        sayJudgement(
            *m_judgement,
            tr("Over the limit of %1 g/L that is set for it: it is to be discarded.").arg(most),
            Tone::Discard);
    else
        sayJudgement(*m_judgement, tr("Within the limit of %1 g/L that is set for it.").arg(most),
                     Tone::Good);
}

LookForm::LookForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent), m_what(new QComboBox(this))
{
    m_advice = addText({});
    m_what->setEditable(true);
    addRow(QStringLiteral("why"), tr("What was looked &at"), m_what);
    m_passed = addTestResult(*this);
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
        testResultOf(*m_passed), what.toStdString(),
        code.isValid() ? std::optional(static_cast<ledger::LookedAt>(code.toInt())) : std::nullopt};
}

HappeningForm::Caution LookForm::caution() const { return {tr("Before you test"), lookCautions()}; }

QString LookForm::judgement() const { return m_judgement->text(); }

void LookForm::judge()
{
    sayJudgement(*m_judgement, testResultOf(*m_passed) == false ? failedTestText() : QString(),
                 Tone::Discard);
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
    showTestResult(*m_passed, look->passed);
    judge();
}

} // namespace ullage::app
