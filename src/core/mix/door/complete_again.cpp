#include "complete_again.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../../basis/phrases.hpp"
#include "faults.hpp"
#include "figure_demands.hpp"

namespace boardmark::core {
namespace {

constexpr Bounds none_or_some{.low = 0, .high = out_of_all_reach};
constexpr Bounds some_at_all{.low = 0, .high = out_of_all_reach, .low_itself = false};

void find_edited_selection_faults(const Mix& mix, const FaultList& list) {
    const Selections& given = mix.selections;
    list.hold(Field::slump, mix.requirements.slump_mm, none_or_some);
    list.hold(Field::selected_w_cm, given.w_cm, some_at_all);
    list.hold(Field::selected_water, given.water_kg_m3, some_at_all);
    list.hold(Field::selected_binder, given.binder_kg_m3, some_at_all);
    list.hold(Field::selected_air, given.air_percent, none_or_some);
    list.hold(Field::coarse_dry, given.coarse_dry_kg_m3, some_at_all);
}

void find_edited_share_faults(Field blend, const std::vector<Share>& shares,
                              const FigureDemands& demands, Faults& faults) {
    if (shares.empty()) {
        FaultList{faults}.missing(blend, "concrete holds some");
    }
    for (const Share& share : shares) {
        const FaultList list{faults, share.material->name, share.material->name};
        list.hold(Field::share, share.percent, none_or_some);
        demands.demand_figures(share.material, list);
    }
}

Faults faults_of_edited(const Mix& mix, const Tables& tables) {
    Faults faults;
    find_edited_selection_faults(mix, FaultList{faults});
    const FigureDemands demands{mix, tables.method.fineness_sieves_mm};
    find_edited_share_faults(Field::binder, mix.binder, demands, faults);
    find_edited_share_faults(Field::coarse, mix.coarse, demands, faults);
    find_edited_share_faults(Field::fine, mix.fine, demands, faults);
    for (const Dosage& dosage : mix.admixtures) {
        if (dosage.dose) {
            const FaultList list{faults, dosage.material->name, dosage.material->name};
            list.hold(Field::dose, dosage.dose->amount, none_or_some);
            demands.demand_reduction(dosage, list);
        }
    }
    find_flow_faults(mix, FaultList{faults});
    return faults;
}

Unresolved first_of(const Faults& faults) {
    return {{"{fault}", {word("fault", faults.front().message)}},
            {{"state that figure, or check the figures that it follows from", {}}}};
}

} // namespace

Outcome<CompleteMix> complete_again(Mix edited, const Tables& tables) {
    const Faults faults = faults_of_edited(edited, tables);
    if (!faults.empty()) {
        return first_of(faults);
    }
    return CompleteMix{std::move(edited)};
}

Outcome<CompleteSubmittedMix> complete_again(SubmittedMix edited) {
    Faults faults;
    const FaultList list{faults};
    find_water_faults(edited, list);
    list.hold(Field::submitted_air, edited.air_percent, none_or_some);
    for (const SubmittedAmount& amount : edited.amounts) {
        find_amount_faults(amount, {faults, amount.material->name, amount.material->name});
    }
    demand_binder(edited, list);
    if (!faults.empty()) {
        return first_of(faults);
    }
    return CompleteSubmittedMix{std::move(edited)};
}

} // namespace boardmark::core
