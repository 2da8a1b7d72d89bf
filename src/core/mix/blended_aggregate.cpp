#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/blended_aggregate.hpp>
#include <boardmark/core/mix/grading.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "bounded_least_squares.hpp"
#include "material_figures.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double full_percent = 100;

/// The weight of a band's middle beside the band itself: of blends inside, the one nearest to it.
constexpr double middle_weight = 1e-6;

const Grading& sieves_of(const SharedMaterial& aggregate) {
    return aggregate->aggregate.sieves;
}

/// The smallest sieve that all of every aggregate passes; each has one that all of it passes.
double largest_of_all_mm(const std::vector<SharedMaterial>& aggregates) {
    double largest_mm = 0;
    for (const SharedMaterial& aggregate : aggregates) {
        largest_mm = std::max(largest_mm, *maximum_size_mm(sieves_of(aggregate)));
    }
    return largest_mm;
}

double finest_of_all_mm(const std::vector<SharedMaterial>& aggregates) {
    double finest_mm = sieves_of(aggregates.front()).front().opening_mm;
    for (const SharedMaterial& aggregate : aggregates) {
        for (const SievePassing& sieve : sieves_of(aggregate)) {
            finest_mm = std::min(finest_mm, sieve.opening_mm);
        }
    }
    return finest_mm;
}

/// The line of maximum density at the sieves on which all aggregates are told.
std::vector<SieveBand> density_line(const BlendWish& wish, double maximum_mm,
                                    const GradingRules& rules) {
    const double finest_mm = finest_of_all_mm(wish.of);
    std::vector<SieveBand> line;
    for (const RetainedLimits& sieve : rules.retained.sieves) {
        const bool is_coarsest = is_sieve(sieve.opening_mm, maximum_mm);
        const bool is_finest = is_sieve(sieve.opening_mm, finest_mm);
        const bool between = sieve.opening_mm < maximum_mm && sieve.opening_mm > finest_mm;
        if (!is_coarsest && (is_finest || between)) {
            const double percent = density_line_percent(sieve.opening_mm, maximum_mm, rules);
            line.push_back({sieve.opening_mm, percent, percent});
        }
    }
    return line;
}

/// The shares of the volume, 0 to 1, nearest to the target.
std::vector<double> nearest_shares(const BlendWish& wish, const std::vector<SieveBand>& target) {
    const std::size_t count = wish.of.size();
    std::vector<BoundedUnknown> unknowns;
    for (std::size_t i = 0; i < count; ++i) {
        unknowns.push_back({.start = 1.0 / static_cast<double>(count), .in_sum = true});
    }
    const bool is_band = wish.to == BlendTo::band;
    if (is_band) { // what is aimed at may lie anywhere in the band
        for (const SieveBand& sieve : target) {
            unknowns.push_back({.start = (sieve.low_percent + sieve.high_percent) / 2,
                                .low = sieve.low_percent,
                                .high = sieve.high_percent});
        }
    }
    std::vector<LeastSquaresRow> rows;
    for (std::size_t at = 0; at < target.size(); ++at) {
        LeastSquaresRow row{std::vector<double>(unknowns.size(), 0),
                            (target[at].low_percent + target[at].high_percent) / 2};
        for (std::size_t i = 0; i < count; ++i) {
            row.coefficients[i] =
                passing_sieve_percent(sieves_of(wish.of[i]), target[at].opening_mm);
        }
        if (is_band) {
            LeastSquaresRow inside = row;
            inside.coefficients[count + at] = -1;
            inside.value = 0;
            rows.push_back(std::move(inside));
            row.weight = middle_weight;
        }
        rows.push_back(std::move(row));
    }
    auto shares = bounded_least_squares(rows, unknowns);
    shares.resize(count);
    return shares;
}

/// How far what passes lies off what is asked, in points; below it negative, inside a band 0.
double off_percent(const SieveBand& sieve, double passing_percent) {
    return passing_percent < sieve.low_percent    ? passing_percent - sieve.low_percent
           : passing_percent > sieve.high_percent ? passing_percent - sieve.high_percent
                                                  : 0;
}

void tell_distance(AggregateBlend& blend) {
    double squares = 0;
    for (const SieveBand& sieve : blend.target) {
        double passing_percent = 0;
        for (const BlendedShare& share : blend.shares) {
            passing_percent += share.volume_percent / full_percent *
                               passing_sieve_percent(sieves_of(share.material), sieve.opening_mm);
        }
        const double off = off_percent(sieve, passing_percent);
        squares += off * off;
        if (std::abs(off) > std::abs(blend.most_off_percent)) {
            blend.most_off_percent = off;
            blend.most_off_mm = sieve.opening_mm;
        }
    }
    blend.mean_off_percent = std::sqrt(squares / static_cast<double>(blend.target.size()));
}

void weigh(AggregateBlend& blend, const Tables& tables) {
    double whole = 0;
    for (BlendedShare& share : blend.shares) {
        share.mass_percent =
            share.volume_percent * relative_density(*share.material, tables)->value;
        whole += share.mass_percent;
    }
    for (BlendedShare& share : blend.shares) {
        share.mass_percent *= full_percent / whole;
    }
}

Unresolved takes_none(Role role, const AggregateBlend& blend) {
    return {{"the blend nearest to {target} takes no {role} aggregate at all",
             {word("target", target_words(blend)),
              word("role", role == Role::fine ? "fine" : "coarse")}},
            {{"another target, or aggregates whose sizes continue each other", {}}}};
}

double sum_of(const AggregateBlend& blend, Role role, double BlendedShare::*part) {
    double sum = 0;
    for (const BlendedShare& share : blend.shares) {
        sum += role_of(share.material->kind) == role ? share.*part : 0;
    }
    return sum;
}

/// The shares of one role by mass; what is not taken is left out.
std::vector<Share> shares_of(const AggregateBlend& blend, Role role) {
    const double whole = sum_of(blend, role, &BlendedShare::mass_percent);
    std::vector<Share> shares;
    for (const BlendedShare& share : blend.shares) {
        if (role_of(share.material->kind) == role && share.volume_percent > 0) {
            shares.push_back({share.material, full_percent * share.mass_percent / whole});
        }
    }
    return shares;
}

} // namespace

double AggregateBlend::fine_volume_percent() const {
    return sum_of(*this, Role::fine, &BlendedShare::volume_percent);
}

double AggregateBlend::fine_mass_percent() const {
    return sum_of(*this, Role::fine, &BlendedShare::mass_percent);
}

Outcome<AggregateBlend> blend_of(const BlendWish& wish, const Tables& tables) {
    if (wish.of.size() < 2) {
        return Unresolved{{"one aggregate alone is no blend", {}},
                          {{"name two aggregates or more", {}}}};
    }
    for (const SharedMaterial& aggregate : wish.of) {
        if (!maximum_size_mm(sieves_of(aggregate))) {
            return Unresolved{
                {"{name} states no sieve that all of it passes", {word("name", aggregate->name)}},
                {{"add that sieve, for example '25 mm: 100 %'", {}}}};
        }
    }
    AggregateBlend blend{.to = wish.to,
                         .target = wish.sieves,
                         .maximum_mm = {},
                         .shares = {},
                         .mean_off_percent = 0,
                         .most_off_percent = 0,
                         .most_off_mm = 0};
    if (wish.to == BlendTo::maximum_density) {
        blend.maximum_mm = largest_of_all_mm(wish.of);
        blend.target = density_line(wish, *blend.maximum_mm, tables.grading);
    }
    if (blend.target.empty()) {
        return Unresolved{
            {"no sieve to blend by lies between the finest and the coarsest stated", {}},
            {{"state more sieves", {}}}};
    }
    blend.most_off_mm = blend.target.front().opening_mm;
    const auto parts = nearest_shares(wish, blend.target);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        blend.shares.push_back({wish.of[i], full_percent * parts[i], 0});
    }
    weigh(blend, tables);
    for (const Role role : {Role::coarse, Role::fine}) {
        if (!(sum_of(blend, role, &BlendedShare::volume_percent) > 0)) {
            return takes_none(role, blend);
        }
    }
    tell_distance(blend);
    return blend;
}

std::string target_words(const AggregateBlend& blend) {
    switch (blend.to) {
    case BlendTo::maximum_density:
        return "the line of maximum density";
    case BlendTo::curve:
        return "the stated curve";
    case BlendTo::band:
        return "the stated band";
    }
    return "";
}

void take_blend(Mix& mix) {
    const AggregateBlend& blend = *mix.blend;
    mix.coarse = shares_of(blend, Role::coarse);
    mix.fine = shares_of(blend, Role::fine);
    mix.selections.fine_share_percent.reset();
    mix.selections.fine_share_by_mass_percent.reset();
    if (mix.method == Method::bre) {
        mix.selections.fine_share_by_mass_percent = blend.fine_mass_percent();
    } else {
        mix.selections.fine_share_percent = blend.fine_volume_percent();
    }
}

} // namespace boardmark::core
