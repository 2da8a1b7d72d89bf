#include "fines.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// The stated sieve nearest below (or at) an opening, or nearest above (or at) it.
struct Neighbours {
    const SievePassing* finer = nullptr;
    const SievePassing* coarser = nullptr;
};

Neighbours neighbours(const std::vector<SievePassing>& sieves, double opening_mm) {
    Neighbours found;
    for (const SievePassing& sieve : sieves) {
        if (!above(sieve.opening_mm, opening_mm) &&
            (!found.finer || sieve.opening_mm > found.finer->opening_mm)) {
            found.finer = &sieve;
        }
        if (!below(sieve.opening_mm, opening_mm) &&
            (!found.coarser || sieve.opening_mm < found.coarser->opening_mm)) {
            found.coarser = &sieve;
        }
    }
    return found;
}

using Passing = std::optional<double> (*)(const std::vector<SievePassing>&, double);

std::optional<double> sand_kg_m3(const Proportions& proportions, double opening_mm,
                                 Passing passing) {
    const auto sands = of_role(proportions, Role::fine);
    if (sands.empty()) {
        return std::nullopt;
    }
    double sum_kg_m3 = 0;
    for (const Ingredient* sand : sands) {
        const auto percent = passing(sand->material->aggregate.sieves, opening_mm);
        if (!percent) {
            return std::nullopt;
        }
        // A submittal without absorption gives saturated mass only: heavier by a percent.
        sum_kg_m3 += sand->dry_kg_m3.value_or(sand->kg_m3) * *percent / 100;
    }
    return sum_kg_m3;
}

} // namespace

std::optional<double> passing_percent(const std::vector<SievePassing>& sieves, double opening_mm) {
    const auto [finer, coarser] = neighbours(sieves, opening_mm);
    if (!finer || !coarser) {
        return std::nullopt;
    }
    if (same(finer->opening_mm, coarser->opening_mm)) {
        return finer->percent;
    }
    const double fraction = std::log(opening_mm / finer->opening_mm) /
                            std::log(coarser->opening_mm / finer->opening_mm);
    return finer->percent + fraction * (coarser->percent - finer->percent);
}

std::optional<double> passing_at_most_percent(const std::vector<SievePassing>& sieves,
                                              double opening_mm) {
    const SievePassing* coarser = neighbours(sieves, opening_mm).coarser;
    return coarser ? std::optional{coarser->percent} : std::nullopt;
}

double powder_kg_m3(const Proportions& proportions) {
    double sum_kg_m3 = 0;
    for (const Ingredient& ingredient : proportions.ingredients) {
        const bool pigment = ingredient.material && ingredient.material->kind == Kind::pigment;
        if (ingredient.role == Role::binder || pigment) {
            sum_kg_m3 += ingredient.kg_m3;
        }
    }
    return sum_kg_m3;
}

std::optional<double> sand_passing_kg_m3(const Proportions& proportions, double opening_mm) {
    return sand_kg_m3(proportions, opening_mm, passing_percent);
}

std::optional<double> sand_passing_at_most_kg_m3(const Proportions& proportions,
                                                 double opening_mm) {
    return sand_kg_m3(proportions, opening_mm, passing_at_most_percent);
}

} // namespace boardmark::core
