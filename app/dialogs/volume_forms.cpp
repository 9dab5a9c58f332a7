#include "app/dialogs/volume_forms.h"

#include "app/words/cautions.h"
#include "app/words/event_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/ledger/deed_events.h"
#include "core/ledger/replenish.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include <algorithm>

namespace ullage::app
{

using chemistry::Instant;
using chemistry::Millilitres;

namespace
{

// What a choice of the box "From" is, beside the id that is its data.
enum class Source { Fresh, Bottle, Replenisher };
constexpr int kSource = Qt::UserRole + 1;

void addSource(QComboBox& box, const QString& text, Source source, const std::string& id)
{
    box.addItem(text, QString::fromStdString(id));
    box.setItemData(box.count() - 1, static_cast<int>(source), kSource);
}

// Those of the same solution stand first.
void addBottles(QComboBox& box, const ledger::Batch& batch, const std::vector<Bottle>& bottles)
{
    for (const bool same : {true, false}) {
        for (const Bottle& other : bottles) {
            const ledger::Batch& from = other.batch;
            if (from.solution->role != batch.solution->role || from.id == batch.id ||
                (from.solution->id == batch.solution->id) != same)
                continue;
            const QString name = QString::fromStdString(from.name);
            addSource(box,
                      same ? name
                           : TopUpForm::tr("%1 · %2", "bottle, another solution")
                                 .arg(name, shownName(from.solution->name)),
                      Source::Bottle, from.id);
        }
    }
}

} // namespace

TopUpForm::TopUpForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    m_room = addText({});
    m_volume =
        addFigure<Millilitres>(formulary::fieldOf(&ledger::ToppedUp::volume), tr("&Volume added"));
    m_from = new QComboBox(this);
    addRow(QStringLiteral("from"), tr("F&rom"), m_from);
    addAirOf<ledger::ToppedUp>();
    connect(m_volume, &QuantityEdit::valueChanged, this, [this] { m_volumeTyped = true; });
}

void TopUpForm::bottleChanged()
{
    const auto room = batch()->vessel->capacity - batch()->volume;
    m_room->setText(tr("%1 is in the bottle, and there is room for %2 more.")
                        .arg(volumeText(batch()->volume, wording()), volumeText(room, wording())));
    const QSignalBlocker quiet(m_from);
    const QString before = m_from->currentText();
    m_from->clear();
    const formulary::Solution& own = *batch()->solution;
    if (!own.replenisher.empty()) {
        const auto replenisher = formulary().solution(own.replenisher);
        addSource(
            *m_from,
            tr("Replenisher: %1").arg(shownName(replenisher ? replenisher->name : own.replenisher)),
            Source::Replenisher, own.replenisher);
    }
    addSource(*m_from, tr("Freshly mixed"), Source::Fresh, {});
    addBottles(*m_from, *batch(), bottlesAt(door(), at()));
    m_from->setCurrentIndex(std::max(0, m_from->findText(before)));
    proposeVolume();
}

// What is due, as far as there is room for it; as long as nobody typed anything else.
void TopUpForm::proposeVolume()
{
    const auto due = ledger::replenisherDue(*batch());
    if (!due || m_volumeTyped)
        return;
    const auto room = batch()->vessel->capacity - batch()->volume;
    constexpr Millilitres kWorthAdding(1);
    m_volume->setQuantity(room < kWorthAdding ? std::nullopt : std::optional(std::min(*due, room)));
    QString text = tr("%1 of replenisher is due for the film since the last.")
                       .arg(volumeText(*due, wording()));
    if (room < *due)
        text += u' ' + tr("There is not room for all of it: draw off as much before.");
    m_room->setText(m_room->text() + u' ' + text);
}

void TopUpForm::fill(const ledger::Happening& what)
{
    const auto* added = std::get_if<ledger::ToppedUp>(&what);
    if (!added)
        return;
    m_volume->setQuantity(added->volume);
    const auto source = !added->from.empty()       ? Source::Bottle
                        : !added->solution.empty() ? Source::Replenisher
                                                   : Source::Fresh;
    const std::string& id = source == Source::Bottle ? added->from : added->solution;
    for (int i = 0; i < m_from->count(); ++i) {
        if (m_from->itemData(i, kSource).toInt() == static_cast<int>(source) &&
            m_from->itemData(i).toString().toStdString() == id)
            return m_from->setCurrentIndex(i);
    }
    // A bottle that is no longer offered, but is what was entered.
    const auto other = door().batch(id, at());
    addSource(*m_from, QString::fromStdString(other ? other->name : id), source, id);
    m_from->setCurrentIndex(m_from->count() - 1);
}

ledger::ToppedUp TopUpForm::what() const
{
    ledger::ToppedUp what{m_volume->quantity().value_or(Millilitres(0)), {}, {}};
    const std::string id = m_from->currentData().toString().toStdString();
    const auto source = static_cast<Source>(m_from->currentData(kSource).toInt());
    if (source == Source::Bottle)
        what.from = id;
    else if (source == Source::Replenisher)
        what.solution = id;
    return what;
}

std::optional<ledger::Happening> TopUpForm::happening() const
{
    if (!m_volume->value())
        return std::nullopt;
    return what();
}

std::optional<std::vector<ledger::Event>> TopUpForm::events(const std::string& batch, Instant at,
                                                            const ledger::IdMaker& newId) const
{
    if (!m_volume->value())
        return std::nullopt;
    return ledger::topUpEvents(batch, what(), when(at), newId);
}

Result<void> TopUpForm::enter(const std::string& batch, Instant at) const
{
    return door().topUp(batch, what(), when(at));
}

HappeningForm::Caution TopUpForm::caution() const
{
    return {tr("Before you pour"), toppingUpCautions(batch()->solution->role)};
}

DrawOffForm::DrawOffForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    m_there = addText({});
    m_volume =
        addFigure<Millilitres>(formulary::fieldOf(&ledger::Drawn::volume), tr("&Volume taken out"));
    addAirOf<ledger::Drawn>();
    m_why = addWords(formulary::fieldOf(&ledger::Drawn::why), tr("What &for"));
    m_why->setPlaceholderText(tr("spilled, diluted for a one-shot bath, given away…"));
}

void DrawOffForm::bottleChanged()
{
    m_there->setText(tr("%1 is in the bottle.").arg(volumeText(batch()->volume, wording())));
}

std::optional<ledger::Happening> DrawOffForm::happening() const
{
    if (!m_volume->value())
        return std::nullopt;
    const QString why = m_why->text().trimmed();
    return ledger::Drawn{
        *m_volume->quantity(), why == whyText(m_kept) ? m_kept : why.toStdString(), {}};
}

void DrawOffForm::fill(const ledger::Happening& what)
{
    const auto* drawn = std::get_if<ledger::Drawn>(&what);
    if (!drawn)
        return;
    m_volume->setQuantity(drawn->volume);
    m_kept = drawn->why;
    m_why->setText(whyText(m_kept));
}

HappeningForm::Caution DrawOffForm::caution() const
{
    return {tr("If it is thrown away"), disposalCautions(*batch()->solution)};
}

MoveForm::MoveForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    m_where = addText({});
    m_vessel = new QComboBox(this);
    addRow(QStringLiteral("vessel"), tr("Into &which bottle"), m_vessel);
    addAirOf<ledger::Moved>();
}

void MoveForm::bottleChanged()
{
    m_where->setText(
        tr("%1 is in %2.")
            .arg(volumeText(batch()->volume, wording()), shownName(batch()->vessel->name)));
    const QSignalBlocker quiet(m_vessel);
    const QVariant before = m_vessel->currentData();
    m_vessel->clear();
    const auto bottles = bottlesAt(door(), at()); // the choices point into it
    fillVessels(*m_vessel, vesselsFor(batch()->volume, formulary(), bottles), batch()->vessel->id,
                wording());
    m_vessel->setCurrentIndex(std::max(0, m_vessel->findData(before)));
}

std::optional<ledger::Happening> MoveForm::happening() const
{
    const std::string vessel = m_vessel->currentData().toString().toStdString();
    return vessel.empty() ? std::nullopt : std::optional<ledger::Happening>(ledger::Moved{vessel});
}

void MoveForm::fill(const ledger::Happening& what)
{
    const auto* moved = std::get_if<ledger::Moved>(&what);
    if (!moved)
        return;
    const QString id = QString::fromStdString(moved->vessel);
    if (m_vessel->findData(id) < 0) {
        const auto vessel = formulary().vessel(moved->vessel);
        m_vessel->addItem(vessel ? QString::fromStdString(vessel->name) : id, id);
    }
    m_vessel->setCurrentIndex(m_vessel->findData(id));
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
    const formulary::Role role = batch()->solution->role;
    return {tr("Before you pour"), pouringCautions(role) + storingCautions(role)};
}

QWidget* MoveForm::first() const { return m_vessel; }

void fillVessels(QComboBox& combo, const std::vector<VesselChoice>& choices, const std::string& own,
                 const Wording& wording)
{
    for (const VesselChoice& choice : choices) {
        if (choice.vessel->id == own)
            continue;
        QString text =
            MoveForm::tr("%1 · holds %2 · %3", "bottle, capacity, material")
                .arg(shownName(choice.vessel->name), volumeText(choice.vessel->capacity, wording),
                     materialShort(choice.vessel->material));
        if (choice.holds)
            text = MoveForm::tr("%1 · in use by %2")
                       .arg(text, QString::fromStdString(choice.holds->batch.name));
        combo.addItem(text, QString::fromStdString(choice.vessel->id));
    }
}

} // namespace ullage::app
