#include "app/dialogs/mark_dialogs.h"

#include "app/words/cautions.h"
#include "app/words/number_text.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace ullage::app
{

namespace
{

QString nameOf(const Bottle& bottle) { return QString::fromStdString(bottle.batch.name); }

} // namespace

NoteDialog::NoteDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle, tr("Note on %1").arg(nameOf(bottle)), parent)
{
    m_text = new QPlainTextEdit(this);
    m_text->setTabChangesFocus(true);
    m_text->setMinimumHeight(110);
    addRow(QStringLiteral("text"), tr("&Note"), m_text);
    addWhenSinceMixing();
    setDeed(tr("Save note"));
    m_text->setFocus();
}

bool NoteDialog::fieldsAreFine()
{
    if (!m_text->toPlainText().trimmed().isEmpty())
        return true;
    showProblem(QStringLiteral("text"), tr("Note: some words are needed."));
    return false;
}

Result<void> NoteDialog::act()
{
    return record(ledger::Noted{m_text->toPlainText().trimmed().toStdString()});
}

MarkDialog::MarkDialog(Mark mark, const DialogContext& context, const Bottle& bottle,
                       QWidget* parent)
    : BottleDialog(context, bottle,
                   mark == Mark::Contaminated ? tr("Mark %1 contaminated").arg(nameOf(bottle))
                                              : tr("Mark %1 dissolved").arg(nameOf(bottle)),
                   parent),
      m_mark(mark)
{
    if (mark == Mark::Contaminated) {
        addText(tr("A contaminated bottle is to be discarded; it is not offered for film again. "
                   "Undo takes the mark back."));
        m_why = new QLineEdit(this);
        m_why->setPlaceholderText(tr("fixer dripped in, unknown funnel …"));
        addRow(QStringLiteral("why"), tr("&What happened"), m_why);
    } else {
        addText(tr("Everything is dissolved and the solution is clear."));
    }
    addWhenSinceMixing();
    setDeed(mark == Mark::Contaminated ? tr("Mark contaminated") : tr("Mark dissolved"),
            mark == Mark::Contaminated);
    if (m_why)
        m_why->setFocus();
}

Result<void> MarkDialog::act()
{
    return m_mark == Mark::Contaminated
               ? record(ledger::Contaminated{m_why->text().trimmed().toStdString()})
               : record(ledger::Dissolved{});
}

StoredAtDialog::StoredAtDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle, tr("Where %1 is stored").arg(nameOf(bottle)), parent)
{
    addText(tr("It is taken to stand at %1. From the moment given here on, it ages as fast as "
               "at the new temperature.")
                .arg(temperatureText(batch().temperature, wording())));
    m_temperature = addQuantity(QStringLiteral("temperature_c"), tr("&Temperature there"),
                                QuantityKind::Temperature, Width::Half);
    constexpr double kCoolest = 0;
    constexpr double kWarmest = 45;
    m_temperature->setRange(kCoolest, kWarmest);
    m_temperature->setRequired(true);
    addWhenSinceMixing(Width::Half);
    addCautions(tr("Where it stands"), storingCautions());
    setDeed(tr("Save"));
    m_temperature->setFocus();
}

Result<void> StoredAtDialog::act()
{
    return record(ledger::StoredAt{chemistry::Celsius(*m_temperature->value())});
}

StoodOpenDialog::StoodOpenDialog(const DialogContext& context, const Bottle& bottle,
                                 QWidget* parent)
    : BottleDialog(context, bottle, tr("%1 stood open").arg(nameOf(bottle)), parent)
{
    addText(tr("Say for how long and how wide the surface was: a tray for 8 × 10 in is about "
               "516 cm², a litre bottle without its cap about 10 cm²."));
    m_hours =
        addQuantity(QStringLiteral("hours"), tr("&Hours open"), QuantityKind::Hours, Width::Half);
    m_hours->setRange(0.01, 87'600);
    m_hours->setRequired(true);
    m_surface =
        addQuantity(QStringLiteral("area_cm2"), tr("&Surface"), QuantityKind::Area, Width::Half);
    m_surface->setRange(0.1, 1'000'000);
    m_surface->setRequired(true);
    addAir(Width::Half);
    addWhenSinceMixing(Width::Half);
    setDeed(tr("Save"));
    m_hours->setFocus();
}

Result<void> StoodOpenDialog::act()
{
    return record(ledger::StoodOpen{chemistry::Hours(*m_hours->value()),
                                    chemistry::SquareCentimetres(*m_surface->value())});
}

OpenedDialog::OpenedDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle, tr("%1 was opened").arg(nameOf(bottle)), parent)
{
    addText(tr("Opening a bottle renews the air above the solution. Deeds such as running film or "
               "topping up count as opened already."));
    auto* air = addAir(Width::Half);
    addWhenSinceMixing(Width::Half);
    setDeed(tr("Save"));
    air->setFocus();
}

Result<void> OpenedDialog::act() { return record(ledger::Opened{}); }

DiscardDialog::DiscardDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle, tr("Discard %1").arg(nameOf(bottle)), parent)
{
    addText(tr("%1 of %2. After this nothing more can happen to it; undo brings it back.")
                .arg(volumeText(batch().volume, wording()),
                     QString::fromStdString(batch().solution->name)));
    m_how = new QComboBox(this);
    m_how->setEditable(true);
    if (batch().solution->role == formulary::Role::Fixer)
        m_how->addItem(tr("collected for silver recovery"));
    m_how->addItem(tr("taken to the collection point"));
    m_how->addItem(tr("as the local authority allows"));
    m_how->setAccessibleName(tr("How"));
    addRow(QStringLiteral("how"), tr("H&ow"), m_how);
    addWhenSinceMixing();
    addCautions(tr("Before you pour it away"), disposalCautions(batch().solution->role));
    setDeed(tr("Discard"), true);
    m_how->setFocus();
}

bool DiscardDialog::fieldsAreFine()
{
    if (!m_how->currentText().trimmed().isEmpty())
        return true;
    showProblem(QStringLiteral("how"), tr("How: say where it goes."));
    return false;
}

Result<void> DiscardDialog::act()
{
    return record(ledger::Discarded{m_how->currentText().trimmed().toStdString()});
}

} // namespace ullage::app
