#include "scatter_plan.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/trial/batching_tolerance.hpp>

#include <algorithm>
#include <optional>
#include <string>

namespace boardmark::core {
namespace {

/// 95 % of a normal distribution lie within so many standard deviations of its middle.
constexpr double deviations_of_tolerance = 1.96;

bool is_aggregate(const Ingredient& ingredient) {
    return ingredient.role == Role::coarse || ingredient.role == Role::fine;
}

/// What a deviation is where the file states none.
struct AssumedDeviation {
    double value = 0; ///< 0: exact
    Source source = {};
};

AssumedDeviation of_tolerance(const TypicalFigure& tolerance) {
    return {tolerance.value / deviations_of_tolerance, tolerance.source};
}

std::optional<double> stated_of(const std::vector<ScatterOfMaterial>& stated,
                                std::string_view material) {
    const auto found = std::ranges::find_if(
        stated, [&](const ScatterOfMaterial& one) { return one.material == material; });
    return found == stated.end() ? std::nullopt : std::optional{found->deviation};
}

class Planner {
public:
    Planner(const Proportions& designed, const Tables& tables)
        : designed_{designed}
        , tables_{tables} {
        plan_.dimensions.push_back({0, 0});
        plan_.ingredients.resize(designed.ingredients.size());
    }

    /// One input of all weighings of a kind, each with a number of its own.
    template <class IsWeighed>
    void weighings(const char* key, Role tolerance, std::optional<double> stated,
                   IsWeighed is_weighed) {
        const auto& all = designed_.ingredients;
        if (std::ranges::none_of(all, is_weighed)) {
            return;
        }
        const std::size_t input =
            add_input(key, Measure::percent, stated,
                      of_tolerance(batching_tolerance(tolerance, tables_.trial->batching)));
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (is_weighed(all[i])) {
                plan_.ingredients[i].mass = add_dimension(input);
            }
        }
    }

    DimensionIndex single(std::string key, Measure measure, std::optional<double> stated,
                          AssumedDeviation assumed) {
        return add_dimension(add_input(std::move(key), measure, stated, std::move(assumed)));
    }

    ScatteredIngredient& scattered(std::size_t ingredient) { return plan_.ingredients[ingredient]; }
    ScatterPlan& plan() { return plan_; }

private:
    std::size_t add_input(std::string key, Measure measure, std::optional<double> stated,
                          AssumedDeviation assumed) {
        plan_.inputs.push_back({.key = std::move(key),
                                .deviation = stated.value_or(assumed.value),
                                .measure = measure,
                                .assumed = !stated,
                                .source = stated ? Source{} : std::move(assumed.source)});
        return plan_.inputs.size() - 1;
    }

    DimensionIndex add_dimension(std::size_t input) {
        const double deviation = plan_.inputs[input].deviation;
        if (deviation == 0) {
            return exact_figure;
        }
        plan_.dimensions.push_back({input, deviation});
        return plan_.dimensions.size() - 1;
    }

    const Proportions& designed_;
    const Tables& tables_;
    ScatterPlan plan_;
};

void plan_weighings(const Scatter& stated, Planner& planner) {
    const auto of = [](Role role) {
        return [role](const Ingredient& one) { return one.role == role && one.kg_m3 > 0; };
    };
    planner.weighings("water", Role::water, stated.water_percent, of(Role::water));
    planner.weighings("binder", Role::binder, stated.binder_percent, of(Role::binder));
    planner.weighings("aggregate", Role::coarse, stated.aggregate_percent,
                      [](const auto& one) { return is_aggregate(one) && one.kg_m3 > 0; });
    planner.weighings("admixture", Role::admixture, stated.admixture_percent, of(Role::admixture));
}

/// A record of tests tells how they scatter.
std::optional<double> recorded_mpa(const Requirements& requirements) {
    return requirements.records ? std::optional{requirements.records->standard_deviation_mpa}
                                : std::nullopt;
}

void plan_tests(const Requirements& requirements, const Scatter& stated, const Tables& tables,
                Planner& planner) {
    planner.plan().air = planner.single(
        "air", Measure::percent, stated.air_points,
        of_tolerance({tables.code->air.scatter_percent, tables.code->air.tolerance_source}));
    const auto strength_mpa =
        stated.strength_mpa ? stated.strength_mpa : recorded_mpa(requirements);
    planner.plan().strength = planner.single("strength", Measure::strength, strength_mpa, {});
}

void plan_moistures(const Proportions& designed, const Scatter& stated, const Tables& tables,
                    Planner& planner) {
    for (std::size_t i = 0; i < designed.ingredients.size(); ++i) {
        const Ingredient& one = designed.ingredients[i];
        if (is_aggregate(one)) {
            const MoistureScatter& usual = tables.trial->moisture_scatter;
            const TypicalFigure& points =
                one.role == Role::fine ? usual.fine_points : usual.coarse_points;
            planner.scattered(i).moisture = planner.single(
                "moisture." + std::string{one.name}, Measure::percent,
                stated_of(stated.moisture_points, one.name), {points.value, points.source});
        }
    }
}

void plan_figures(const Requirements& requirements, const Proportions& designed,
                  const Scatter& stated, Planner& planner) {
    for (std::size_t i = 0; i < designed.ingredients.size(); ++i) {
        const Ingredient& one = designed.ingredients[i];
        const std::string name{one.name};
        if (is_aggregate(one)) {
            planner.scattered(i).absorption =
                planner.single("absorption." + name, Measure::percent,
                               stated_of(stated.absorption_points, name), {});
        }
        if (one.relative_density && one.role != Role::admixture) {
            planner.scattered(i).relative_density =
                planner.single("relative_density." + name, Measure::relative_density,
                               stated_of(stated.relative_density, name), {});
        }
        if (saves_water(one, requirements)) {
            planner.scattered(i).water_reduction =
                planner.single("water_reduction." + name, Measure::percent,
                               stated_of(stated.water_reduction_points, name), {});
        }
    }
}

} // namespace

bool saves_water(const Ingredient& ingredient, const Requirements& requirements) {
    if (ingredient.role != Role::admixture || ingredient.kg_m3 <= 0 ||
        !reduces_water(ingredient.material->kind)) {
        return false;
    }
    const AdmixtureFigures& figures = ingredient.material->admixture;
    const bool works_for_flow = ingredient.material->kind == Kind::high_range_water_reducer &&
                                requirements.slump_before_reducer_mm;
    return !works_for_flow &&
           (!figures.water_reduction.empty() || figures.standard_minimum_reduction);
}

ScatterPlan scatter_plan(const Requirements& requirements, const Proportions& designed,
                         const Scatter& stated, const Tables& tables) {
    Planner planner{designed, tables};
    plan_weighings(stated, planner);
    plan_tests(requirements, stated, tables, planner);
    plan_moistures(designed, stated, tables, planner);
    plan_figures(requirements, designed, stated, planner);
    return planner.plan();
}

} // namespace boardmark::core
