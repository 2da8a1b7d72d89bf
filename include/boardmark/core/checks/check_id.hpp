#pragma once

#include <string>
#include <string_view>

namespace boardmark::core {

/// Which requirement a check holds: one of `check_ids`, so that a wrong name does not compile.
class CheckId {
public:
    /// @param name of static storage
    explicit constexpr CheckId(const char* name)
        : name_{name} {}

    /// As results print it, "w_cm.exposure".
    constexpr std::string_view name() const { return name_; }

    operator std::string() const { return name_; }

    friend constexpr bool operator==(CheckId one, CheckId other) {
        return one.name_ == other.name_ || one.name() == other.name();
    }

private:
    const char* name_; ///< one word, where a view has two and waits for both when it is copied
};

/// Checks by their subject.
namespace check_ids {

// Of a mix.

inline constexpr CheckId w_cm_exposure{"w_cm.exposure"};
inline constexpr CheckId w_cm_strength{"w_cm.strength"};

inline constexpr CheckId strength_exposure{"strength.exposure"};
inline constexpr CheckId strength_average{"strength.average"};
inline constexpr CheckId strength_line{"strength.line"};
inline constexpr CheckId strength_records{"strength.records"};

inline constexpr CheckId air_exposure{"air.exposure"};
inline constexpr CheckId air_stated{"air.stated"};
inline constexpr CheckId air_agent{"air.agent"};

inline constexpr CheckId scm_fly_ash{"scm.fly_ash"};
inline constexpr CheckId scm_slag_cement{"scm.slag_cement"};
inline constexpr CheckId scm_silica_fume{"scm.silica_fume"};
inline constexpr CheckId scm_total{"scm.total"};
inline constexpr CheckId scm_ash_and_fume{"scm.ash_and_fume"};

inline constexpr CheckId cement_sulfate{"cement.sulfate"};
inline constexpr CheckId chloride_sulfate{"chloride.sulfate"};
inline constexpr CheckId chloride_exposure{"chloride.exposure"};
inline constexpr CheckId alkali_loading{"alkali.loading"};

inline constexpr CheckId size_form{"size.form"};
inline constexpr CheckId size_bars{"size.bars"};
inline constexpr CheckId size_cover{"size.cover"};

inline constexpr CheckId binder_minimum{"binder.minimum"};
inline constexpr CheckId binder_exposure{"binder.exposure"};
inline constexpr CheckId cement_most{"cement.most"};
inline constexpr CheckId volume_closes{"volume.closes"};
inline constexpr CheckId binder_heat{"binder.heat"};
inline constexpr CheckId sand_share{"sand.share"};
inline constexpr CheckId sand_grading{"sand.grading"};
inline constexpr CheckId stone_grading{"stone.grading"};
inline constexpr CheckId aggregate_target{"aggregate.target"};
inline constexpr CheckId aggregate_retained{"aggregate.retained"};
inline constexpr CheckId aggregate_workability{"aggregate.workability"};
inline constexpr CheckId pigment_dose{"pigment.dose"};
inline constexpr CheckId pigment_water{"pigment.water"};
inline constexpr CheckId pigment_chloride{"pigment.chloride"};
inline constexpr CheckId colour_constancy{"colour.constancy"};
inline constexpr CheckId colour_binder{"colour.binder"};
inline constexpr CheckId water_reduction{"water.reduction"};
inline constexpr CheckId water_slump{"water.slump"};

inline constexpr CheckId code_scope{"code.scope"};
inline constexpr CheckId exposure_stated{"exposure.stated"};
inline constexpr CheckId exposure_consistent{"exposure.consistent"};
inline constexpr CheckId exposure_site{"exposure.site"};
inline constexpr CheckId aggregate_reactivity{"aggregate.reactivity"};

inline constexpr CheckId temperature_mixed{"temperature.mixed"};
inline constexpr CheckId temperature_placing{"temperature.placing"};
inline constexpr CheckId evaporation{"evaporation"};

inline constexpr CheckId finish_stated{"finish.stated"};
inline constexpr CheckId finish_paste{"finish.paste"};
inline constexpr CheckId finish_mortar{"finish.mortar"};
inline constexpr CheckId finish_size{"finish.size"};
inline constexpr CheckId finish_fines_low{"finish.fines_low"};
inline constexpr CheckId finish_fines_high{"finish.fines_high"};
inline constexpr CheckId finish_bleeding{"finish.bleeding"};
inline constexpr CheckId finish_w_cm_constancy{"finish.w_cm_constancy"};
inline constexpr CheckId finish_constancy{"finish.constancy"};
inline constexpr CheckId finish_slump_window{"finish.slump_window"};
inline constexpr CheckId finish_redosing{"finish.redosing"};
inline constexpr CheckId finish_deicer{"finish.deicer"};

// Of a trial.

inline constexpr CheckId slump_window{"slump.window"};
inline constexpr CheckId slump_tolerance{"slump.tolerance"};
inline constexpr CheckId air_tolerance{"air.tolerance"};
inline constexpr CheckId air_gap{"air.gap"};
inline constexpr CheckId temperature{"temperature"};
inline constexpr CheckId yield_relative{"yield.relative"};
inline constexpr CheckId density_measure{"density.measure"};

inline constexpr CheckId batching{"batching"};
inline constexpr CheckId dose_maximum{"dose.maximum"};

// Of strength results.

inline constexpr CheckId strength_single_test{"strength.single_test"};
inline constexpr CheckId strength_age{"strength.age"};
inline constexpr CheckId strength_due{"strength.due"};
inline constexpr CheckId strength_specimens{"strength.specimens"};
inline constexpr CheckId strength_range{"strength.range"};
inline constexpr CheckId strength_within_test{"strength.within_test"};

inline constexpr CheckId strength_record_average{"strength.record_average"};
inline constexpr CheckId strength_projection{"strength.projection"};
inline constexpr CheckId strength_line_outliers{"strength.line_outliers"};

inline constexpr CheckId cores_number{"cores.number"};
inline constexpr CheckId cores_average{"cores.average"};
inline constexpr CheckId cores_single{"cores.single"};
inline constexpr CheckId cores_size{"cores.size"};
inline constexpr CheckId cores_conditioning{"cores.conditioning"};

// Of walls.

inline constexpr CheckId cold_protection{"cold.protection"};
inline constexpr CheckId stripping_age{"stripping.age"};
inline constexpr CheckId stripping_soffit{"stripping.soffit"};

inline constexpr CheckId section_agrees{"section.agrees"};
inline constexpr CheckId placing_temperature{"placing.temperature"};
inline constexpr CheckId placing_rise{"placing.rise"};
inline constexpr CheckId placing_evaporation{"placing.evaporation"};
inline constexpr CheckId placing_flow_class{"placing.flow_class"};
inline constexpr CheckId layout_sliver{"layout.sliver"};
inline constexpr CheckId layout_stagger{"layout.stagger"};
inline constexpr CheckId layout_lift_off_board_joint{"layout.lift_off_board_joint"};
inline constexpr CheckId layout_joint_in_opening{"layout.joint_in_opening"};
inline constexpr CheckId layout_tie_in_joint{"layout.tie_in_joint"};

inline constexpr CheckId lift_height{"lift.height"};
inline constexpr CheckId lift_time{"lift.time"};
inline constexpr CheckId load_discharge{"load.discharge"};
inline constexpr CheckId truck_discharge{"truck.discharge"};
inline constexpr CheckId vibrator_fits{"vibrator.fits"};

inline constexpr CheckId forms_pressure{"forms.pressure"};
inline constexpr CheckId forms_pressure_other_method{"forms.pressure.other_method"};
inline constexpr CheckId forms_tie{"forms.tie"};
inline constexpr CheckId forms_tie_other_method{"forms.tie.other_method"};

inline constexpr CheckId joints_spacing{"joints.spacing"};
inline constexpr CheckId joints_groove{"joints.groove"};

inline constexpr CheckId cover_least{"cover.least"};
inline constexpr CheckId cover_salt{"cover.salt"};
inline constexpr CheckId ties_salt{"ties.salt"};
inline constexpr CheckId steel_vertical{"steel.vertical"};
inline constexpr CheckId steel_horizontal{"steel.horizontal"};
inline constexpr CheckId steel_spacing{"steel.spacing"};
inline constexpr CheckId steel_layers{"steel.layers"};

// Of papers: a mix that is handed in, and what is specified.

inline constexpr CheckId paper_mill_certificate{"paper.mill_certificate"};
inline constexpr CheckId paper_supplementary_report{"paper.supplementary_report"};
inline constexpr CheckId paper_aggregate_report{"paper.aggregate_report"};
inline constexpr CheckId paper_reactivity_report{"paper.reactivity_report"};
inline constexpr CheckId paper_admixture_certificate{"paper.admixture_certificate"};
inline constexpr CheckId paper_trial_batches{"paper.trial_batches"};
inline constexpr CheckId paper_records{"paper.records"};
inline constexpr CheckId paper_strength{"paper.strength"};

inline constexpr CheckId submittal_code{"submittal.code"};
inline constexpr CheckId submittal_exposure{"submittal.exposure"};
inline constexpr CheckId submittal_strength{"submittal.strength"};
inline constexpr CheckId submittal_slump{"submittal.slump"};
inline constexpr CheckId submittal_size{"submittal.size"};
inline constexpr CheckId submittal_materials{"submittal.materials"};
inline constexpr CheckId submittal_standards{"submittal.standards"};
inline constexpr CheckId submittal_amounts{"submittal.amounts"};
inline constexpr CheckId submittal_figures{"submittal.figures"};

inline constexpr CheckId schedule_papers{"schedule.papers"};
inline constexpr CheckId schedule_mockup{"schedule.mockup"};
inline constexpr CheckId tests_scatter{"tests.scatter"};
// Of sample panels and the mock-up.

inline constexpr CheckId panels_effects{"panels.effects"};
inline constexpr CheckId panels_mixed_effects{"panels.mixed_effects"};
inline constexpr CheckId panels_repeat{"panels.repeat"};
inline constexpr CheckId panels_as_built{"panels.as_built"};
inline constexpr CheckId panels_room{"panels.room"};
inline constexpr CheckId panels_batch{"panels.batch"};
inline constexpr CheckId panels_stripping{"panels.stripping"};
inline constexpr CheckId panels_viewing{"panels.viewing"};
inline constexpr CheckId panels_signed{"panels.signed"};
inline constexpr CheckId mockup_room{"mockup.room"};
inline constexpr CheckId mockup_height{"mockup.height"};
inline constexpr CheckId mockup_thickness{"mockup.thickness"};
inline constexpr CheckId mockup_signed{"mockup.signed"};

} // namespace check_ids

} // namespace boardmark::core
