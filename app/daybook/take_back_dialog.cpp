#include "app/daybook/take_back_dialog.h"

#include "app/daybook/consequence_card.h"
#include "app/words/error_words.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include <map>

namespace ullage::app
{

TakeBackDialog::TakeBackDialog(const DialogContext& context, const QString& what,
                               std::vector<TakingBack> events, bool bringBack, QWidget* parent)
    : DeedDialog(context, bringBack ? tr("Bring an entry back") : tr("Take an entry back"), parent),
      m_events(std::move(events)), m_bringBack(bringBack)
{
    addHeading(what);
    addText(bringBack ? tr("It counts again, at its own time, as if it had never been taken back.")
                      : tr("It stays in the book, struck out; everything is reckoned as if it had "
                           "never happened."));
    m_why = new QLineEdit(this);
    m_why->setPlaceholderText(tr("wrong bottle, counted twice …"));
    addRow(QStringLiteral("why"), tr("&Why"), m_why);
    m_follows = new ConsequenceCard(this);
    side()->addWidget(m_follows);
    setDeed(bringBack ? tr("Bring back") : tr("Take back"), !bringBack);
    showConsequences();
    m_why->setFocus();
}

QStringList TakeBackDialog::consequences() const { return m_follows->lines(); }

void TakeBackDialog::showConsequences()
{
    const auto now = session().now();
    std::map<std::string, std::vector<ledger::Event>> voidings;
    for (const TakingBack& one : m_events) {
        auto& ofBatch = voidings[one.batch];
        const std::string id = "preview-" + std::to_string(ofBatch.size());
        ofBatch.push_back({id, one.batch, now, ledger::Voided{one.event, {}}, {}});
    }
    std::vector<BottleConsequences> bottles;
    for (const auto& [batch, extra] : voidings) {
        if (batch.empty())
            continue; // a packet's: nothing is reckoned from it
        const auto entered = session().book().events(batch);
        const auto what = entered
                              ? ledger::consequencesOf(*entered, extra, now, session().formulary())
                              : tl::unexpected(entered.error());
        if (!what) {
            m_follows->showText(errorSentence(what.error(), wording()), true);
            return;
        }
        const auto& known = what->before ? what->before : what->after;
        bottles.push_back({QString::fromStdString(known ? known->batch.name : batch), *what});
    }
    if (bottles.empty())
        m_follows->showText(tr("Nothing is reckoned differently."), false);
    else
        m_follows->showFigures(bottles, now, wording());
}

bool TakeBackDialog::fieldsAreFine()
{
    if (!m_why->text().trimmed().isEmpty())
        return true;
    showProblem(QStringLiteral("why"), tr("Why: a few words are needed, for whoever wonders."));
    return false;
}

Result<void> TakeBackDialog::act()
{
    std::vector<std::string> ids;
    for (const TakingBack& one : m_events)
        ids.push_back(one.event);
    return session().doing([&](ledger::Book& book) {
        return book.voidEvents(ids, m_why->text().trimmed().toStdString());
    });
}

} // namespace ullage::app
