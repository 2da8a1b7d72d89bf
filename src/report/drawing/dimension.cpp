#include "dimension.hpp"

#include <boardmark/units/rounding.hpp>
#include <boardmark/units/unit.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

constexpr double tick_mm = 0.9;
constexpr double chain_row_mm = 3.0;

double inches_of(double metres) {
    return units::unit("in").from_inside(1000 * metres);
}

double sixteenths(double inches) {
    return units::nearest({.amount = inches, .step = 1.0 / 16});
}

/// A long length that is no sixteenth of an inch, because it was divided.
bool is_divided(double inches) {
    constexpr double reading_error = 0.002;
    constexpr double foot = 12;
    return inches >= foot && std::abs(sixteenths(inches) - inches) > reading_error;
}

double rounded_inches(double inches) {
    return is_divided(inches) ? units::nearest({.amount = inches, .step = 1.0 / 8})
                              : sixteenths(inches);
}

std::string feet_and_inches(double metres) {
    constexpr double inches_in_foot = 12;
    const double inches = rounded_inches(inches_of(metres));
    const double feet = std::floor(inches / inches_in_foot);
    return feet < 1 ? units::inch_fraction(inches) + " in"
                    : fmt::format("{:.0f} ft {} in", feet,
                                  units::inch_fraction(inches - inches_in_foot * feet));
}

void tick_at(PaperPoint place, View& view) {
    view.line(Ink::dimension, {{place.x_mm - tick_mm / 2, place.y_mm + tick_mm / 2},
                               {place.x_mm + tick_mm / 2, place.y_mm - tick_mm / 2}});
}

} // namespace

std::string dimension(double metres, core::UnitSystem system) {
    return system == core::UnitSystem::us ? feet_and_inches(metres)
                                          : fmt::format("{:.0f} mm", 1000 * metres);
}

bool is_shown_rounded(double metres, core::UnitSystem system) {
    constexpr double reading_error_mm = 0.1;
    const double mm = 1000 * metres;
    return system == core::UnitSystem::us ? is_divided(inches_of(metres))
                                          : std::abs(mm - std::round(mm)) > reading_error_mm;
}

double draw_chain(const Chain& chain, core::UnitSystem system, View& view) {
    const auto x_of = [&](double station_m) {
        return chain.first_x_mm + 1000 * (station_m - chain.stations_m.front()) / chain.scale;
    };
    view.line(Ink::dimension, {{x_of(chain.stations_m.front()), chain.y_mm},
                               {x_of(chain.stations_m.back()), chain.y_mm}});
    for (const double station_m : chain.stations_m) {
        tick_at({x_of(station_m), chain.y_mm}, view);
    }
    WordRows below;
    for (std::size_t next = 1; next < chain.stations_m.size(); ++next) {
        const double from_mm = x_of(chain.stations_m[next - 1]);
        const double to_mm = x_of(chain.stations_m[next]);
        const std::string text =
            dimension(chain.stations_m[next] - chain.stations_m[next - 1], system);
        const double words_mm = width_of_words_mm(text, letter_mm);
        double middle_mm = (from_mm + to_mm) / 2;
        double y_mm = chain.y_mm - 0.7;
        if (words_mm > to_mm - from_mm) {
            const double half_mm = words_mm / 2;
            middle_mm = std::max(half_mm, std::min(middle_mm, view.width_mm - half_mm));
            const int row = below.row_for(middle_mm - half_mm - 0.6, middle_mm + half_mm);
            y_mm = chain.y_mm + 3.0 + chain_row_mm * row;
        }
        view.words(Ink::lettering, {middle_mm, y_mm}, text, Anchor::middle);
    }
    return below.rows() * chain_row_mm + 1;
}

void draw_upright(const UprightDimension& upright, core::UnitSystem system, View& view) {
    view.line(Ink::dimension, {{upright.x_mm, upright.top_mm}, {upright.x_mm, upright.bottom_mm}});
    tick_at({upright.x_mm, upright.top_mm}, view);
    tick_at({upright.x_mm, upright.bottom_mm}, view);
    view.words(Ink::lettering, {upright.x_mm - 0.8, (upright.top_mm + upright.bottom_mm) / 2},
               dimension(upright.metres, system), Anchor::middle);
    view.marks.back().upright = true;
}

} // namespace boardmark::report
