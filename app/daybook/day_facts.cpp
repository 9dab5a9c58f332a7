#include "app/daybook/day_facts.h"

#include "app/daybook/corrections.h"
#include "app/daybook/day_words.h"
#include "app/words/event_words.h"
#include "app/words/film_words.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/ledger/fillings.h"
#include "core/ledger/load_times.h"
#include "core/ledger/run_times.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DayFacts)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

const std::string& runOf(const store::DayEntry& entry)
{
    static const std::string none;
    const auto* run = std::get_if<Processed>(&entry.event.what);
    return run ? run->run : none;
}

// The note that a book of before keeps the times of a run in, if there is one that counts.
struct TimesNote {
    std::string event;
    std::string batch;
    RunTimes times;
};

// The first of the entries that stand of the run's first bottle for which `of` gives something;
// asked with all of that bottle's.
template <class Of>
auto firstStanding(const store::DayEntry& entry, Door& door, Of of)
    -> decltype(of(std::declval<const Event&>(), std::declval<const std::vector<Event>&>()))
{
    const auto events =
        entry.baths.empty() ? Result<std::vector<Event>>() : door.events(entry.baths.front().batch);
    if (!events)
        return std::nullopt;
    const auto taken = takenBack(*events);
    for (const Event& event : *events) {
        if (taken.contains(event.id))
            continue;
        if (auto found = of(event, *events))
            return found;
    }
    return std::nullopt;
}

std::optional<TimesNote> timesNoteOf(const store::DayEntry& entry, Door& door)
{
    const std::string& run = runOf(entry);
    return firstStanding(entry, door,
                         [&](const Event& event, const auto&) -> std::optional<TimesNote> {
                             const auto* note = std::get_if<Noted>(&event.what);
                             if (run.empty() || !note || !note->times || note->times->run != run)
                                 return std::nullopt;
                             return TimesNote{event.id, event.batch, *note->times};
                         });
}

// What took that note back, if anything did.
std::optional<TakingBack> voidingOfTimes(const store::DayEntry& entry, Door& door)
{
    return firstStanding(
        entry, door, [&](const Event& event, const auto& events) -> std::optional<TakingBack> {
            const auto* voided = std::get_if<Voided>(&event.what);
            if (!voided)
                return std::nullopt;
            const auto what = std::find_if(events.begin(), events.end(), [&](const Event& other) {
                return other.id == voided->voids;
            });
            const auto* note = what == events.end() ? nullptr : std::get_if<Noted>(&what->what);
            if (!note || !note->times || note->times->run != runOf(entry))
                return std::nullopt;
            return TakingBack{event.id, entry.baths.front().batch};
        });
}

// What the bottle had done when the film came, and its time.
QString thenText(const std::string& event, const Batch& batch, const Wording& wording)
{
    chemistry::Films before;
    for (const LoadDone& load : batch.loads) {
        if (load.event != event) {
            before += load.units;
            continue;
        }
        const bool developer = batch.solution->role == formulary::Role::Developer;
        const QString films = Words::tr("%1 before").arg(filmsText(before, wording));
        return developer
                   ? Words::tr("%1, time %2", "films before, factor")
                         .arg(films, factorText(ledger::factorThen(batch, load), wording.locale))
                   : films;
    }
    return {};
}

DayBottle bottleThen(const std::string& event, const std::string& batch, const std::string& name,
                     const store::DayEntry& entry, Door& door, const Wording& wording)
{
    DayBottle bottle{utf8(batch), utf8(name), {}, false};
    // As of now: the other baths of a run may have come a little later than the first.
    bottle.onShelf = door.bottle(batch) != nullptr;
    if (const auto then = door.batch(batch, std::max(door.now(), entry.event.at))) {
        bottle.then = thenText(event, *then, wording);
        const QString solution = shownName(then->solution->name);
        bottle.then =
            bottle.then.isEmpty()
                ? solution
                : Words::tr("%1; %2", "solution; what it had done").arg(solution, bottle.then);
        if (then->inUse())
            return bottle; // its card on the Shelf says what it cost so far
        if (const auto cost = door.cost(batch, then->asOf)) {
            bottle.cost = endedCostText(*cost, then->filmsDone, wording.locale);
            bottle.paid = explainCost(*cost, then->filmsDone, wording);
        }
    }
    return bottle;
}

DayFilm dayFilm(const FilmRecord& film, const std::vector<FilmMark>& marks, const Wording& wording)
{
    DayFilm facts{utf8(film.id), filmText(film, wording.locale), {}};
    QStringList faults;
    for (const FilmMark& mark : marks)
        faults << filmMarkText(mark);
    facts.marks = faults.join(QStringLiteral("; "));
    return facts;
}

QString takenText(const store::DayEntry& entry, chemistry::Instant now, const Wording& wording)
{
    const auto& taken = *entry.taken;
    const QString when = momentText(taken.at, now, wording.locale);
    const QString why = whyText(taken.why);
    const QString text = taken.by.empty()
                             ? Words::tr("Taken back on %1").arg(when)
                             : Words::tr("Taken back on %1 by %2").arg(when, utf8(taken.by));
    return why.isEmpty() ? text : Words::tr("%1: %2", "taken back, why").arg(text, why);
}

} // namespace

DayFacts dayFacts(const store::DayEntry& entry, Door& door, const Wording& wording)
{
    DayFacts facts;
    const DayLine line = dayLine(entry, *door.formulary(), wording);
    const QString day = dayHeading(localDate(entry.event.at), wording.locale);
    facts.heading =
        entry.hole
            ? day
            : Words::tr("%1, %2", "long date, time").arg(day, dayTime(entry, wording.locale));
    facts.title = line.title;
    facts.detail = line.detail;
    if (entry.fault) {
        facts.detail += u'\n' + Words::tr("It is not shown and does not count. In the File menu, "
                                          "“Copies…” puts a copy in the book's place, and “Salvage "
                                          "a damaged book…” takes what is sound into a new one.");
        facts.fixed = true;
        return facts;
    }
    if (const auto* note = std::get_if<Noted>(&entry.event.what))
        facts.detail = entry.mark ? utf8(entry.mark->note) : noteText(*note); // line breaks
    facts.bringBack = entry.taken.has_value();
    const auto entered = enteredAs(entry, door);
    facts.whyNotCorrected = whyNotCorrected(entry, entered);
    facts.ofFilm = entry.mark.has_value();
    facts.whyNotFilm = facts.ofFilm && entered.empty() ? whyNoRun() : QString();
    if (entry.taken)
        facts.taken = takenText(entry, door.now(), wording);
    if (!entry.event.by.empty())
        facts.person = Words::tr("by %1", "person").arg(utf8(entry.event.by));
    for (std::size_t i = 0; i < entry.films.size(); ++i)
        facts.films.push_back(
            dayFilm(entry.films[i],
                    i < entry.marks.size() ? entry.marks[i] : std::vector<FilmMark>(), wording));
    for (const store::DayBath& bath : entry.baths)
        facts.bottles.push_back(
            bottleThen(bath.event, bath.batch, bath.name, entry, door, wording));
    if (entry.baths.empty() && !entry.event.batch.empty())
        facts.bottles.push_back(
            bottleThen(entry.event.id, entry.event.batch, entry.name, entry, door, wording));
    auto times = entry.times;
    if (!times) {
        if (auto note = timesNoteOf(entry, door))
            times = std::move(note->times);
    }
    if (times) {
        for (const StepDone& step : times->steps)
            facts.times.push_back({stepCodeName(step.kind),
                                   Words::tr("%1 → %2", "planned and real time")
                                       .arg(timeText(step.planned), timeText(step.real)),
                                   false});
    }
    return facts;
}

std::vector<TakingBack> takingBack(const store::DayEntry& entry, Door& door)
{
    std::vector<TakingBack> all;
    const auto add = [&](const TakingBack& one) {
        const bool there = std::any_of(all.begin(), all.end(), [&](const TakingBack& other) {
            return other.event == one.event;
        });
        if (!there)
            all.push_back(one);
    };
    // And what was entered with it: what followed by itself, and of a correction what came instead.
    const auto addWith = [&](const TakingBack& one, bool later) {
        add(one);
        const auto with = door.enteredWith(one.event);
        bool after = !later;
        for (const Event& other : with ? *with : std::vector<Event>()) {
            after = after || other.id == one.event;
            if (after && (other.batch == one.batch || other.batch.empty()))
                add({other.id, other.batch});
        }
    };
    if (entry.taken) {
        if (entry.baths.empty())
            addWith({entry.taken->voiding, entry.event.batch}, false);
        for (const store::DayBath& bath : entry.baths)
            addWith({bath.taken->voiding, bath.batch}, false);
        if (const auto voiding = voidingOfTimes(entry, door))
            add(*voiding);
        return all;
    }
    if (entry.baths.empty())
        addWith({entry.event.id, entry.event.batch}, true);
    for (const store::DayBath& bath : entry.baths) {
        if (!bath.taken)
            addWith({bath.event, bath.batch}, true);
    }
    if (const auto note = timesNoteOf(entry, door))
        add({note->event, note->batch});
    return all;
}

QStringList alongWith(const store::DayEntry& entry, const std::vector<TakingBack>& events,
                      Door& door, const Wording& wording)
{
    std::set<std::string> own{entry.event.id};
    for (const store::DayBath& bath : entry.baths)
        own.insert(bath.event);
    QStringList lines;
    for (const TakingBack& one : events) {
        const auto of = one.batch.empty() ? door.enteredWith(one.event) : door.events(one.batch);
        if (!of)
            continue;
        const auto find = [&](const std::string& id) {
            return std::find_if(of->begin(), of->end(),
                                [&](const Event& event) { return event.id == id; });
        };
        auto found = find(one.event);
        if (found == of->end())
            continue;
        if (const auto* voided = std::get_if<Voided>(&found->what))
            found = find(voided->voids);
        if (found == of->end() || own.contains(found->id))
            continue;
        lines << eventText(*found, *door.formulary(), wording);
    }
    return lines;
}

namespace
{

// The other half of a filling that an event is one of, among all of its bottles.
std::optional<Event> otherHalfOf(const Event& event, Door& door)
{
    const auto entered =
        halfOf(event) ? door.connectedEvents(event.batch) : Result<std::vector<Event>>();
    const Event* other = entered ? otherHalf(*entered, event, takenBack(*entered)) : nullptr;
    return other ? std::optional(*other) : std::nullopt;
}

// What stands for the entry: of a run its baths, of a mark those of its film's run, and of what
// went into another bottle that bottle's filling.
std::vector<std::string> standingFor(const store::DayEntry& entry, Door& door)
{
    std::vector<std::string> own;
    if (entry.mark) {
        const auto films = entry.films.empty() ? Result<std::vector<FilmTrace>>()
                                               : door.filmsOfRun(entry.films.front().run);
        if (films && !films->empty()) {
            for (const FilmBath& bath : films->front().baths)
                own.push_back(bath.event);
        }
    } else if (entry.baths.empty()) {
        const auto half = halfOf(entry.event);
        const auto heir = half && half->drawn ? otherHalfOf(entry.event, door) : std::nullopt;
        own.push_back(heir ? heir->id : entry.event.id);
    }
    for (const store::DayBath& bath : entry.baths) {
        if (!bath.taken)
            own.push_back(bath.event);
    }
    return own;
}

} // namespace

std::vector<Event> enteredAs(const store::DayEntry& entry, Door& door)
{
    std::vector<Event> all;
    const auto add = [&](const Event& event) {
        const bool there = std::any_of(all.begin(), all.end(),
                                       [&](const Event& one) { return one.id == event.id; });
        if (!there)
            all.push_back(event);
    };
    for (const std::string& id : standingFor(entry, door)) {
        const auto with = door.enteredWith(id);
        bool after = false;
        for (const Event& other : with ? *with : std::vector<Event>()) {
            after = after || other.id == id;
            if (after)
                add(other);
        }
    }
    // One half of a filling takes the other along, though an import does not tell it.
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (const auto other = otherHalfOf(all[i], door))
            add(*other);
    }
    return all;
}

} // namespace ullage::app
