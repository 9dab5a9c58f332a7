#include "app/daybook/correct_dialog.h"

#include "app/widgets/count_box.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"
#include "core/ledger/fillings.h"

#include <QLineEdit>

#include <algorithm>

namespace ullage::app
{

using namespace ledger;

namespace
{

auto minuteOf(chemistry::Instant moment)
{
    return std::chrono::floor<std::chrono::minutes>(moment);
}

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

std::optional<HappeningKind> formOf(const Event& event) { return std::visit(Kinds(), event.what); }

} // namespace

bool canCorrect(const Event& event)
{
    return formOf(event) || std::holds_alternative<Mixed>(event.what) ||
           std::holds_alternative<Processed>(event.what);
}

CorrectDialog::CorrectDialog(Door& door, const QString& what, std::vector<Event> entered,
                             QWidget* parent)
    : HappeningDialog(door, tr("Correct an entry"), parent), m_entered(std::move(entered))
{
    const Event& event = m_entered.front();
    addHeading(what);
    addText(tr("The entry is taken back and entered anew with what you change; what came later "
               "stays. Undo takes both back."));
    if (const auto kind = formOf(event)) {
        addKinds({*kind}, {});
    } else if (const auto* mixed = std::get_if<Mixed>(&event.what)) {
        addKinds({HappeningKind::Film}, {}); // the one without a form
        addMixing(*mixed);
    } else {
        addKinds({HappeningKind::Film}, {});
        addRun(std::get<Processed>(event.what));
    }
    addForms();
    WhenEdit* when = addWhen();
    m_why = new QLineEdit(this);
    m_why->setMaxLength(static_cast<int>(formulary::fieldOf(&Voided::why).longest));
    m_why->setPlaceholderText(tr("misread, wrong day…"));
    addRow(QStringLiteral("why"), tr("Wh&y, if you like"), m_why);
    kindChanged();
    when->setMoment(event.at);
    tellForm(); // as it was then
    if (shown())
        shown()->setEntered(event);
    connect(when, &WhenEdit::changed, this, &CorrectDialog::tellForm);
    setDeed(tr("Correct"));
    showFollows(Follows::Always);
    QWidget* first = shown() ? shown()->first() : m_name;
    if (!m_counts.empty())
        first = m_counts.front();
    else if (m_area)
        first = m_area;
    if (first)
        first->setFocus();
}

void CorrectDialog::addMixing(const Mixed& mixed)
{
    m_fields = new FieldForm(wording(), this);
    m_name = new QLineEdit(QString::fromStdString(mixed.name), this);
    m_name->setMaxLength(static_cast<int>(formulary::fieldOf(&Mixed::name).longest));
    m_fields->addRow(QStringLiteral("name"), tr("&Name"), m_name, Width::Half);
    m_volume = m_fields->addFigure<chemistry::Millilitres>(formulary::fieldOf(&Mixed::volume),
                                                           tr("&Volume"));
    m_volume->setQuantity(mixed.volume);
    addWide(m_fields);
    heed(m_fields);
}

void CorrectDialog::addRun(const Processed& run)
{
    m_fields = new FieldForm(wording(), this);
    const auto most = static_cast<int>(formulary::fieldOf(&FilmCount::count).high); // whole films
    for (std::size_t i = 0; i < run.load.films.size(); ++i) {
        const FilmCount& film = run.load.films[i];
        const QString label = tr("How many, %1").arg(QString::fromStdString(film.format));
        auto* count = new CountBox(label, 1, most, this);
        count->setValue(static_cast<int>(film.count));
        connect(count, &QSpinBox::valueChanged, m_fields, &FieldForm::changed);
        m_fields->addRow(QStringLiteral("films-%1").arg(i), label, count, Width::Half);
        m_counts.push_back(count);
    }
    if (run.load.area) {
        m_area = m_fields->addFigure<chemistry::SquareCentimetres>(formulary::fieldOf(&Load::area),
                                                                   tr("&Area of film"));
        m_area->setRequired(true);
        m_area->setQuantity(run.load.area);
    }
    // What was used and lost is asked where it is one answer for all baths.
    const bool same = std::all_of(m_entered.begin(), m_entered.end(), [&](const Event& event) {
        const auto* bath = std::get_if<Processed>(&event.what);
        return !bath || (bath->used == run.used && bath->lost == run.lost);
    });
    if (same) {
        m_used = m_fields->addFigure<chemistry::Millilitres>(
            formulary::fieldOf(&Processed::used), tr("Volume &used in each, if not all"));
        m_used->setQuantity(run.used);
        m_lost = m_fields->addFigure<chemistry::Millilitres>(formulary::fieldOf(&Processed::lost),
                                                             tr("Volume lost in ea&ch"));
        m_lost->setQuantity(run.lost);
    }
    addWide(m_fields);
    heed(m_fields);
}

bool CorrectDialog::isPrincipal(const Event& event) const
{
    const Event& first = m_entered.front();
    const auto* run = std::get_if<Processed>(&first.what);
    const auto* bath = std::get_if<Processed>(&event.what);
    return event.id == first.id || (run && bath && bath->run == run->run);
}

// The form of a top-up makes both halves anew.
bool CorrectDialog::isHalfOfTopUp(const Event& event) const
{
    const auto half = halfOf(event);
    return half && half->drawn && half->heir == batch() &&
           std::holds_alternative<ToppedUp>(m_entered.front().what);
}

// The field counts in minutes: what was not changed keeps its seconds, and so its turn.
chemistry::Instant CorrectDialog::correctedMoment() const
{
    const auto was = m_entered.front().at;
    return minuteOf(moment()) == minuteOf(was) ? was : moment();
}

std::optional<Happening> CorrectDialog::corrected(const Event& event) const
{
    if (const auto* mixed = std::get_if<Mixed>(&event.what)) {
        if (!m_volume->quantity())
            return std::nullopt;
        Mixed now = *mixed;
        now.name = m_name->text().trimmed().toStdString();
        now.volume = *m_volume->quantity();
        return now;
    }
    Processed now = std::get<Processed>(event.what);
    for (std::size_t i = 0; i < m_counts.size() && i < now.load.films.size(); ++i) {
        if (!m_counts[i]->problem().isEmpty())
            return std::nullopt;
        now.load.films[i].count = m_counts[i]->value();
    }
    if (m_area) {
        now.load.area = m_area->quantity();
        if (!now.load.area)
            return std::nullopt;
    }
    if (m_used) {
        if (!m_used->isValid() || !m_lost->isValid())
            return std::nullopt;
        now.used = m_used->quantity();
        now.lost = m_lost->quantity().value_or(chemistry::Millilitres());
    }
    return now;
}

std::optional<std::vector<Event>> CorrectDialog::instead() const
{
    const auto at = correctedMoment();
    const Event& first = m_entered.front();
    const auto newId = wouldBeIds();
    std::vector<Event> all;
    for (const Event& was : m_entered) {
        if (isPrincipal(was) && !m_fields) {
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
        if (isPrincipal(was)) {
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

std::vector<std::string> CorrectDialog::goes() const
{
    std::vector<std::string> ids;
    for (const Event& was : m_entered)
        ids.push_back(was.id);
    return ids;
}

std::optional<std::vector<Event>> CorrectDialog::wouldEnter() const
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

bool CorrectDialog::restIsFine() { return m_fields || HappeningDialog::restIsFine(); }

Result<void> CorrectDialog::act()
{
    const auto comes = instead();
    if (!comes) // the fields have said what is missing
        return refuse({.code = ErrorCode::Missing});
    return door().correct(goes(), *comes, m_why->text().trimmed().toStdString());
}

} // namespace ullage::app
