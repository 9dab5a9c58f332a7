#include "app/daybook/forgotten_dialog.h"

#include "app/daybook/film_form.h"
#include "core/formulary/leaflet_time.h"
#include "core/ledger/deed_events.h"

#include <QComboBox>
#include <QSignalBlocker>

namespace ullage::app
{

ForgottenDialog::ForgottenDialog(Door& door, const std::string& batch, QWidget* parent)
    : HappeningDialog(door, tr("Add an entry"), parent), m_bottle(new QComboBox(this)),
      m_film(new FilmForm(door.wording(), this)), m_wanted(batch)
{
    std::vector<Kind> kinds;
    for (int i = 0; i < kHappeningKinds; ++i)
        kinds.push_back(static_cast<Kind>(i));
    addKinds(kinds, tr("Wha&t happened"), Width::Half);
    m_moment = addWhen({}, {}, Width::Half);
    addRow(QStringLiteral("batch"), tr("&Bottle, of those in use then"), m_bottle);
    QStringList names;
    for (const std::string& name : formulary::filmsWithTimes(formulary()))
        names << QString::fromStdString(name);
    m_film->setKnownNames(names);
    addWide(m_film);
    heed(m_film);
    addForms();
    setDeed(tr("Add entry"));
    connect(m_bottle, &QComboBox::currentIndexChanged, this, [this] {
        m_wanted = this->batch();
        fillAlso();
        tellForm();
    });
    connect(m_moment, &WhenEdit::changed, this, &ForgottenDialog::fillBottles);
    fillBottles();
    kindChanged();
    showFollows(Follows::Always);
    kindBox()->setFocus();
}

void ForgottenDialog::kindChanged()
{
    m_film->setVisible(kind() == Kind::Film);
    HappeningDialog::kindChanged();
}

// Only bottles that stood at that time can have had anything happen to them.
void ForgottenDialog::fillBottles()
{
    const QSignalBlocker quiet(m_bottle);
    m_bottle->clear();
    m_standing.clear();
    for (const ledger::BatchState& state : door().standingAt(m_moment->moment())) {
        const auto solution = formulary().solution(state.solution);
        m_standing.push_back({QString::fromStdString(state.id), QString::fromStdString(state.name),
                              solution && solution->role == formulary::Role::Fixer});
        m_bottle->addItem(m_standing.back().name, m_standing.back().id);
    }
    m_bottle->setCurrentIndex(std::max(0, m_bottle->findData(QString::fromStdString(m_wanted))));
    m_bottle->setEnabled(m_bottle->count() > 0);
    fillAlso();
    tellForm();
}

void ForgottenDialog::fillAlso()
{
    BathRows::Bottle first;
    std::vector<BathRows::Bottle> others;
    for (const BathRows::Bottle& bottle : m_standing) {
        if (bottle.id == m_bottle->currentData().toString())
            first = bottle;
        else
            others.push_back(bottle);
    }
    m_film->setBottles(first, others);
}

std::string ForgottenDialog::batch() const
{
    return m_bottle->currentData().toString().toStdString();
}

std::optional<std::vector<ledger::Event>> ForgottenDialog::wouldEnter() const
{
    if (batch().empty())
        return std::nullopt;
    if (kind() != Kind::Film)
        return HappeningDialog::wouldEnter();
    const auto run = m_film->run();
    if (!run)
        return std::nullopt;
    return ledger::eventsOf(*run, "would-be", moment(), wouldBeIds());
}

QString ForgottenDialog::nothingFollows() const
{
    return batch().empty()
               ? tr("No bottle was in use then. Choose another time, or mix a batch first.")
               : HappeningDialog::nothingFollows();
}

bool ForgottenDialog::restIsFine()
{
    if (batch().empty()) {
        showProblem(QStringLiteral("batch"), tr("Bottle: none was in use then."));
        return false;
    }
    if (kind() != Kind::Film)
        return HappeningDialog::restIsFine();
    const QString films = m_film->problem();
    const QString baths = m_film->problemOfBaths();
    if (!films.isEmpty())
        showProblem(QStringLiteral("films"), films);
    else if (!baths.isEmpty())
        showProblem(QStringLiteral("baths"), baths);
    return films.isEmpty() && baths.isEmpty() && sureOfLoad();
}

// By what the bottles could do at that moment.
bool ForgottenDialog::sureOfLoad()
{
    const auto run = m_film->run();
    if (!run)
        return true; // what is missing is said where it is entered
    std::vector<ledger::Judged> then;
    for (const ledger::Bath& bath : run->baths) {
        if (const auto bottle = door().batch(bath.batch, moment()))
            then.push_back({*bottle, ledger::assess(*bottle)});
    }
    return m_question.sure(this, *run, then, wording());
}

Result<void> ForgottenDialog::act()
{
    if (kind() != Kind::Film)
        return HappeningDialog::act();
    const auto run = m_film->run();
    if (!run) // restIsFine() and the fields themselves have said what is missing
        return refuse({.code = ErrorCode::Missing});
    return door().log(*run, moment()).map([](const std::string&) {});
}

} // namespace ullage::app
