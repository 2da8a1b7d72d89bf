#include <boardmark/core/mix/aggregate_together.hpp>
#include <boardmark/core/mix/grading.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr double percent_of_all = 100;

/// Beyond its stated sieves an aggregate is taken as it is read: little of a stone is that fine.
PercentRange may_pass(const Grading& grading, double opening_mm) {
    const auto [finest, coarsest] =
        std::ranges::minmax_element(grading, {}, &SievePassing::opening_mm);
    if (opening_mm < finest->opening_mm || opening_mm > coarsest->opening_mm) {
        const double read_percent = passing_sieve_percent(grading, opening_mm);
        return {read_percent, read_percent};
    }
    return may_pass_percent(grading, opening_mm);
}

/// The aggregates of a mix that all state sieves and a volume, each with its part of the volume.
class Parts {
public:
    explicit Parts(const Proportions& proportions) {
        for (const Role role : {Role::coarse, Role::fine}) {
            for (const Ingredient* aggregate : of_role(proportions, role)) {
                whole_m3_ += aggregate->volume_m3.value_or(0);
                aggregates_.push_back(aggregate);
            }
        }
    }

    const std::vector<const Ingredient*>& aggregates() const { return aggregates_; }

    double volume_percent(const Ingredient& aggregate) const {
        return percent_of_all * *aggregate.volume_m3 / whole_m3_;
    }

    double passing_percent(double opening_mm) const {
        double percent = 0;
        for (const Ingredient* aggregate : aggregates_) {
            percent += part(*aggregate) * passing_sieve_percent(grading_of(*aggregate), opening_mm);
        }
        return percent;
    }

    PercentRange may_pass_percent(double opening_mm) const {
        PercentRange all{0, 0};
        for (const Ingredient* aggregate : aggregates_) {
            const PercentRange one = may_pass(grading_of(*aggregate), opening_mm);
            all.least += part(*aggregate) * one.least;
            all.most += part(*aggregate) * one.most;
        }
        return all;
    }

    /// On a sieve of what passes a coarser one; nothing: of all.
    PercentRange may_retain_percent(std::optional<double> coarser_mm, double opening_mm) const {
        PercentRange all{0, 0};
        for (const Ingredient* aggregate : aggregates_) {
            const Grading& grading = grading_of(*aggregate);
            const PercentRange before = coarser_mm ? may_pass(grading, *coarser_mm)
                                                   : PercentRange{percent_of_all, percent_of_all};
            const PercentRange after = may_pass(grading, opening_mm);
            all.least += part(*aggregate) * std::max(0.0, before.least - after.most);
            all.most += part(*aggregate) * std::max(0.0, before.most - after.least);
        }
        return all;
    }

    /// The finest sieve that every fine aggregate states.
    double finest_mm() const {
        double finest_mm = 0;
        for (const Ingredient* aggregate : aggregates_) {
            if (aggregate->role == Role::fine) {
                const Grading& grading = grading_of(*aggregate);
                finest_mm = std::max(
                    finest_mm,
                    std::ranges::min_element(grading, {}, &SievePassing::opening_mm)->opening_mm);
            }
        }
        return finest_mm;
    }

private:
    double part(const Ingredient& aggregate) const { return *aggregate.volume_m3 / whole_m3_; }

    static const Grading& grading_of(const Ingredient& aggregate) {
        return aggregate.material->aggregate.sieves;
    }

    std::vector<const Ingredient*> aggregates_;
    double whole_m3_ = 0;
};

/// Whether every aggregate states its sieves and has a volume; asked of any mix, so it allocates
/// nothing.
bool all_are_graded(const Proportions& proportions) {
    bool any = false;
    for (const Role role : {Role::coarse, Role::fine}) {
        for (const Ingredient* aggregate : of_role(proportions, role)) {
            if (aggregate->material->aggregate.sieves.empty() || !aggregate->volume_m3) {
                return false;
            }
            any = any || *aggregate->volume_m3 > 0;
        }
    }
    return any;
}

std::vector<SieveOfAll> sieves_of(const Parts& parts, const RetainedRules& rules) {
    std::vector<SieveOfAll> sieves;
    for (const RetainedLimits& limits : rules.sieves) {
        if (limits.opening_mm < parts.finest_mm() &&
            !is_sieve(limits.opening_mm, parts.finest_mm())) {
            break;
        }
        const double passing_percent = parts.passing_percent(limits.opening_mm);
        const bool all_pass = same(passing_percent, percent_of_all);
        if (all_pass) {
            sieves.clear(); // of the sieves that all passes the finest one is told
        }
        const double before_percent =
            sieves.empty() ? percent_of_all : sieves.back().passing_percent;
        const auto coarser_mm =
            sieves.empty() ? std::nullopt : std::optional{sieves.back().limits.opening_mm};
        sieves.push_back({.limits = limits,
                          .passing_percent = passing_percent,
                          .retained_percent = before_percent - passing_percent,
                          .may_pass = parts.may_pass_percent(limits.opening_mm),
                          .may_retain = parts.may_retain_percent(coarser_mm, limits.opening_mm)});
    }
    return sieves;
}

/// Coarseness and workability factor of all where so much passes the two sieves of the chart.
WorkabilityPoint chart_point(double coarse_percent, double fine_percent, double binder_kg_m3,
                             const WorkabilityRules& chart) {
    const double on_fine = percent_of_all - fine_percent;
    return {on_fine > 0
                ? std::optional{percent_of_all * (percent_of_all - coarse_percent) / on_fine}
                : std::nullopt,
            fine_percent + chart.step_points.value * (binder_kg_m3 - chart.binder_kg_m3.value) /
                               chart.binder_step_kg_m3.value};
}

/// Where the mix may lie on the chart, at the ends of what its stated sieves leave open.
std::vector<WorkabilityPoint> chart_corners(const Parts& parts, double binder_kg_m3,
                                            const WorkabilityRules& chart) {
    const PercentRange coarse = parts.may_pass_percent(chart.coarse_sieve_mm.value);
    const PercentRange fine = parts.may_pass_percent(chart.fine_sieve_mm.value);
    std::vector<WorkabilityPoint> corners;
    for (const double coarse_percent : {coarse.least, coarse.most}) {
        for (const double fine_percent : {fine.least, fine.most}) {
            corners.push_back(chart_point(coarse_percent, fine_percent, binder_kg_m3, chart));
        }
    }
    return corners;
}

double fineness_modulus_of(const Parts& parts, std::span<const double> series_mm) {
    double retained = 0;
    for (const double sieve_mm : series_mm) {
        retained += percent_of_all - parts.passing_percent(sieve_mm);
    }
    return retained / percent_of_all;
}

} // namespace

std::optional<AggregateTogether> aggregate_together(const Proportions& proportions,
                                                    const Deferred<GradingRules>& kept,
                                                    std::span<const double> fineness_sieves_mm) {
    if (!all_are_graded(proportions)) {
        return std::nullopt;
    }
    const GradingRules& rules = *kept; // not read where no sieves are stated
    const Parts parts{proportions};
    const WorkabilityRules& chart = rules.workability;
    const double binder_kg_m3 = proportions.totals.binder_kg_m3;
    const WorkabilityPoint point =
        chart_point(parts.passing_percent(chart.coarse_sieve_mm.value),
                    parts.passing_percent(chart.fine_sieve_mm.value), binder_kg_m3, chart);
    AggregateTogether together{.parts = {},
                               .sieves = sieves_of(parts, rules.retained),
                               .maximum_mm = {},
                               .fineness_modulus = fineness_modulus_of(parts, fineness_sieves_mm),
                               .coarseness_factor = point.coarseness,
                               .workability_factor = point.workability,
                               .chart_corners = chart_corners(parts, binder_kg_m3, chart)};
    for (const Ingredient* aggregate : parts.aggregates()) {
        together.parts.push_back({std::string{aggregate->name}, parts.volume_percent(*aggregate)});
    }
    together.maximum_mm = maximum_size_mm(combined_grading(proportions));
    return together;
}

double control_line(double coarseness, const WorkabilityRules& rules) {
    return rules.line_start.value - rules.line_slope.value * coarseness;
}

std::optional<WorkabilityField> field_of(const AggregateTogether& together,
                                         const WorkabilityRules& rules) {
    return field_of(WorkabilityPoint{together.coarseness_factor, together.workability_factor},
                    rules);
}

std::optional<WorkabilityField> field_of(const WorkabilityPoint& point,
                                         const WorkabilityRules& rules) {
    if (!point.coarseness) {
        return std::nullopt;
    }
    const double coarseness = *point.coarseness;
    const double workability = point.workability;
    if (below(workability, rules.low.value) ||
        below(workability, control_line(coarseness, rules))) {
        return WorkabilityField::rocky;
    }
    if (above(workability, rules.high.value)) {
        return WorkabilityField::sandy;
    }
    if (above(coarseness, rules.coarseness_high.value)) {
        return WorkabilityField::gap_graded;
    }
    return below(coarseness, rules.coarseness_low.value) ? WorkabilityField::small_stone
                                                         : WorkabilityField::well_graded;
}

std::optional<double> retained_between_percent(const AggregateTogether& together,
                                               double coarsest_mm, double finest_mm) {
    double percent = 0;
    bool reaches = false;
    for (const SieveOfAll& sieve : together.sieves) {
        const double opening_mm = sieve.limits.opening_mm;
        const bool inside = (opening_mm < coarsest_mm || is_sieve(opening_mm, coarsest_mm)) &&
                            (opening_mm > finest_mm || is_sieve(opening_mm, finest_mm));
        percent += inside ? sieve.retained_percent : 0;
        reaches = reaches || is_sieve(opening_mm, finest_mm);
    }
    return reaches ? std::optional{percent} : std::nullopt;
}

std::optional<PercentRange> may_retain_between(const AggregateTogether& together,
                                               double coarsest_mm, double finest_mm) {
    PercentRange before{percent_of_all, percent_of_all};
    for (const SieveOfAll& sieve : together.sieves) {
        const double opening_mm = sieve.limits.opening_mm;
        if (opening_mm > coarsest_mm && !is_sieve(opening_mm, coarsest_mm)) {
            before = sieve.may_pass;
        }
        if (is_sieve(opening_mm, finest_mm)) {
            return PercentRange{std::max(0.0, before.least - sieve.may_pass.most),
                                before.most - sieve.may_pass.least};
        }
    }
    return std::nullopt;
}

std::vector<const SieveOfAll*> sieves_outside(const AggregateTogether& together) {
    std::vector<const SieveOfAll*> outside;
    for (const SieveOfAll& sieve : together.sieves) {
        const RetainedLimits& limits = sieve.limits;
        if (same(sieve.passing_percent, percent_of_all)) {
            continue; // coarser than the largest stone
        }
        const bool too_little =
            limits.low_percent && below(sieve.retained_percent, *limits.low_percent);
        const bool too_much =
            limits.high_percent && above(sieve.retained_percent, *limits.high_percent);
        if (too_little || too_much) {
            outside.push_back(&sieve);
        }
    }
    return outside;
}

std::vector<const SieveOfAll*> sieves_in_doubt(const AggregateTogether& together) {
    std::vector<const SieveOfAll*> doubtful;
    const auto add = [&](const SieveOfAll& sieve) {
        const bool is_open = below(sieve.may_pass.least, sieve.may_pass.most);
        if (is_open && (doubtful.empty() || doubtful.back() != &sieve)) {
            doubtful.push_back(&sieve);
        }
    };
    const SieveOfAll* coarser = nullptr;
    for (const SieveOfAll& sieve : together.sieves) {
        const RetainedLimits& limits = sieve.limits;
        const bool maybe_too_little =
            limits.low_percent && below(sieve.may_retain.least, *limits.low_percent);
        const bool maybe_too_much =
            limits.high_percent && above(sieve.may_retain.most, *limits.high_percent);
        if (maybe_too_little || maybe_too_much) {
            if (coarser) {
                add(*coarser);
            }
            add(sieve);
        }
        coarser = &sieve;
    }
    return doubtful;
}

} // namespace boardmark::core
