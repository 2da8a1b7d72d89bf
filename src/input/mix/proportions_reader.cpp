#include <boardmark/core/mix/submitted_dose.hpp>
#include <boardmark/text/closest.hpp>
#include <boardmark/units/unit.hpp>

#include "../values/field_values.hpp"
#include "../values/one_system.hpp"
#include "improbable_doses.hpp"
#include "mix_context.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace boardmark::input {
namespace {

using core::Role;
using units::Dimension;

Path key(std::string_view name) {
    return {"proportions", name};
}

/// Names that are no material's but nearly a word of `proportions`; the words that they were meant
/// to be.
std::set<std::string, std::less<>> refuse_misspelt_words(const MixContext& context,
                                                         const Materials& materials) {
    std::set<std::string, std::less<>> meant;
    for (const std::string_view name : context.document.names({"proportions"})) {
        if (materials.contains(std::string{name}) || context.has({"materials", name}) ||
            std::ranges::count(reserved_names(), name) > 0) {
            continue;
        }
        std::vector<std::string_view> known(reserved_names().begin(), reserved_names().end());
        for (const auto& [material, figures] : materials) {
            known.push_back(material);
        }
        const auto near = text::closest(name, known);
        if (near && std::ranges::count(reserved_names(), *near) > 0) {
            context.refuse(*context.document.find(key(name))->key,
                           "'" + std::string{name} +
                               "' is neither a word of 'proportions' nor a material",
                           "did you mean '" + std::string{*near} + "'?");
            meant.insert(std::string{*near});
            meant.emplace(name);
        }
    }
    return meant;
}

/// One amount, per m3 of concrete.
std::optional<core::SubmittedAmount> read_amount(const MixContext& context,
                                                 const Materials& materials, std::string_view name,
                                                 double volume_m3) {
    const Reading& reading = *context.document.find(key(name));
    Parsed as_name;
    as_name.node = reading.key;
    as_name.text = name;
    const core::Material* material = find_material(context, materials, as_name);
    if (!material || !reading.value) {
        return std::nullopt;
    }
    const Parsed& amount = *reading.value;
    const bool admixture = role_of(material->kind) == Role::admixture;
    if (!admixture && (amount.is_word || amount.dimension == Dimension::volume)) {
        context.refuse(*amount.node,
                       dotted(key(name)) + ": " + std::string{core::name_of(material->kind)} +
                           " is submitted by mass; '" + amount.text + "' is not one",
                       "write for example '480 lb'");
        return std::nullopt;
    }
    core::SubmittedAmount submitted{*material, std::nullopt, std::nullopt};
    if (amount.is_word) {
        submitted.by_trial = true;
        submitted.kg_m3 = 0;
    } else if (amount.dimension == Dimension::volume) {
        submitted.m3_m3 = amount.number / volume_m3;
    } else {
        submitted.kg_m3 = amount.number / volume_m3;
    }
    return submitted;
}

/// Admixtures beyond what their data sheet permits.
void refuse_doses_above_maximum(const MixContext& context, const core::SubmittedMix& mix,
                                double binder_kg_m3) {
    for (const core::SubmittedAmount& amount : mix.amounts) {
        const Parsed* maximum =
            context.document.value({"materials", amount.material->name, "maximum_dose"});
        if (!maximum || binder_kg_m3 <= 0) {
            continue;
        }
        const auto held = core::held_to_maximum(amount, dose_of(*maximum), binder_kg_m3);
        if (held == core::HeldDose::not_comparable) {
            context.missing({"materials", amount.material->name}, "relative_density",
                            "'maximum_dose' and the amount are of different kinds of unit",
                            "the data sheet has it");
        } else if (held == core::HeldDose::above) {
            const Parsed& written = *context.document.value(key(amount.material->name));
            context.refuse(*written.node,
                           dotted(key(amount.material->name)) +
                               ": the amount is above 'maximum_dose', " + maximum->text,
                           "ask the supplier; the data sheet permits less");
        }
    }
}

/// A batch is weighed with its aggregates.
void demand_aggregates(const MixContext& context, const core::SubmittedMix& mix) {
    for (const Role role : {Role::coarse, Role::fine}) {
        const bool listed =
            std::ranges::any_of(mix.amounts, [&](const core::SubmittedAmount& amount) {
                return role_of(amount.material->kind) == role;
            });
        if (!listed) {
            context.missing({"proportions"},
                            role == Role::coarse ? "coarse aggregate" : "fine aggregate",
                            "batch weights need it", "add its amount, saturated surface-dry");
        }
    }
}

/// The largest size of the submitted stone; where no stone is submitted, of the stone described.
double read_largest_size(const MixContext& context, const Materials& materials,
                         const core::SubmittedMix& mix) {
    std::vector<const core::Material*> stones;
    for (const core::SubmittedAmount& amount : mix.amounts) {
        const bool is_there = amount.kg_m3.value_or(amount.m3_m3.value_or(1)) > 0;
        if (role_of(amount.material->kind) == Role::coarse && is_there) {
            stones.push_back(&*amount.material);
        }
    }
    if (stones.empty()) {
        for (const auto& [name, material] : materials) {
            if (role_of(material.kind) == Role::coarse) {
                stones.push_back(&material);
            }
        }
    }
    double largest_mm = 0;
    for (const core::Material* stone : stones) {
        const Path path{"materials", stone->name, "nominal_max_size"};
        largest_mm = std::max(largest_mm, stone->aggregate.nominal_max_size_mm.value_or(0));
        context.demand(path, "the air limits depend on it");
    }
    if (stones.empty() && context.has({"materials"})) {
        context.missing({"materials"}, "coarse aggregate",
                        "the air limits depend on its nominal maximum size",
                        "describe the stone, with 'nominal_max_size'");
    }
    return largest_mm;
}

/// Amounts in two systems, and sums that no usual concrete has: kilograms typed for pounds, a
/// volume of another unit.
void ask_back_submitted(const MixContext& context, const core::SubmittedMix& mix,
                        double binder_kg_m3) {
    OneSystem system{context, "proportions", Severity::warning};
    double sum_kg_m3 = mix.water_kg_m3.value_or(0) + 1000 * mix.water_m3_m3.value_or(0);
    bool coarse = false;
    bool fine = false;
    for (const std::string_view name : context.document.names({"proportions"})) {
        const Parsed* amount = context.document.value(key(name));
        const bool mass = amount && !amount->is_word && amount->dimension == Dimension::mass;
        if ((mass && name != "ice") || (amount && !amount->is_word && name == "water")) {
            system.hold(*amount);
        }
    }
    system.tell();
    for (const core::SubmittedAmount& amount : mix.amounts) {
        sum_kg_m3 += amount.kg_m3.value_or(0);
        coarse = coarse || role_of(amount.material->kind) == Role::coarse;
        fine = fine || role_of(amount.material->kind) == Role::fine;
    }
    const auto ask = [&](const char* what, double kg_m3, Range usual) {
        if (kg_m3 < usual.low || kg_m3 > usual.high) {
            context.ask_back(*context.document.find({"proportions"})->key,
                             fmt::format("proportions: {} come to {:.0f} lb/yd3 ({:.0f} kg/m3); "
                                         "rarely outside {:.0f} to {:.0f} kg/m3",
                                         what, units::unit("lb/yd3").from_inside(kg_m3), kg_m3,
                                         usual.low, usual.high),
                             "check 'volume' and the units of the amounts");
        }
    };
    for (const core::SubmittedAmount& amount : mix.amounts) {
        const core::Material& material = amount.material;
        if (role_of(material.kind) == Role::admixture) {
            const core::Dose percent{100 * amount.kg_m3.value_or(0) / binder_kg_m3,
                                     core::DoseBasis::percent};
            const Path place = key(material.name);
            ask_back_dose(context, *context.document.value(place), place, material,
                          amount.m3_m3 ? *amount.m3_m3 / binder_kg_m3
                                       : dose_m3_kg(material, percent));
        }
    }
    ask("the cementitious materials", binder_kg_m3, {.low = 200, .high = 600});
    if (coarse && fine) {
        ask("all amounts together", sum_kg_m3, usual_fresh_density_kg_m3);
    }
}

} // namespace

void read_proportions(const MixContext& context, const Materials& materials,
                      core::SubmittedMix& mix) {
    if (!context.holds_keys({"proportions"})) {
        return;
    }
    const auto misspelt = refuse_misspelt_words(context, materials);
    const auto demand = [&](std::string_view name, const std::string& why) {
        if (!misspelt.contains(name)) {
            context.demand(key(name), why);
        }
    };
    demand("volume", "amounts are of some volume");
    demand("water", "the submittal has it");
    demand("air", "the submittal has it");
    const double volume_m3 = context.document.number(key("volume")).value_or(1);
    mix.air_percent = context.document.number(key("air")).value_or(0);
    mix.batched_water = {context.document.number(key("water_temperature")),
                         context.document.number(key("ice")).value_or(0) / volume_m3};
    mix.water_includes_admixtures = context.document.flag(key("water_includes_admixtures"), false);
    if (const Parsed* water = context.document.value(key("water"))) {
        const double per_m3 = water->number / volume_m3;
        if (water->is_word || water->number <= 0) {
            context.refuse(*water->node, "proportions.water: concrete needs water",
                           "write the water of the submittal, for example '253 lb'");
        } else {
            (water->dimension == Dimension::volume ? mix.water_m3_m3 : mix.water_kg_m3) = per_m3;
        }
    }
    double binder_kg_m3 = 0;
    bool sound = true;
    for (const std::string_view name : context.document.names({"proportions"})) {
        if (std::ranges::count(reserved_names(), name) > 0 || misspelt.contains(name)) {
            continue;
        }
        if (auto amount = read_amount(context, materials, name, volume_m3)) {
            if (role_of(amount->material->kind) == Role::binder) {
                binder_kg_m3 += *amount->kg_m3;
            }
            mix.amounts.push_back(std::move(*amount));
        } else {
            sound = false;
        }
    }
    if (binder_kg_m3 > 0 && !has_errors(context.diagnostics)) {
        ask_back_submitted(context, mix, binder_kg_m3);
    }
    constexpr double heaviest_kg_m3 = 10000; // steel has 7850
    double sum_kg_m3 = 0;
    for (const core::SubmittedAmount& amount : mix.amounts) {
        sum_kg_m3 += amount.kg_m3.value_or(0);
    }
    if (sum_kg_m3 > heaviest_kg_m3) {
        context.refuse(*context.document.find({"proportions"})->key,
                       "proportions: the amounts are heavier than any concrete of this volume",
                       "check 'volume' and the units of the amounts");
    }
    if (binder_kg_m3 <= 0 && sound) {
        context.missing({"proportions"}, "cementitious material", "the submittal has it",
                        "add the cement under its name, for example 'cement: 480 lb'");
    }
    mix.nominal_max_size_mm = read_largest_size(context, materials, mix);
    refuse_doses_above_maximum(context, mix, binder_kg_m3);
    if (is_batched(context.options.purpose)) {
        demand_aggregates(context, mix);
        for (const core::SubmittedAmount& amount : mix.amounts) {
            const Role role = role_of(amount.material->kind);
            if (role == Role::coarse || role == Role::fine) {
                demand_aggregate_figures(context, amount.material);
                demand_batch_figures(context, amount.material);
            }
        }
    }
}

} // namespace boardmark::input
