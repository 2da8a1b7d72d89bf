#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/forms/flow_class.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// A figure of form pressure with its source.
struct FormFigure {
    double value;
    Source source;
};

/// A coefficient by the cementitious material, without and with a retarder.
struct CementCoefficients {
    double no_retarder;
    double retarder;
};

/// The three groups into which form-pressure methods sort cementitious materials.
struct CementGroups {
    CementCoefficients portland;
    CementCoefficients blend;      ///< other types and blends
    CementCoefficients rich_blend; ///< blends rich in slag or fly ash
    Source source;
};

/// ACI 347R in SI: p = Cw Cc (base + slope R / (T + shift)), or base + (constant + slope R) /
/// (T + shift); kPa, m/h, degC.
struct AciFormPressure {
    double base_kpa;
    double slope_kpa_k_h_m;
    double temperature_shift_k;
    double tall_constant_kpa_k;
    double tall_slope_kpa_k_h_m;
    FormFigure floor_kpa;
    double slow_rise_m_h; ///< below it a low wall takes the first formula
    double low_wall_m;
    FormFigure fastest_rise_m_h; ///< above it no formula holds
    FormFigure deepest_vibration_m;
    double column_side_m; ///< no side of a column is longer
    double light_below_kg_m3;
    double heavy_above_kg_m3;
    double reference_density_kg_m3;
    double light_factor;
    double light_least;
    Source weight_source;
    Source first_source;
    Source tall_source;
    CementGroups cement;
};

/// CIRIA 108: p = D (C1 √R + C2 K √(H - C1 √R)), K = (numerator / (T + shift))²; kN/m², m/h, degC.
struct CiriaFormPressure {
    double wall;
    double column;
    double column_side_m; ///< both sides of a column are shorter
    double temperature_numerator;
    double temperature_shift;
    Source source;
    CementGroups cement;
};

/// DIN 18218, one consistency class: p = K1 (base + slope v), not below the least; kN/m², m/h.
struct DinClass {
    std::string name; ///< "F3", "SCC"
    bool fluid;       ///< for concrete that no slump limits
    double base_kpa;
    double slope_kpa_h_m;
    double least_kpa;
    std::vector<double> set_factors; ///< K1, one for each end of setting
};

struct DinFormPressure {
    std::vector<DinClass> classes;
    std::vector<double> set_times_h; ///< increasing; the formulas hold for the first
    FormFigure weight_kn_m3;         ///< of the concrete that the formulas hold for
    Source source;
    Source set_source;
};

/// Breaking load of a tie as a manual prints it; it is no working load.
struct PrintedTie {
    std::string name; ///< "No. 9 wire"
    double breaking_kn;
    Source source;
};

/// What pressures on forms and loads of ties are computed from.
struct FormTables {
    AciFormPressure aci;
    CiriaFormPressure ciria;
    DinFormPressure din;
    FormFigure high_slag_percent; ///< from which a blend is rich
    FormFigure high_fly_ash_percent;
    FormFigure pumped_factor; ///< on the liquid head, of concrete pumped from below
    FormFigure tie_safety_factor;
    FormFigure mild_steel_from_face_mm; ///< least, where salt reaches the face
    FormFigure freezing_c;
    FormFigure low_form_m;            ///< up to which full head costs little
    FormFigure assumed_density_kg_m3; ///< where the mix does not tell its own
    std::vector<PrintedTie> ties;
    FlowClasses flow;
};

} // namespace boardmark::core
