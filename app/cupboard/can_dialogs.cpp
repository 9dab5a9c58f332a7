#include "app/cupboard/can_dialogs.h"

#include "app/dialogs/can_choice.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "app/words/waste_words.h"
#include "core/formulary/field_of.h"
#include "core/ledger/entry_fields.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace ullage::app
{

using formulary::fieldOf;
using ledger::Container;
using ledger::HandedOver;
using ledger::PouredIn;

namespace
{

std::string typedIn(const QLineEdit& line) { return line.text().trimmed().toStdString(); }

} // namespace

CanDialog::CanDialog(Door& door, const Container& can, QWidget* parent)
    : DeedDialog(door, can.id.empty() ? tr("New can for waste") : tr("Edit a can"), parent),
      m_replaces(can.id), m_holds(new QComboBox(this))
{
    m_name = form()->addWords(fieldOf(&Container::name), tr("&Name"));
    m_name->setText(QString::fromStdString(can.name));
    for (std::size_t i = 0; i < ledger::kWasteCodes.size(); ++i)
        m_holds->addItem(wasteName(static_cast<ledger::Waste>(i)));
    m_holds->setCurrentIndex(can.id.empty() ? 0 : static_cast<int>(can.holds));
    addRow(QStringLiteral("holds"), tr("What it is &for"), m_holds, Width::Half);
    m_capacity =
        form()->addFigure<chemistry::Millilitres>(fieldOf(&Container::capacity), tr("It &holds"));
    if (!can.id.empty())
        m_capacity->setQuantity(can.capacity);
    m_place = form()->addWords(fieldOf(&Container::place), tr("Wh&ere it stands"));
    m_place->setText(QString::fromStdString(can.place));
    addCautions(tr("Cans for waste"), {Cautions::oneCanEach(), Cautions::labelAndLock(),
                                       Cautions::foodBottles(), Cautions::septicTank()});
    setDeed(can.id.empty() ? tr("Enter the can") : tr("Save"));
    m_name->setFocus();
}

bool CanDialog::restIsFine()
{
    if (!typedIn(*m_name).empty())
        return true;
    showProblem(QStringLiteral("name"), tr("Name: say what is written on it."));
    return false;
}

Result<void> CanDialog::act()
{
    Container can;
    can.id = door().newId();
    can.name = typedIn(*m_name);
    can.holds = static_cast<ledger::Waste>(m_holds->currentIndex());
    can.capacity = *m_capacity->quantity();
    can.place = typedIn(*m_place);
    can.replaces = m_replaces;
    return door().add(std::vector<ledger::CupboardLine>{can}).map([](auto&&) {});
}

PourInDialog::PourInDialog(Door& door, const ledger::CanHere& can, QWidget* parent)
    : DeedDialog(door, tr("Pour into %1").arg(QString::fromStdString(can.can.name)), parent),
      m_can(can), m_from(new QComboBox(this))
{
    addText(tr("There is room for %1. A whole bottle is discarded into it from the Shelf, which "
               "ends the bottle too.")
                .arg(volumeText(can.can.capacity - can.stock.volume, wording())));
    m_volume = form()->addFigure<chemistry::Millilitres>(fieldOf(&PouredIn::volume), tr("&Volume"));
    m_from->addItem(tr("not from a bottle on the shelf"), QString());
    for (const Bottle& bottle : door.bottles())
        m_from->addItem(plainCaption(QString::fromStdString(bottle.batch.name)),
                        QString::fromStdString(bottle.batch.id));
    addRow(QStringLiteral("from"), tr("What it is, &from"), m_from, Width::Half);
    m_doubts = addText({});
    setTone(m_doubts, Tone::Discard);
    addWhen();
    addCautions(tr("Before you pour it in"),
                {Cautions::oneCanEach(), Cautions::glovesAndEyes(), Cautions::noCleaners(),
                 Cautions::noEating(), Cautions::eyes(), Cautions::silver(),
                 Cautions::septicTank()});
    setDeed(tr("Pour in"));
    connect(m_from, &QComboBox::currentIndexChanged, this, &PourInDialog::showDoubts);
    showDoubts();
    m_volume->setFocus();
}

void PourInDialog::showDoubts()
{
    const Bottle* bottle = door().bottle(m_from->currentData().toString().toStdString());
    const QStringList words =
        bottle ? doubtWords(doubtsAbout(*bottle->batch.solution, m_can, door())) : QStringList();
    m_doubts->setText(words.join(u' '));
    m_doubts->setVisible(!words.isEmpty());
}

Result<void> PourInDialog::act()
{
    return door().recordOf(PouredIn{m_can.can.id, *m_volume->quantity(),
                                    m_from->currentData().toString().toStdString()},
                           moment());
}

HandOverDialog::HandOverDialog(Door& door, const ledger::CanHere& can, QWidget* parent)
    : DeedDialog(door, tr("Hand over %1").arg(QString::fromStdString(can.can.name)), parent),
      m_can(can.can.id)
{
    addText(tr("In it: %1.").arg(volumeText(can.stock.volume, wording())));
    m_to = form()->addWords(fieldOf(&HandedOver::to), tr("&Who takes it"));
    m_volume = form()->addFigure<chemistry::Millilitres>(fieldOf(&HandedOver::volume),
                                                         tr("&Volume, if not all of it"));
    m_document = form()->addWords(fieldOf(&HandedOver::document), tr("&Document"), Width::Half);
    m_document->setPlaceholderText(tr("number or name"));
    addWhen();
    addCautions(tr("Before you hand it over"),
                {Cautions::licensed(), Cautions::wasteCode(formulary::Role::Developer),
                 Cautions::wasteCode(formulary::Role::Fixer), Cautions::septicTank()});
    setDeed(tr("Hand over"));
    m_to->setFocus();
}

bool HandOverDialog::restIsFine()
{
    if (!typedIn(*m_to).empty())
        return true;
    showProblem(QStringLiteral("to"), tr("Who takes it: a name is needed."));
    return false;
}

Result<void> HandOverDialog::act()
{
    return door().recordOf(
        HandedOver{m_can, typedIn(*m_to), m_volume->quantity(), typedIn(*m_document)}, moment());
}

} // namespace ullage::app
