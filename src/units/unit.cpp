#include <boardmark/units/unit.hpp>

#include <algorithm>
#include <array>
#include <cassert>

namespace boardmark::units {
namespace {

// Exact by definition: NIST Special Publication 811 (2008), Appendix B.
constexpr double inch_mm = 25.4;
constexpr double inch_m = 0.0254;
constexpr double foot_mm = 12 * inch_mm;
constexpr double yard_mm = 36 * inch_mm;
constexpr double mile_km = 5280 * 12 * inch_m / 1000;
constexpr double pound_kg = 0.45359237;
constexpr double standard_gravity_m_s2 = 9.80665;

constexpr double cubic_inch_m3 = inch_m * inch_m * inch_m;
constexpr double cubic_foot_m3 = 1728 * cubic_inch_m3;
constexpr double cubic_yard_m3 = 27 * cubic_foot_m3;
constexpr double gallon_m3 = 231 * cubic_inch_m3;
constexpr double fluid_ounce_m3 = gallon_m3 / 128;

constexpr double square_foot_m2 = 144 * inch_m * inch_m;
constexpr double pound_force_kn = pound_kg * standard_gravity_m_s2 / 1000;

constexpr double psi_mpa = pound_kg * standard_gravity_m_s2 / (inch_m * inch_m) / 1e6;
constexpr double hundredweight_kg = 100 * pound_kg;
constexpr double days_in_month = 365.25 / 12;

constexpr std::string_view si = "International System of Units, BIPM brochure, 9th edition";
constexpr std::string_view nist = "NIST SP 811 (2008), Appendix B.8";
constexpr std::string_view nist_44 = "NIST Handbook 44, Appendix C";
constexpr std::string_view trade = "trade short form";

constexpr std::array units_read{
    Unit{"mm", Dimension::length, 1, 0, si},
    Unit{"cm", Dimension::length, 10, 0, si},
    Unit{"m", Dimension::length, 1000, 0, si},
    Unit{"in", Dimension::length, inch_mm, 0, nist},
    Unit{"ft", Dimension::length, foot_mm, 0, nist},
    Unit{"yd", Dimension::length, yard_mm, 0, nist},

    Unit{"g", Dimension::mass, 0.001, 0, si},
    Unit{"kg", Dimension::mass, 1, 0, si},
    Unit{"t", Dimension::mass, 1000, 0, si},
    Unit{"lb", Dimension::mass, pound_kg, 0, nist},
    Unit{"short ton", Dimension::mass, 2000 * pound_kg, 0, nist_44},

    Unit{"mL", Dimension::volume, 1e-6, 0, si},
    Unit{"L", Dimension::volume, 1e-3, 0, si},
    Unit{"m3", Dimension::volume, 1, 0, si},
    Unit{"fl oz", Dimension::volume, fluid_ounce_m3, 0, nist_44},
    Unit{"gal", Dimension::volume, gallon_m3, 0, nist_44},
    Unit{"ft3", Dimension::volume, cubic_foot_m3, 0, nist},
    Unit{"yd3", Dimension::volume, cubic_yard_m3, 0, nist},
    Unit{"cy", Dimension::volume, cubic_yard_m3, 0, trade},

    Unit{"psi", Dimension::stress, psi_mpa, 0, nist},
    Unit{"MPa", Dimension::stress, 1, 0, si},
    Unit{"N/mm2", Dimension::stress, 1, 0, si},
    Unit{"psf", Dimension::stress, pound_force_kn / square_foot_m2 / 1000, 0, nist},
    Unit{"kPa", Dimension::stress, 0.001, 0, si},
    Unit{"kN/m2", Dimension::stress, 0.001, 0, si},

    Unit{"kg/m3", Dimension::mass_per_volume, 1, 0, si},
    Unit{"lb/ft3", Dimension::mass_per_volume, pound_kg / cubic_foot_m3, 0, nist},
    Unit{"pcf", Dimension::mass_per_volume, pound_kg / cubic_foot_m3, 0, trade},
    Unit{"lb/yd3", Dimension::mass_per_volume, pound_kg / cubic_yard_m3, 0, nist},
    Unit{"pcy", Dimension::mass_per_volume, pound_kg / cubic_yard_m3, 0, trade},

    Unit{"%", Dimension::percentage, 1, 0, si},

    Unit{"min", Dimension::time, 1.0 / 1440, 0, si},
    Unit{"h", Dimension::time, 1.0 / 24, 0, si},
    Unit{"d", Dimension::time, 1, 0, si},
    Unit{"months", Dimension::time, days_in_month, 0,
         "mean month of the Julian year, 365.25 d / 12"},

    Unit{"degC", Dimension::temperature, 1, 0, si},
    Unit{"degF", Dimension::temperature, 5.0 / 9, -32, nist},

    Unit{"mL/100 kg", Dimension::dose, 1e-8, 0, si},
    Unit{"fl oz/cwt", Dimension::dose, fluid_ounce_m3 / hundredweight_kg, 0, nist_44},

    Unit{"kg/kg", Dimension::mass_ratio, 1, 0, si},
    Unit{"kg/t", Dimension::mass_ratio, 0.001, 0, si},

    Unit{"m2", Dimension::area, 1, 0, si},
    Unit{"mm2", Dimension::area, 1e-6, 0, si},
    Unit{"in2", Dimension::area, square_foot_m2 / 144, 0, nist},
    Unit{"ft2", Dimension::area, square_foot_m2, 0, nist},

    Unit{"N", Dimension::force, 0.001, 0, si},
    Unit{"kN", Dimension::force, 1, 0, si},
    Unit{"lbf", Dimension::force, pound_force_kn, 0, nist},
    Unit{"kip", Dimension::force, 1000 * pound_force_kn, 0, nist},

    Unit{"m/h", Dimension::speed, 0.001, 0, si},
    Unit{"km/h", Dimension::speed, 1, 0, si},
    Unit{"m/s", Dimension::speed, 3.6, 0, si},
    Unit{"ft/h", Dimension::speed, mile_km / 5280, 0, nist},
    Unit{"mph", Dimension::speed, mile_km, 0, nist},

    Unit{"m3/h", Dimension::volume_rate, 1, 0, si},
    Unit{"yd3/h", Dimension::volume_rate, cubic_yard_m3, 0, nist},

    Unit{"deg", Dimension::angle, 1, 0, si},
};

} // namespace

std::span<const Unit> all_units() {
    return units_read;
}

const Unit* find_unit(std::string_view spelling) {
    const auto* found = std::ranges::find(units_read, spelling, &Unit::spelling);
    return found == units_read.end() ? nullptr : found;
}

const Unit& unit(std::string_view spelling) {
    const Unit* found = find_unit(spelling);
    assert(found);
    return *found;
}

} // namespace boardmark::units
