#include "app/dialogs/deed_dialog.h"

#include "app/dialogs/consequence_card.h"
#include "app/dialogs/side_column.h"
#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"
#include "app/words/merge_words.h"
#include "core/ledger/consequences.h"

#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <set>
#include <variant>

namespace ullage::app
{

namespace
{

constexpr int kPauseMs = 150; // after typing, before the consequences are reckoned

// Whether one of `comes` takes back what has kept the event taken back.
bool isBroughtBack(const std::string& id, const std::vector<ledger::Event>& all,
                   const std::vector<ledger::Event>& comes)
{
    const auto voidedBy = [](const ledger::Event& event) {
        const auto* voided = std::get_if<ledger::Voided>(&event.what);
        return voided ? voided->voids : std::string();
    };
    return std::any_of(comes.begin(), comes.end(), [&](const ledger::Event& come) {
        return std::any_of(all.begin(), all.end(), [&](const ledger::Event& kept) {
            return kept.id == voidedBy(come) && voidedBy(kept) == id;
        });
    });
}

} // namespace

DeedDialog::DeedDialog(Door& door, const QString& title, QWidget* parent)
    : FormDialog(door.wording(), title, parent), m_door(door),
      m_form(new FieldForm(door.wording(), this)), m_row(new FoldingRow), m_later(new QTimer(this))
{
    m_row->setSpacing(Space::kPage);
    auto* left = new QVBoxLayout;
    left->addWidget(m_form);
    left->addStretch(1);
    m_row->addColumn(left, 1);
    body()->addLayout(m_row, 1);
    m_forms.push_back(m_form);
    m_later->setSingleShot(true);
    m_later->setInterval(kPauseMs);
    connect(m_later, &QTimer::timeout, this, &DeedDialog::lookAhead);
    connect(m_form, &FieldForm::changed, m_later, qOverload<>(&QTimer::start));
    connect(&door, &Door::standingChanged, this, &DeedDialog::showStanding);
    showStanding();
}

// Before anything is filled in, and not only when it is refused. What was filled in stays.
void DeedDialog::showStanding()
{
    const auto& why = door().readOnly();
    deedButton()->setEnabled(!why);
    if (why)
        setRefusal(errorSentence(*why, wording()));
    else if (m_cannot)
        setRefusal({});
    m_cannot = why.has_value();
}

void DeedDialog::heed(FieldForm* form)
{
    m_forms.push_back(form);
    connect(form, &FieldForm::changed, m_later, qOverload<>(&QTimer::start));
}

WhenEdit* DeedDialog::addWhen(std::optional<chemistry::Instant> earliest, const QString& what,
                              Width width)
{
    m_when = new WhenEdit([&door = door()] { return door.now(); }, wording().locale, this);
    m_when->setEarliest(earliest, what);
    addRow(QStringLiteral("at"), tr("W&hen"), m_when, width);
    return m_when;
}

void DeedDialog::addCautions(const QString& heading, const QStringList& cautions)
{
    if (cautions.isEmpty())
        return;
    auto* box = new CautionBox(heading, this);
    box->setLines(cautions);
    side()->addWidget(box);
}

QVBoxLayout* DeedDialog::side()
{
    if (!m_side) {
        auto* column = new SideColumn(this);
        m_side = column->column();
        m_row->addColumn(column);
    }
    return m_side;
}

chemistry::Instant DeedDialog::moment() const { return m_when ? m_when->moment() : door().now(); }

void DeedDialog::showFollows(Follows when)
{
    m_whenFollows = when;
    m_follows = new ConsequenceCard(this);
    side()->insertWidget(0, m_follows);
    lookAhead();
}

void DeedDialog::lookAheadSoon() { m_later->start(); }

void DeedDialog::lookAhead()
{
    if (!m_follows)
        return;
    const bool said = m_whenFollows == Follows::Always || (m_when && !m_when->isNow());
    m_follows->setVisible(said);
    if (!said)
        return m_follows->showText({}, false);
    if (m_when && !m_when->isUnderstood())
        return m_follows->showText(m_when->problem(), false);
    const auto events = wouldEnter();
    if (!events)
        return m_follows->showText(nothingFollows(), false);
    const auto refused = follow(*events);
    if (refused)
        m_follows->showText(refusedText(*refused), true);
    followed(refused);
}

QString DeedDialog::refusedText(const Error& error) const
{
    const auto events = error.code == ErrorCode::CannotVoid ? wouldEnter() : std::nullopt;
    if (!events)
        return errorSentence(error, wording());
    std::vector<std::string> batches;
    for (const ledger::Event& event : *events)
        batches.push_back(event.batch);
    auto all = enteredFor(batches);
    if (!all)
        return errorSentence(error, wording());
    all->insert(all->end(), events->begin(), events->end());
    const auto resting = ledger::firstNotFitting(*all, formulary());
    if (!resting)
        return errorSentence(error, wording());
    const QString named = entryText({resting->event, {}}, formulary(), door().now(), wording());
    if (isBroughtBack(resting->event.id, *all, *events))
        return tr("“%1” cannot count again while what it rests on is taken back. Bring that back "
                  "first.")
            .arg(named);
    return tr("This cannot be done while “%1” counts, which rests on it. Take that back or correct "
              "it first.")
        .arg(named);
}

// What a bottle is filled with is part of it, so all of them are looked at together.
Result<std::vector<ledger::Event>>
DeedDialog::enteredFor(const std::vector<std::string>& batches) const
{
    std::vector<ledger::Event> all;
    std::set<std::string> there;
    for (const std::string& batch : batches) {
        if (batch.empty() || !there.insert(batch).second)
            continue; // came along with one before
        auto some = door().connectedEvents(batch);
        if (!some)
            return some;
        for (ledger::Event& event : *some) {
            there.insert(event.batch);
            all.push_back(std::move(event));
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.entry < b.entry; });
    return all;
}

// In the order in which the bottles come.
std::optional<Error> DeedDialog::follow(const std::vector<ledger::Event>& events)
{
    const auto now = std::max(door().now(), moment()); // the clock runs on meanwhile
    std::vector<std::string> batches;
    std::vector<ledger::Event> extra;
    for (const ledger::Event& event : events) {
        if (event.batch.empty())
            continue; // nothing is reckoned from a packet
        extra.push_back(event);
        if (std::find(batches.begin(), batches.end(), event.batch) == batches.end())
            batches.push_back(event.batch);
    }
    const auto entered = enteredFor(batches);
    if (!entered)
        return entered.error();
    std::vector<BottleConsequences> bottles;
    for (const std::string& batch : batches) {
        const auto what = ledger::consequencesOf(batch, *entered, extra, now, formulary());
        if (!what)
            return what.error();
        const auto& known = what->before ? what->before : what->after;
        bottles.push_back({QString::fromStdString(known ? known->batch.name : batch), *what});
    }
    m_follows->showFigures(bottles, now, wording());
    return std::nullopt;
}

ledger::IdMaker DeedDialog::wouldBeIds()
{
    return [made = 0]() mutable { return "would-be-" + std::to_string(made++); };
}

QString DeedDialog::nothingFollows() const
{
    return tr("Fill in the fields; the effect is shown here.");
}

QStringList DeedDialog::consequences() const
{
    return m_follows ? m_follows->lines() : QStringList();
}

QString DeedDialog::problemOf(const QString& field) const
{
    for (const FieldForm* form : m_forms) {
        if (const QString problem = form->problemOf(field); !problem.isEmpty())
            return problem;
    }
    const bool known = std::any_of(m_forms.begin(), m_forms.end(),
                                   [&](const FieldForm* form) { return form->has(field); });
    return known ? QString() : refusal();
}

void DeedDialog::clearProblems()
{
    for (FieldForm* form : m_forms)
        form->clearProblems();
    FormDialog::clearProblems();
    if (m_cannot)
        showStanding(); // that does not go by what was typed
}

void DeedDialog::showProblem(const QString& field, const QString& problem)
{
    const bool shown = std::any_of(m_forms.begin(), m_forms.end(), [&](FieldForm* form) {
        return form->showProblem(field, problem);
    });
    if (!shown)
        setRefusal(problem);
}

void DeedDialog::showError(const Error& error)
{
    // What is wrong within a field is said under it.
    const QString field = QString::fromStdString(error.field).section(u'.', 0, 0);
    showProblem(field, refusedText(error));
}

bool DeedDialog::fieldsAreFine()
{
    bool fine = true;
    for (FieldForm* form : m_forms) {
        if (!form->isHidden() && !form->figuresAreFine())
            fine = false;
    }
    return fine && restIsFine();
}

} // namespace ullage::app
