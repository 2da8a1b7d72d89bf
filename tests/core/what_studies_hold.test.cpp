// What a study of a mix holds of the mix as written: the least cement of its code, and of its own
// readings, densities and strengths only what its changes leave true.

#include <boardmark/core/many/economy.hpp>
#include <boardmark/core/many/sweep.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/study/dose_response.hpp>

#include "../support.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace boardmark;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

struct Written {
    std::string method = "ACI 211.1";
    std::string exposure = "[XC4, XS1, XF3]";
    std::string requirements = "strength_curve: {0.36: 70 MPa, 0.45: 60 MPa, 0.55: 50 MPa}";
    std::string binder = "{cement: 100 %}";
    std::string coarse = "{stone: 100 %}";
    std::string blend = ""; ///< further keys of the mixture, each "key: value, "
    std::string air = "60 mL/100 kg";
    std::string selections = "{}";
};

core::CompleteMix mix_of(const Written& written) {
    const std::string text =
        "boardmark: 1\ntitle: Quay terrace\nreporting: si\nmethod: " + written.method +
        "\nrequirements:\n  code: EN 206\n  exposure: " + written.exposure +
        "\n  strength: C30/37\n  slump: 100 mm\n  " + written.requirements +
        "\nmaterials:\n"
        "  cement: {kind: portland cement, standard: EN 197-1 CEM I 42.5 N, strength_class: 42.5,\n"
        "           relative_density: 3.15, price: 120 EUR/t}\n"
        "  slag: {kind: slag cement, relative_density: 2.90, price: 100 EUR/t}\n"
        "  stone: {kind: coarse aggregate, nominal_max_size: 20 mm, relative_density: 2.68,\n"
        "          absorption: 0.5 %, dry_rodded_density: 1600 kg/m3, surface: crushed,\n"
        "          price: 20 EUR/t}\n"
        "  gravel: {kind: coarse aggregate, nominal_max_size: 10 mm, relative_density: 2.60,\n"
        "           absorption: 1 %, dry_rodded_density: 1500 kg/m3, price: 20 EUR/t}\n"
        "  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %,\n"
        "         fineness_modulus: 2.8, surface: uncrushed, passing_600um: 55 %, price: 18 "
        "EUR/t}\n"
        "  reducer: {kind: high-range water reducer, standard: EN 934-2, relative_density: 1.07,\n"
        "            solids: 35 %, price: 2.5 EUR/kg,\n"
        "            water_reduction: {260 mL/100 kg: 8 %, 520 mL/100 kg: 16 %, 780 mL/100 kg: 22 "
        "%}}\n"
        "  agent: {kind: air-entraining admixture, relative_density: 1.01, price: 2 EUR/kg}\n"
        "mixture: {binder: " +
        written.binder + ", coarse: " + written.coarse + ", " + written.blend +
        "fine: {sand: 100 %},\n          admixtures: {reducer: 780 mL/100 kg, agent: " +
        written.air + "}}\n" +
        (written.selections == "{}" ? "" : "selections: " + written.selections + "\n");
    return std::get<core::CompleteMix>(test::read(text, input::Purpose::proportion));
}

core::Tables tables_of(const core::CompleteMix& mix) {
    return reference::tables_for(mix, mix->method);
}

std::vector<core::ComparedMix> study_of(const Written& written) {
    const core::CompleteMix mix = mix_of(written);
    return test::made(core::reducer_study(mix, tables_of(mix)));
}

core::Sweep swept(const Written& written, core::SweepAxis axis) {
    const core::CompleteMix mix = mix_of(written);
    return core::sweep(mix, {std::move(axis)}, tables_of(mix), reference::vocabulary());
}

bool fails(const core::ComparedMix& column, const char* id) {
    return std::ranges::any_of(column.checks, [&](const core::Check& check) {
        return check.id == id && check.verdict == core::Verdict::fails;
    });
}

bool is_watched(const core::SweepPoint& point, const char* id) {
    return std::ranges::count(point.mix.value().verdict.watched, id) > 0;
}

constexpr const char* by_chart = "{fresh_density: 2410 kg/m3, fine_share_by_mass: 31 %}";

} // namespace

TEST_CASE("a study keeps the least cement of the code where the method finds the ratio") {
    // ACI 211.1-91 Table A1.5.3.3: 184 kg/m3 for 20 mm stone, air-entrained, 75 to 100 mm, less
    // 22 % by the reducer; EN 206 Table F.1, XF3: w/c 0.50 and 320 kg/m3 of cement.
    const auto binder = [](const core::ComparedMix& column) {
        return column.proportions.value().totals.binder_kg_m3;
    };
    const auto plain = study_of({});
    REQUIRE(plain.size() == 4);
    CHECK_THAT(binder(plain[0]), WithinAbs(184 / 0.50, 1e-6));
    CHECK_THAT(binder(plain[2]), WithinAbs(320, 1e-6)); // 287 by the ratio
    CHECK_THAT(plain[2].proportions->totals.w_cm, WithinAbs(184 * 0.78 / 320, 1e-6));
    // Beside CEM I slag counts by k 0.6 in the ratio (5.2.5.2), and not at all in the least cement:
    // 184 / 0.45 would hold 307 of cement, 320 are 75 % of 426.67.
    const auto slag = study_of({.binder = "{cement: 75 %, slag: 25 %}"});
    CHECK_THAT(binder(slag[0]), WithinAbs(320 / 0.75, 1e-6));
    for (const auto& columns : {plain, slag}) {
        for (const core::ComparedMix& column : columns) {
            INFO(column.label);
            CHECK_FALSE(fails(column, "binder.exposure"));
        }
    }
    // A ratio or an amount that the file gives stays: then the check says so.
    CHECK_THAT(binder(study_of({.selections = "{w_cm: 0.50}"})[2]),
               WithinAbs(184 * 0.78 / 0.50, 1e-6));
    CHECK(fails(study_of({.selections = "{binder: 287.04 kg/m3}"})[2], "binder.exposure"));
}

TEST_CASE("the least cement of the code is kept at each dose") {
    const core::CompleteMix mix = mix_of({});
    const auto response = test::made(core::dose_response(mix, tables_of(mix)));
    for (const core::DosePoint& point : response.points) {
        INFO(point.ml_100kg);
        const core::Totals& totals = point.less_binder.proportions.value().totals;
        CHECK_THAT(totals.binder_kg_m3, WithinAbs(std::max(320., totals.water_kg_m3 / 0.5), 1e-6));
        CHECK_FALSE(fails(point.less_binder, "binder.exposure"));
    }
}

TEST_CASE("a reading of a chart is none of another water or ratio") {
    // Design of normal concrete mixes, 2nd edition: Figure 5 is entered with the free water, Figure
    // 6 with the ratio; no formula stands in for either.
    const Written british{.method = "BRE",
                          .exposure = "[XC4]",
                          .requirements = "air: none\n  strength_curve: {0.38: 71 MPa, 0.42: 63 "
                                          "MPa, 0.50: 52 MPa, 0.6: 42 MPa}",
                          .air = "as needed",
                          .selections = by_chart};
    const core::CompleteMix mix = mix_of(british);
    const core::Tables tables = tables_of(mix);
    REQUIRE(core::proportion(mix, tables));
    for (const core::ComparedMix& column : study_of(british)) {
        INFO(column.label);
        REQUIRE(column.unresolved); // without the reducer it is another water
        CHECK_THAT(column.unresolved->what.text,
                   Contains("Figure 5") && Contains("selections.fresh_density"));
    }
    const auto response = core::dose_response(mix, tables);
    REQUIRE_FALSE(response);
    CHECK_THAT(response.why().what.text, Contains("Figure 5"));

    const core::Variable dose{core::Varied::dose, "reducer"};
    for (const core::SweepPoint& point : swept(british, {dose, 0, 780e-8, 3}).points) {
        CHECK(point.mix.has_value() == (std::abs(point.at[0] - 780e-8) < 1e-12));
    }
    // w/c 0.50 by XC4 (EN 206 Table F.1)
    const core::Sweep ratios = swept(british, {{core::Varied::w_cm}, 0.44, 0.48, 2});
    for (const core::SweepPoint& point : ratios.points) {
        REQUIRE(point.unresolved);
        CHECK_THAT(point.unresolved->what.text,
                   Contains("Figure 6") && Contains("selections.fine_share_by_mass"));
    }
    const auto found = core::economy(
        mix, {core::Objective::binder, {{{core::Varied::w_cm}, 0.44, 0.49, true}}}, tables);
    REQUIRE_FALSE(found);
    CHECK_THAT(found.why().what.text, Contains("Figure 6"));
}

TEST_CASE("a density measured on a blend is none of other shares") {
    // Mean by mass, as the contract of a blend without a measurement: 1600 and 1500 kg/m3.
    const Written blended{.coarse = "{stone: 70 %, gravel: 30 %}",
                          .blend = "coarse_dry_rodded_density: 1680 kg/m3, "};
    const core::Variable gravel{core::Varied::share, "gravel"};
    const core::Sweep found = swept(blended, {gravel, 0, 60, 3});
    const auto coarse_kg = [](const core::SweepPoint& point) {
        return point.mix.value().selection.coarse_volume.value();
    };
    CHECK(coarse_kg(found.points[0]) == coarse_kg(found.points[1])); // by one size and one sand
    const core::Mix written = *mix_of(blended);
    const core::VariedMix varied{written, {gravel}};
    CHECK(varied.at(std::vector{30.}).blend_dry_rodded_density_kg_m3 == 1680.);
    CHECK_FALSE(varied.at(std::vector{60.}).blend_dry_rodded_density_kg_m3);
    REQUIRE(found.cautions.size() == 1);
    CHECK_THAT(found.cautions.front().text, Contains("coarse_dry_rodded_density"));
    const core::Variable air{core::Varied::air};
    CHECK(swept(blended, {air, 4.5, 6, 2}).cautions.empty());

    const core::CompleteMix mix = mix_of(blended);
    const auto best = test::made(
        core::economy(mix, {core::Objective::cost, {{gravel, 40, 60, true}}}, tables_of(mix)));
    const auto step =
        std::ranges::find_if(best.proportions.worksheet.steps, [](const core::Step& one) {
            return one.quantity == "dry_rodded_density";
        });
    REQUIRE(step != best.proportions.worksheet.steps.end());
    CHECK_THAT(step->value.value(), WithinAbs(1600 - best.at[0], 1e-9)); // 1 kg/m3 a percent
    CHECK(std::ranges::count(best.proportions.worksheet.cautions, found.cautions.front().text,
                             &core::Phrase::text) == 1);
}

TEST_CASE("own strengths are a watch at more air than that of the mix as written") {
    // Air weakens: common practice, some 5 % of the strength for each percent. ACI 211.1-91 Table
    // A1.5.3.3 aims at 6 % for 20 mm stone in severe exposure.
    const Written aired{.requirements = "air: 6 %\n  strength_curve: {0.36: 70 MPa, 0.45: 60 MPa, "
                                        "0.55: 50 MPa}"};
    const core::Variable air{core::Varied::air};
    const core::Sweep found = swept(aired, {air, 4.5, 7.5, 3});
    for (const core::SweepPoint& point : found.points) {
        INFO(point.at[0]);
        CHECK(is_watched(point, "w_cm.strength") == (point.at[0] > 6.1));
        CHECK(point.leaves_own_air == (point.at[0] > 6.1));
        CHECK_FALSE(point.leaves_own_shares);
    }
    const core::CompleteMix mix = mix_of(aired);
    const auto best = test::made(
        core::economy(mix, {core::Objective::cost, {{air, 6.5, 7.5, true}}}, tables_of(mix)));
    const auto check = std::ranges::find(best.checks, "w_cm.strength", &core::Check::id);
    REQUIRE(check != best.checks.end());
    CHECK(check->verdict == core::Verdict::watch);
    CHECK_THAT(check->message.text, Contains("the own strengths are of the air as written"));
}
