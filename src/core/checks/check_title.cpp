#include <boardmark/core/checks/check_title.hpp>

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr CheckTitle title(CheckId id, std::string_view words) {
    return {id.name(), words};
}

namespace ids = check_ids;

constexpr CheckTitle all_titles[] = {
    // Of a mix.
    title(ids::w_cm_exposure, "Water/cement limit"),
    title(ids::w_cm_strength, "Water/cement ratio for the strength"),
    title(ids::strength_exposure, "Specified strength for the exposure"),
    title(ids::strength_average, "Expected strength"),
    title(ids::strength_line, "Strength line over w/cm"),
    title(ids::strength_records, "Record of strength tests"),
    title(ids::air_exposure, "Air for the exposure"),
    title(ids::air_stated, "Air required"),
    title(ids::air_agent, "Air-entraining admixture"),
    title(ids::scm_fly_ash, "Fly ash limit"),
    title(ids::scm_slag_cement, "Slag cement limit"),
    title(ids::scm_silica_fume, "Silica fume limit"),
    title(ids::scm_total, "Supplementary materials together"),
    title(ids::scm_ash_and_fume, "Fly ash and pozzolan with silica fume"),
    title(ids::cement_sulfate, "Cement for the sulfate class"),
    title(ids::chloride_sulfate, "Calcium chloride in sulfate"),
    title(ids::chloride_exposure, "Chloride limit"),
    title(ids::alkali_loading, "Alkali loading"),
    title(ids::size_form, "Stone between the forms"),
    title(ids::size_bars, "Stone between the bars"),
    title(ids::size_cover, "Stone in the cover"),
    title(ids::binder_minimum, "Minimum cementitious content"),
    title(ids::binder_exposure, "Least cement for the exposure"),
    title(ids::cement_most, "Greatest cement content"),
    title(ids::volume_closes, "Volumes add up"),
    title(ids::binder_heat, "Heat of the cementitious content"),
    title(ids::sand_share, "Share of sand"),
    title(ids::sand_grading, "Grading of the sand"),
    title(ids::stone_grading, "Grading of the stone"),
    title(ids::aggregate_target, "All aggregates against their target"),
    title(ids::aggregate_retained, "All aggregates on each sieve"),
    title(ids::aggregate_workability, "Coarseness and workability"),
    title(ids::pigment_dose, "Dose of pigment"),
    title(ids::pigment_water, "Water that the pigment asks for"),
    title(ids::pigment_chloride, "Chloride beside pigment"),
    title(ids::colour_constancy, "Even colour"),
    title(ids::colour_binder, "Binder of a white or coloured face"),
    title(ids::water_reduction, "Water reduction claimed"),
    title(ids::water_slump, "Water for the slump"),
    title(ids::code_scope, "Whether the code applies here"),
    title(ids::exposure_stated, "Exposure stated"),
    title(ids::exposure_consistent, "Exposure classes agree"),
    title(ids::exposure_site, "Exposure of the site"),
    title(ids::aggregate_reactivity, "Aggregates and alkali"),
    title(ids::temperature_mixed, "Temperature of the fresh mix"),
    title(ids::temperature_placing, "Concrete temperature at placing"),
    title(ids::evaporation, "Evaporation"),
    title(ids::finish_stated, "Finish stated for the boards"),
    title(ids::finish_paste, "Paste for the face"),
    title(ids::finish_mortar, "Mortar for the face"),
    title(ids::finish_size, "Stone for the face"),
    title(ids::finish_fines_low, "Minimum fines for the face"),
    title(ids::finish_fines_high, "Maximum fines for the face"),
    title(ids::finish_bleeding, "Bleeding at the face"),
    title(ids::finish_w_cm_constancy, "Even w/cm for the colour"),
    title(ids::finish_constancy, "Same materials for the colour"),
    title(ids::finish_slump_window, "Slump until the load is placed"),
    title(ids::finish_redosing, "Redosing on site"),
    title(ids::finish_deicer, "Deicing salt on the face"),
    // Of a trial.
    title(ids::slump_window, "Slump permitted at placing"),
    title(ids::slump_tolerance, "Slump within tolerance"),
    title(ids::air_tolerance, "Air within tolerance"),
    title(ids::air_gap, "Air by meter and by weight"),
    title(ids::temperature, "Temperature of the concrete"),
    title(ids::yield_relative, "Yield as intended"),
    title(ids::density_measure, "Size of the density measure"),
    title(ids::batching, "Amount batched"),
    title(ids::dose_maximum, "Highest dose"),
    // Of strength results.
    title(ids::strength_single_test, "Single strength test"),
    {"strength.average_of_three", "Average of three strength tests"},
    {"strength.mean", "Mean strength"},
    {"strength.mean_initial", "Mean strength of initial production"},
    title(ids::strength_age, "Age of the strength tests"),
    title(ids::strength_due, "Strength tests due"),
    title(ids::strength_specimens, "Specimens of each test"),
    title(ids::strength_range, "Range within a test"),
    title(ids::strength_within_test, "Scatter within tests"),
    title(ids::strength_record_average, "Average needed for the scatter"),
    title(ids::strength_projection, "Strength to come"),
    title(ids::strength_line_outliers, "Outliers of the strength line"),
    title(ids::cores_number, "Cores for each low test"),
    title(ids::cores_average, "Average strength of three cores"),
    title(ids::cores_single, "Strength of each core"),
    title(ids::cores_size, "Size of the cores"),
    title(ids::cores_conditioning, "Storage of the cores until the test"),
    // Of walls.
    title(ids::cold_protection, "Protection in the cold"),
    title(ids::stripping_age, "Age at stripping"),
    title(ids::stripping_soffit, "Age at stripping a soffit"),
    title(ids::section_agrees, "Section of mix and wall agree"),
    title(ids::placing_temperature, "Concrete temperature on site"),
    title(ids::placing_rise, "Rate of rise"),
    title(ids::placing_evaporation, "Evaporation at placing"),
    title(ids::placing_flow_class, "Flow class at placing"),
    title(ids::layout_sliver, "Width of cut courses"),
    title(ids::layout_stagger, "Board ends staggered"),
    title(ids::layout_lift_off_board_joint, "Lift lines on board joints"),
    title(ids::layout_joint_in_opening, "Contraction joints clear of openings"),
    title(ids::layout_tie_in_joint, "Form ties clear of joints"),
    title(ids::lift_height, "Height of a lift"),
    title(ids::lift_time, "Time between lifts"),
    title(ids::load_discharge, "Time to discharge each load"),
    title(ids::truck_discharge, "Time to discharge"),
    title(ids::vibrator_fits, "Room for the vibrator"),
    title(ids::forms_pressure, "Pressure on the forms"),
    title(ids::forms_pressure_other_method, "Form pressure by the other method"),
    title(ids::forms_tie, "Load of a form tie"),
    title(ids::forms_tie_other_method, "Form tie load by the other method"),
    title(ids::joints_spacing, "Spacing of contraction joints"),
    title(ids::joints_groove, "Depth of joint grooves"),
    title(ids::cover_least, "Minimum concrete cover"),
    title(ids::cover_salt, "Concrete cover where salt reaches"),
    title(ids::ties_salt, "Form ties where salt reaches"),
    title(ids::steel_vertical, "Minimum vertical steel"),
    title(ids::steel_horizontal, "Minimum horizontal steel"),
    title(ids::steel_spacing, "Spacing of the bars"),
    title(ids::steel_layers, "Layers of bars"),

    // Of papers.
    title(ids::paper_mill_certificate, "Mill certificate"),
    title(ids::paper_supplementary_report, "Report on supplementary material"),
    title(ids::paper_aggregate_report, "Report on aggregate"),
    title(ids::paper_reactivity_report, "Report on aggregate and alkali"),
    title(ids::paper_admixture_certificate, "Certificate of an admixture"),
    title(ids::paper_trial_batches, "Age of trial batches"),
    title(ids::paper_records, "Age of the strength record"),
    title(ids::paper_strength, "Evidence of the strength"),
    title(ids::submittal_code, "Code of the submittal"),
    title(ids::submittal_exposure, "Exposure of the submittal"),
    title(ids::submittal_strength, "Strength of the submittal"),
    title(ids::submittal_slump, "Slump of the submittal"),
    title(ids::submittal_size, "Size of the stone submitted"),
    title(ids::submittal_materials, "Materials of the submittal"),
    title(ids::submittal_standards, "Standards of the materials"),
    title(ids::submittal_amounts, "Amounts of the submittal"),
    title(ids::submittal_figures, "Figures of the submittal"),
    title(ids::schedule_papers, "Days of the submittals"),
    title(ids::schedule_mockup, "Day of the mock-up"),
    title(ids::tests_scatter, "Scatter behind the testing plan"),

    // Of sample panels and the mock-up.
    title(ids::panels_effects, "Panels answer each question"),
    title(ids::panels_mixed_effects, "Effects told from effects of pairs"),
    title(ids::panels_repeat, "A panel cast again from another batch"),
    title(ids::panels_as_built, "The wall as it is meant among the panels"),
    title(ids::panels_room, "Room on a small panel"),
    title(ids::panels_batch, "A panel from one batch"),
    title(ids::panels_stripping, "Age at stripping the panels"),
    title(ids::panels_viewing, "Viewing of the panels"),
    title(ids::panels_signed, "Signature for the panels"),
    title(ids::mockup_room, "Room on the mock-up"),
    title(ids::mockup_height, "Height of the mock-up"),
    title(ids::mockup_thickness, "Thickness of the mock-up"),
    title(ids::mockup_signed, "Signature for the mock-up"),
};

} // namespace

std::span<const CheckTitle> check_titles() {
    return all_titles;
}

std::string title_of(std::string_view id) {
    const auto known = std::ranges::find(all_titles, id, &CheckTitle::id);
    if (known != std::end(all_titles)) {
        return std::string{known->title};
    }
    const std::string batched = std::string{ids::batching.name()} + ".";
    if (id.starts_with(batched)) {
        return "Amount of " + std::string{id.substr(batched.size())} + " batched";
    }
    return std::string{id};
}

} // namespace boardmark::core
