#pragma once

// Mixes drawn at random: every figure within what the trade meets, every key of a mix that changes
// amounts drawn now and then.

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/batch.hpp>

#include "law.hpp"
#include "support.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::test {

inline const core::Tables& tables_of(core::UnitSystem system) {
    static const core::Tables us = reference::tables(core::UnitSystem::us);
    static const core::Tables si = reference::tables(core::UnitSystem::si);
    return system == core::UnitSystem::us ? us : si;
}

inline core::UnitSystem any_system() {
    return perhaps("us") ? core::UnitSystem::us : core::UnitSystem::si;
}

/// Percentages that add up to 100, one for each of `count`.
inline std::vector<double> shares(std::size_t count, const std::string& name) {
    std::vector<double> parts;
    double sum = 0;
    for (std::size_t i = 0; i < count; ++i) {
        parts.push_back(between(5, 100, name));
        sum += parts.back();
    }
    for (double& part : parts) {
        part *= 100 / sum;
    }
    return parts;
}

inline std::size_t up_to(int most, const std::string& name) {
    return static_cast<std::size_t>(*rc::gen::inRange(1, most + 1).as(name));
}

inline std::vector<core::Share> any_binder() {
    const std::vector<std::pair<core::Kind, double>> kinds{{core::Kind::portland_cement, 3.15},
                                                           {core::Kind::slag_cement, 2.90},
                                                           {core::Kind::fly_ash, 2.35},
                                                           {core::Kind::silica_fume, 2.20}};
    std::vector<core::Share> binder;
    const auto parts = shares(up_to(4, "count of binders"), "binder share");
    for (std::size_t i = 0; i < parts.size(); ++i) {
        core::Material material{.name = "binder" + std::to_string(i), .kind = kinds[i].first};
        if (perhaps("binder's density stated")) {
            material.relative_density =
                kinds[i].second + between(-0.1, 0.1, "binder's density less the usual");
        }
        binder.push_back({material, parts[i]});
    }
    return binder;
}

inline core::Material any_aggregate(std::string name, core::Kind kind) {
    core::Material material{.name = std::move(name), .kind = kind};
    material.relative_density = between(2.4, 2.9, "aggregate's density");
    material.aggregate.relative_density_is_oven_dry = perhaps("oven-dry density");
    material.aggregate.absorption_percent = between(0, 3, "absorption");
    material.aggregate.moisture_percent = between(0, 8, "moisture");
    return material;
}

inline std::vector<core::Share> any_coarse(core::UnitSystem system) {
    const auto& sizes = tables_of(system).method.water_plain.front().water_kg_m3.sizes_mm;
    std::vector<core::Share> coarse;
    const auto parts = shares(up_to(2, "count of stones"), "coarse share");
    for (std::size_t i = 0; i < parts.size(); ++i) {
        core::Material stone =
            any_aggregate("stone" + std::to_string(i), core::Kind::coarse_aggregate);
        stone.aggregate.nominal_max_size_mm =
            perhaps("size of the table")
                ? sizes[static_cast<std::size_t>(*rc::gen::inRange(0, 6).as("size"))]
                : between(9.525, 50, "size, mm");
        stone.aggregate.dry_rodded_density_kg_m3 = between(1450, 1750, "dry-rodded density");
        coarse.push_back({stone, parts[i]});
    }
    return coarse;
}

inline std::vector<core::Share> any_fine() {
    std::vector<core::Share> fine;
    const auto parts = shares(up_to(2, "count of sands"), "fine share");
    for (std::size_t i = 0; i < parts.size(); ++i) {
        core::Material sand = any_aggregate("sand" + std::to_string(i), core::Kind::fine_aggregate);
        sand.aggregate.fineness_modulus = between(2.3, 3.1, "fineness modulus");
        fine.push_back({sand, parts[i]});
    }
    return fine;
}

/// A reducer whose curve ends at 0.6 % of the binder, dosed within it.
inline core::Dosage any_reducer(const std::string& name, core::Kind kind) {
    core::Material reducer{.name = name, .kind = kind};
    reducer.relative_density = between(1.0, 1.2, "reducer's density");
    if (perhaps("solids stated")) {
        reducer.admixture.solids_percent = between(10, 50, "solids");
    }
    const double first = between(1, 8, "reduction at the first dose");
    const double last = first + between(0, 10, "further reduction at the last dose");
    reducer.admixture.water_reduction = {{{0.2, core::DoseBasis::percent}, first},
                                         {{0.6, core::DoseBasis::percent}, last}};
    return {reducer, core::Dose{between(0.01, 0.6, "dose"), core::DoseBasis::percent}};
}

inline std::vector<core::Dosage> any_admixtures() {
    std::vector<core::Dosage> admixtures;
    if (perhaps("high-range reducer")) {
        admixtures.push_back(any_reducer("superplast", core::Kind::high_range_water_reducer));
    }
    if (perhaps("water reducer")) {
        admixtures.push_back(any_reducer("plast", core::Kind::water_reducer));
    }
    if (perhaps("agent")) {
        admixtures.push_back(
            {core::Material{.name = "agent", .kind = core::Kind::air_entraining_admixture},
             std::nullopt});
    }
    return admixtures;
}

inline std::vector<std::string> any_exposure() {
    std::vector<std::string> classes;
    for (const auto& category : std::vector<std::vector<std::string>>{{"", "F0", "F1", "F2", "F3"},
                                                                      {"", "S0", "S1", "S2", "S3"},
                                                                      {"", "W0", "W1", "W2"},
                                                                      {"", "C0", "C1", "C2"}}) {
        if (const auto name = one_of(category, "class"); !name.empty()) {
            classes.push_back(name);
        }
    }
    return classes;
}

inline core::Requirements any_requirements() {
    core::Requirements requirements{.strength_mpa = between(17, 35, "strength, MPa"),
                                    .slump_mm = between(25, 175, "slump, mm")};
    requirements.code = "ACI 318-19";
    requirements.exposure = any_exposure();
    requirements.reinforced = perhaps("reinforced");
    // A record keeps the required average inside the table.
    requirements.records =
        core::StrengthRecords{.tests = *rc::gen::inRange(15, 40).as("tests"),
                              .standard_deviation_mpa = between(0.5, 3, "standard deviation, MPa"),
                              .strength_mpa = std::nullopt,
                              .age_d = std::nullopt};
    if (perhaps("air stated")) {
        requirements.air = {core::AirBasis::stated, between(1, 8, "air asked")};
    }
    if (perhaps("least binder stated")) {
        requirements.minimum_binder_kg_m3 = between(200, 450, "least binder, kg/m3");
    }
    return requirements;
}

inline core::Selections any_selections() {
    core::Selections selections;
    switch (*rc::gen::inRange(0, 6).as("paste selected by")) {
    case 0:
        selections.w_cm = between(0.3, 0.7, "w/cm");
        break;
    case 1:
        selections.water_kg_m3 = between(130, 200, "water, kg/m3");
        break;
    case 2:
        selections.binder_kg_m3 = between(250, 450, "binder, kg/m3");
        break;
    case 3:
        selections.w_cm = between(0.3, 0.7, "w/cm");
        selections.water_kg_m3 = between(130, 200, "water, kg/m3");
        break;
    case 4:
        selections.w_cm = between(0.35, 0.6, "w/cm");
        selections.binder_kg_m3 = between(250, 450, "binder, kg/m3");
        break;
    default:
        break;
    }
    if (perhaps("air selected")) {
        selections.air_percent = between(1, 8, "air");
    }
    switch (*rc::gen::inRange(0, 4).as("aggregate selected by")) {
    case 0:
        selections.coarse_volume = between(0.5, 0.7, "coarse volume");
        break;
    case 1:
        selections.fine_share_percent = between(30, 55, "fine share");
        break;
    case 2:
        selections.coarse_adjustment_percent = between(-10, 10, "adjustment");
        break;
    default:
        break;
    }
    return selections;
}

inline core::Mix any_mix() {
    const core::UnitSystem system = any_system();
    core::Mix mix{.title = "drawn",
                  .system = system,
                  .requirements = any_requirements(),
                  .binder = any_binder(),
                  .coarse = any_coarse(system),
                  .fine = any_fine(),
                  .admixtures = any_admixtures()};
    if (perhaps("blend's density measured")) {
        mix.blend_dry_rodded_density_kg_m3 = between(1500, 1800, "blend's dry-rodded density");
    }
    mix.selections = any_selections();
    return mix;
}

/// An amount of a submitted mix, by mass.
inline core::SubmittedAmount amount_of(core::Material material, double kg_m3) {
    return {.material = std::move(material), .kg_m3 = kg_m3, .m3_m3 = std::nullopt};
}

/// The proportions, or nothing where no mix follows.
inline std::optional<core::Proportions> attempt(const core::Mix& mix) {
    try {
        return boardmark::test::made(core::proportion(entered(mix), tables_of(mix.system)));
    } catch (const core::Unresolved&) {
        return std::nullopt;
    }
}

/// The proportions; a case without any is not counted.
inline core::Proportions solved(const core::Mix& mix) {
    auto proportions = attempt(mix);
    RC_PRE(proportions.has_value());
    return *std::move(proportions);
}

inline double kg_m3_of(const core::Proportions& proportions, core::Role role) {
    double sum = 0;
    for (const core::Ingredient* ingredient : core::of_role(proportions, role)) {
        sum += ingredient->kg_m3;
    }
    return sum;
}

/// Amount by name; a name that stands twice is a fault of its own.
inline std::map<std::string, double> amounts(const core::Proportions& proportions) {
    std::map<std::string, double> result;
    for (const core::Ingredient& ingredient : proportions.ingredients) {
        RC_ASSERT(result.emplace(ingredient.name, ingredient.kg_m3).second);
    }
    return result;
}

/// Fails the law where the amounts of two mixes differ.
inline void demand_same_amounts(const core::Proportions& left, const core::Proportions& right,
                                double within) {
    const auto ours = amounts(left);
    const auto theirs = amounts(right);
    RC_ASSERT(ours.size() == theirs.size());
    for (const auto& [name, kg_m3] : ours) {
        RC_ASSERT(theirs.contains(name));
        demand_same(kg_m3, theirs.at(name), within, name);
    }
}

} // namespace boardmark::test
