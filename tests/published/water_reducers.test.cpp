// Water reducers: the least that ASTM C494 Table 1 demands (types F and G at most 88 % of the
// control's water, A and D at most 95 %, read in two sources) and the arithmetic of doses.

#include "as_printed.hpp"
#include "core/mix/ingredients.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;

namespace {

/// Non-air-entrained concrete with 300 lb/yd3 of table water: 3 in slump, 1 1/2 in stone
/// (ACI 211.1-91 Table 6.3.3), w/cm 0.40.
Solved with_reducer(const std::string& kind, const std::string& reduction) {
    return solve(fmt::format(R"(boardmark: 1
title: reduced water
reporting: us
requirements: {{strength: 3000 psi, slump: 3 in, air: none}}
materials:
  cement: {{kind: portland cement, relative_density: 3.15}}
  stone: {{kind: coarse aggregate, nominal_max_size: 1 1/2 in, relative_density: 2.65,
          absorption: 1 %, dry_rodded_density: 100 lb/ft3}}
  sand: {{kind: fine aggregate, relative_density: 2.65, absorption: 1 %, fineness_modulus: 2.8}}
  reducer: {{kind: {}, relative_density: 1.07, solids: 40 %, water_reduction: {}}}
mixture:
  binder: {{cement: 100 %}}
  coarse: {{stone: 100 %}}
  fine: {{sand: 100 %}}
  admixtures: {{reducer: 8 fl oz/cwt}}
selections: {{w_cm: 0.40}}
)",
                             kind, reduction));
}

/// 8.9 lb/gal: 1728/231 gallons in a cubic foot, over 62.4 lb/ft3. 60 % of the product is water.
core::Material product() {
    core::Material reducer{.name = "reducer",
                           .kind = core::Kind::high_range_water_reducer,
                           .relative_density = 8.9 * 1728 / 231 / 62.4};
    reducer.admixture.solids_percent = 40;
    return reducer;
}

core::Ingredient dosed(double fl_oz_cwt, double binder_lb_yd3) {
    const auto& tables = tables_in(UnitSystem::us);
    const core::Dosage dosage{product(),
                              core::Dose{inside(fl_oz_cwt, "fl oz/cwt"), core::DoseBasis::volume}};
    const double binder_kg_m3 = inside(binder_lb_yd3, "lb/yd3");
    return core::admixture_ingredient(product(), core::dosed_kg_m3(dosage, binder_kg_m3, tables),
                                      tables);
}

} // namespace

TEST_CASE("water that a reducer must save on a control of 300 lb") {
    // ASTM C494 Table 1: type F 88 % = 264 lb, type A 95 % = 285 lb. A product that saves 18 %:
    // 246 lb, at 0.40 615 lb of cementitious material (both by hand).
    const auto [kind, reduction, water_lb, binder_lb] =
        GENERATE(table<std::string, std::string, double, double>({
            {"high-range water reducer", "standard minimum", 264, 660},
            {"water reducer", "standard minimum", 285, 712.5},
            {"high-range water reducer", "{8 fl oz/cwt: 18 %}", 246, 615},
        }));
    CAPTURE(kind, reduction);
    const Solved mix = with_reducer(kind, reduction);
    CHECK_THAT(in_unit(mix.proportions.selection.table_water_kg_m3.value(), "lb/yd3"),
               WithinAbs(300, exact));
    CHECK_THAT(figure(mix, "mixing water", "lb/yd3"), WithinAbs(water_lb, exact));
    CHECK_THAT(figure(mix, "binder", "lb/yd3"), WithinAbs(binder_lb, exact));
}

TEST_CASE("a dose in both systems of units") {
    // 8 fl oz/cwt is 522 mL/100 kg: 8 times 29.5735 mL over 45.3592 kg (NIST Handbook 44)
    CHECK_THAT(in_unit(inside(8, "fl oz/cwt"), "mL/100 kg"), WithinAbs(522, 0.5));
}

TEST_CASE("the liquid of 16 fl oz per hundredweight") {
    // By hand on 611 lb/yd3, product of 8.9 lb/gal with 60 % water: 97.8 fl oz, 6.797 lb, of it
    // 4.08 lb of water, which raises w/cm by 0.0067
    const core::Ingredient reducer = dosed(16, 611);
    CHECK_THAT(in_unit(reducer.volume_m3.value() * inside(1, "yd3"), "fl oz"),
               WithinAbs(97.8, 0.05));
    CHECK_THAT(in_unit(reducer.liquid_kg_m3, "lb/yd3"), WithinAbs(4.08, 0.005));
    CHECK_THAT(in_unit(reducer.liquid_kg_m3, "lb/yd3") / 611, WithinAbs(0.0067, 0.00005));
}

TEST_CASE("the dose whose liquid raises w/cm by one hundredth") {
    // By hand for the same product: 24.0 fl oz/cwt. 0.01 is where ASTM C94 begins to count the
    // liquid of admixtures as mixing water (from memory); here it always counts.
    CHECK_THAT(in_unit(dosed(24.0, 611).liquid_kg_m3, "lb/yd3") / 611, WithinAbs(0.0100, 0.00005));
}
