#include <boardmark/core/basis/blocks.hpp>
#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/risk/risk.hpp>

#include "../basis/phrases.hpp"
#include "distribution.hpp"
#include "risk_cautions.hpp"
#include "risk_run.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace boardmark::core {
namespace {

std::optional<Unresolved> demand_deviations(const ScatterPlan& plan) {
    for (const ScatteredInput& input : plan.inputs) {
        if (!std::isfinite(input.deviation) || input.deviation < 0) {
            return Unresolved{{"the standard deviation of {input} is no number from 0 on",
                               {word("input", input.key)}},
                              {{"give 0 or more", {}}}};
        }
    }
    return std::nullopt;
}

/// The quantity that a limit bounds, or none.
std::optional<RiskQuantity> bounded_by(CheckId id) {
    if (id == check_ids::w_cm_exposure || id == check_ids::w_cm_strength) {
        return RiskQuantity::w_cm;
    }
    if (id == check_ids::air_exposure || id == check_ids::air_stated) {
        return RiskQuantity::air;
    }
    return std::nullopt;
}

std::vector<DistributionLimit> limits_of(RiskQuantity quantity, const std::vector<Finding>& exact,
                                         const Requirements& requirements) {
    std::vector<DistributionLimit> limits;
    if (quantity == RiskQuantity::strength) {
        limits.push_back({std::nullopt, requirements.strength_mpa});
    }
    for (const Finding& finding : exact) {
        if (bounded_by(finding.id) == quantity) {
            for (const OptionalNumber side : {finding.limit.low, finding.limit.high}) {
                if (side && std::ranges::count(limits, *side, &DistributionLimit::value) == 0) {
                    limits.push_back({finding.id, *side});
                }
            }
        }
    }
    return limits;
}

std::vector<Distribution> distributions(BatchesMade& made, const std::vector<Finding>& exact,
                                        const RiskSubject& subject, unsigned threads) {
    std::vector<Distribution> all(risk_quantities.size());
    do_in_blocks({.count = all.size(), .in_block = 1, .threads = threads}, [&]() -> BlockWork {
        return [&](std::size_t first, std::size_t) {
            all[first] = distribution_of(risk_quantities[first], made.values[first]);
        };
    });
    std::erase_if(all, [](const Distribution& one) { return one.samples < 2; });
    for (Distribution& one : all) {
        one.limits = limits_of(one.quantity, exact, subject.requirements);
    }
    return all;
}

/// Making the batches takes most of the time, finding the drivers the rest.
RiskOrder with_progress(const RiskOrder& order, double from, double to) {
    RiskOrder part = order;
    if (order.goes_on) {
        part.goes_on = [&order, from, to](double share) {
            return order.goes_on(from + share * (to - from));
        };
    }
    return part;
}

Unresolved stopped(std::size_t samples) {
    return {{"stopped after {samples} batches, too few to tell anything",
             {quantity("samples", {static_cast<double>(samples), Measure::count})}},
            {{"ask for fewer samples", {}}}};
}

} // namespace

std::string_view name_of(RiskQuantity quantity) {
    switch (quantity) {
    case RiskQuantity::w_cm:
        return "w_cm";
    case RiskQuantity::slump_water:
        return "slump_water";
    case RiskQuantity::relative_yield:
        return "relative_yield";
    case RiskQuantity::air:
        return "air";
    case RiskQuantity::strength:
        return "strength";
    }
    return "";
}

Measure measure_of(RiskQuantity quantity) {
    switch (quantity) {
    case RiskQuantity::w_cm:
        return Measure::w_cm;
    case RiskQuantity::slump_water:
        return Measure::concentration;
    case RiskQuantity::relative_yield:
        return Measure::ratio;
    case RiskQuantity::air:
        return Measure::percent;
    case RiskQuantity::strength:
        return Measure::strength;
    }
    return Measure::ratio;
}

Outcome<Risk> risk_of(const AnyCompleteMix& mix, const Proportions& designed,
                      const Scatter& scatter, const RiskOrder& order, const Tables& tables) {
    assert(order.threads >= 1);
    assert(order.samples >= least_risk_samples && order.samples <= most_risk_samples);
    const Requirements& requirements = requirements_of(mix);
    const ScatterPlan plan = scatter_plan(requirements, designed, scatter, tables);
    if (auto why = demand_deviations(plan)) {
        return std::move(*why);
    }
    const auto weighed = batch(designed, {.volume_m3 = 1}, tables.water_density_kg_m3);
    if (!weighed) {
        return weighed.why();
    }
    const RiskSubject subject{mix, designed, *weighed, plan, tables, RandomNormals{order.seed}};
    const std::vector<Finding> exact = exact_findings(subject);
    constexpr double share_of_batches = 0.9;
    BatchesMade made = make_batches(subject, exact, with_progress(order, 0, share_of_batches));
    if (made.samples < least_risk_samples) {
        return stopped(made.samples);
    }
    const auto drivers = made.samples == order.samples
                             ? find_drivers(subject, with_progress(order, share_of_batches, 1))
                             : DriversFound{};
    Risk risk{.samples = made.samples,
              .samples_asked = order.samples,
              .seed = order.seed,
              .driver_samples = drivers.samples,
              .inputs = plan.inputs,
              .quantities = distributions(made, exact, subject, order.threads),
              .limits = made.counts.risks(made.samples),
              .drivers = drivers.drivers,
              .cautions = {}};
    risk.cautions = cautions_of(risk, requirements);
    return risk;
}

} // namespace boardmark::core
