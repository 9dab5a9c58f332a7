#include "app/daybook/correct_dialog.h"

#include "app/dialogs/bottle_choice.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"
#include "core/ledger/fillings.h"

#include <QComboBox>
#include <QLineEdit>

#include <algorithm>

namespace ullage::app
{

using namespace ledger;

namespace
{

// The kind whose form asks for it.
struct Kinds {
    std::optional<HappeningKind> operator()(const ToppedUp&) { return HappeningKind::TopUp; }
    std::optional<HappeningKind> operator()(const Drawn& drawn)
    {
        return drawn.to.empty() ? std::optional(HappeningKind::DrawOff) : std::nullopt;
    }
    std::optional<HappeningKind> operator()(const Moved&) { return HappeningKind::Move; }
    std::optional<HappeningKind> operator()(const Opened&) { return HappeningKind::Opened; }
    std::optional<HappeningKind> operator()(const StoodOpen&) { return HappeningKind::StoodOpen; }
    std::optional<HappeningKind> operator()(const StoredAt&) { return HappeningKind::StoredAt; }
    std::optional<HappeningKind> operator()(const ClearingTested&)
    {
        return HappeningKind::ClearingTest;
    }
    std::optional<HappeningKind> operator()(const StripTested&) { return HappeningKind::StripTest; }
    std::optional<HappeningKind> operator()(const Looked&) { return HappeningKind::Look; }
    std::optional<HappeningKind> operator()(const Measured&) { return HappeningKind::Measured; }
    std::optional<HappeningKind> operator()(const Filtered&) { return HappeningKind::Filtered; }
    std::optional<HappeningKind> operator()(const Contaminated&)
    {
        return HappeningKind::Contaminated;
    }
    std::optional<HappeningKind> operator()(const Dissolved&) { return HappeningKind::Dissolved; }
    std::optional<HappeningKind> operator()(const Noted& note)
    {
        return note.times ? std::nullopt : std::optional(HappeningKind::Note);
    }
    std::optional<HappeningKind> operator()(const Discarded&) { return HappeningKind::Discard; }
    template <class Other>
    std::optional<HappeningKind> operator()(const Other&)
    {
        return std::nullopt;
    }
};

} // namespace

std::optional<HappeningKind> formOf(const Event& event) { return std::visit(Kinds(), event.what); }

CorrectDialog::CorrectDialog(Door& door, const QString& what, std::vector<Event> entered,
                             QWidget* parent)
    : CorrectingDialog(door, what, std::move(entered), parent)
{
    const Event& event = this->entered().front();
    if (const auto kind = formOf(event)) {
        addKinds({*kind}, {});
    } else {
        addKinds({HappeningKind::Film}, {}); // the one without a form
        addMixing(std::get<Mixed>(event.what));
    }
    addForms();
    WhenEdit* when = addWhenAndWhy();
    kindChanged();
    tellForm(); // as it was then
    if (shown())
        shown()->setEntered(event);
    connect(when, &WhenEdit::changed, this, &CorrectDialog::tellForm);
    showFollows(Follows::Always);
    if (QWidget* first = shown() ? shown()->first() : m_name)
        first->setFocus();
}

void CorrectDialog::addMixing(const Mixed& mixed)
{
    m_fields = new FieldForm(wording(), this);
    const bool taken = std::any_of(entered().begin(), entered().end(), [](const Event& other) {
        return std::holds_alternative<Taken>(other.what);
    });
    if (mixed.packet.empty() && mixed.from.empty() && !taken)
        addSolutions(mixed.solution);
    addVessels(mixed.vessel);
    m_name = new QLineEdit(QString::fromStdString(mixed.name), this);
    m_name->setMaxLength(static_cast<int>(formulary::fieldOf(&Mixed::name).longest));
    m_fields->addRow(QStringLiteral("name"), tr("&Name"), m_name, Width::Half);
    m_volume = m_fields->addFigure<chemistry::Millilitres>(formulary::fieldOf(&Mixed::volume),
                                                           tr("&Volume"));
    m_volume->setQuantity(mixed.volume);
    addWide(m_fields);
    heed(m_fields);
}

// Those of its role: what happened to it since fits no other.
void CorrectDialog::addSolutions(const std::string& chosen)
{
    const auto was = formulary().solution(chosen);
    if (!was)
        return;
    m_solution = new QComboBox(this);
    m_solution->addItem(shownName(was->name), QString::fromStdString(was->id));
    for (const auto& one : formulary().currentSolutions()) {
        if (one->role == was->role && one->id != was->id)
            m_solution->addItem(shownName(one->name), QString::fromStdString(one->id));
    }
    m_fields->addRow(QStringLiteral("solution"), tr("&Solution"), m_solution, Width::Half);
    connect(m_solution, &QComboBox::currentIndexChanged, m_fields, &FieldForm::changed);
}

void CorrectDialog::addVessels(const std::string& chosen)
{
    m_vessel = new QComboBox(this);
    const auto add = [this](const formulary::Vessel& vessel) {
        m_vessel->addItem(shownName(vessel.name), QString::fromStdString(vessel.id));
    };
    if (const auto was = formulary().vessel(chosen))
        add(*was);
    for (const auto& vessel : freeVessels(formulary(), door().bottles())) {
        if (vessel->id != chosen)
            add(*vessel);
    }
    m_fields->addRow(QStringLiteral("vessel"), tr("&Bottle"), m_vessel, Width::Half);
    connect(m_vessel, &QComboBox::currentIndexChanged, m_fields, &FieldForm::changed);
}

// The form of a top-up makes both halves anew.
bool CorrectDialog::isHalfOfTopUp(const Event& event) const
{
    const auto half = halfOf(event);
    return half && half->drawn && half->heir == batch() &&
           std::holds_alternative<ToppedUp>(entered().front().what);
}

std::optional<Happening> CorrectDialog::corrected(const Event& event) const
{
    if (!m_volume->quantity())
        return std::nullopt;
    Mixed now = std::get<Mixed>(event.what);
    if (m_solution)
        now.solution = m_solution->currentData().toString().toStdString();
    now.vessel = m_vessel->currentData().toString().toStdString();
    now.name = m_name->text().trimmed().toStdString();
    now.volume = *m_volume->quantity();
    return now;
}

std::optional<std::vector<Event>> CorrectDialog::instead() const
{
    const auto at = correctedMoment();
    const Event& first = entered().front();
    const auto newId = wouldBeIds();
    std::vector<Event> all;
    for (const Event& was : entered()) {
        const bool principal = was.id == first.id;
        if (principal && !m_fields) {
            auto made = shown()->events(was.batch, at, newId);
            if (!made)
                return std::nullopt;
            all.insert(all.end(), made->begin(), made->end());
            continue;
        }
        if (isHalfOfTopUp(was))
            continue;
        Event now = was;
        now.id = newId();
        now.entry = 0;
        if (was.at == first.at)
            now.at = at;
        if (principal) {
            auto what = corrected(was);
            if (!what)
                return std::nullopt;
            now.what = std::move(*what);
        } else if (auto* drawn = std::get_if<Drawn>(&now.what);
                   drawn && m_volume && drawn->to == batch()) {
            drawn->volume = m_volume->quantity().value_or(chemistry::Millilitres());
        }
        all.push_back(std::move(now));
    }
    return all;
}

bool CorrectDialog::restIsFine() { return m_fields || HappeningDialog::restIsFine(); }

} // namespace ullage::app
