#include <boardmark/core/mix/grading.hpp>

#include "../basis/conversions.hpp"
#include "fines.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

namespace boardmark::core {
namespace {

std::vector<const Ingredient*> aggregates_of(const Proportions& proportions) {
    const auto coarse = of_role(proportions, Role::coarse);
    std::vector<const Ingredient*> aggregates(coarse.begin(), coarse.end());
    const auto fine = of_role(proportions, Role::fine);
    aggregates.insert(aggregates.end(), fine.begin(), fine.end());
    return aggregates;
}

Grading sorted(Grading grading) {
    std::ranges::stable_sort(grading, std::greater{}, &SievePassing::opening_mm);
    return grading;
}

const Grading& sieves_of(const Ingredient& aggregate) {
    return aggregate.material->aggregate.sieves;
}

/// Whether a stated sieve is near enough for what is read beside it to be as good as stated: 20 mm
/// for 3/4 in, 14 mm for 1/2 in, 10 mm for 3/8 in, 5 mm for No. 4. Common practice, no source.
bool stands_for(double stated_mm, double opening_mm) {
    constexpr double nearest = 1.125;
    return std::max(stated_mm, opening_mm) <= nearest * std::min(stated_mm, opening_mm);
}

} // namespace

double passing_anywhere_percent(const Grading& grading, double opening_mm) {
    if (const auto between = passing_percent(grading, opening_mm)) {
        return *between;
    }
    const auto [finest, coarsest] =
        std::ranges::minmax_element(grading, {}, &SievePassing::opening_mm);
    return opening_mm > coarsest->opening_mm ? whole_percent
                                             : finest->percent * opening_mm / finest->opening_mm;
}

bool is_sieve(double opening_mm, double other_mm) {
    constexpr double names_differ_by = 0.02;
    return std::abs(opening_mm - other_mm) <= names_differ_by * other_mm;
}

double passing_sieve_percent(const Grading& grading, double opening_mm) {
    const auto stated = std::ranges::find_if(
        grading, [&](const SievePassing& sieve) { return is_sieve(sieve.opening_mm, opening_mm); });
    return stated == grading.end() ? passing_anywhere_percent(grading, opening_mm)
                                   : stated->percent;
}

PercentRange may_pass_percent(const Grading& grading, double opening_mm) {
    const double coarsest_mm =
        std::ranges::max_element(grading, {}, &SievePassing::opening_mm)->opening_mm;
    double least = opening_mm > coarsest_mm ? whole_percent : 0;
    double most = whole_percent;
    for (const SievePassing& sieve : grading) {
        if (stands_for(sieve.opening_mm, opening_mm)) {
            const double read_percent = passing_sieve_percent(grading, opening_mm);
            return {read_percent, read_percent};
        }
        if (sieve.opening_mm > opening_mm) {
            most = std::min(most, sieve.percent);
        } else {
            least = std::max(least, sieve.percent);
        }
    }
    return {least, most};
}

std::vector<FineGrading> fine_gradings(const Proportions& proportions) {
    std::vector<FineGrading> gradings;
    for (const Ingredient* sand : of_role(proportions, Role::fine)) {
        if (!sieves_of(*sand).empty()) {
            gradings.push_back({std::string{sand->name}, sorted(sieves_of(*sand))});
        }
    }
    return gradings;
}

Grading combined_grading(const Proportions& proportions) {
    const auto aggregates = aggregates_of(proportions);
    std::set<double, std::greater<>> openings_mm;
    double whole_m3 = 0;
    for (const Ingredient* aggregate : aggregates) {
        if (sieves_of(*aggregate).empty() || !aggregate->volume_m3) {
            return {};
        }
        whole_m3 += *aggregate->volume_m3;
        for (const SievePassing& sieve : sieves_of(*aggregate)) {
            openings_mm.insert(sieve.opening_mm);
        }
    }
    Grading combined;
    for (const double opening_mm : openings_mm) {
        double percent = 0;
        for (const Ingredient* aggregate : aggregates) {
            percent += *aggregate->volume_m3 / whole_m3 *
                       passing_anywhere_percent(sorted(sieves_of(*aggregate)), opening_mm);
        }
        combined.push_back({opening_mm, percent});
    }
    return combined;
}

std::optional<double> maximum_size_mm(const Grading& grading) {
    std::optional<double> maximum_mm;
    for (const SievePassing& sieve : grading) {
        constexpr double rounding = 1e-9;
        if (sieve.percent >= whole_percent - rounding) {
            maximum_mm = std::min(maximum_mm.value_or(sieve.opening_mm), sieve.opening_mm);
        }
    }
    return maximum_mm;
}

double density_line_percent(double opening_mm, double maximum_mm, const GradingRules& rules) {
    return whole_percent * std::pow(opening_mm / maximum_mm, rules.density_exponent.value);
}

} // namespace boardmark::core
