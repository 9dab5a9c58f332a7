#include "app/dialogs/exchange_dialog.h"

#include "app/dialogs/bottle_choice.h"
#include "app/dialogs/mark_forms.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_not.h"
#include "app/words/cautions.h"
#include "core/ledger/deed_events.h"
#include "core/ledger/two_baths.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>

namespace ullage::app
{

ExchangeDialog::ExchangeDialog(Door& door, const Bottle& first, QWidget* parent)
    : DeedDialog(door, tr("Exchange baths"), parent), m_first(first.batch.id),
      m_name(QString::fromStdString(first.batch.name)), m_role(first.batch.solution->role),
      m_second(new QComboBox(this))
{
    addText(tr("%1 is discarded, the second bath becomes the first, and a fresh one, mixed "
               "afterwards, the second. After the third exchange discard both.")
                .arg(m_name));
    addRow(QStringLiteral("second"), tr("&Second bath, that takes its place"), m_second);
    m_lacking = addText({});
    setTone(m_lacking, Tone::Near);
    m_discard = new DiscardForm(door, wording(), this);
    addWide(m_discard);
    heed(m_discard);
    auto* when = addWhen(first.batch.mixedAt, tr("%1 was mixed").arg(m_name));
    addCautions(tr("Before you pour it away"), disposalCautions(*first.batch.solution));
    setDeed(tr("Exchange baths"), true);
    connect(when, &WhenEdit::changed, this, &ExchangeDialog::tellForm);
    connect(&door, &Door::standingChanged, this, &ExchangeDialog::offer); // after the base's own
    tellForm();
    showFollows(Follows::Always);
    m_second->setFocus();
}

// One that was a second bath stands first.
void ExchangeDialog::tellForm()
{
    if (const auto then = door().batch(m_first, moment()))
        m_discard->setBottle(*then, moment());
    const QSignalBlocker quiet(m_second);
    const QVariant before = m_second->currentData();
    m_second->clear();
    const auto bottles = bottlesAt(door(), moment());
    for (const bool asSecond : {true, false}) {
        for (const Bottle& bottle : bottles) {
            if (bottle.batch.id != m_first && bottle.batch.solution->role == m_role &&
                ledger::isSecondBath(bottle.batch) == asSecond)
                m_second->addItem(QString::fromStdString(bottle.batch.name),
                                  QString::fromStdString(bottle.batch.id));
        }
    }
    m_second->setCurrentIndex(std::max(0, m_second->findData(before)));
    offer();
    lookAheadSoon();
}

// What is lacking is said before anybody tries; at another moment there may be one.
void ExchangeDialog::offer()
{
    const bool lacks = second().empty();
    const QString why = lacks ? lacking() : QString();
    setRowVisible(QStringLiteral("second"), !lacks);
    m_discard->setVisible(!lacks);
    m_lacking->setText(why);
    m_lacking->setVisible(lacks);
    if (!door().readOnly())
        setWhyNot(deedButton(), why);
}

std::string ExchangeDialog::second() const
{
    return m_second->currentData().toString().toStdString();
}

std::optional<ledger::Discarded> ExchangeDialog::going() const
{
    const auto what = m_discard->happening();
    return what ? std::optional(std::get<ledger::Discarded>(*what)) : std::nullopt;
}

std::string ExchangeDialog::note() const
{
    return tr("First bath from now on, in place of %1.").arg(m_name).toStdString();
}

bool ExchangeDialog::restIsFine()
{
    if (!second().empty())
        return m_discard->restIsFine();
    setRefusal(lacking());
    return false;
}

QString ExchangeDialog::lacking() const
{
    return tr("There is no other bottle of fixer to take its place. Mix one first, or discard %1 "
              "by itself.")
        .arg(m_name);
}

QString ExchangeDialog::nothingFollows() const
{
    return second().empty() ? tr("Nothing yet: there is no second bath.")
                            : DeedDialog::nothingFollows();
}

std::optional<std::vector<ledger::Event>> ExchangeDialog::wouldEnter() const
{
    const auto away = going();
    if (second().empty() || !away)
        return std::nullopt;
    return ledger::exchangeEvents(m_first, *away, second(), note(), {moment(), {}}, wouldBeIds());
}

Result<void> ExchangeDialog::act()
{
    auto done = door().exchangeBaths(m_first, *going(), second(), note(), {moment(), {}});
    if (done)
        m_discard->rememberWay();
    return done;
}

} // namespace ullage::app
