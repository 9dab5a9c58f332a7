#include "app/dialogs/voiding_dialog.h"

#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QLineEdit>

namespace ullage::app
{

VoidingDialog::VoidingDialog(const DialogContext& context, const QString& title, QWidget* parent)
    : DeedDialog(context, title, parent)
{
}

QLineEdit* VoidingDialog::addWhy(const QString& label)
{
    m_why = new QLineEdit(this);
    m_why->setMaxLength(static_cast<int>(formulary::fieldOf(&ledger::Voided::why).longest));
    m_why->setPlaceholderText(tr("wrong bottle, counted twice …"));
    addRow(QStringLiteral("why"), label, m_why);
    return m_why;
}

std::optional<std::vector<ledger::Event>> VoidingDialog::wouldEnter() const
{
    const auto taken = events();
    if (taken.empty())
        return std::nullopt;
    std::vector<ledger::Event> entries;
    const auto newId = wouldBeIds();
    for (const TakingBack& one : taken)
        entries.push_back({newId(), one.batch, moment(), ledger::Voided{one.event, {}}, {}, {}});
    return entries;
}

bool VoidingDialog::restIsFine()
{
    if (!m_why->text().trimmed().isEmpty())
        return true;
    showProblem(QStringLiteral("why"), tr("Why: a few words are needed, for whoever wonders."));
    return false;
}

Result<void> VoidingDialog::act()
{
    std::vector<std::string> ids;
    for (const TakingBack& one : events())
        ids.push_back(one.event);
    return session().doing([&](ledger::Book& book) {
        return book.voidEvents(ids, m_why->text().trimmed().toStdString());
    });
}

} // namespace ullage::app
