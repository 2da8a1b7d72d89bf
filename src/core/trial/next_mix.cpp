#include "next_mix.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/trial/batching_tolerance.hpp>

#include "../basis/tolerance.hpp"
#include "../batch/charged.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// The materials of one role as shares by SSD mass.
std::vector<Share> shares_of(const Proportions& proportions, Role role) {
    std::vector<Share> shares;
    double sum_kg_m3 = 0;
    for (const Ingredient* ingredient : of_role(proportions, role)) {
        sum_kg_m3 += ingredient->kg_m3;
    }
    for (const Ingredient* ingredient : of_role(proportions, role)) {
        shares.push_back({*ingredient->material, 100 * ingredient->kg_m3 / sum_kg_m3});
    }
    return shares;
}

/// Nothing where an absorption is missing.
std::optional<double> dry_kg_m3(const Proportions& proportions, Role role) {
    double sum_kg_m3 = 0;
    for (const Ingredient* ingredient : of_role(proportions, role)) {
        if (!ingredient->dry_kg_m3) {
            return std::nullopt;
        }
        sum_kg_m3 += *ingredient->dry_kg_m3;
    }
    return sum_kg_m3;
}

/// Dose of an admixture in percent of the cementitious material.
double found_percent(const Ingredient& admixture, double binder_kg_m3) {
    return 100 * admixture.kg_m3 / binder_kg_m3;
}

/// A submitted mix as one that can be proportioned again: its blends, its coarse amount.
Mix proportionable(const SubmittedMix& submitted, const Proportions& designed) {
    Mix mix{.title = submitted.title,
            .system = submitted.system,
            .requirements = submitted.requirements,
            .binder = shares_of(designed, Role::binder),
            .coarse = shares_of(designed, Role::coarse),
            .fine = shares_of(designed, Role::fine)};
    for (const Ingredient* admixture : of_role(designed, Role::admixture)) {
        mix.admixtures.push_back({*admixture->material, std::nullopt});
        if (!admixture->by_trial) {
            set_dose(mix, std::string{admixture->name},
                     found_percent(*admixture, designed.totals.binder_kg_m3));
        }
    }
    mix.selections.coarse_dry_kg_m3 = dry_kg_m3(designed, Role::coarse);
    mix.batched_water = submitted.batched_water;
    return mix;
}

Mix mix_to_adjust(const AnyCompleteMix& mix, const Proportions& designed) {
    const auto* submitted = std::get_if<CompleteSubmittedMix>(&mix);
    return submitted ? proportionable(*submitted, designed) : *std::get<CompleteMix>(mix);
}

/// The aggregates with the moisture that they had in the trial.
void take_moistures(std::vector<Share>& shares, const Trial& trial) {
    for (Share& share : shares) {
        share.material.edit().aggregate.moisture_percent =
            find_batched(trial, share.material->name)->material.aggregate.moisture_percent;
    }
}

} // namespace

double ratio_before_minimum(const AnyCompleteMix& mix, const Selection& selection) {
    const auto* selected = std::get_if<CompleteMix>(&mix);
    if (!selected || selection.w_cm_governed_by != Governor::minimum_binder) {
        return selection.w_cm;
    }
    if ((*selected)->selections.w_cm) {
        return *(*selected)->selections.w_cm;
    }
    if ((*selected)->selections.w_cm_by_exposure || !selection.w_cm_by_strength) {
        return *selection.w_cm_by_exposure;
    }
    return std::min(*selection.w_cm_by_strength,
                    selection.w_cm_by_exposure.value_or(*selection.w_cm_by_strength));
}

void set_dose(Mix& mix, const std::string& admixture, double percent) {
    const auto dosage =
        std::ranges::find(mix.admixtures, admixture, [](const Dosage& one) -> const std::string& {
            return one.material->name;
        });
    dosage->dose = Dose{percent, DoseBasis::percent};
}

double dosed_binder_kg_m3(const Yield& yield, const Proportions& designed, const Tables& tables) {
    const double found = yield.found.totals.binder_kg_m3;
    const double asked = designed.totals.binder_kg_m3 * yield.intended_volume_m3 / yield.volume_m3;
    const double tolerance = batching_tolerance_kg(Role::binder, asked, tables.trial->batching);
    return above(std::abs(found - asked), tolerance) ? asked : found;
}

Mix mix_of(const Trial& trial, const Yield& yield, const Proportions& designed,
           double dosed_binder_kg_m3) {
    Mix mix = mix_to_adjust(trial.mix, designed);
    mix.requirements.slump_mm = yield.target.slump_mm;
    Selections& selections = mix.selections;
    selections.water_shows_slump = true;       // of the trial, corrected to its target
    selections.w_cm = designed.selection.w_cm; // never above the design's, minimum or not
    selections.w_cm_by_exposure = false;
    selections.binder_kg_m3 = std::nullopt;
    selections.air_percent = yield.target.air_percent;
    if (trial.coarse == CoarseBasis::as_trial) {
        selections.fine_share_percent = std::nullopt;
        selections.coarse_dry_kg_m3 = dry_kg_m3(yield.found, Role::coarse);
        mix.blend.reset(); // the trial's own coarse aggregate is none of the blend
    }
    take_moistures(mix.coarse, trial);
    take_moistures(mix.fine, trial);
    for (const Ingredient* admixture : of_role(yield.found, Role::admixture)) {
        if (admixture->kg_m3 > 0) { // what was left out keeps the dose of the mix file
            set_dose(mix, std::string{admixture->name},
                     found_percent(*admixture, dosed_binder_kg_m3));
        }
    }
    return mix;
}

} // namespace boardmark::core
