#include "app/dialogs/happening_dialog.h"

#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/tab_order.h"

#include <QComboBox>
#include <QVBoxLayout>

namespace ullage::app
{

HappeningDialog::HappeningDialog(Door& door, const QString& title, QWidget* parent)
    : DeedDialog(door, title, parent)
{
}

void HappeningDialog::addKinds(const std::vector<HappeningKind>& kinds, const QString& label,
                               Width width)
{
    m_kind = kinds.front();
    if (kinds.size() == 1)
        return;
    m_kinds = new QComboBox(this);
    m_kinds->setMaxVisibleItems(kHappeningKinds);
    for (const HappeningKind kind : kinds)
        m_kinds->addItem(happeningName(kind), static_cast<int>(kind));
    addRow(QStringLiteral("kind"), label, m_kinds, width);
    connect(m_kinds, &QComboBox::currentIndexChanged, this, [this] {
        m_kind = static_cast<HappeningKind>(m_kinds->currentData().toInt());
        kindChanged();
    });
}

QWidget* HappeningDialog::kindBox() const { return m_kinds; }

void HappeningDialog::addForms()
{
    m_place = new QWidget(this);
    auto* column = new QVBoxLayout(m_place);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    addWide(m_place);
    m_cautions = new CautionBox({}, this);
    m_cautions->hide();
    side()->addWidget(m_cautions);
}

void HappeningDialog::setKind(HappeningKind kind)
{
    if (m_kinds)
        m_kinds->setCurrentIndex(m_kinds->findData(static_cast<int>(kind)));
}

HappeningForm* HappeningDialog::shown() const
{
    const auto made = m_made.find(m_kind);
    return made == m_made.end() ? nullptr : made->second;
}

void HappeningDialog::kindChanged()
{
    if (m_kind != HappeningKind::Film && !shown()) {
        HappeningForm* form = newForm(m_kind, door(), wording(), m_place);
        m_place->layout()->addWidget(form);
        m_made[m_kind] = form;
        heed(form);
        orderTabs(*this); // it stands between others
    }
    for (const auto& [kind, form] : m_made)
        form->setVisible(kind == m_kind);
    clearProblems();
    tellForm();
}

void HappeningDialog::tellForm()
{
    HappeningForm* form = shown();
    if (form && !batch().empty()) {
        if (const auto then = door().batch(batch(), moment()))
            form->setBottle(*then, moment());
    }
    const auto caution = form && form->knowsBottle() ? form->caution() : HappeningForm::Caution();
    m_cautions->setTitle(caution.heading);
    m_cautions->setLines(caution.lines);
    m_cautions->setVisible(!caution.lines.isEmpty());
    lookAheadSoon();
}

bool HappeningDialog::restIsFine() { return shown() == nullptr || shown()->restIsFine(); }

std::optional<std::vector<ledger::Event>> HappeningDialog::wouldEnter() const
{
    return shown() ? shown()->events(batch(), moment(), wouldBeIds()) : std::nullopt;
}

Result<void> HappeningDialog::act()
{
    if (!shown()->happening()) // the form has said what is missing
        return refuse({.code = ErrorCode::Missing});
    return shown()->enter(batch(), moment());
}

BottleDialog::BottleDialog(HappeningKind kind, Door& door, const Bottle& bottle, QWidget* parent)
    : BottleDialog(std::vector{kind}, door, bottle, parent)
{
}

BottleDialog::BottleDialog(const std::vector<HappeningKind>& kinds, Door& door,
                           const Bottle& bottle, QWidget* parent)
    : HappeningDialog(door, deedTitle(kinds.front(), QString::fromStdString(bottle.batch.name)),
                      parent),
      m_batch(bottle.batch.id)
{
    addKinds(kinds, tr("&Kind of test"));
    addForms();
    auto* when = addWhen(bottle.batch.mixedAt,
                         tr("%1 was mixed").arg(QString::fromStdString(bottle.batch.name)));
    connect(when, &WhenEdit::changed, this, &BottleDialog::tellForm);
    kindChanged();
    showFollows(Follows::Always);
    if (shown()->first())
        shown()->first()->setFocus();
}

void BottleDialog::kindChanged()
{
    HappeningDialog::kindChanged();
    setDeed(deedText(kind()), isGrave(kind()));
}

std::vector<HappeningKind> testsOf(formulary::Role role)
{
    switch (role) {
    case formulary::Role::Fixer:
        return {HappeningKind::ClearingTest, HappeningKind::Look};
    case formulary::Role::Developer:
        return {HappeningKind::StripTest, HappeningKind::Look};
    default:
        return {HappeningKind::Look};
    }
}

} // namespace ullage::app
