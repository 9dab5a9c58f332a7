#include "app/dialogs/volume_forms.h"

#include "app/words/cautions.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "core/formulary/field_of.h"
#include "core/ledger/deed_events.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

namespace ullage::app
{

using chemistry::Instant;
using chemistry::Millilitres;

TopUpForm::TopUpForm(Session& session, const Wording& wording, QWidget* parent)
    : HappeningForm(session, wording, parent)
{
    m_room = addText({});
    m_volume =
        addQuantity(formulary::fieldOf(&ledger::ToppedUp::volume), tr("&Fresh solution added"));
    m_from = new QComboBox(this);
    addRow(QStringLiteral("from"), tr("F&rom"), m_from, Width::Half);
    addAirOf<ledger::ToppedUp>();
}

void TopUpForm::bottleChanged()
{
    const auto room = batch()->vessel->capacity - batch()->volume;
    m_room->setText(tr("%1 is in the bottle, and there is room for %2 more.")
                        .arg(volumeText(batch()->volume, wording()), volumeText(room, wording())));
    const QSignalBlocker quiet(m_from);
    const QVariant before = m_from->currentData();
    m_from->clear();
    m_from->addItem(tr("Freshly mixed"), QString());
    for (const Bottle& other : bottlesAt(session(), at())) {
        if (other.batch.solution->id == batch()->solution->id && other.batch.id != batch()->id)
            m_from->addItem(QString::fromStdString(other.batch.name),
                            QString::fromStdString(other.batch.id));
    }
    m_from->setCurrentIndex(std::max(0, m_from->findData(before)));
}

std::string TopUpForm::from() const { return m_from->currentData().toString().toStdString(); }

std::optional<ledger::Happening> TopUpForm::happening() const
{
    if (!m_volume->value())
        return std::nullopt;
    return ledger::ToppedUp{Millilitres(*m_volume->value()), from(), {}};
}

std::optional<std::vector<ledger::Event>> TopUpForm::events(const std::string& batch, Instant at,
                                                            const ledger::IdMaker& newId) const
{
    if (!m_volume->value())
        return std::nullopt;
    return ledger::topUpEvents(batch, {Millilitres(*m_volume->value()), from(), {}}, when(at),
                               newId);
}

Result<void> TopUpForm::enter(const std::string& batch, Instant at) const
{
    return session().doing([&](ledger::Book& book) {
        return book.topUp(batch, Millilitres(*m_volume->value()), when(at), from());
    });
}

DrawOffForm::DrawOffForm(Session& session, const Wording& wording, QWidget* parent)
    : HappeningForm(session, wording, parent)
{
    m_there = addText({});
    m_volume = addQuantity(formulary::fieldOf(&ledger::Drawn::volume), tr("&Volume taken out"));
    addAirOf<ledger::Drawn>();
    m_why = addLine(formulary::fieldOf(&ledger::Drawn::why), tr("What &for"));
    m_why->setPlaceholderText(tr("spilled, diluted for a one-shot bath, given away …"));
}

void DrawOffForm::bottleChanged()
{
    m_there->setText(tr("%1 is in the bottle.").arg(volumeText(batch()->volume, wording())));
}

std::optional<ledger::Happening> DrawOffForm::happening() const
{
    if (!m_volume->value())
        return std::nullopt;
    return ledger::Drawn{
        Millilitres(*m_volume->value()), m_why->text().trimmed().toStdString(), {}};
}

HappeningForm::Caution DrawOffForm::caution() const
{
    return {tr("If it is thrown away"), disposalCautions(batch()->solution->role)};
}

MoveForm::MoveForm(Session& session, const Wording& wording, QWidget* parent)
    : HappeningForm(session, wording, parent)
{
    m_where = addText({});
    m_vessel = new QComboBox(this);
    addRow(QStringLiteral("vessel"), tr("Into &which bottle"), m_vessel);
    addAirOf<ledger::Moved>();
}

void MoveForm::bottleChanged()
{
    m_where->setText(tr("%1 is in %2.")
                         .arg(volumeText(batch()->volume, wording()),
                              QString::fromStdString(batch()->vessel->name)));
    const QSignalBlocker quiet(m_vessel);
    const QVariant before = m_vessel->currentData();
    m_vessel->clear();
    const auto bottles = bottlesAt(session(), at()); // the choices point into it
    fillVessels(*m_vessel, vesselsFor(batch()->volume, session().formulary(), bottles),
                batch()->vessel->id, wording());
    m_vessel->setCurrentIndex(std::max(0, m_vessel->findData(before)));
}

std::optional<ledger::Happening> MoveForm::happening() const
{
    const std::string vessel = m_vessel->currentData().toString().toStdString();
    return vessel.empty() ? std::nullopt : std::optional<ledger::Happening>(ledger::Moved{vessel});
}

bool MoveForm::restIsFine()
{
    if (happening())
        return true;
    showProblem(QStringLiteral("vessel"), tr("Bottle: there is no other one to move it to."));
    return false;
}

HappeningForm::Caution MoveForm::caution() const
{
    return {tr("The new bottle"), storingCautions()};
}

QWidget* MoveForm::first() const { return m_vessel; }

void fillVessels(QComboBox& combo, const std::vector<VesselChoice>& choices, const std::string& own,
                 const Wording& wording)
{
    for (const VesselChoice& choice : choices) {
        if (choice.vessel->id == own)
            continue;
        QString text = MoveForm::tr("%1 · holds %2 · %3", "bottle, capacity, material")
                           .arg(QString::fromStdString(choice.vessel->name),
                                volumeText(choice.vessel->capacity, wording),
                                materialShort(choice.vessel->material));
        if (choice.holds)
            text = MoveForm::tr("%1 · in use by %2")
                       .arg(text, QString::fromStdString(choice.holds->batch.name));
        combo.addItem(text, QString::fromStdString(choice.vessel->id));
    }
}

} // namespace ullage::app
