#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/dose_response.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/bre/chart_readings.hpp"
#include "../method/water_reduction.hpp"
#include "../mix/door/complete_again.hpp"
#include "../mix/material_figures.hpp"
#include "../trial/next_mix.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

Dosage& reducer_of(Mix& mix) {
    return *std::ranges::find_if(mix.admixtures, [](const Dosage& dosage) {
        return dosage.material->kind == Kind::high_range_water_reducer;
    });
}

/// Doses in percent.
struct Doses {
    std::vector<double> percent;
    bool end_at_maximum; ///< of the data sheet, before its curve ends
};

/// Equal steps from none to the last of the curve, and the curve's own points; none above the
/// highest dose that the data sheet permits.
Outcome<Doses> doses_of(const Material& reducer, const Tables& tables) {
    const auto& curve = reducer.admixture.water_reduction;
    if (curve.empty()) {
        return Unresolved{{"{name} has no 'water_reduction' by dose: there is no response to show",
                           {word("name", reducer.name)}},
                          {{"add the supplier's water reduction at two or more doses", {}}}};
    }
    const double density_kg_m3 = product_density(reducer, tables).value;
    const double last_of_curve = dose_percent(curve.back().dose, density_kg_m3);
    const auto& most = reducer.admixture.maximum_dose;
    const double permitted = most ? dose_percent(*most, density_kg_m3) : last_of_curve;
    const double last = std::min(permitted, last_of_curve);
    std::vector<double> doses;
    for (const WaterReductionPoint& point : curve) {
        const double percent = dose_percent(point.dose, density_kg_m3);
        if (!above(percent, last)) {
            doses.push_back(percent);
        }
    }
    constexpr int steps = 8;
    for (int i = 0; i <= steps; ++i) {
        doses.push_back(last * i / steps);
    }
    std::ranges::sort(doses);
    const auto alike = [](double left, double right) { return same(left, right); };
    doses.erase(std::unique(doses.begin(), doses.end(), alike), doses.end());
    return Doses{std::move(doses), below(permitted, last_of_curve)};
}

/// The mix at the ratio as written, which a least binder lowers anew at each dose, so that only the
/// dose changes from point to point. Where the
/// reducer works for flow the water alone gives the slump: at no dose nothing else could.
Outcome<Mix> at_fixed_ratio(const CompleteMix& mix, const Tables& tables) {
    const auto written = proportion(mix, tables);
    if (!written) {
        return written.why();
    }
    Mix fixed = *mix;
    note_entry(fixed.selections, written->selection);
    fixed.selections.w_cm_is_methods = mix->selections.leaves_ratio_to_method();
    fixed.selections.w_cm = ratio_before_minimum(mix, written->selection);
    fixed.selections.w_cm_by_exposure = false;
    fixed.selections.binder_kg_m3 = std::nullopt;
    Requirements& asked = fixed.requirements;
    asked.slump_mm = asked.slump_before_reducer_mm.value_or(asked.slump_mm);
    asked.slump_before_reducer_mm = std::nullopt;
    return fixed;
}

/// A given water is that of the dose as written: without reducer it is more.
Outcome<std::optional<double>> water_without_reducer(Mix mix, const Tables& tables) {
    if (!mix.selections.water_kg_m3) {
        return std::optional<double>{};
    }
    const auto percent = reduction_percent(reducer_of(mix), tables);
    if (!percent) {
        return percent.why();
    }
    return std::optional{*mix.selections.water_kg_m3 / (1 - *percent / 100)};
}

/// A ratio or strength that rounds to its limit but passes it is a watch; it does not keep the
/// limit. What else is watched is advice, of which less water changes the figure only.
bool passes_its_limit(const Check& check) {
    const bool apart = check.value && check.limit &&
                       (check.measure == Measure::w_cm || check.measure == Measure::strength);
    return check.verdict == Verdict::fails ||
           (check.verdict == Verdict::watch && apart &&
            ((check.limit->high && above(*check.value, *check.limit->high)) ||
             (check.limit->low && below(*check.value, *check.limit->low))));
}

bool keeps_limits(const ComparedMix& column) {
    return column.proportions && std::ranges::none_of(column.checks, passes_its_limit);
}

bool can_be_cheapest(const ComparedMix& column) {
    return column.may_be_chosen() && keeps_limits(column);
}

/// Where a row of points that pass a limit ends; nothing where there is none before the end. No
/// curve falls: what a higher dose mends it does not break again.
std::optional<std::size_t> first_that_holds(const std::vector<DosePoint>& points) {
    for (std::size_t i = points.size(); i-- > 0;) {
        if (!keeps_limits(points[i].less_water)) {
            return i + 1 < points.size() ? std::optional{i + 1} : std::nullopt;
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> cheapest_of(const std::vector<DosePoint>& points) {
    std::optional<std::size_t> cheapest;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!can_be_cheapest(points[i].less_binder)) {
            continue;
        }
        const auto& cost = points[i].less_binder.cost;
        if (!cost || !cost->sum.is_whole()) {
            return std::nullopt;
        }
        if (!cheapest || cost->sum.per_m3 < points[*cheapest].less_binder.cost->sum.per_m3) {
            cheapest = i;
        }
    }
    return cheapest;
}

} // namespace

std::size_t DoseResponse::failing_less_binder() const {
    return static_cast<std::size_t>(std::ranges::count_if(points, [](const DosePoint& point) {
        return !point.less_binder.proportions || any_fails(point.less_binder.checks);
    }));
}

std::size_t DoseResponse::not_chosen_less_binder() const {
    return static_cast<std::size_t>(std::ranges::count_if(
        points, [](const DosePoint& point) { return !can_be_cheapest(point.less_binder); }));
}

Outcome<DoseResponse> dose_response(const CompleteMix& mix, const Tables& tables) {
    assert(holds_high_range_reducer(mix));
    auto fixed = at_fixed_ratio(mix, tables);
    if (!fixed) {
        return std::move(fixed).why();
    }
    const auto base_water_kg_m3 = water_without_reducer(mix, tables);
    if (!base_water_kg_m3) {
        return base_water_kg_m3.why();
    }
    Mix& dosed = *fixed;
    Dosage& dosage = reducer_of(dosed);
    const auto doses = doses_of(dosage.material, tables);
    if (!doses) {
        return doses.why();
    }
    const double density_kg_m3 = product_density(dosage.material, tables).value;
    DoseResponse response{.reducer = dosage.material->name,
                          .points = {},
                          .ends_at_maximum = doses->end_at_maximum,
                          .limits_hold_from = std::nullopt,
                          .cheapest = std::nullopt,
                          .slump_of_water_mm = mix->requirements.slump_before_reducer_mm};
    for (const double percent : doses->percent) {
        const double ml = ml_100kg(percent, density_kg_m3);
        dosage.dose =
            dosage.material->admixture.water_reduction.front().dose.basis == DoseBasis::percent
                ? Dose{percent, DoseBasis::percent}
                : Dose{ml * 1e-8, DoseBasis::volume}; // mL/100 kg to m3/kg
        if (*base_water_kg_m3) {
            const auto saved = reduction_percent(dosage, tables);
            if (!saved) {
                return saved.why();
            }
            dosed.selections.water_kg_m3 = **base_water_kg_m3 * (1 - *saved / 100);
        }
        const auto at_dose = complete_again(dosed, tables);
        if (!at_dose) {
            return at_dose.why();
        }
        auto columns = reducer_study(*at_dose, tables);
        if (!columns) {
            return std::move(columns).why();
        }
        if (columns->front().unresolved) {
            return *columns->front().unresolved;
        }
        response.points.push_back({ml, std::move((*columns)[1]), std::move((*columns)[2])});
    }
    response.limits_hold_from = first_that_holds(response.points);
    response.limits_hold_at_last = keeps_limits(response.points.back().less_water);
    response.cheapest = cheapest_of(response.points);
    return response;
}

} // namespace boardmark::core
