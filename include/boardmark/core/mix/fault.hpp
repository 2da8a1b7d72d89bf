#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// What a fault is about: one field of a mix, a trial, strength
/// results or a wall as the library names it.
enum class Field {
    // of the mix
    system,
    method,
    binder,
    coarse,
    fine,
    admixtures,
    amounts,
    blend_dry_rodded_density,
    batched_water_temperature,
    ice,
    minimum_load,
    short_load_charge,
    submitted_water,
    submitted_air,
    submitted_size,

    // of the requirements
    code,
    exposure,
    exposure_by_code,
    chloride_class,
    strength,
    twin_strength,
    strength_age,
    records_tests,
    records_deviation,
    records_strength,
    records_age,
    strength_curve,
    strength_line,
    average,
    slump,
    slump_before_reducer,
    slump_window,
    time_to_place,
    air,
    air_loss,
    thickness,
    clear_bar_spacing,
    clear_cover,
    minimum_binder,
    alkali_level,
    air_temperature,
    wind,
    humidity,
    haul,
    soil_sulfate,
    defective,
    site_control,
    papers,
    schedule,
    delivery,

    // of the selections
    selected_w_cm,
    selected_water,
    selected_binder,
    selected_air,
    coarse_volume,
    coarse_adjustment,
    fine_share,
    coarse_dry,
    fresh_density,
    fine_share_by_mass,

    // of a material
    name,
    kind,
    share,
    dose,
    amount,
    relative_density,
    chloride,
    price,
    carbon,
    temperature,
    waste,
    contains,
    c3a,
    alkali,
    absorption,
    moisture,
    nominal_max_size,
    dry_rodded_density,
    fineness_modulus,
    sieves,
    solids,
    water_reduction,
    slump_gain,
    maximum_dose,
    retains,
    strength_class,
    zone,
    shape,
    surface,
    passing_600um,
    added_water,

    // of a trial
    charged_water,
    batched,
    measured_density,
    measured_slump,
    measured_slump_before_reducer,
    measured_air,
    measured_temperature,
    target_slump,
    target_air,
    intended_volume,

    // of strength results
    acceptance_code,
    assessment,
    specified_strength,
    record_age,
    specimen,
    cast_batches,
    cast_day,
    batch_w_cm,
    batch_air,
    crushed_specimens,
    specimen_age,
    specimen_strength,
    drilled_cores,
    core_size,
    core_strength,
    core_days,

    // of a wall
    runs,
    run_length,
    run_heights,
    run_thickness,
    run_corners,
    footing,
    opening,
    part_name,
    part_count,
    part_output,
    planter,
    bench,
    embedments,
    board_face,
    board_thickness,
    board_course,
    board_stock,
    board_saw_cut,
    board_spoiled,
    board_uses,
    board_relief,
    tie_spacing,
    tie_load,
    tie_cone,
    edges,
    joints,
    bars,
    placing,
    mockup,
    sample_panels,
    order,
    wall_prices,
};

/// The member of the library's structs that a field is: "requirements.strength_mpa".
std::string_view name_of(Field field);

/// In which way a field is at fault.
enum class Problem {
    missing,    ///< the calculation needs it
    impossible, ///< not finite, out of range, or against another field
    unknown,    ///< a word that the tables do not know
};

/// Why a mix, a trial, strength results or a wall cannot be worked with, at one of its fields.
struct Fault {
    Field field;
    Problem problem;
    std::string material; ///< its name; empty where the field is not a material's
    std::string message;  ///< "coarse[0] stone: relative_density is missing; the volumes need it"
};

using Faults = std::vector<Fault>;

} // namespace boardmark::core
