#include "tests/core/ledger/sample_lines.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <limits>
#include <set>

namespace ullage::ledger
{
namespace
{

using formulary::FieldDescription;
using formulary::Presence;

// Walks all fields, inner ones too, with their way.
struct Walk {
    std::function<void(const std::string& way, const FieldDescription& is, double* number,
                       std::string* text)>
        take;
    std::string way;

    template <class M>
    void operator()(const FieldDescription& is, M& member)
    {
        if constexpr (std::is_same_v<M, std::string>) {
            take(way + std::string(is.name), is, nullptr, &member);
        } else if constexpr (std::is_same_v<M, Decimal>) {
            // its text is the figure; a test of its own has its bounds
        } else if constexpr (formulary::Figurelike<M>) {
            double number = formulary::detail::numberOf(member);
            take(way + std::string(is.name), is, &number, nullptr);
            member = M(number);
        } else if constexpr (formulary::detail::Optional<M>::value) {
            if (member) {
                (*this)(is, *member);
            }
        } else if constexpr (formulary::Structured<M>) {
            inner(is, member);
        } else if constexpr (formulary::detail::List<M>::value) {
            for (auto& one : member) {
                if constexpr (formulary::Structured<std::remove_cvref_t<decltype(one)>>) {
                    inner(is, one);
                }
            }
        }
    }
    template <class M>
    void inner(const FieldDescription& is, M& member)
    {
        Walk walk{take, way + std::string(is.name) + '.'};
        formulary::eachField(member, [&](const FieldDescription& one, auto& field) {
            if (formulary::belongs(member, one)) {
                walk(one, field);
            }
        });
    }
};

struct NumberField {
    std::string way;
    const FieldDescription* is = nullptr;
};

std::vector<NumberField> numbersOf(Entry entry)
{
    std::vector<NumberField> found;
    eachEntryField(entry, Walk{[&](const std::string& way, const FieldDescription& is,
                                   const double* number, const std::string*) {
                                   if (number) {
                                       found.push_back({way, &is});
                                   }
                               },
                               {}});
    return found;
}

Result<void> checkedWith(Entry entry, const std::string& field, double value)
{
    eachEntryField(entry, Walk{[&](const std::string& way, const FieldDescription&, double* number,
                                   const std::string*) {
                                   if (number && way == field) {
                                       *number = value;
                                   }
                               },
                               {}});
    return check(entry);
}

// The field's own range has nothing against it; what it says beside others may be impossible.
bool fits(const Result<void>& checked, const NumberField& field)
{
    return checked || checked.error().field != field.way ||
           checked.error().code == ErrorCode::NotBuilt || checked.error().low != field.is->low ||
           checked.error().high != field.is->high;
}

} // namespace

TEST(LineDescription, knowsEveryTypeAndKindOnce)
{
    std::set<std::string> names;
    for (const LineDescription& line : lineDescriptions()) {
        EXPECT_TRUE(names.insert(std::string(line.type) + ' ' + std::string(line.kind)).second);
        EXPECT_FALSE(line.fields.empty()) << line.type;
        EXPECT_EQ(line.order.front(), "type");
        EXPECT_EQ(line.kind.empty(), line.type != "event");
        std::set<std::string_view> fields(line.order.begin(), line.order.end());
        EXPECT_EQ(fields.size(), line.order.size()) << line.type << line.kind;
        for (const FieldDescription& is : line.fields) {
            EXPECT_TRUE(fields.contains(is.name));
            EXPECT_EQ(is.name.data()[is.name.size()], '\0');
            EXPECT_EQ(line.field(is.name), &is);
        }
        EXPECT_EQ(line.field("apple"), nullptr);
    }
    EXPECT_EQ(names.size(), kTypeCodes.size() - 1 + kKindCodes.size());
    EXPECT_EQ(kTypeCodes.size(), 13u);
    EXPECT_EQ(kKindCodes.size(), 25u);
}

TEST(LineDescription, everyFigureIsTakenAtItsBoundsAndRefusedPastThem)
{
    int figures = 0;
    auto lines = sample::lines();
    // The other rule of wear has a figure of its own.
    auto perFilm = std::get<formulary::Solution>(lines.front().what);
    perFilm.wear.rule = chemistry::WearRule::PerFilm;
    lines.push_back({perFilm, {}});
    for (const Entry& entry : lines) {
        for (const NumberField& field : numbersOf(entry)) {
            ++figures;
            const FieldDescription& is = *field.is;
            const std::string name = sample::nameOf(entry) + ' ' + field.way;
            ASSERT_TRUE(std::isfinite(is.low) && std::isfinite(is.high)) << name;
            EXPECT_TRUE(
                fits(checkedWith(entry, field.way, is.whole ? std::ceil(is.low) : is.low), field))
                << name;
            EXPECT_TRUE(fits(checkedWith(entry, field.way, is.high), field)) << name;
            const double infinity = std::numeric_limits<double>::infinity();
            for (const double past :
                 {std::nextafter(is.low, -infinity), std::nextafter(is.high, infinity)}) {
                const auto refused = checkedWith(entry, field.way, past);
                ASSERT_FALSE(refused) << name;
                EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange) << name;
                EXPECT_EQ(refused.error().field, field.way) << name;
                EXPECT_EQ(refused.error().number, past) << name;
                EXPECT_EQ(refused.error().low, is.low) << name;
                EXPECT_EQ(refused.error().high, is.high) << name;
                EXPECT_EQ(refused.error().unit, is.unit) << name;
            }
            for (const double odd : {std::nan(""), infinity, -infinity}) {
                const auto refused = checkedWith(entry, field.way, odd);
                ASSERT_FALSE(refused) << name;
                EXPECT_EQ(refused.error().code, ErrorCode::NotFinite) << name;
                EXPECT_EQ(refused.error().field, field.way) << name;
            }
            if (is.whole) {
                EXPECT_EQ(checkedWith(entry, field.way, 1.5).error().field, field.way) << name;
            }
        }
    }
    EXPECT_GT(figures, 50);
}

TEST(LineDescription, whatMustBeThereIsMissed)
{
    for (const Entry& entry : sample::lines({.unbuilt = false})) {
        std::vector<std::string> required;
        Entry walked = entry;
        eachEntryField(walked, Walk{[&](const std::string& way, const FieldDescription& is,
                                        const double*, const std::string* text) {
                                        if (text && is.presence == Presence::Required) {
                                            required.push_back(way);
                                        }
                                    },
                                    {}});
        EXPECT_FALSE(required.empty()) << sample::nameOf(entry);
        for (const std::string& field : required) {
            Entry without = entry;
            eachEntryField(without, Walk{[&](const std::string& way, const FieldDescription&,
                                             const double*, std::string* text) {
                                             if (text && way == field) {
                                                 text->clear();
                                             }
                                         },
                                         {}});
            const auto refused = check(without);
            ASSERT_FALSE(refused) << sample::nameOf(entry) << ' ' << field;
            EXPECT_EQ(refused.error().code, ErrorCode::Missing) << field;
            EXPECT_EQ(refused.error().field, field);
        }
    }
}

TEST(LineDescription, allThatIsDescribedIsReckonedWith)
{
    for (const Entry& entry : sample::lines()) {
        const auto checked = check(entry);
        EXPECT_TRUE(checked) << sample::nameOf(entry) << ' ' << checked.error().field;
    }
    for (const LineDescription& line : lineDescriptions()) {
        EXPECT_TRUE(line.built) << line.type << line.kind;
        for (const FieldDescription& is : line.fields) {
            EXPECT_TRUE(is.built) << line.type << line.kind << ' ' << is.name;
        }
    }
    formulary::Solution fixer{.id = "f", .name = "F", .role = formulary::Role::Fixer};
    for (const auto form : {formulary::Form::Powder, formulary::Form::Liquid}) {
        fixer.form = form;
        EXPECT_TRUE(check(Entry{fixer, {}}));
    }
}

// As long as there is such a field: said, it is refused; said by its default, it is not.
TEST(LineDescription, whatNothingReckonsWithIsRefusedByName)
{
    namespace field = formulary::field;
    const auto text = field::text("x").notBuilt();
    EXPECT_TRUE(formulary::checkBuilt(text, std::string()));
    const auto refused = formulary::checkBuilt(text, std::string("said"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NotBuilt);
    EXPECT_EQ(refused.error().field, "x");
    EXPECT_EQ(refused.error().text, "said");
    const auto truth = field::truth("y").implied().notBuilt();
    EXPECT_TRUE(formulary::checkBuilt(truth, false));
    EXPECT_FALSE(formulary::checkBuilt(truth, true));
    const auto form = field::code("form", formulary::kFormCodes).means("powder").notBuilt();
    EXPECT_TRUE(formulary::checkBuilt(form, std::optional(formulary::Form::Powder)));
    EXPECT_EQ(formulary::checkBuilt(form, std::optional(formulary::Form::Liquid)).error().text,
              "liquid");
}

TEST(LineDescription, defaultsAreThoseOfTheStructs)
{
    // What every field of a thing is before anything is read into it.
    const auto compare = [](const auto& what, const char* name) {
        formulary::eachField(what, [&](const FieldDescription& is, const auto& member) {
            using M = std::remove_cvref_t<decltype(member)>;
            const bool hasDefault =
                is.presence == Presence::Stated || is.presence == Presence::Implied;
            if constexpr (formulary::Figurelike<M>) {
                if (hasDefault) {
                    EXPECT_EQ(formulary::detail::numberOf(member), is.fallback)
                        << name << ' ' << is.name;
                }
            }
        });
    };
    compare(formulary::Solution(), "solution");
    compare(formulary::Vessel(), "vessel");
    compare(Processed(), "processed");
}

TEST(LineDescription, aWithdrawnLineNeedsOnlySayWhatItWithdraws)
{
    Supply gone{.id = "s2", .withdrawn = true};
    EXPECT_EQ(check(Entry{gone, {}}).error().field, "replaces");
    gone.replaces = "s1";
    EXPECT_TRUE(check(Entry{gone, {}}));
    Container can{.id = "c2", .replaces = "c1", .withdrawn = true};
    EXPECT_TRUE(check(Entry{can, {}}));
    can.capacity = chemistry::Millilitres(-1);
    EXPECT_EQ(check(Entry{can, {}}).error().field, "capacity_ml");
}

TEST(LineDescription, fieldsThatExcludeEachOther)
{
    const auto refused = [](Happening what) {
        return check(Entry{Event{"e", "b", {}, std::move(what), {}, {}}, {}}).error();
    };
    Mixed found{"s", "v", chemistry::Millilitres(100)};
    found.assumed = chemistry::FilmsPerLitre(3);
    EXPECT_EQ(refused(found).code, ErrorCode::Conflict);
    EXPECT_EQ(refused(found).field, "assumed_films_per_litre");
    EXPECT_EQ(refused(ToppedUp{chemistry::Millilitres(1), "b2", "r"}).field, "solution");
    EXPECT_TRUE(check(
        Entry{Event{"e", "b", {}, ToppedUp{chemistry::Millilitres(1), {}, "r"}, {}, {}}, {}}));
    found.assumed.reset();
    found.historyUnknown = true;
    found.from = "b2";
    EXPECT_EQ(refused(found).field, "history");
    found.from.clear();
    found.mixedOn = chemistry::Instant(std::chrono::milliseconds(1));
    EXPECT_EQ(refused(found).field, "mixed_on") << "found before it was mixed";
}

TEST(Decimals, areExactText)
{
    for (const char* fine : {"0", "9.80", "12", "1000000", "0.000001"}) {
        ASSERT_TRUE(Decimal::from(fine)) << fine;
        EXPECT_EQ(Decimal::from(fine)->text(), fine);
    }
    EXPECT_EQ(Decimal::from("9.80")->value(), 9.8);
    for (const char* odd : {"", ".", "1.", ".5", "1e3", "+1", "1,5", "0x1", " 1", "1 ", "1.2.3",
                            "--1", "1234567890123", "0.1234567", "nan"}) {
        EXPECT_FALSE(Decimal::from(odd)) << odd;
    }
    EXPECT_EQ(Decimal::from(9.8)->text(), "9.8");
    EXPECT_EQ(Decimal::from(20.0)->text(), "20");
    EXPECT_FALSE(Decimal::from(1e300));
    EXPECT_FALSE(Decimal::from(std::nan("")));
    Packet packet{.id = "p", .solution = "s"};
    for (const char* inside : {"0", "1000000", "1000000.000000"}) {
        packet.cost = Decimal::from(inside);
        EXPECT_TRUE(check(packet)) << inside;
    }
    for (const char* outside : {"-1", "-0.000001", "1000000.000001"}) {
        packet.cost = Decimal::from(outside);
        const auto refused = check(packet);
        ASSERT_FALSE(refused) << outside;
        EXPECT_EQ(refused.error().field, "cost");
        EXPECT_EQ(refused.error().low, 0);
        EXPECT_EQ(refused.error().high, 1'000'000);
    }
}

} // namespace ullage::ledger
