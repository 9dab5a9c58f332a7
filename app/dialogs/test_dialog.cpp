#include "app/dialogs/test_dialog.h"

#include "app/widgets/theme.h"
#include "app/words/number_text.h"
#include "core/chemistry/fixing.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace ullage::app
{

namespace
{

const QString kSeconds = QStringLiteral("seconds");
const QString kTemperature = QStringLiteral("temperature_c");
const QString kDensity = QStringLiteral("density");
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
    addAir(Width::Half);
    addWhenSinceMixing(Width::Half);
    setDeed(tr("Save test"));

    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] { showFields(); });
    for (QuantityEdit* edit : {m_seconds, m_temperature})
        connect(edit, &QuantityEdit::valueChanged, this, &TestDialog::judge);
    connect(m_passed, &QComboBox::currentIndexChanged, this, &TestDialog::judge);
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

// Judged by the same function that judges the batch once the test is in the book.
void TestDialog::judge()
{
    QString text;
    Tone tone = Tone::Quiet;
    if (kind() == Kind::Clearing && m_seconds->value() && m_temperature->value()) {
        auto tests = batch().tests;
        const chemistry::Seconds at20 =
            chemistry::Seconds(*m_seconds->value()) /
            chemistry::coldFactor(chemistry::Celsius(*m_temperature->value()));
        tests.push_back({batch().wear, at20});
        const auto clearing =
            chemistry::clearing(tests, batch().wear, batch().solution->freshClearing);
        const QString brought =
            tr("%1 s at 20 °C").arg(numberText(at20.value(), 0, wording().locale));
        if (clearing && clearing->doubled) {
            text = tr("%1: at least twice the fresh %2 s. This fixer is to be discarded.")
                       .arg(brought, numberText(clearing->fresh->value(), 0, wording().locale));
            tone = Tone::Discard;
        } else if (clearing && clearing->fresh) {
            text = tr("%1: under twice the fresh %2 s. Fix for %3.")
                       .arg(brought, numberText(clearing->fresh->value(), 0, wording().locale),
                            timeText(clearing->fixingTime()));
            tone = Tone::Good;
        } else {
            text = tr("%1. No fresh time is known to compare it with.").arg(brought);
        }
    } else if (kind() != Kind::Clearing && passed() == false) {
        text = tr("A failed test marks the bottle for discarding; a later pass does not undo it, "
                  "taking the test back does.");
        tone = Tone::Discard;
    }
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
        return record(ledger::StripTested{m_density->value(), m_factor->value(), passed()});
    case Kind::Look:
        break;
    }
    return record(ledger::Looked{passed(), m_what->currentText().trimmed().toStdString()});
}

} // namespace ullage::app
