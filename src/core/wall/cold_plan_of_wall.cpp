#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "least_dimensions.hpp"
#include "stripping_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr double hours_in_a_day = 24;

bool is_high_early(const Ingredient& binder) {
    const std::string& standard = binder.material->standard;
    return binder.material->kind == Kind::portland_cement &&
           (standard.ends_with(" III") || standard.ends_with(" IIIA"));
}

/// Type III cement alone, or an accelerator with a dose; slag, ash and retarders take it back.
bool is_accelerated(const YoungConcrete& young, const Proportions& proportions) {
    const auto binders = of_role(proportions, Role::binder);
    const auto admixtures = of_role(proportions, Role::admixture);
    const bool high_early = std::ranges::all_of(
        binders, [](const Ingredient* one) { return one->kg_m3 == 0 || is_high_early(*one); });
    const bool accelerator = std::ranges::any_of(admixtures, [](const Ingredient* one) {
        return one->material->kind == Kind::accelerator && one->kg_m3 > 0;
    });
    const bool pure =
        young.binder_known && *young.pour.slag_percent == 0 && *young.pour.fly_ash_percent == 0;
    return pure && young.pour.retards == false && (high_early || accelerator);
}

/// A load comes before the concrete has the strength that the structure counts on: backfill, or
/// its own weight where a soffit's form goes.
std::optional<bool> is_loaded(const Wall& wall, const AfterPlacing& after) {
    const WallPlacing& placing = wall.placing;
    const double strong_h = hours_in_a_day * requirements_of(wall.mix).strength_age_d;
    const auto soffit_h =
        placing.soffit_strip_after_h ? placing.soffit_strip_after_h : placing.strip_after_h;
    if (!after.soffits.empty() && soffit_h && *soffit_h < strong_h) {
        return true;
    }
    return placing.loaded_after_h ? std::optional{*placing.loaded_after_h < strong_h}
                                  : std::nullopt;
}

/// By EN 13670 where the code is one of EN; by it too where it is a file of the user's own, which
/// does not say: that figure is the higher one.
const TypicalFigure& frost_strength(const Requirements& asked, const CuringRules& rules) {
    const bool by_en = asked.code.starts_with(rules.en_codes_begin) || asked.code_file;
    return by_en ? rules.strength_before_freezing_en_mpa : rules.strength_before_freezing_mpa;
}

/// Whether a class is stated for which freezing never matters.
bool never_freezes(const Requirements& asked, const CodeTables& code) {
    return std::ranges::any_of(asked.exposure, [&](const std::string& name) {
        const ExposureClass* stated = code.find_class(name);
        return stated && stated->never_freezes;
    });
}

} // namespace

std::optional<ColdPlan> cold_plan_of(const Wall& wall, const YoungConcrete& young,
                                     const Proportions& proportions, const AfterPlacing& after,
                                     const Tables& tables) {
    const CuringRules& rules = tables.placing->curing;
    const Requirements& asked = requirements_of(wall.mix);
    const auto thicknesses = least_dimensions_mm(wall);
    constexpr double long_enough_h = 365 * hours_in_a_day;
    ColdPour pour{.coldest_c = young.coldest_air_c,
                  .exposed = !never_freezes(asked, tables.code),
                  .loaded = is_loaded(wall, after),
                  .accelerated = is_accelerated(young, proportions),
                  .thinnest_mm = std::ranges::min(thicknesses),
                  .thickest_mm = std::ranges::max(thicknesses),
                  .frost_strength_mpa = frost_strength(asked, rules).value,
                  .held_at_c = wall.placing.held_at_c,
                  .lift = young.lift};
    if (pour.held_at_c && young.concrete_c) {
        pour.held = {{long_enough_h, std::min(*pour.held_at_c, *young.concrete_c)}};
    }
    return cold_plan(pour, rules, tables.weather);
}

} // namespace boardmark::core
