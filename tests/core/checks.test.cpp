// When a check applies and what it says; the limits themselves are held in tests/published.

#include <boardmark/report/writing/words.hpp>

#include "base_mix.hpp"
#include "core/checks/compare.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

#include <limits>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using core::Verdict;

namespace {

const std::string average = "  average_strength: 5000 psi\n";

Solved with(const std::string& requirements, const std::string& binder = "{cement: 100 %}") {
    return solve(text({.requirements = average + requirements, .binder = binder}));
}

Solved with_cement(const std::string& cement, const std::string& requirements) {
    std::string yaml = text({.requirements = average + requirements});
    const std::string stated = "kind: portland cement, standard: ASTM C150 II";
    yaml.replace(yaml.find(stated), stated.size(), cement);
    return solve(yaml);
}

long count(const Solved& solved, const std::string& id) {
    return std::ranges::count(solved.checks, id, &core::Check::id);
}

} // namespace

TEST_CASE("each category that is not stated is told") {
    CHECK(count(with(""), "exposure.stated") == 4);
    CHECK(count(with("  exposure: [F2, C1]\n"), "exposure.stated") == 2);
    const Solved all = with("  exposure: [F2, S0, W1, C1]\n");
    REQUIRE(count(all, "exposure.stated") == 1);
    CHECK(all.check("exposure.stated")->verdict == Verdict::holds);
}

TEST_CASE("deicers without C2 are to be watched in reinforced concrete") {
    CHECK(with("  exposure: [F3, C1]\n").check("exposure.consistent")->verdict == Verdict::watch);
    CHECK(with("  exposure: [F3, C2]\n").check("exposure.consistent")->verdict == Verdict::holds);
    CHECK(with("  exposure: [F3]\n  reinforced: no\n").check("exposure.consistent") == nullptr);
    CHECK(with("  exposure: [F2, C1]\n").check("exposure.consistent") == nullptr);
}

TEST_CASE("caps on supplementary materials apply in F3 alone") {
    const std::string binder = "{cement: 45 %, slag: 55 %}";
    CHECK(with("  exposure: [F2]\n", binder).check("scm.slag_cement") == nullptr);
    CHECK(with("  exposure: [F3]\n", binder).check("scm.slag_cement")->verdict == Verdict::fails);
}

TEST_CASE("what a blended cement holds is counted and an unknown one is not guessed") {
    const std::string f3 = "  exposure: [F3, S0, W1, C2]\n";
    const Solved stated = with_cement("kind: blended cement, contains: {slag cement: 60 %}", f3);
    CHECK(stated.check("scm.slag_cement")->verdict == Verdict::fails);
    CHECK(*stated.check("scm.slag_cement")->value == Approx(60));
    const Solved unknown = with_cement("kind: blended cement", f3);
    CHECK(unknown.check("scm.total")->verdict == Verdict::not_checked);
}

TEST_CASE("the cement type decides in sulfate and sea water") {
    struct Case {
        std::string cement;
        std::string exposure;
        Verdict verdict;
    };
    const auto [cement, exposure, verdict] = GENERATE(values<Case>({
        {"kind: portland cement, standard: ASTM C150 II", "S1", Verdict::holds},
        {"kind: portland cement, standard: ASTM C150/C150M Type V", "S1", Verdict::holds},
        {"kind: portland cement, standard: ASTM C150 I", "S1", Verdict::fails},
        {"kind: portland cement", "S1", Verdict::not_checked},
        {"kind: portland cement, standard: ASTM C150", "S1", Verdict::not_checked},
        {"kind: blended cement, standard: ASTM C595 IL(10)(MS)", "S1", Verdict::holds},
        {"kind: blended cement, standard: ASTM C595 IS(70)(HS)", "S2", Verdict::holds},
        {"kind: blended cement, standard: ASTM C595 IL(10)(MS)", "S2", Verdict::fails},
        {"kind: portland cement, standard: ASTM C1157 HS", "S2", Verdict::holds},
        {"kind: portland cement, standard: ASTM C150 II", "S2", Verdict::fails},
        {"kind: portland cement, standard: ASTM C150 V", "S2", Verdict::holds},
        // Without pozzolan or slag S3 asks the low-expansion option: to be watched.
        {"kind: portland cement, standard: ASTM C150 V", "S3", Verdict::watch},
        // Sea water: C3A up to 10 % at w/cm up to 0.40, which a class C2 gives here.
        {"kind: portland cement, standard: ASTM C150 I, c3a: 9 %", "S1, C2", Verdict::watch},
        {"kind: portland cement, standard: ASTM C150 I, c3a: 11 %", "S1, C2", Verdict::fails},
    }));
    INFO(cement << " in " << exposure);
    const Solved solved = with_cement(cement, "  exposure: [F2, " + exposure + "]\n");
    CHECK(solved.check("cement.sulfate")->verdict == verdict);
}

TEST_CASE("no sulfate class asks nothing of the cement") {
    CHECK(with("  exposure: [F2, S0]\n").check("cement.sulfate") == nullptr);
}

TEST_CASE("chloride is summed only where every material states it") {
    const std::string c2 = "  exposure: [F2, S0, W1, C2]\n";
    const Solved open = with(c2);
    CHECK(open.check("chloride.exposure")->verdict == Verdict::not_checked);
    CHECK(with(c2 + "  reinforced: no\n").check("chloride.exposure") == nullptr);

    std::string yaml = text({.requirements = average + c2});
    for (const char* kind :
         {"portland cement", "coarse aggregate", "fine aggregate", "high-range water reducer"}) {
        const std::string key = std::string{"kind: "} + kind;
        const std::string share = std::string{kind} == "fine aggregate" ? "0.10 %" : "0 %";
        yaml.replace(yaml.find(key), key.size(), key + ", chloride: " + share);
    }
    const Solved stated = solve(yaml);
    const core::Check& check = *stated.check("chloride.exposure");
    // Sand alone, and the mixing water at 250 mg/L, over the cement.
    const double expected = 100 *
                            (*stated.ingredient("sand").dry_kg_m3 * 0.0010 +
                             stated.ingredient("water").kg_m3 * 0.00025) /
                            stated.ingredient("cement").kg_m3;
    CHECK(*check.value == Approx(expected).epsilon(1e-12));
    CHECK(check.verdict == Verdict::fails); // about 0.2 % against 0.15 %
}

TEST_CASE("the section is held against the stone and what is not stated is told") {
    const Solved stated =
        with("  section: {thickness: 3 in, clear_bar_spacing: 1 in, clear_cover: 3/4 in}\n");
    CHECK(stated.check("size.form")->verdict == Verdict::fails);  // 0.6 in
    CHECK(stated.check("size.bars")->verdict == Verdict::holds);  // 0.75 in
    CHECK(stated.check("size.cover")->verdict == Verdict::watch); // advice: 0.5625 in
    const Solved open = with("");
    CHECK(open.check("size.form")->verdict == Verdict::not_checked);
    CHECK(with("  reinforced: no\n").check("size.bars") == nullptr);
}

TEST_CASE("the average strength fails below the code and is watched with a basis") {
    const std::string low = "  average_strength: 5100 psi\n";
    const Solved bare = solve(text({.requirements = low}));
    CHECK(bare.check("strength.average")->verdict == Verdict::fails);
    const Solved reasoned =
        solve(text({.requirements = low + "  average_strength_basis: \"trial batches\"\n"}));
    CHECK(reasoned.check("strength.average")->verdict == Verdict::watch);
    CHECK(solve(text({.requirements = "  average_strength: 6200 psi\n" +
                                      std::string{"  strength_curve: {0.36: 6900 psi, 0.45: 5400 "
                                                  "psi}\n"}}))
              .check("strength.average")
              ->verdict == Verdict::holds);
}

TEST_CASE("the message of a broken ratio names every class it breaks") {
    const Solved solved = solve(text({.requirements = average + "  exposure: [F2, S1, W1, C2]\n",
                                      .selections = "{w_cm: 0.47}"}));
    const core::Check& check = *solved.check("w_cm.exposure");
    CHECK(check.requirement == "C2");
    CHECK_THAT(report::words(check.message, core::UnitSystem::us),
               Contains("exceeds 0.45 (F2) too") && Contains("S1 allows"));
    CHECK(check.source.citation == "ACI 318-19 Table 19.3.2.1");
}

TEST_CASE("a value is compared at the precision of its limit") {
    using core::at_least;
    using core::at_most;
    CHECK(at_most({0.45, 0.45, 0.01}) == Verdict::holds);
    CHECK(at_most({0.4504, 0.45, 0.01}) == Verdict::watch);
    CHECK(at_most({0.4549, 0.45, 0.01}) == Verdict::watch);
    CHECK(at_most({0.455, 0.45, 0.01}) == Verdict::fails);
    CHECK(at_least({4.46, 4.5, 0.1}) == Verdict::watch);
    CHECK(at_least({4.44, 4.5, 0.1}) == Verdict::fails);
    CHECK(at_most({0.15 + 0.30 + 0.05, 0.5, 0.1}) == Verdict::holds); // not exactly 0.5 in binary
    constexpr double endless = std::numeric_limits<double>::infinity();
    for (const double none : {std::numeric_limits<double>::quiet_NaN(), endless, -endless}) {
        CHECK(at_most({none, 5, 0.1}) == Verdict::not_checked);
        CHECK(at_most({5, none, 0.1}) == Verdict::not_checked);
        CHECK(at_least({none, 5, 0.1}) == Verdict::not_checked);
        CHECK(at_least({5, none, 0.1}) == Verdict::not_checked);
    }
}

TEST_CASE("air that the file itself asks for is held where no class asks") {
    struct Case {
        std::string selections;
        Verdict verdict;
    };
    const auto [selections, verdict] = GENERATE(values<Case>({
        {"{}", Verdict::holds},
        {"{air: 6.4 %}", Verdict::holds},
        {"{air: 4.5 %}", Verdict::watch}, // within the tolerance, which belongs to the load
        {"{air: 4.4 %}", Verdict::fails},
        {"{air: 8 %}", Verdict::fails},
    }));
    INFO(selections);
    const Solved solved =
        solve(text({.requirements = average + "  air: 6 %\n", .selections = selections}));
    CHECK(solved.check("air.stated")->verdict == verdict);
    CHECK(solved.check("air.stated")->requirement == "requirements.air");
    CHECK(with("  air: none\n").check("air.stated") == nullptr);
}

TEST_CASE("what is known to break a limit fails though something else is unknown") {
    const std::string c2 = "  exposure: [F2, S0, W1, C2]\n";
    std::string yaml = text({.requirements = average + c2});
    yaml.replace(yaml.find("{kind: fine aggregate"), 21, "{kind: fine aggregate, chloride: 0.2 %");
    CHECK(solve(yaml).check("chloride.exposure")->verdict == Verdict::fails);

    std::string blend = text({.requirements = average + "  exposure: [F3, S0, W1, C2]\n",
                              .binder = "{cement: 40 %, slag: 60 %}"});
    const std::string stated = "kind: portland cement, standard: ASTM C150 II";
    blend.replace(blend.find(stated), stated.size(), "kind: blended cement");
    const Solved solved = solve(blend);
    CHECK(solved.check("scm.slag_cement")->verdict == Verdict::fails);
    CHECK(solved.check("scm.silica_fume")->verdict == Verdict::not_checked);
}

TEST_CASE("chloride of a dose by trial is not known unless there is none") {
    std::string yaml = text({.requirements = average + "  exposure: [F2, S0, W1, C2]\n"});
    for (const char* kind :
         {"portland cement", "coarse aggregate", "fine aggregate", "high-range water reducer"}) {
        const std::string key = std::string{"kind: "} + kind;
        yaml.replace(yaml.find(key), key.size(), key + ", chloride: 0 %");
    }
    const auto with_agent = [&](const std::string& chloride) {
        std::string changed = yaml;
        const std::string key = "kind: air-entraining admixture";
        changed.replace(changed.find(key), key.size(), key + chloride);
        return solve(changed).check("chloride.exposure")->verdict;
    };
    CHECK(with_agent("") == Verdict::not_checked);
    CHECK(with_agent(", chloride: 1 %") == Verdict::not_checked);
    CHECK(with_agent(", chloride: 0 %") == Verdict::holds);
}

TEST_CASE("calcium chloride is barred in the severe sulfate classes") {
    const auto with_accelerator = [](const std::string& exposure, const std::string& chloride) {
        std::string yaml = text({.requirements = average + "  exposure: [" + exposure + "]\n"});
        yaml.replace(yaml.find("  agent:"), 2, "  quick: {kind: accelerator" + chloride + "}\n  ");
        yaml.replace(yaml.find("{reducer: 8"), 1, "{quick: 0.5 %, ");
        // The others state theirs: what states none may hold some.
        yaml.replace(yaml.find("ASTM C494 F"), 11, "ASTM C494 F, chloride: 0.05 %");
        yaml.replace(yaml.find("{kind: air-entraining admixture}"), 32,
                     "{kind: air-entraining admixture, chloride: 0 %}");
        return solve(yaml);
    };
    CHECK(with_accelerator("S1", ", chloride: 20 %").check("chloride.sulfate") == nullptr);
    CHECK(with_accelerator("S3", ", chloride: 20 %").check("chloride.sulfate")->verdict ==
          Verdict::fails);
    CHECK(with_accelerator("S2", "").check("chloride.sulfate")->verdict == Verdict::not_checked);
    CHECK(with_accelerator("S2", ", chloride: 0 %").check("chloride.sulfate")->verdict ==
          Verdict::holds);
}

TEST_CASE("air that the file asks for is held beside the class") {
    const auto count_air = [](const Solved& solved, Verdict verdict) {
        return std::ranges::count_if(solved.checks, [&](const core::Check& check) {
            return (check.id == "air.exposure" || check.id == "air.stated") &&
                   check.verdict == verdict;
        });
    };
    const Solved both = solve(text(
        {.requirements = average + "  exposure: [F2]\n  air: 8 %\n", .selections = "{air: 6 %}"}));
    CHECK(count_air(both, Verdict::holds) == 1);
    CHECK(count_air(both, Verdict::fails) == 1);
    const Solved unwanted = solve(text(
        {.requirements = average + "  exposure: [F0]\n  air: none\n", .selections = "{air: 6 %}"}));
    CHECK(count_air(unwanted, Verdict::fails) == 1);
}

TEST_CASE("a year or an unknown notation is not taken for a cement type") {
    const std::string standard = GENERATE("ASTM C150-22", "ASTM C1157/C1157M-20", "Type II",
                                          "ASTM C150 Type 2", "a national standard");
    INFO(standard);
    const Solved solved =
        with_cement("kind: portland cement, standard: " + standard, "  exposure: [F2, S1]\n");
    CHECK(solved.check("cement.sulfate")->verdict == Verdict::not_checked);
}

TEST_CASE("evidence on alkali reactivity is asked for in contact with water") {
    CHECK(with("  exposure: [F2, W0]\n").check("aggregate.reactivity") == nullptr);
    CHECK(with("  exposure: [F2, W1]\n").check("aggregate.reactivity")->verdict ==
          Verdict::not_checked);
}

TEST_CASE("a minimum is held to the whole pound") {
    const auto verdict_at = [](const std::string& binder) {
        return solve(text({.requirements = average + "  minimum_binder: 641 lb/yd3\n",
                           .selections = "{binder: " + binder + " lb/yd3}"}))
            .check("binder.minimum")
            ->verdict;
    };
    CHECK(verdict_at("641") == Verdict::holds);
    CHECK(verdict_at("640.9") == Verdict::watch);
    CHECK(verdict_at("640.4") == Verdict::fails);
}
