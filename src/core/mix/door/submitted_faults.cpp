#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/submitted_dose.hpp>

#include "faults.hpp"

#include <set>

namespace boardmark::core {
namespace {

constexpr Bounds any_amount{.low = 0, .high = out_of_all_reach};

bool is_of_role(const SubmittedAmount& amount, Role role) {
    return amount.material && is_kind(amount.material->kind) &&
           role_of(amount.material->kind) == role;
}

double binder_kg_m3(const SubmittedMix& mix) {
    double sum_kg_m3 = 0;
    for (const SubmittedAmount& amount : mix.amounts) {
        sum_kg_m3 += is_of_role(amount, Role::binder) ? amount.kg_m3.value_or(0) : 0;
    }
    return sum_kg_m3;
}

/// An admixture beyond what its data sheet permits.
void find_maximum_faults(const SubmittedAmount& amount, double binder_kg_m3,
                         const FaultList& list) {
    const auto& maximum = amount.material->admixture.maximum_dose;
    if (!maximum || !(binder_kg_m3 > 0)) {
        return;
    }
    switch (held_to_maximum(amount, *maximum, binder_kg_m3)) {
    case HeldDose::within:
        break;
    case HeldDose::above:
        list.impossible(Field::amount, "is above maximum_dose");
        break;
    case HeldDose::not_comparable:
        list.missing(Field::relative_density,
                     "maximum_dose and the amount are of different kinds of unit");
        break;
    }
}

/// Form, bars and cover are held against the largest stone that goes in.
void find_size_faults(const SubmittedMix& mix, const FaultList& list) {
    for (const SubmittedAmount& amount : mix.amounts) {
        const bool goes_in = amount.kg_m3.value_or(amount.m3_m3.value_or(1)) > 0;
        if (is_of_role(amount, Role::coarse) && goes_in &&
            amount.material->aggregate.nominal_max_size_mm.value_or(0) >
                mix.nominal_max_size_mm * (1 + 1e-9)) {
            list.impossible(Field::submitted_size,
                            "is below that of '" + amount.material->name + "'");
        }
    }
}

} // namespace

void find_amount_faults(const SubmittedAmount& amount, const FaultList& list) {
    const Material& material = amount.material;
    list.hold(Field::amount, amount.kg_m3, any_amount);
    list.hold(Field::amount, amount.m3_m3, any_amount);
    if (amount.kg_m3.has_value() == amount.m3_m3.has_value()) {
        list.impossible(Field::amount, amount.kg_m3 ? "is stated by mass and by volume"
                                                    : "is stated neither by mass nor by volume");
    }
    if (amount.m3_m3 && role_of(material.kind) != Role::admixture) {
        list.impossible(Field::amount, "is a volume, which only admixtures are submitted by");
    }
}

void find_water_faults(const SubmittedMix& mix, const FaultList& list) {
    constexpr Bounds some{.low = 0, .high = out_of_all_reach, .low_itself = false};
    list.hold(Field::submitted_water, mix.water_kg_m3, some);
    list.hold(Field::submitted_water, mix.water_m3_m3, some);
    if (!mix.water_kg_m3 && !mix.water_m3_m3) {
        list.missing(Field::submitted_water, "concrete needs water");
    } else if (mix.water_kg_m3 && mix.water_m3_m3) {
        list.impossible(Field::submitted_water, "is stated by mass and by volume");
    }
}

void demand_binder(const SubmittedMix& mix, const FaultList& list) {
    if (!(binder_kg_m3(mix) > 0)) {
        list.missing(Field::amounts, "none of them is cementitious material");
    }
}

Faults faults_of(const SubmittedMix& mix, const Vocabulary& words) {
    Faults faults;
    const FaultList list{faults};
    if (mix.system != UnitSystem::us && mix.system != UnitSystem::si) {
        list.unknown(Field::system, std::to_string(static_cast<int>(mix.system)));
    }
    find_requirement_faults(mix.requirements, mix.system, words, list);
    find_supply_faults(mix.supply, list);
    find_water_faults(mix, list);
    list.hold(Field::submitted_air, mix.air_percent, {.low = 0, .high = 20});
    list.hold(Field::submitted_size, mix.nominal_max_size_mm, {.low = 4, .high = 160});
    list.hold(Field::batched_water_temperature, mix.batched_water.temperature_c,
              {.low = 0, .high = 100});
    list.hold(Field::ice, mix.batched_water.ice_kg_m3, any_amount);
    std::set<std::string> names;
    for (std::size_t i = 0; i < mix.amounts.size(); ++i) {
        const SubmittedAmount& amount = mix.amounts[i];
        if (!amount.material) {
            const FaultList nameless{faults, "amounts[" + std::to_string(i) + "]", ""};
            nameless.missing(Field::name, "no material is named at all");
            continue;
        }
        const Material& material = amount.material;
        const FaultList of_amount{faults, "amounts[" + std::to_string(i) + "] " + material.name,
                                  material.name};
        if (!find_material_faults(material, of_amount)) {
            continue;
        }
        if (!names.insert(material.name).second) {
            of_amount.impossible(Field::name, "names two materials");
        }
        find_amount_faults(amount, of_amount);
        find_maximum_faults(amount, binder_kg_m3(mix), of_amount);
    }
    demand_binder(mix, list);
    find_size_faults(mix, list);
    return faults;
}

std::variant<CompleteSubmittedMix, Faults> complete(SubmittedMix mix, const Vocabulary& words) {
    add_site_classes(mix.requirements, words.code_of(mix.requirements, mix.system));
    Faults faults = faults_of(mix, words);
    if (!faults.empty()) {
        return faults;
    }
    return CompleteSubmittedMix{std::move(mix)};
}

std::variant<AnyCompleteMix, Faults> complete(AnyMix mix, const Vocabulary& words) {
    using Entered = std::variant<AnyCompleteMix, Faults>;
    return std::visit(
        [&](auto&& either) {
            return std::visit(
                [](auto&& complete_or_faults) {
                    return Entered{std::forward<decltype(complete_or_faults)>(complete_or_faults)};
                },
                complete(std::move(either), words));
        },
        std::move(mix));
}

} // namespace boardmark::core
