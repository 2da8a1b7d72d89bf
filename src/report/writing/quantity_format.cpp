#include "quantity_format.hpp"

#include <boardmark/units/rounding.hpp>
#include <boardmark/units/unit.hpp>

#include "finite.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

/// How a measure is written in one system: the unit, the step it is rounded to, the decimals shown.
struct Style {
    std::string_view unit;
    double step;
    int decimals;
    core::Keep keep = core::Keep::nearest;
};

constexpr double of_a_conversion = 1e-9;

/// The nearest step, or the one on the safe side.
double rounded(double amount, double step, core::Keep keep) {
    constexpr double of_a_step = 1e-6; // what conversions and sums leave
    switch (keep) {
    case core::Keep::at_most:
        return std::floor(amount / step + of_a_step) * step;
    case core::Keep::at_least:
        return std::ceil(amount / step - of_a_step) * step;
    case core::Keep::nearest:
        break;
    }
    return units::nearest({.amount = amount, .step = step});
}

std::string stepped_amount(double amount, const Style& style, int finer) {
    const double step = style.step / std::pow(10, finer);
    const int decimals =
        finer == 0
            ? style.decimals
            : std::max(style.decimals, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
    return fmt::format("{:.{}f} {}", rounded(amount, step, style.keep), decimals, style.unit);
}

std::string stepped(double value, const Style& style, int finer) {
    return stepped_amount(units::unit(style.unit).from_inside(value), style, finer);
}

double feet(double metres) {
    return units::unit("ft").from_inside(1000 * metres);
}

double pounds_per_square_foot(double kpa) {
    return 144 * units::unit("psi").from_inside(kpa / 1000);
}

/// The pressure that the force is on one square foot.
double pounds_of_force(double kn) {
    const double square_feet_per_m2 = feet(feet(1));
    return pounds_per_square_foot(kn * square_feet_per_m2);
}

/// Two decimals, a third where it says something.
std::string ratio_digits(double value, int finer) {
    std::string text = fixed(value, 3 + finer);
    while (text.ends_with('0') && text.size() > text.find('.') + 3) {
        text.pop_back();
    }
    return text;
}

/// A fraction where the length is one; decimals where a fraction would move a limit.
std::string inches(double mm, int finer) {
    const double amount = units::unit("in").from_inside(mm);
    const double fraction = units::nearest({.amount = amount, .step = 1.0 / 16});
    constexpr double reading_error = 0.002;
    constexpr double long_one = 6; // from here on nobody reads a rule closer than a sixteenth
    return finer == 0 &&
                   (std::abs(amount) >= long_one || std::abs(fraction - amount) <= reading_error)
               ? units::inch_fraction(amount) + " in"
               : ratio_digits(amount, finer) + " in";
}

std::string without_a_last_nought(std::string text) {
    if (text.ends_with(".0")) {
        text.resize(text.size() - 2);
    }
    return text;
}

std::string millimetres(double mm, int finer) {
    constexpr double long_one = 150; // from here on a tenth is none that anybody reads
    const bool whole = finer == 0 && std::abs(mm) >= long_one;
    return without_a_last_nought(fixed(mm, whole ? 0 : 1 + finer)) + " mm";
}

std::string age(double days) {
    constexpr double longest_in_days = 120;
    return days <= longest_in_days
               ? fmt::format("{:.0f} d", days)
               : fmt::format("{:.0f} months", units::unit("months").from_inside(days));
}

/// Scales show more digits on small batches.
std::string mass(double kg, std::string_view unit, int finer) {
    const double amount = units::unit(unit).from_inside(kg);
    return fixed(amount, decimals_of_mass(amount) + finer) + " " + std::string{unit};
}

std::string dose(double ml_per_100_kg, std::string_view unit) {
    const double inside = units::unit("mL/100 kg").to_inside(ml_per_100_kg);
    const double amount = units::unit(unit).from_inside(inside);
    return fixed(amount, amount < 100 ? 1 : 0) + " " + std::string{unit};
}

/// As its limits are printed, 0.20 and 0.05 lb/ft2/h: the formula is no better than a third.
std::string evaporation(double kg_m2_h, bool us, int finer) {
    const double per_square_foot = units::unit("lb").from_inside(kg_m2_h) *
                                   units::unit("ft").factor * units::unit("ft").factor / 1e6;
    const double amount = us ? per_square_foot : kg_m2_h;
    return fixed(amount, 2 + finer) + (us ? " lb/ft2/h" : " kg/m2/h");
}

/// Minutes where hours would be a fraction.
std::string duration(double hours, core::Keep keep, int finer) {
    constexpr double shortest_in_hours = 2;
    const double part = std::pow(10, -finer);
    return hours < shortest_in_hours
               ? fixed(rounded(60 * hours, part, keep), finer) + " min"
               : without_a_last_nought(fixed(rounded(hours, 0.1 * part, keep), 1 + finer)) + " h";
}

/// Square inches to the foot of wall, as bars are tabled.
std::string steel_area(double mm2_m, bool us, int finer) {
    const double inch = units::unit("in").factor;
    return us ? fixed(mm2_m / (inch * inch) * units::unit("ft").factor / 1000, 3 + finer) +
                    " in2/ft"
              : fixed(mm2_m, finer) + " mm2/m";
}

/// A plant reads water by weight or by the gallon.
std::string water_amount(double kg_m3, bool us, int finer) {
    if (!us) {
        return fixed(kg_m3, 1 + finer) + " kg/m3";
    }
    const double gallons = units::unit("gal").from_inside(kg_m3 / 1000 * units::unit("yd3").factor);
    return fixed(units::unit("lb/yd3").from_inside(kg_m3), 1 + finer) + " lb/yd3 (" +
           fixed(gallons, 1) + " gal/yd3)";
}

} // namespace

int decimals_of_mass(double amount) {
    return std::abs(amount) < 100 ? 2 : std::abs(amount) < 1000 ? 1 : 0;
}

std::string fixed(double value, int decimals) {
    const double step = std::pow(10, -decimals);
    finite(value);
    return fmt::format("{:.{}f}", units::nearest({.amount = value, .step = step}), decimals);
}

void even_ratios(const std::vector<std::string*>& cells) {
    const auto decimals_of = [](const std::string& cell) {
        const bool plain = cell.find_first_not_of("0123456789.") == std::string::npos;
        const std::size_t point = cell.find('.');
        return plain && point != std::string::npos ? cell.size() - point - 1 : 0;
    };
    std::size_t most = 0;
    for (const std::string* cell : cells) {
        most = std::max(most, decimals_of(*cell));
    }
    for (std::string* cell : cells) {
        if (const std::size_t decimals = decimals_of(*cell); decimals > 0) {
            cell->append(most - decimals, '0');
        }
    }
}

std::string shown(core::Quantity quantity, UnitSystem system, int finer) {
    const bool us = system == UnitSystem::us;
    const double value = finite(quantity.value);
    const auto in_style = [&](Style us_style, Style si_style) {
        us_style.keep = si_style.keep = quantity.keep;
        return stepped(value, us ? us_style : si_style, finer);
    };
    const auto in_amount = [&](double us_amount, Style us_style, Style si_style) {
        us_style.keep = si_style.keep = quantity.keep;
        return us ? stepped_amount(us_amount, us_style, finer)
                  : stepped_amount(value, si_style, finer);
    };
    switch (quantity.measure) {
    case Measure::w_cm:
    case Measure::bulk_volume:
        return ratio_digits(value, finer);
    case Measure::ratio:
        return fmt::format("{:.4g}", value);
    case Measure::percent:
        return fixed(value, 1 + finer) + " %";
    case Measure::chloride:
    case Measure::sulfate:
        return fixed(value, 2 + finer) + " %";
    case Measure::strength:
        return in_style({"psi", 10, 0}, {"MPa", 0.1, 1});
    case Measure::slump:
    case Measure::aggregate_size:
    case Measure::length:
        return us ? inches(value, finer) : millimetres(value, finer);
    case Measure::concentration:
        return in_style({"lb/yd3", 1, 0}, {"kg/m3", 1, 0});
    case Measure::alkali:
        return in_style({"lb/yd3", 0.1, 1}, {"kg/m3", 0.1, 1});
    case Measure::water_amount:
        return water_amount(value, us, finer);
    case Measure::fresh_density:
    case Measure::bulk_density:
        return in_style({"lb/ft3", 0.1, 1}, {"kg/m3", 1, 0});
    case Measure::relative_density:
    case Measure::fineness_modulus:
        return fixed(value, 2 + finer);
    case Measure::absolute_volume:
        return us ? fixed(27 * value, 2 + finer) + " ft3" : fixed(value, 3 + finer) + " m3";
    case Measure::count:
        return fmt::format("{:.0f}", value);
    case Measure::age:
        return age(value);
    case Measure::volume:
        return us && value >= (1 - of_a_conversion) * units::unit("yd3").factor
                   ? stepped(value, {"yd3", 0.01, 2}, finer)
                   : in_style({"ft3", 0.01, 2}, {"m3", 0.001, 3});
    case Measure::mass:
        return mass(value, us ? "lb" : "kg", finer);
    case Measure::temperature:
        return in_style({"degF", 1, 0}, {"degC", 0.5, 1});
    case Measure::temperature_difference:
        return us ? fixed(1.8 * value, finer) + " degF" : fixed(value, finer) + " K";
    case Measure::dose:
        return dose(value, us ? "fl oz/cwt" : "mL/100 kg");
    case Measure::pressure:
        return in_amount(pounds_per_square_foot(value), {"psf", 1, 0}, {"kPa", 0.1, 1});
    case Measure::force:
        return in_amount(pounds_of_force(value), {"lb", 1, 0}, {"kN", 0.01, 2});
    case Measure::rate_of_rise:
        return in_amount(feet(value), {"ft/h", 0.1, 1}, {"m/h", 0.01, 2});
    case Measure::area:
        return in_amount(feet(feet(value)), {"ft2", 0.1, 1}, {"m2", 0.01, 2});
    case Measure::line_length:
        return in_amount(feet(value), {"ft", 0.01, 2}, {"m", 0.01, 2});
    case Measure::wind:
        return in_style({"mph", 1, 0}, {"km/h", 1, 0});
    case Measure::evaporation:
        return evaporation(value, us, finer);
    case Measure::duration:
        return duration(value, quantity.keep, finer);
    case Measure::steel_area:
        return steel_area(value, us, finer);
    case Measure::money:
        return us ? fixed(value * units::unit("yd3").factor, 2) + "/yd3" : fixed(value, 2) + "/m3";
    }
    return "";
}

std::string water_measure(double litres, UnitSystem system) {
    return system == UnitSystem::us
               ? fixed(units::unit("gal").from_inside(litres / 1000), 2) + " gal"
               : fixed(litres, 2) + " L";
}

} // namespace boardmark::report
