// A code that nothing in the program knows: two classes read from tests/toy-code by the reader of
// data/. What is expected stands in those tables; the amounts below are chosen to meet or break
// them. That its names, clauses and edition come out shows that no other code's are woven in.

#include <boardmark/core/checks/check.hpp>
#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/report/writing/words.hpp>

#include "reference/code_tables.hpp"
#include "reference/site_rules.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

namespace boardmark::reference {
std::span<const EmbeddedTable> toy_tables();
}

using namespace boardmark;
using namespace boardmark::test;
using core::UnitSystem;
using core::Verdict;

namespace {

core::CodeTables toy_code() {
    const auto codes = reference::codes_of(reference::toy_tables());
    REQUIRE(codes.size() == 1);
    return reference::code_tables(codes.front(), UnitSystem::us,
                                  reference::site_rules(codes.front()));
}

/// What a submitted mix is asked and holds, per cubic yard; the binder is 600 lb.
struct Submitted {
    std::string asked = "exposure: [Ice-2, Brine-1]";
    std::string strength = "5000 psi";
    double water = 240; // w/cm 0.40
    double slag = 150;  // 25 % of the binder
    double air = 5.5;
};

struct Judged {
    core::Requirements requirements;
    std::vector<core::Check> checks;

    const core::Check* find(const std::string& id) const {
        const auto found = std::ranges::find(checks, id, &core::Check::id);
        return found == checks.end() ? nullptr : &*found;
    }
    const core::Check& check(const std::string& id) const {
        INFO(id);
        const core::Check* found = find(id);
        REQUIRE(found);
        return *found;
    }
    std::string told(const std::string& id) const {
        return report::words(check(id).message, UnitSystem::us);
    }
};

Judged judge(const Submitted& mix) {
    core::Vocabulary words = reference::vocabulary();
    const core::CodeTables toy = toy_code();
    words.codes = {toy.name};
    words.code_named = [&](const std::string&, UnitSystem) -> const core::CodeTables& {
        return toy;
    };
    const core::ClassNames names = core::class_names(toy);
    words.class_names = [&](const std::string&) -> const core::ClassNames& { return names; };
    const input::ReadOptions options{.purpose = input::Purpose::check,
                                     .vocabulary = words,
                                     .load = read_options(input::Purpose::check).load};
    const auto text =
        fmt::format(R"(boardmark: 1
title: terrace
reporting: us
requirements: {{code: Terrace Code 7, {}, strength: {}, slump: 3 in}}
materials:
  cement: {{kind: portland cement, chloride: 0 %}}
  slag: {{kind: slag cement, chloride: 0 %}}
  stone: {{kind: coarse aggregate, nominal_max_size: 3/4 in}}
proportions: {{volume: 1 yd3, water: {} lb, cement: {} lb, slag: {} lb, air: {} %}}
)",
                    mix.asked, mix.strength, mix.water, 600 - mix.slag, mix.slag, mix.air);
    const auto reading = input::read_mix(text, "terrace.yaml", options);
    INFO(input::render(reading.diagnostics));
    REQUIRE(reading.mix);
    core::Tables tables = reference::tables(UnitSystem::us);
    tables.code = toy;
    const core::Requirements& asked = core::requirements_of(*reading.mix);
    return {asked, core::assess(*reading.mix,
                                test::made(core::proportions_of(*reading.mix, tables)), tables)};
}

} // namespace

TEST_CASE("a code's name, categories and classes come from its tables") {
    const core::CodeTables code = toy_code();
    CHECK(code.name == "Terrace Code 7");
    REQUIRE(code.categories.size() == 2);
    CHECK(code.categories[1].name == "Brine");
    REQUIRE(code.find_class("Brine-1"));
    CHECK(code.find_class("Brine-1")->category == 1);
    CHECK_FALSE(code.find_class("Ice-1"));
}

TEST_CASE("a code of two classes judges by its own limits, names and clauses") {
    const Judged held = judge({});
    CHECK(held.check("w_cm.exposure").verdict == Verdict::holds);
    CHECK(held.check("w_cm.exposure").source.citation == "Terrace Code 7 Table B");
    CHECK(held.told("w_cm.exposure") == "w/cm 0.40, at most 0.42 in Brine-1; Ice-2 allows 0.50");
    CHECK(held.check("strength.exposure").verdict == Verdict::holds);
    CHECK(held.check("strength.exposure").requirement == "Brine-1");
    CHECK(held.check("air.exposure").verdict == Verdict::holds);
    CHECK(held.check("air.exposure").source.citation == "Terrace Code 7 Table C");
    CHECK(held.check("scm.slag_cement").verdict == Verdict::holds);
    CHECK(held.check("scm.slag_cement").source.citation == "Terrace Code 7 clause 9");
    CHECK(held.check("chloride.exposure").requirement == "Brine-1");
    CHECK(held.check("exposure.stated").requirement == "Ice, Brine");
    CHECK(held.told("exposure.consistent") == "Ice-2 and Brine-1 are stated together");
    for (const char* unasked :
         {"scm.fly_ash", "scm.total", "cement.sulfate", "exposure.site", "aggregate.reactivity"}) {
        INFO(unasked);
        CHECK_FALSE(held.find(unasked));
    }
}

TEST_CASE("what breaks a limit of that code fails by it") {
    CHECK(judge({.water = 270}).check("w_cm.exposure").verdict == Verdict::fails); // 0.45
    CHECK(judge({.strength = "4500 psi"}).check("strength.exposure").verdict == Verdict::fails);
    CHECK(judge({.slag = 210}).check("scm.slag_cement").verdict == Verdict::fails); // 35 %
    CHECK(judge({.air = 3}).check("air.exposure").verdict == Verdict::fails);
    const Judged alone = judge({.asked = "exposure: [Ice-2]"});
    CHECK(alone.check("exposure.consistent").verdict == Verdict::watch);
    CHECK(alone.told("exposure.consistent") ==
          "Ice-2 is strewn with salt: state Brine-1 as well, or say why not");
    CHECK(alone.told("exposure.stated") == "no class of category Brine (brine at the bars) is "
                                           "stated; the designer states it");
}

TEST_CASE("that code's own table leads from a site to its classes") {
    const Judged placed = judge({.asked = "site: {freezing: yes, deicer: yes}"});
    CHECK(placed.requirements.exposure == std::vector<std::string>{"Ice-2", "Brine-1"});
    const Judged open = judge({.asked = "site: {freezing: yes}"});
    CHECK(open.requirements.exposure == std::vector<std::string>{"Ice-2"});
    CHECK(open.told("exposure.stated") ==
          "no class of category Brine (brine at the bars) is stated, none follows from the site: "
          "'deicer' is not stated for the site; the designer states it");
    const Judged milder = judge({.asked = "exposure: [Brine-1], site: {freezing: no, deicer: no}"});
    CHECK_FALSE(milder.find("air.exposure"));
}
