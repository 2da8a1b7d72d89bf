#include <boardmark/units/dimension.hpp>

namespace boardmark::units {

std::string_view describe(Dimension dimension) {
    switch (dimension) {
    case Dimension::length:
        return "a length (in, ft, mm, m)";
    case Dimension::mass:
        return "a mass (lb, kg)";
    case Dimension::volume:
        return "a volume (yd3, ft3, gal, fl oz, m3, L)";
    case Dimension::stress:
        return "a stress (psi, MPa)";
    case Dimension::mass_per_volume:
        return "a mass per volume (lb/ft3, lb/yd3, kg/m3)";
    case Dimension::percentage:
        return "a percentage (%)";
    case Dimension::time:
        return "a time (min, h, d, months)";
    case Dimension::temperature:
        return "a temperature (degF, degC)";
    case Dimension::dose:
        return "a dose (fl oz/cwt, mL/100 kg)";
    case Dimension::mass_ratio:
        return "a mass ratio (kg/kg, kg/t)";
    case Dimension::area:
        return "an area (ft2, m2)";
    case Dimension::force:
        return "a force (lbf, kip, kN)";
    case Dimension::speed:
        return "a speed (ft/h, m/h, mph, km/h, m/s)";
    case Dimension::volume_rate:
        return "a volume per time (yd3/h, m3/h)";
    case Dimension::angle:
        break;
    }
    return "an angle (deg)";
}

} // namespace boardmark::units
