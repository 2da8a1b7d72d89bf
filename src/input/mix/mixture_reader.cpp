#include "blend_reader.hpp"
#include "improbable_doses.hpp"
#include "mix_context.hpp"
#include "told_faults.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::input {
namespace {

using core::Role;

void refuse_role(const MixContext& context, const Parsed& name, const core::Material& material,
                 const std::string& place) {
    context.refuse(*name.node,
                   place + ": " + name.text + " is " + std::string{core::name_of(material.kind)},
                   "correct the name, or the material's 'kind'");
}

std::vector<core::Share> read_shares(const MixContext& context, const Materials& materials,
                                     std::string_view key, Role role) {
    const Path path{"mixture", key};
    const Reading* reading = context.document.find(path);
    if (!reading) {
        context.demand(path, "");
        return {};
    }
    std::vector<core::Share> shares;
    double sum = 0;
    for (const Pair& pair : reading->pairs) {
        sum += pair.value.number;
        const core::Material* material = find_material(context, materials, pair.key);
        if (!material) {
            continue;
        }
        if (role_of(material->kind) != role) {
            refuse_role(context, pair.key, *material, dotted(path));
            continue;
        }
        shares.push_back({*material, pair.value.number});
    }
    constexpr double tolerance_percent = 100 * 1e-6;
    if (reading->sound && std::abs(sum - 100) > tolerance_percent) {
        std::string written = std::to_string(sum);
        written.erase(written.find_last_not_of('0') + 1);
        written.erase(written.find_last_not_of('.') + 1);
        context.refuse(*reading->key, dotted(path) + " adds up to " + written + " %, not 100 %",
                       "the shares of one blend make 100 %");
    }
    for (core::Share& share : shares) {
        share.percent *= 100 / sum; // what the tolerance lets through must not change the mix
    }
    return shares;
}

void refuse_dose_above_maximum(const MixContext& context, const Pair& pair) {
    const Parsed* maximum = context.document.value({"materials", pair.key.text, "maximum_dose"});
    if (!maximum || pair.value.is_word) {
        return;
    }
    if (maximum->dimension != pair.value.dimension) {
        context.refuse(*pair.value.node,
                       "mixture.admixtures." + pair.key.text +
                           ": the dose and 'maximum_dose' are in two kinds of unit",
                       "write both by volume or both in percent of the binder");
    } else if (pair.value.number > maximum->number * (1 + 1e-9)) {
        context.refuse(*pair.value.node,
                       "mixture.admixtures." + pair.key.text +
                           ": the dose is above 'maximum_dose', " + maximum->text,
                       "lower it to what the data sheet permits");
    }
}

/// A reduction that stands without its dose is taken at the dose of the mix.
core::Material with_assumed_reduction(const MixContext& context, core::Material material,
                                      const Pair& dosage) {
    const Parsed* alone = context.document.value({"materials", material.name, "water_reduction"});
    if (alone && !alone->is_word && !dosage.value.is_word && dosage.value.number > 0) {
        material.admixture.water_reduction = {{dose_of(dosage.value), alone->number}};
        material.admixture.reduction_dose_assumed = true;
    }
    return material;
}

std::vector<core::Dosage> read_admixtures(const MixContext& context, const Materials& materials) {
    std::vector<core::Dosage> admixtures;
    const Reading* reading = context.document.find({"mixture", "admixtures"});
    if (!reading) {
        return admixtures;
    }
    for (const Pair& pair : reading->pairs) {
        const core::Material* material = find_material(context, materials, pair.key);
        if (!material) {
            continue;
        }
        if (role_of(material->kind) != Role::admixture) {
            refuse_role(context, pair.key, *material, "mixture.admixtures");
            continue;
        }
        refuse_dose_above_maximum(context, pair);
        if (!pair.value.is_word) {
            ask_back_dose(context, pair.value, {"mixture", "admixtures", pair.key.text}, *material,
                          dose_m3_kg(*material, dose_of(pair.value)));
        }
        admixtures.push_back(
            {with_assumed_reduction(context, *material, pair),
             pair.value.is_word ? std::nullopt : std::optional{dose_of(pair.value)}});
    }
    return admixtures;
}

void demand_reducer_for_flow(const MixContext& context, const core::Mix& mix) {
    const Reading* before = context.document.find({"requirements", "slump_before_reducer"});
    const bool found = std::ranges::any_of(mix.admixtures, [](const core::Dosage& dosage) {
        return dosage.material->kind == core::Kind::high_range_water_reducer &&
               !(dosage.dose && dosage.dose->amount == 0);
    });
    const Reading* admixtures = context.document.find({"mixture", "admixtures"});
    if (before && !found && (!admixtures || admixtures->sound)) {
        context.refuse(*before->key,
                       "requirements.slump_before_reducer: the mixture holds no high-range water "
                       "reducer",
                       "add one under 'mixture.admixtures', or delete this key");
    }
}

} // namespace

void read_mixture(const MixContext& context, const Materials& materials, core::Mix& mix) {
    if (!context.holds_keys({"mixture"})) {
        return;
    }
    mix.binder = read_shares(context, materials, "binder", Role::binder);
    if (has_blend(context)) {
        read_blended_aggregates(context, materials, mix);
    } else {
        mix.coarse = read_shares(context, materials, "coarse", Role::coarse);
        mix.fine = read_shares(context, materials, "fine", Role::fine);
    }
    mix.blend_dry_rodded_density_kg_m3 =
        context.document.number({"mixture", "coarse_dry_rodded_density"});
    mix.admixtures = read_admixtures(context, materials);
    mix.batched_water = {context.document.number({"mixture", "water_temperature"}),
                         context.document.number({"mixture", "ice"}).value_or(0)};
    demand_reducer_for_flow(context, mix);
    if (!context.kept) {
        tell_missing_figures(context, mix);
    }
    if (is_batched(context.options.purpose)) {
        for (const auto* shares : {&mix.coarse, &mix.fine}) {
            for (const core::Share& share : *shares) {
                demand_batch_figures(context, share.material);
            }
        }
    }
    if (has_blend(context) && !has_errors(context.diagnostics)) {
        blend(context, mix);
    }
}

} // namespace boardmark::input
