#include "app/cupboard/work_dialog.h"

#include "app/cupboard/work_words.h"
#include "app/widgets/moment_field.h"
#include "app/widgets/plain_text.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/shown_names.h"
#include "core/cupboard/work_series.h"
#include "core/formulary/field_of.h"
#include "core/ledger/entry_fields.h"

#include <QComboBox>
#include <QLineEdit>

#include <algorithm>

namespace ullage::app
{

using formulary::fieldOf;
using ledger::Work;

namespace
{

const QString kUntil = QStringLiteral(";UNTIL=");

} // namespace

WorkDialog::WorkDialog(Door& door, const Work& work, QWidget* parent)
    : DeedDialog(door, work.id.empty() ? tr("Add work") : tr("Edit work"), parent),
      m_replaces(work.id), m_name(new QLineEdit(this)),
      m_at(new MomentField(
          MomentField::Asks::Moment, [&door] { return door.now(); }, wording().locale, this)),
      m_developer(new QComboBox(this)), m_repeats(new QComboBox(this)),
      m_until(new MomentField(
          MomentField::Asks::Day, [&door] { return door.now(); }, wording().locale, this))
{
    m_at->setLooksAhead();
    m_until->setLooksAhead();
    m_until->setMayBeEmpty();
    m_name->setMaxLength(static_cast<int>(fieldOf(&Work::name).longest));
    m_name->setPlaceholderText(tr("evening course, films of the trip…"));
    m_name->setText(QString::fromStdString(work.name));
    addRow(QStringLiteral("name"), tr("&Name, if you like"), m_name);
    addRow(QStringLiteral("at"), tr("W&hen, the first time"), m_at, Width::Half);
    m_films = form()->addFigure<chemistry::Films>(fieldOf(&Work::films), tr("&Films each time"));
    m_films->setQuantity(work.films);
    m_developer->addItem(tr("the developer mixed last"), QString());
    for (const auto& solution : formulary().currentSolutions()) {
        if (solution->role == formulary::Role::Developer)
            m_developer->addItem(plainCaption(shownName(solution->name)),
                                 QString::fromStdString(solution->id));
    }
    for (const std::string& id : formulary().family(work.developer)) {
        if (const int found = m_developer->findData(QString::fromStdString(id));
            found >= 0 && !work.developer.empty())
            m_developer->setCurrentIndex(found);
    }
    addRow(QStringLiteral("developer"), tr("&Developer"), m_developer);
    addRepeats(work.rule);
    if (work.id.empty())
        m_at->setShown(localDate(door.now()).addDays(7), QTime(18, 0));
    else
        m_at->setShown(localDate(work.at), localTime(work.at).time());
    setDeed(work.id.empty() ? tr("Add") : tr("Save"));
    m_name->setFocus();
}

void WorkDialog::addRepeats(const std::string& rule)
{
    m_repeats->addItem(tr("once"), QString());
    for (const char* one :
         {"FREQ=WEEKLY", "FREQ=WEEKLY;INTERVAL=2", "FREQ=WEEKLY;INTERVAL=4", "FREQ=MONTHLY"})
        m_repeats->addItem(ruleWords(one, wording().locale), QString::fromLatin1(one));
    QString bare = QString::fromStdString(rule);
    const auto read = cupboard::readRule(rule);
    const qsizetype until = bare.indexOf(kUntil);
    if (until >= 0 && read && read->until && bare.indexOf(u';', until + 1) < 0) {
        m_until->setShown(
            localDate(read->untilShown ? wallClock().when(*read->until) : *read->until));
        bare.truncate(until);
    }
    if (m_repeats->findData(bare) < 0) // as a calendar said it
        m_repeats->addItem(plainCaption(ruleWords(bare.toStdString(), wording().locale)), bare);
    m_repeats->setCurrentIndex(m_repeats->findData(bare));
    addRow(QStringLiteral("rule"), tr("How &often"), m_repeats, Width::Half);
    m_until->setPlaceholderText(tr("without end"));
    addRow(QStringLiteral("until"), tr("&Until and including"), m_until, Width::Half);
    connect(m_repeats, &QComboBox::currentIndexChanged, this, &WorkDialog::showUntil);
    showUntil();
}

// A rule that counts, or has an end of its own, takes no other.
void WorkDialog::showUntil()
{
    const QString rule = m_repeats->currentData().toString();
    setRowVisible(QStringLiteral("until"),
                  !rule.isEmpty() && !rule.contains(u"COUNT=") && !rule.contains(u"UNTIL="));
}

std::string WorkDialog::rule() const
{
    const QString rule = m_repeats->currentData().toString();
    if (!rule.isEmpty() && !m_until->isHidden() && !m_until->isEmpty())
        return cupboard::ruleUntil(rule.toStdString(), instantOf(m_until->date().endOfDay()));
    return rule.toStdString();
}

bool WorkDialog::restIsFine()
{
    bool fine = true;
    if (!m_until->isHidden() && !m_until->problem().isEmpty()) {
        showProblem(QStringLiteral("until"), m_until->problem());
        fine = false;
    }
    if (!m_films->value()) {
        showProblem(QStringLiteral("films"), tr("Films each time: say how many."));
        fine = false;
    }
    if (!m_at->isUnderstood()) {
        showProblem(QStringLiteral("at"), m_at->problem());
        fine = false;
    } else if (!m_at->saysNow() && momentsAt(m_at->date(), m_at->time()).empty()) {
        showProblem(QStringLiteral("at"), tr("When: the clock is put forward over that time."));
        fine = false;
    }
    return fine;
}

Result<void> WorkDialog::act()
{
    Work work;
    work.id = door().newId();
    work.replaces = m_replaces;
    work.name = m_name->text().trimmed().toStdString();
    work.at = m_at->saysNow() ? door().now() : momentsAt(m_at->date(), m_at->time()).front();
    work.films = m_films->quantity();
    work.developer = m_developer->currentData().toString().toStdString();
    work.rule = rule();
    return door().add(std::vector<ledger::CupboardLine>{std::move(work)}).map([](auto&&) {});
}

} // namespace ullage::app
