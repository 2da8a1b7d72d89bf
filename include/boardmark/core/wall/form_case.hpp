#pragma once

#include <optional>
#include <string>

namespace boardmark::core {

/// What the methods of form pressure ask of the cementitious material.
enum class FormCement {
    portland, ///< Type I, II or III alone
    blend,    ///< another type, or with slag, ash or another addition
    unknown,  ///< counts as the one that pushes hardest
};

/// The sides of a column in plan.
struct ColumnPlan {
    double long_side_m;
    double short_side_m;
};

/// A part of a wall that stands by itself, as between two gates. A short one is a column to the
/// methods; where the wall itself presses harder, that counts.
struct PierPlan {
    ColumnPlan plan;
    bool is_assumed = false; ///< as short as bends or openings without a place may leave it
};

/// How the concrete is vibrated.
struct FormVibration {
    std::optional<double> depth_m = {}; ///< of internal vibration; absent: not stated
    bool external = false;              ///< vibrators on the form
};

/// A pour into a vertical form: what its pressure depends on. Temperatures are of the concrete in
/// the form; the temperature of the air never stands in for it.
struct FormCase {
    double form_height_m;       ///< of the form, > 0
    double fresh_density_kg_m3; ///< > 0
    double heaviest_kg_m3 = 0;  ///< of a load with the least air that it may have; no less
    std::optional<double> pour_height_m = {}; ///< of fresh concrete in one lift; absent: the form's
    std::optional<double> rise_m_h = {};      ///< > 0; absent: not known
    std::optional<double> temperature_c = {}; ///< of the concrete in the form; absent: not known
    std::optional<double> highest_slump_mm = {}; ///< permitted at placing; absent: not known
    bool slump_maximum_stated = false;           ///< the highest slump is a stated maximum
    bool slump_of_dose_open = false; ///< nobody knows how much slump the reducer's dose brings
    FormVibration vibration = {};
    bool pumped_from_below = false;
    bool self_consolidating = false;
    bool high_range_reducer = false;
    bool formula_asked = false; ///< in spite of a reducer without a stated maximum
    bool redosing_on_site = false;
    std::optional<bool> retards = {}; ///< any admixture delays setting; absent: counts as yes
    FormCement cement = FormCement::unknown;
    std::optional<double> slag_percent = {};    ///< of the cementitious material; blends need both
    std::optional<double> fly_ash_percent = {}; ///< likewise, with natural pozzolan
    std::optional<ColumnPlan> column = {};      ///< absent: a wall
    std::optional<PierPlan> pier = {};          ///< absent: no part stands by itself
    std::optional<std::string> flow_class = {}; ///< "F1" to "F6", "SCC": consistency by EN 206
    std::optional<double> set_time_h = {};      ///< end of setting at the form's temperature
};

} // namespace boardmark::core
