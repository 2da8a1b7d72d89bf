#pragma once

// What tests of form pressure share: a pour whose formula may be used, and prints' units.

#include <boardmark/core/forms/form_pressure.hpp>
#include <boardmark/core/forms/form_ties.hpp>
#include <boardmark/reference/tables.hpp>

#include "support.hpp"

#include <algorithm>
#include <string>

namespace boardmark::test {

constexpr double foot_m = 0.3048; // exact, NIST SP 811

/// 1 lb/ft2 and 1 lb of force, from 1 psi on 1 in2.
inline double psf_kpa(double psf) {
    return 1000 * inside(psf, "psi") / 144;
}
inline double pound_kn(double lb) {
    return inside(lb, "psi") * 25.4 * 25.4 / 1000;
}
inline double in_psf(double kpa) {
    return kpa / psf_kpa(1);
}
inline double in_pounds(double kn) {
    return kn / pound_kn(1);
}

inline const core::Tables& form_tables_in(core::UnitSystem system) {
    static const core::Tables us = reference::tables(core::UnitSystem::us);
    static const core::Tables si = reference::tables(core::UnitSystem::si);
    return system == core::UnitSystem::us ? us : si;
}

/// A wall in feet, placed with ordinary concrete of Type I cement whose slump is held.
struct UsWall {
    double height_ft = 10;
    double rise_ft_h = 4;
    double temperature_f = 55;
    double density_lb_ft3 = 145;
};
inline core::FormCase us_wall(UsWall wall = {}) {
    core::FormCase pour{.form_height_m = wall.height_ft * foot_m,
                        .fresh_density_kg_m3 = inside(wall.density_lb_ft3, "lb/ft3")};
    pour.rise_m_h = wall.rise_ft_h * foot_m;
    pour.temperature_c = inside(wall.temperature_f, "degF");
    pour.highest_slump_mm = 101.6;
    pour.slump_maximum_stated = true;
    pour.vibration.depth_m = 1;
    pour.retards = false;
    pour.cement = core::FormCement::portland;
    return pour;
}

/// The same in metres.
struct SiWall {
    double height_m = 3;
    double rise_m_h = 1.2;
    double temperature_c = 10;
    double weight_kn_m3 = 25;
};
inline core::FormCase si_wall(SiWall wall = {}) {
    core::FormCase pour = us_wall();
    pour.form_height_m = wall.height_m;
    pour.rise_m_h = wall.rise_m_h;
    pour.temperature_c = wall.temperature_c;
    pour.fresh_density_kg_m3 = 1000 * wall.weight_kn_m3 / 9.80665;
    return pour;
}

inline bool speaks_of(const std::vector<core::Phrase>& phrases, const std::string& word) {
    return std::ranges::any_of(phrases, [&](const core::Phrase& phrase) {
        return phrase.text.find(word) != std::string::npos;
    });
}

} // namespace boardmark::test
