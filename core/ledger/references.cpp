#include "core/ledger/references.h"

#include <array>

namespace ullage::ledger
{

namespace
{

using formulary::Described;

constexpr std::array kKinds{Described<Packet>::type, Described<Chemical>::type,
                            Described<Supply>::type, Described<formulary::Solution>::type};
constexpr std::array kVessels{Described<formulary::Vessel>::type};
constexpr std::array kContainers{Described<Container>::type};
constexpr std::array kEvents{Described<Event>::type};
constexpr std::array kFilms{Described<FilmRecord>::type};
constexpr std::array kMarks{Described<FilmMark>::type};

} // namespace

std::span<const std::string_view> typesNamed(formulary::Refers refers)
{
    using formulary::Refers;
    switch (refers) {
    case Refers::Solution:
        return std::span(kKinds).last(1);
    case Refers::Vessel:
        return kVessels;
    case Refers::Event:
        return kEvents;
    case Refers::Film:
        return kFilms;
    case Refers::FilmMark:
        return kMarks;
    case Refers::Packet:
        return std::span(kKinds).first(1);
    case Refers::Item:
        return std::span(kKinds).first(3);
    case Refers::Kind:
        return kKinds;
    case Refers::Container:
        return kContainers;
    case Refers::Nothing:
    case Refers::Batch:
    case Refers::Run:
    case Refers::Same:
        break;
    }
    return {};
}

} // namespace ullage::ledger
