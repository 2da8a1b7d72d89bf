#include <boardmark/core/checks/check_remedy.hpp>

#include <algorithm>

namespace boardmark::core {
namespace {

namespace ids = check_ids;

constexpr CheckRemedy remedy(CheckId id, std::string_view words) {
    return {id.name(), words};
}

constexpr std::string_view other_shares = "change the shares of the cementitious materials";
constexpr std::string_view air_dose =
    "correct the dose of the air-entraining admixture and measure the air again";
constexpr std::string_view engineer_asked =
    "tell the licensed engineer, who decides what is done with the concrete in place";
constexpr std::string_view warmer_or_colder =
    "warm or cool the water and the aggregates, and measure before placing";
constexpr std::string_view formwork_designer =
    "stronger forms or ties nearer to each other, or a slower rise where a rate matters: a "
    "qualified person designs the formwork";
constexpr std::string_view more_steel = "more bars or closer ones: the licensed engineer decides";

constexpr std::string_view new_paper = "hand in the paper, or a newer one, with its date";
constexpr std::string_view made_for_it = "offer a mix that is made for what is asked";

// Common practice, no source; where someone can be hurt, who decides.
constexpr CheckRemedy all_remedies[] = {
    // Of a mix.
    remedy(ids::w_cm_exposure, "less water, or more cementitious material with the same water"),
    remedy(ids::strength_exposure, "specify at least this strength in 'requirements.strength'"),
    remedy(ids::strength_average,
           "lower the w/cm, or prove the strength by trial batches and state 'strength_curve'"),
    remedy(ids::air_exposure, air_dose),
    remedy(ids::air_stated, air_dose),
    remedy(ids::scm_fly_ash, other_shares),
    remedy(ids::scm_slag_cement, other_shares),
    remedy(ids::scm_silica_fume, other_shares),
    remedy(ids::scm_total, other_shares),
    remedy(ids::scm_ash_and_fume, other_shares),
    remedy(ids::cement_sulfate,
           "a cement or blend that the class accepts; its mill certificate names its type"),
    remedy(ids::chloride_sulfate, "an admixture without calcium chloride; its data sheet says so"),
    remedy(ids::chloride_exposure,
           "materials with less chloride; test reports and data sheets say how much they contain"),
    remedy(ids::alkali_loading,
           "a cement of less alkali, or more of a supplementary material: the licensed engineer "
           "decides"),
    remedy(ids::size_form, "a smaller stone"),
    remedy(ids::size_bars, "a smaller stone, or bars further apart: the licensed engineer decides"),
    remedy(ids::binder_minimum, "more cementitious material at the same w/cm"),
    remedy(ids::binder_exposure, "more cement at the same water/cement ratio"),
    remedy(ids::cement_most,
           "less cement: less water by a reducer, or a part replaced by an addition"),
    remedy(
        ids::volume_closes,
        "find the amount or the relative density that is wrong; the supplier and the test reports "
        "have them"),
    remedy(ids::temperature_mixed, warmer_or_colder),
    remedy(ids::temperature_placing, warmer_or_colder),
    remedy(ids::evaporation, "windbreaks, fog or covers before placing begins, or another hour"),
    // Of a trial.
    remedy(ids::slump_window,
           "correct the next trial as shown; a load outside these limits is not placed"),
    remedy(ids::slump_tolerance,
           "correct the next trial as shown; a load outside these limits is not placed"),
    remedy(ids::air_tolerance, air_dose),
    remedy(ids::air_gap, "test again by both ways; look at the meter, the scale and the measure"),
    remedy(ids::temperature, warmer_or_colder),
    remedy(ids::yield_relative,
           "test three samples, then look at the scale, the moistures and the intended volume"),
    remedy(ids::batching, "weigh again within the tolerance; look at the scale"),
    remedy(ids::dose_maximum, "a dose that the data sheet allows"),
    // Of strength results.
    remedy(ids::strength_single_test, engineer_asked),
    {"strength.average_of_three", engineer_asked},
    {"strength.mean", engineer_asked},
    {"strength.mean_initial", engineer_asked},
    remedy(ids::strength_age, "test specimens at the age that is specified"),
    remedy(ids::strength_specimens, "as many specimens for each test as the code requires"),
    remedy(ids::strength_range, "look at sampling, curing and testing of the specimens"),
    remedy(ids::strength_within_test, "look at sampling, curing and testing of the specimens"),
    remedy(ids::strength_record_average, "a higher average or less scatter, by the next trials"),
    remedy(ids::cores_average, engineer_asked),
    remedy(ids::cores_single, engineer_asked),
    remedy(ids::cores_number,
           "drill what is missing, three for each low test, before anyone judges"),
    remedy(ids::cores_size, "drill longer or wider cores; the licensed engineer says where"),
    remedy(ids::cores_conditioning, "drill new cores, and bag and date each one"),
    // Of walls.
    remedy(
        ids::cold_protection,
        "protect longer or warmer, until tests show the strength; the licensed engineer decides"),
    remedy(ids::stripping_age,
           "leave the forms until tests show the strength; the licensed engineer decides"),
    remedy(ids::stripping_soffit,
           "leave form and props until tests show the strength; the licensed engineer decides"),
    remedy(ids::section_agrees, "make the mix file and the wall file agree with the drawings"),
    remedy(ids::placing_temperature, warmer_or_colder),
    remedy(ids::placing_rise, formwork_designer),
    remedy(ids::placing_evaporation,
           "windbreaks, fog or covers before placing begins, or another hour"),
    remedy(ids::lift_height, "lower lifts"),
    remedy(ids::lift_time,
           "more output or lower lifts, or a retarder that the supplier has tried with this mix"),
    remedy(ids::load_discharge, "smaller loads there, or agree a longer time with the supplier"),
    remedy(ids::truck_discharge, "smaller loads, or loads further apart"),
    remedy(ids::vibrator_fits,
           "a smaller head, or bars further apart: the licensed engineer decides"),
    remedy(ids::forms_pressure, formwork_designer),
    remedy(ids::forms_pressure_other_method, formwork_designer),
    remedy(ids::forms_tie, formwork_designer),
    remedy(ids::forms_tie_other_method, formwork_designer),
    remedy(ids::joints_spacing,
           "joints nearer to each other, or more horizontal steel: the licensed engineer decides"),
    remedy(ids::joints_groove, "deeper grooves on one face or both"),
    remedy(ids::cover_least, "more cover, or bars moved: the licensed engineer decides"),
    remedy(ids::cover_salt, "more cover, or bars moved: the licensed engineer decides"),
    remedy(ids::ties_salt, "ties that leave no steel near the face that rusts"),
    remedy(ids::steel_vertical, more_steel),
    remedy(ids::steel_horizontal, more_steel),
    remedy(ids::steel_spacing, "bars nearer to each other: the licensed engineer decides"),
    remedy(ids::steel_layers,
           "a layer of bars near each face, or a shallower niche: the licensed engineer decides"),

    // Of papers.
    remedy(ids::paper_mill_certificate, new_paper),
    remedy(ids::paper_supplementary_report, new_paper),
    remedy(ids::paper_aggregate_report, new_paper),
    remedy(ids::paper_reactivity_report, new_paper),
    remedy(ids::paper_admixture_certificate, new_paper),
    remedy(ids::paper_trial_batches, "hand in newer trial batches with the materials of the job"),
    remedy(ids::paper_records, "hand in a newer record, or trial batches"),
    remedy(ids::paper_strength, "hand in a strength record, or trial batches, with its date"),
    remedy(ids::submittal_code, made_for_it),
    remedy(ids::submittal_exposure, made_for_it),
    remedy(ids::submittal_strength, made_for_it),
    remedy(ids::submittal_slump, made_for_it),
    remedy(ids::submittal_size, "offer stone of the size that is asked"),
    remedy(ids::submittal_materials, "offer the materials that the designer states"),
    remedy(ids::submittal_standards, "name the standard of each material, as its paper has it"),
    remedy(ids::submittal_amounts, "offer the amounts that the designer states"),
    remedy(ids::submittal_figures, "take the figure from the paper and hand the mix in again"),

    // Of sample panels and the mock-up.
    remedy(ids::panels_effects, "more panels: 'panels.number'"),
    remedy(ids::panels_room, "the size proposed, or leave it to the mock-up"),
    remedy(ids::panels_batch, "a larger mixer, or a smaller panel"),
    remedy(ids::panels_stripping,
           "a later age among the levels; strength tests beside the panels decide"),
    remedy(ids::mockup_room, "the size proposed, or a second mock-up"),
};

} // namespace

std::span<const CheckRemedy> check_remedies() {
    return all_remedies;
}

std::string_view remedy_of(std::string_view id) {
    const bool batched = id.starts_with("batching.");
    const auto known =
        std::ranges::find(all_remedies, batched ? ids::batching.name() : id, &CheckRemedy::id);
    return known == std::end(all_remedies) ? std::string_view{} : known->remedy;
}

} // namespace boardmark::core
