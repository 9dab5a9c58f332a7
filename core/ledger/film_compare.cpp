#include "core/ledger/film_compare.h"

#include "core/ledger/film_cause.h"
#include "core/ledger/film_figures.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <iterator>
#include <map>
#include <set>

namespace ullage::ledger
{

namespace
{

using formulary::Role;

constexpr std::array<Role, 6> kRoles{Role::Developer, Role::Stop,         Role::Fixer,
                                     Role::WashAid,   Role::WettingAgent, Role::Other};
constexpr double kSlack = 1e-9;
constexpr double kWarmthThatTells = 0.25; // °C; thermometers are no better

using Films = FilmTraces;
using Figure = FilmFigure;
using Has = FilmHas;
// A word of a film, empty where there is none.
using Word = std::function<std::string(const FilmTrace&)>;

bool ofAStep(const TraitFound& found)
{
    return found.trait == FilmTrait::StepLonger || found.trait == FilmTrait::StepShorter;
}

class Comparing
{
public:
    Comparing(const Films& marked, const Films& good, std::optional<FilmFault> fault)
        : m_marked(marked), m_good(fromOtherRuns(good, marked))
    {
        for (const FilmTrace& film : marked) {
            for (const FilmMark& mark : film.marks) {
                if (mark.fault && (!fault || mark.fault == fault)) {
                    m_faults.insert(*mark.fault);
                }
            }
        }
        if (fault) {
            m_faults.insert(*fault);
        }
        m_found.marked = static_cast<int>(marked.size());
        m_found.good = static_cast<int>(m_good.size());
    }

    FilmComparison all()
    {
        bottles();
        for (const Role role : kRoles) {
            states(role);
        }
        steps();
        temperature();
        words(FilmTrait::OneRun, [](const FilmTrace& film) { return film.film.run; });
        words(FilmTrait::Film, [](const FilmTrace& film) { return film.film.name; });
        words(FilmTrait::Format, [](const FilmTrace& film) { return film.film.format; });
        exposureIndex();
        words(FilmTrait::Tank,
              [](const FilmTrace& film) { return film.times ? film.times->tank : std::string(); });
        words(FilmTrait::Person, [](const FilmTrace& film) { return film.by; });
        const auto difference = [](const TraitFound& found) {
            return found.marked.share() - found.good.share();
        };
        std::stable_sort(m_found.apart.begin(), m_found.apart.end(),
                         [&](const TraitFound& a, const TraitFound& b) {
                             return ofAStep(a) != ofAStep(b)
                                        ? ofAStep(a)
                                        : difference(a) > difference(b) + kSlack;
                         });
        suspects();
        return std::move(m_found);
    }

private:
    // `onlyApart`: a trait that the good films share is no news (every bottle had some wear).
    void add(TraitFound found, const Has& has, bool onlyApart = false)
    {
        found.marked = countOf(m_marked, has);
        found.good = countOf(m_good, has);
        const int needed = found.marked.known >= kMostNeeded
                               ? static_cast<int>(kMost * found.marked.known + 1 - kSlack)
                               : found.marked.known;
        if (found.marked.with == 0 || found.marked.with < needed) {
            return;
        }
        const bool telling =
            found.good.known > 0 && found.good.share() <= kTelling * found.marked.share() + kSlack;
        const auto why = noCause(found);
        if (why && telling) {
            m_found.ruledOut.push_back({std::move(found), *m_faults.begin(), *why});
        } else if (why) {
            return;
        } else if (telling) {
            m_found.apart.push_back(std::move(found));
        } else if (!onlyApart) {
            m_found.common.push_back(std::move(found));
        }
    }

    // Why it is a cause of none of the marks asked about: of the first, where it is of none.
    [[nodiscard]] std::optional<NoCause> noCause(const TraitFound& found) const
    {
        std::optional<NoCause> first;
        for (const FilmFault fault : m_faults) {
            const auto why = whyNot(fault, found);
            if (!why) {
                return std::nullopt;
            }
            first = first ? first : why;
        }
        return first;
    }

    void bottles()
    {
        std::vector<std::pair<std::string, Role>> seen;
        for (const FilmTrace& film : m_marked) {
            for (const FilmBath& bath : film.baths) {
                const std::pair one(bath.before.batch.id, bath.before.batch.solution->role);
                if (std::find(seen.begin(), seen.end(), one) == seen.end()) {
                    seen.push_back(one);
                }
            }
        }
        std::stable_sort(seen.begin(), seen.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
        for (const auto& [batch, role] : seen) {
            add({.trait = FilmTrait::Bottle, .subject = batch, .role = role},
                [id = batch](const FilmTrace& film) -> std::optional<bool> {
                    return std::any_of(
                        film.baths.begin(), film.baths.end(),
                        [&](const FilmBath& bath) { return bath.before.batch.id == id; });
                });
        }
    }

    // At the least figure of the films marked, or at the greatest.
    void over(TraitFound found, const Figure& figure, bool least, double worthAWord)
    {
        std::optional<double> limit;
        for (const FilmTrace& film : m_marked) {
            if (const auto value = figure(film)) {
                limit = !limit  ? *value
                        : least ? std::min(*limit, *value)
                                : std::max(*limit, *value);
            }
        }
        if (!limit || (least ? *limit < worthAWord : *limit > worthAWord)) {
            return;
        }
        found.number = *limit;
        add(
            std::move(found),
            [&](const FilmTrace& film) -> std::optional<bool> {
                const auto value = figure(film);
                if (!value) {
                    return std::nullopt;
                }
                return least ? *value >= *limit - kSlack : *value <= *limit + kSlack;
            },
            true);
    }

    void states(Role role)
    {
        constexpr double kSomeWear = 0.5;      // films per litre; a fresh bottle says nothing
        constexpr double kSomeStanding = 0.25; // a quarter of its life
        over(
            {.trait = FilmTrait::WearOver, .role = role},
            [role](const FilmTrace& film) {
                const FilmBath* bath = film.bath(role);
                return bath ? std::optional(bath->before.batch.wear.value()) : std::nullopt;
            },
            true, kSomeWear);
        over(
            {.trait = FilmTrait::StandingOver, .role = role},
            [role](const FilmTrace& film) {
                const FilmBath* bath = film.bath(role);
                return bath ? bath->before.assessment.standingUsed : std::nullopt;
            },
            true, kSomeStanding);
        add(
            {.trait = FilmTrait::BeyondVerdict, .role = role},
            [role](const FilmTrace& film) -> std::optional<bool> {
                const FilmBath* bath = film.bath(role);
                if (!bath) {
                    return std::nullopt;
                }
                return bath->before.assessment.verdict >= Verdict::TestFirst;
            },
            true);
    }

    void steps()
    {
        std::vector<std::string> kinds;
        for (const FilmTrace& film : m_marked) {
            for (const StepDone& step : film.times ? film.times->steps : std::vector<StepDone>()) {
                if (std::find(kinds.begin(), kinds.end(), step.kind) == kinds.end()) {
                    kinds.push_back(step.kind);
                }
            }
        }
        for (const std::string& kind : kinds) {
            const Figure share = [kind](const FilmTrace& film) { return overPlan(film, kind); };
            over({.trait = FilmTrait::StepLonger, .subject = kind}, share, true, kStepOff);
            over({.trait = FilmTrait::StepShorter, .subject = kind}, share, false, -kStepOff);
            offPlan({.trait = FilmTrait::StepLonger, .subject = kind}, share);
            offPlan({.trait = FilmTrait::StepShorter, .subject = kind}, share);
        }
        std::stable_sort(m_found.offPlan.begin(), m_found.offPlan.end(),
                         [](const OffPlan& a, const OffPlan& b) {
                             return std::abs(a.share()) > std::abs(b.share()) + kSlack;
                         });
    }

    void offPlan(const TraitFound& trait, const Figure& share)
    {
        if (noCause(trait)) {
            return;
        }
        const double way = trait.trait == FilmTrait::StepLonger ? 1 : -1;
        TraitCount counted;
        double furthest = 0;
        std::optional<OffPlan> found;
        for (const FilmTrace& film : m_marked) {
            const auto its = share(film);
            counted.known += its ? 1 : 0;
            if (!its || *its * way < kStepOff - kSlack) {
                continue;
            }
            ++counted.with;
            if (*its * way > furthest) {
                furthest = *its * way;
                found = stepsOf(film, trait.subject);
            }
        }
        if (found) {
            found->marked = counted;
            m_found.offPlan.push_back(*found);
        }
    }

    void temperature()
    {
        const Figure degrees = [](const FilmTrace& film) -> std::optional<double> {
            return film.times && film.times->temperature
                       ? std::optional(film.times->temperature->value())
                       : std::nullopt;
        };
        const auto usual = medianOf(m_good, degrees);
        if (!usual) {
            return;
        }
        over({.trait = FilmTrait::Warmer}, degrees, true, *usual + kWarmthThatTells);
        over({.trait = FilmTrait::Colder}, degrees, false, *usual - kWarmthThatTells);
    }

    // The word that most of the films marked have.
    void words(FilmTrait trait, const Word& word)
    {
        std::map<std::string, int> seen;
        for (const FilmTrace& film : m_marked) {
            if (const std::string own = word(film); !own.empty()) {
                ++seen[own];
            }
        }
        for (const auto& [own, times] : seen) {
            // One film alone is always in one run, and a run of good ones says as much.
            if (trait == FilmTrait::OneRun && times < 2) {
                continue;
            }
            add(
                {.trait = trait, .subject = own},
                [&word, text = own](const FilmTrace& film) -> std::optional<bool> {
                    const std::string its = word(film);
                    return its.empty() ? std::nullopt : std::optional(its == text);
                },
                trait == FilmTrait::OneRun);
        }
    }

    void exposureIndex()
    {
        std::set<double> seen;
        for (const FilmTrace& film : m_marked) {
            if (film.film.exposureIndex) {
                seen.insert(*film.film.exposureIndex);
            }
        }
        for (const double index : seen) {
            add({.trait = FilmTrait::ExposureIndex, .number = index},
                [index](const FilmTrace& film) -> std::optional<bool> {
                    const auto own = film.film.exposureIndex;
                    return own ? std::optional(*own == index) : std::nullopt;
                });
        }
    }

    // Bottles named themselves, or of a role whose state sets the films apart.
    void suspects()
    {
        const auto add = [this](const std::string& batch) {
            auto& all = m_found.suspects;
            if (std::find(all.begin(), all.end(), batch) == all.end()) {
                all.push_back(batch);
            }
        };
        for (const TraitFound& found : m_found.apart) {
            if (found.trait == FilmTrait::Bottle) {
                add(found.subject);
            } else if (found.role) {
                for (const FilmTrace& film : m_marked) {
                    if (const FilmBath* bath = film.bath(*found.role)) {
                        add(bath->before.batch.id);
                    }
                }
            }
        }
    }

    const Films& m_marked;
    const Films m_good;
    std::set<FilmFault> m_faults; ///< asked about
    FilmComparison m_found;
};

} // namespace

FilmComparison compareFilms(const std::vector<FilmTrace>& marked,
                            const std::vector<FilmTrace>& good, std::optional<FilmFault> fault)
{
    return Comparing(marked, good, fault).all();
}

} // namespace ullage::ledger
