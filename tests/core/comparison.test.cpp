// What a comparison says of mixes that ask different things, and of what is dosed as needed.

#include <boardmark/core/mix/footprint.hpp>
#include <boardmark/core/study/comparison.hpp>

#include "../support.hpp"
#include "base_mix.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace boardmark;

namespace {

const core::Tables& us_tables() {
    static const core::Tables tables = reference::tables(core::UnitSystem::us);
    return tables;
}

core::ComparedMix column(const test::BaseMix& mix) {
    return core::compared("one", test::read(test::text(mix), input::Purpose::proportion),
                          us_tables());
}

/// In what two mixes differ, by the summary; empty where it decides between them.
std::string told_apart(const test::BaseMix& one, const test::BaseMix& other) {
    const std::vector<core::ComparedMix> columns{column(one), column(other)};
    REQUIRE(columns[0].may_be_chosen());
    REQUIRE(columns[1].may_be_chosen());
    for (const core::Phrase& phrase : core::summary_of(columns)) {
        if (phrase.text.starts_with("These have different requirements")) {
            return std::get<std::string>(phrase.arguments.front().value);
        }
    }
    return "";
}

bool warns_of_full_head(const core::ComparedMix& column) {
    return std::ranges::any_of(column.remarks, [](const core::Phrase& remark) {
        return remark.text.find("full liquid head") != std::string::npos;
    });
}

} // namespace

TEST_CASE("mixes that ask different things are not weighed by cost and carbon") {
    // Common practice, no source: a mix for less slump, for a later age or without bars costs less.
    const test::BaseMix base;
    CHECK(told_apart(base, base).empty());
    CHECK(told_apart(base, {.strength = "4500 psi"}) == "strength");
    CHECK(told_apart(base, {.slump = "3 in"}) == "slump");
    CHECK(told_apart(base, {.slump = "100 mm"}).empty()); // 4 in as slump is read
    CHECK(told_apart(base, {.requirements = "  slump_window: 3 in to 5 in\n"}) == "slump window");
    CHECK(told_apart(base, {.requirements = "  strength_age: 56 d\n"}) == "its age");
    CHECK(told_apart(base, {.requirements = "  reinforced: no\n"}) == "reinforcement");
    CHECK(told_apart(base, {.requirements = "  reinforced: no\n", .slump = "3 in"}) ==
          "reinforcement, slump");
    CHECK(told_apart(base, {.requirements = "  minimum_binder: 500 lb/yd3\n"}) == "least binder");
    CHECK(told_apart(base, {.requirements = "  finish: board-marked\n"}) == "finish");
    CHECK(told_apart(base, {.requirements = "  section: {thickness: 12 in}\n"}) == "section");
}

TEST_CASE("a slump that the water or the dose need not bring is no bargain") {
    // By hand: 4 in of the water and 1/2 in of 1 fl oz/cwt, against 8 in asked.
    const std::string data = "slump_gain: {4 fl oz/cwt: 2 in, 8 fl oz/cwt: 4 in}";
    const std::string before = "  slump_before_reducer: 4 in\n";
    const core::ComparedMix short_of_it =
        column({.requirements = before, .reducer = data, .dose = "1 fl oz/cwt", .slump = "8 in"});
    REQUIRE(short_of_it.slump.mm);
    CHECK(*short_of_it.slump.mm == Approx(4.5 * 25.4));
    CHECK_FALSE(short_of_it.may_be_chosen());
    const core::ComparedMix as_asked =
        column({.requirements = before, .reducer = data, .dose = "8 fl oz/cwt", .slump = "8 in"});
    CHECK(*as_asked.slump.mm == Approx(8 * 25.4));
    CHECK_FALSE(as_asked.may_miss_slump);

    const core::ComparedMix dry = column({.selections = "{water: 230 lb/yd3}"});
    CHECK(dry.may_miss_slump); // the table has more for 4 in
    const auto summary = core::summary_of({column({}), dry});
    CHECK(std::ranges::any_of(summary, [](const core::Phrase& phrase) {
        return phrase.text.starts_with("Cost and carbon do not decide") &&
               phrase.text.ends_with("(water.slump).");
    }));
    CHECK(std::ranges::none_of(
        summary, [](const core::Phrase& phrase) { return phrase.text.starts_with("Cheapest"); }));
}

TEST_CASE("a reducer that is dosed as needed presses as one of a stated dose") {
    // ACI 347R-14: fluid concrete is a liquid head unless shown otherwise; knowing less of the dose
    // is no reason to drop it.
    CHECK(warns_of_full_head(column({})));
    CHECK(warns_of_full_head(column({.dose = "as needed"})));
    CHECK_FALSE(warns_of_full_head(column({.dose = "0 fl oz/cwt"})));
}

TEST_CASE("a material whose dose alone is missing does not lack its price") {
    const core::ComparedMix dosed_by_trial = column(
        {.reducer = "water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}, price: 14 USD/gal",
         .dose = "as needed"});
    REQUIRE(dosed_by_trial.cost);
    const core::PartialSum& sum = dosed_by_trial.cost->sum;
    CHECK(std::ranges::count(sum.missing, "reducer") == 1);
    CHECK(std::ranges::count(sum.missing, "cement") == 1); // it has no price
    CHECK(sum.undosed == std::vector<std::string>{"reducer"});
}
