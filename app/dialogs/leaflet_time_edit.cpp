#include "app/dialogs/leaflet_time_edit.h"

#include "app/dialogs/known_times.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage::app
{

namespace
{

bool sameWanted(const formulary::FilmWanted& a, const formulary::FilmWanted& b)
{
    return formulary::sameFilm(a.name, b.name) && a.exposureIndex == b.exposureIndex;
}

} // namespace

LeafletTimeEdit::LeafletTimeEdit(LastUsed lastUsed, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_lastUsed(std::move(lastUsed)), m_wording(wording),
      m_base(new BaseTimesEdit(wording, this)), m_for(new PlainLabel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_base);
    m_for->setObjectName(QStringLiteral("timeFor"));
    m_for->setWordWrap(true);
    setTone(m_for, Tone::Quiet);
    m_for->hide();
    setFocusPolicy(Qt::ClickFocus); // so that a label can be its buddy
    setFocusProxy(m_base);
    connect(m_base, &BaseTimesEdit::changed, this, [this] {
        m_timeFor = m_wanted;
        m_typed = !m_base->pairs().empty();
        m_picked.reset();
        m_rules = false;
        emit changed();
    });
    connect(m_base, &BaseTimesEdit::knownTaken, this, &LeafletTimeEdit::takeKnown);
}

void LeafletTimeEdit::setWording(const Wording& wording)
{
    m_wording = wording;
    m_base->setWording(wording);
}

std::vector<chemistry::TimeAtTemperature> LeafletTimeEdit::pairs() const { return m_base->pairs(); }

QString LeafletTimeEdit::problem() const { return m_base->problem(); }

bool LeafletTimeEdit::offersKnown() const { return !m_base->known().empty(); }

std::vector<formulary::FilmWanted> LeafletTimeEdit::usedFor() const
{
    return m_picked ? std::vector{*m_picked} : m_timeFor.films;
}

void LeafletTimeEdit::takeKnown()
{
    const auto* known = m_base->chosen();
    if (!known)
        return;
    m_picked = known->film;
    m_takePicked = true;
    if (const auto parts = formulary::partsOfDilution(known->dilution.toStdString()))
        emit dilutionPicked(*parts);
    emit changed();
}

void LeafletTimeEdit::rule(const formulary::FilmTime& film)
{
    if (!film.figure)
        return;
    {
        const QSignalBlocker quiet(m_base);
        m_base->setPairs(film.figure->times);
    }
    m_timeFor = m_wanted;
    m_picked = film.film;
    m_rules = true;
    m_typed = true;
    emit changed();
}

bool LeafletTimeEdit::rulerGone(const formulary::TimeFor& now) const
{
    return m_rules && m_picked &&
           std::none_of(now.films.begin(), now.films.end(),
                        [this](const auto& film) { return sameWanted(film, *m_picked); });
}

bool LeafletTimeEdit::setWanted(const formulary::TimeFor& wanted, const ledger::NextLoad& next,
                                const formulary::Formulary& formulary)
{
    const auto before = m_base->pairs();
    m_wanted = wanted;
    if (!wanted.developer.empty() && m_takePicked) {
        m_takePicked = false;
        m_seen = wanted;
        m_timeFor = wanted;
        // Its film, whatever is typed; naming that film later changes nothing.
        const auto index = wanted.films.empty() ? std::nullopt : wanted.films.front().exposureIndex;
        m_timeFor.films = {{m_picked->name, index}};
        m_typed = true;
    }
    if (!wanted.developer.empty() && m_seen != wanted) {
        m_seen = wanted;
        fill(wanted, next, formulary);
    }
    offerKnown(formulary);
    showFor(formulary);
    return before != m_base->pairs();
}

void LeafletTimeEdit::fill(const formulary::TimeFor& now, const ledger::NextLoad& next,
                           const formulary::Formulary& formulary)
{
    const bool still =
        formulary::stillFor(m_timeFor, now) && !m_base->pairs().empty() && !rulerGone(now);
    const auto show = [this](const std::vector<chemistry::TimeAtTemperature>& pairs) {
        const QSignalBlocker quiet(m_base); // whoever asked reckons again
        if (m_base->pairs() != pairs)
            m_base->setPairs(pairs);
    };
    if (!still) {
        m_picked.reset();
        m_rules = false;
    }
    if (next.apart && !(still && m_typed)) {
        show({});
        m_picked.reset();
        m_timeFor = now;
        m_typed = false;
        return;
    }
    auto exact = formulary::exactTime(formulary, now);
    // Rows that differ elsewhere and are one at this temperature.
    if (!exact && !next.filmTimes.empty() &&
        std::all_of(next.filmTimes.begin(), next.filmTimes.end(),
                    [](const auto& film) { return film.time.has_value(); }))
        exact = next.filmTimes.front().figure;
    if (exact && !(still && m_typed)) {
        show(exact->times);
        m_picked.reset();
        m_timeFor = now;
        m_typed = false;
        return;
    }
    if (still) {
        // What was not said before is said now; what is only not said any more stays said.
        if (formulary::stillFor(now, m_timeFor) || m_typed)
            m_timeFor = now;
        return;
    }
    const Last used = m_lastUsed(now.developer, now.parts);
    const formulary::TimeFor last{used.films, now.developer, now.parts};
    const bool named = std::any_of(now.films.begin(), now.films.end(), [](const auto& film) {
        return film != formulary::FilmWanted();
    });
    const bool sameFilms =
        !last.films.empty() && !last.films.front().name.empty() && formulary::stillFor(last, now);
    const bool usable = !named || sameFilms;
    show(usable ? used.pairs : std::vector<chemistry::TimeAtTemperature>());
    m_timeFor = usable ? last : now;
    m_typed = false;
}

// For the developer taken; the films typed first.
void LeafletTimeEdit::offerKnown(const formulary::Formulary& formulary)
{
    auto known = m_wanted.developer.empty()
                     ? std::vector<BaseTimesEdit::Known>()
                     : knownTimes(formulary, m_wanted.developer, m_wanted.films, m_wording);
    const auto same = [](const BaseTimesEdit::Known& a, const BaseTimesEdit::Known& b) {
        return a.name == b.name && a.pairs == b.pairs;
    };
    const auto& shown = m_base->known();
    // Offered anew only where it is another offer: what was picked stays picked.
    if (!std::equal(known.begin(), known.end(), shown.begin(), shown.end(), same))
        m_base->setKnown(std::move(known));
}

void LeafletTimeEdit::showFor(const formulary::Formulary& formulary)
{
    const bool any = !m_base->pairs().empty();
    m_for->setVisible(any);
    formulary::TimeFor what = m_timeFor;
    if (m_picked)
        what.films = {*m_picked};
    m_for->setText(any ? tr("for %1").arg(timeForText(what, formulary, m_wording)) : QString());
}

} // namespace ullage::app
