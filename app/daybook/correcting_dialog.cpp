#include "app/daybook/correcting_dialog.h"

#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QLineEdit>

#include <chrono>

namespace ullage::app
{

using namespace ledger;

namespace
{

auto wholeMinuteOf(chemistry::Instant moment)
{
    return std::chrono::floor<std::chrono::minutes>(moment);
}

} // namespace

chemistry::Instant unlessSameMinute(chemistry::Instant was, chemistry::Instant chosen)
{
    return wholeMinuteOf(chosen) == wholeMinuteOf(was) ? was : chosen;
}

CorrectingDialog::CorrectingDialog(Door& door, const QString& what, std::vector<Event> entered,
                                   QWidget* parent)
    : HappeningDialog(door, tr("Correct an entry"), parent), m_entered(std::move(entered))
{
    addHeading(what);
    addText(tr("The entry is taken back and entered anew with what you change; what came later "
               "stays. Undo takes both back."));
    setDeed(tr("Correct"));
}

WhenEdit* CorrectingDialog::addWhenAndWhy()
{
    WhenEdit* when = addWhen();
    m_why = new QLineEdit(this);
    m_why->setMaxLength(static_cast<int>(formulary::fieldOf(&Voided::why).longest));
    m_why->setPlaceholderText(tr("misread, wrong day…"));
    addRow(QStringLiteral("why"), tr("Wh&y, if you like"), m_why);
    when->setMoment(m_entered.front().at);
    return when;
}

chemistry::Instant CorrectingDialog::correctedMoment() const
{
    return unlessSameMinute(m_entered.front().at, moment());
}

std::optional<std::vector<Event>> CorrectingDialog::wouldEnter() const
{
    const auto comes = instead();
    if (!comes)
        return std::nullopt;
    std::vector<Event> all;
    for (const Event& was : m_entered)
        all.push_back({"would-go-" + was.id, was.batch, door().now(), Voided{was.id, {}}, {}, {}});
    all.insert(all.end(), comes->begin(), comes->end());
    return all;
}

Result<void> CorrectingDialog::act()
{
    const auto comes = instead();
    if (!comes) // the fields have said what is missing
        return refuse({.code = ErrorCode::Missing});
    std::vector<std::string> goes;
    for (const Event& was : m_entered)
        goes.push_back(was.id);
    return door().correct(goes, *comes, m_why->text().trimmed().toStdString(), filmLines());
}

} // namespace ullage::app
