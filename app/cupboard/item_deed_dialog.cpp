#include "app/cupboard/item_deed_dialog.h"

#include "app/cupboard/cupboard_words.h"
#include "app/widgets/plain_text.h"
#include "app/words/cautions.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QComboBox>
#include <QLineEdit>

#include <limits>

namespace ullage::app
{

using ledger::ItemKind;

namespace
{

QString titleOf(CupboardAction deed, const QString& name)
{
    switch (deed) {
    case CupboardAction::Open:
        return ItemDeedDialog::tr("%1 was opened").arg(name);
    case CupboardAction::Take:
        return ItemDeedDialog::tr("Take of %1").arg(name);
    case CupboardAction::Count:
        return ItemDeedDialog::tr("Count %1").arg(name);
    case CupboardAction::ThrowAway:
        return ItemDeedDialog::tr("Throw away %1").arg(name);
    default:
        break;
    }
    return ItemDeedDialog::tr("Take %1 out of the book").arg(name);
}

// Nobody is hurt by a filter or a glove.
QStringList openingCautions(ItemKind kind)
{
    if (kind == ItemKind::Supply)
        return {};
    return {kind == ItemKind::Liquid ? Cautions::glovesAndEyes() : Cautions::powders(),
            Cautions::noEating(), Cautions::eyes(), Cautions::packetFirst()};
}

QStringList throwingAwayCautions(ItemKind kind)
{
    if (kind == ItemKind::Supply)
        return {};
    return {Cautions::oneCanEach(), Cautions::septicTank(), Cautions::glovesAndEyes(),
            Cautions::noEating(),   Cautions::eyes(),       Cautions::licensed()};
}

} // namespace

ItemDeedDialog::ItemDeedDialog(CupboardAction deed, Door& door, std::vector<ledger::ItemHere> items,
                               QWidget* parent)
    : DeedDialog(door,
                 titleOf(deed, itemName(items.front().item, *door.formulary(), door.wording())),
                 parent),
      m_deed(deed), m_items(std::move(items))
{
    addWhich();
    switch (m_deed) {
    case CupboardAction::Open:
        addText(tr("Once opened, a concentrate keeps for a time of its own; an opened packet of "
                   "powder should be mixed whole."));
        addCautions(tr("Before you open it"), openingCautions(item().item.kind));
        setDeed(tr("Opened"));
        break;
    case CupboardAction::Take:
        addText(tr("There now: %1.").arg(leftText(item(), unit(), wording())));
        addAmount(tr("How &much is taken"));
        addBatch();
        addCautions(tr("Before you open it"), openingCautions(item().item.kind));
        setDeed(tr("Take"));
        break;
    case CupboardAction::Count:
        addText(tr("By the book there should be %1.").arg(leftText(item(), unit(), wording())));
        addAmount(tr("How &much there is"));
        setDeed(tr("Save count"));
        break;
    case CupboardAction::ThrowAway:
        m_why = new QLineEdit(this);
        m_why->setMaxLength(static_cast<int>(formulary::fieldOf(&ledger::ThrownAway::why).longest));
        addRow(QStringLiteral("why"), tr("Wh&y"), m_why);
        addCautions(tr("Before you throw it away"), throwingAwayCautions(item().item.kind));
        setDeed(tr("Throw away"), true);
        break;
    default:
        addText(tr("For what was entered by mistake. What happened to it goes too; Undo brings it "
                   "back. What is used up or thrown away is entered with “Take” or “Throw away”."));
        setDeed(tr("Take out of the book"), true);
        break;
    }
    if (m_deed != CupboardAction::Withdraw)
        addWhen();
    if (m_amount)
        m_amount->setFocus();
}

void ItemDeedDialog::addWhich()
{
    if (m_items.size() < 2)
        return;
    m_which = new QComboBox(this);
    for (const ledger::ItemHere& here : m_items) {
        QStringList parts;
        if (!here.lot.empty())
            parts << tr("lot %1").arg(QString::fromStdString(here.lot));
        parts << keepsText(here, door().now(), wording()) << dayWords(here.bought, wording().locale)
              << QString::fromStdString(here.item.place);
        parts.removeAll(QString());
        m_which->addItem(
            plainCaption(parts.isEmpty() ? tr("one of them") : parts.join(QStringLiteral(" · "))));
    }
    addRow(QStringLiteral("item"), tr("Which o&ne"), m_which);
}

const ledger::ItemHere& ItemDeedDialog::item() const
{
    const int chosen = m_which ? std::max(0, m_which->currentIndex()) : 0;
    return m_items[static_cast<std::size_t>(chosen)];
}

QString ItemDeedDialog::unit() const
{
    const auto* supply = std::get_if<ledger::Supply>(&item().line);
    return supply ? QString::fromStdString(supply->unit) : QString();
}

void ItemDeedDialog::addAmount(const QString& label)
{
    const ItemKind kind = item().item.kind;
    const QString in = kind == ItemKind::Powder     ? tr("packets")
                       : kind == ItemKind::Liquid   ? unitText(QuantityKind::Volume, wording())
                       : kind == ItemKind::Chemical ? tr("g")
                                                    : unit();
    const QString words = in.isEmpty() ? label : tr("%1, %2", "figure, its unit").arg(label, in);
    m_amount =
        new QuantityEdit(kind == ItemKind::Liquid ? QuantityKind::Volume : QuantityKind::Number,
                         QString(words).remove(u'&'), wording(), this);
    const bool counting = m_deed == CupboardAction::Count;
    m_amount->setRange(counting ? 0 : std::numeric_limits<double>::min(),
                       kind == ItemKind::Powder ? 1 : ledger::kMostAmount);
    m_amount->setRequired(true);
    addRow(QStringLiteral("amount"), words, m_amount, Width::Half);
}

void ItemDeedDialog::addBatch()
{
    m_batch = new QComboBox(this);
    m_batch->addItem(tr("for no bottle in particular"), QString());
    for (const Bottle& bottle : door().bottles())
        m_batch->addItem(plainCaption(QString::fromStdString(bottle.batch.name)),
                         QString::fromStdString(bottle.batch.id));
    addRow(QStringLiteral("for"), tr("&For"), m_batch, Width::Half);
}

Result<void> ItemDeedDialog::withdraw()
{
    return std::visit(
        [&](auto line) -> Result<void> {
            line.replaces = line.id;
            line.id = door().newId();
            line.withdrawn = true;
            return door().add(std::vector<ledger::CupboardLine>{std::move(line)}).map([](auto&&) {
            });
        },
        item().line);
}

Result<void> ItemDeedDialog::act()
{
    const std::string id = item().item.id;
    switch (m_deed) {
    case CupboardAction::Open:
        return door().recordOf(ledger::OpenedPacket{id}, moment());
    case CupboardAction::Take:
        return door().recordOf(
            ledger::Taken{id, *m_amount->value(), m_batch->currentData().toString().toStdString()},
            moment());
    case CupboardAction::Count:
        return door().recordOf(ledger::Counted{id, *m_amount->value()}, moment());
    case CupboardAction::ThrowAway:
        return door().recordOf(ledger::ThrownAway{id, m_why->text().trimmed().toStdString()},
                               moment());
    default:
        break;
    }
    return withdraw();
}

} // namespace ullage::app
