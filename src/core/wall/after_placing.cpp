#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/designation.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include "../basis/phrases.hpp"
#include "stripping_checks.hpp"

namespace boardmark::core {
namespace {

/// "II" of "ASTM C150 II"; of several cements the one that is cured longest counts, so each is
/// asked.
std::string type_of(const std::string& standard) {
    return standard.substr(standard.rfind(' ') + 1);
}

/// A cement of which nobody states the type; it may be the one that is cured longest.
bool may_be_any(const Material& material) {
    const bool cement = material.kind == Kind::portland_cement ||
                        material.kind == Kind::portland_limestone_cement ||
                        material.kind == Kind::blended_cement ||
                        material.kind == Kind::white_cement;
    const bool no_type = material.kind == Kind::portland_cement &&
                         cement_type(material.standard) == CementType::not_told;
    return cement && (material.standard.empty() || no_type);
}

TypicalFigure curing_of(const Proportions& proportions, const CuringRules& rules) {
    TypicalFigure longest = curing_time_d("", false, rules);
    for (const Ingredient* ingredient : of_role(proportions, Role::binder)) {
        const TypicalFigure own =
            curing_time_d(type_of(ingredient->material->standard), false, rules);
        longest = own.value > longest.value ? own : longest;
        for (const auto& [type, figure] : rules.by_cement_d) {
            const bool longer = figure.value > longest.value;
            longest = longer && may_be_any(*ingredient->material) ? figure : longest;
        }
    }
    return longest;
}

/// That the engineer asks before the props of soffits go.
std::optional<double> soffit_strength_mpa(const Wall& wall) {
    const auto percent = wall.placing.soffit_strength_percent;
    const Requirements& asked = requirements_of(wall.mix);
    // Of cubes alone no strength of cylinders is known: theirs is higher, so it asks for more.
    const double specified_mpa =
        strength_by(Specimen::cylinder, asked).value_or(asked.strength_mpa);
    return percent ? std::optional{*percent / 100 * specified_mpa} : std::nullopt;
}

} // namespace

AfterPlacing after_placing(const Wall& wall, const Proportions& proportions, const Tables& tables,
                           std::vector<Check>& checks) {
    const CuringRules& rules = tables.placing->curing;
    const YoungConcrete young = young_concrete(wall, proportions, tables);
    AfterPlacing after{.curing_d = curing_of(proportions, rules),
                       .strip = stripping_age(young.lift, rules)};
    if (!after.strip.by_time_h) {
        after.strip_open.push_back(
            {"by time: only hours in air above {air} count",
             {quantity("air", {rules.strip_air_c.value, Measure::temperature})}});
    }
    if (young.no_curve) {
        after.strip_open.push_back(*young.no_curve);
    }
    for (const Soffit& soffit : soffits_of(wall, young, tables)) {
        after.soffits.push_back(soffit_age(soffit, young.lift, soffit_strength_mpa(wall), rules));
    }
    after.cold = cold_plan_of(wall, young, proportions, after, tables);
    add_face_checks(wall, young, after, rules, checks);
    add_soffit_checks(wall, young, after, rules, checks);
    add_cold_check(wall, young, after, tables, checks);
    return after;
}

} // namespace boardmark::core
