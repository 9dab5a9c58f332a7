#include "app/dialogs/volume_dialogs.h"

#include "app/words/cautions.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"

#include <QComboBox>
#include <QLineEdit>

namespace ullage::app
{

namespace
{

// "Volume" may be anything the Book allows; what fits this bottle is its business to say.
constexpr double kLeastMl = 0.1;
constexpr double kMostMl = 1'000'000;

} // namespace

TopUpDialog::TopUpDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle, tr("Top up %1").arg(QString::fromStdString(bottle.batch.name)),
                   parent)
{
    const auto room = batch().vessel->capacity - batch().volume;
    addText(tr("%1 is in the bottle, and there is room for %2 more.")
                .arg(volumeText(batch().volume, wording()), volumeText(room, wording())));
    m_volume = addQuantity(QStringLiteral("volume_ml"), tr("&Fresh solution added"),
                           QuantityKind::Volume, Width::Half);
    m_volume->setRange(kLeastMl, kMostMl);
    m_volume->setRequired(true);
    m_from = new QComboBox(this);
    m_from->addItem(tr("Freshly mixed"), QString());
    for (const Bottle& other : session().bottles()) {
        if (other.batch.solution->id == batch().solution->id && other.batch.id != batch().id)
            m_from->addItem(QString::fromStdString(other.batch.name),
                            QString::fromStdString(other.batch.id));
    }
    addRow(QStringLiteral("from"), tr("F&rom"), m_from, Width::Half);
    addAir(Width::Half);
    addWhenSinceMixing(Width::Half);
    setDeed(tr("Top up"));
    m_volume->setFocus();
}

Result<void> TopUpDialog::act()
{
    return session().doing([&](ledger::Book& book) {
        return book.topUp(batch().id, chemistry::Millilitres(*m_volume->value()), when(),
                          m_from->currentData().toString().toStdString());
    });
}

DrawOffDialog::DrawOffDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle,
                   tr("Draw off %1").arg(QString::fromStdString(bottle.batch.name)), parent)
{
    addText(tr("%1 is in the bottle.").arg(volumeText(batch().volume, wording())));
    m_volume = addQuantity(QStringLiteral("volume_ml"), tr("&Volume taken out"),
                           QuantityKind::Volume, Width::Half);
    m_volume->setRange(kLeastMl, kMostMl);
    m_volume->setRequired(true);
    addAir(Width::Half);
    m_why = new QLineEdit(this);
    m_why->setPlaceholderText(tr("spilled, diluted for a one-shot bath, given away …"));
    addRow(QStringLiteral("why"), tr("W&hat for"), m_why);
    addWhenSinceMixing();
    addCautions(tr("If it is thrown away"), disposalCautions(batch().solution->role));
    setDeed(tr("Draw off"));
    m_volume->setFocus();
}

Result<void> DrawOffDialog::act()
{
    return session().doing([&](ledger::Book& book) {
        return book.drawOff(batch().id, chemistry::Millilitres(*m_volume->value()),
                            m_why->text().trimmed().toStdString(), when());
    });
}

MoveDialog::MoveDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle,
                   tr("Move %1 to another bottle").arg(QString::fromStdString(bottle.batch.name)),
                   parent)
{
    addText(tr("%1 is in %2.")
                .arg(volumeText(batch().volume, wording()),
                     QString::fromStdString(batch().vessel->name)));
    m_vessel = new QComboBox(this);
    fillVessels(*m_vessel, vesselsFor(batch().volume, session().formulary(), session().bottles()),
                batch().vessel->id, wording());
    addRow(QStringLiteral("vessel"), tr("&Bottle"), m_vessel);
    addAir(Width::Half);
    addWhenSinceMixing(Width::Half);
    addCautions(tr("The new bottle"), storingCautions());
    setDeed(tr("Move"));
    m_vessel->setFocus();
}

bool MoveDialog::fieldsAreFine()
{
    if (!m_vessel->currentData().toString().isEmpty())
        return true;
    showProblem(QStringLiteral("vessel"), tr("Bottle: there is no other one to move it to."));
    return false;
}

Result<void> MoveDialog::act()
{
    return session().doing([&](ledger::Book& book) {
        return book.move(batch().id, m_vessel->currentData().toString().toStdString(), when());
    });
}

void fillVessels(QComboBox& combo, const std::vector<VesselChoice>& choices, const std::string& own,
                 const Wording& wording)
{
    for (const VesselChoice& choice : choices) {
        if (choice.vessel->id == own)
            continue;
        QString text = MoveDialog::tr("%1 · holds %2 · %3", "bottle, capacity, material")
                           .arg(QString::fromStdString(choice.vessel->name),
                                volumeText(choice.vessel->capacity, wording),
                                materialShort(choice.vessel->material));
        if (choice.holds)
            text = MoveDialog::tr("%1 · in use by %2")
                       .arg(text, QString::fromStdString(choice.holds->batch.name));
        combo.addItem(text, QString::fromStdString(choice.vessel->id));
    }
}

} // namespace ullage::app
