#include <boardmark/core/weather/evaporation.hpp>

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

double by_uno(const WetSurface& surface, const UnoForm& form) {
    // Below the formula's zero there is no vapour left to count.
    const auto powered = [&](double celsius) {
        return std::pow(std::max(celsius + form.offset_c, 0.0), form.power);
    };
    return form.scale *
           (powered(surface.concrete_c) - surface.humidity_percent / 100 * powered(surface.air_c)) *
           (form.calm + form.wind * surface.wind_km_h);
}

double by_menzel(const WetSurface& surface, const MenzelForm& form) {
    const auto saturation_kpa = [&](double celsius) {
        return form.saturation_kpa *
               std::exp(form.saturation_rate * celsius / (form.saturation_offset_c + celsius));
    };
    return form.scale *
           (saturation_kpa(surface.concrete_c) -
            surface.humidity_percent / 100 * saturation_kpa(surface.air_c)) *
           (form.calm + form.wind * surface.wind_km_h);
}

} // namespace

Evaporation evaporation(const WetSurface& surface, const WeatherTables& weather) {
    const EvaporationTables& tables = weather.evaporation;
    const double kg_m2_h = std::max(by_uno(surface, tables.uno), 0.0);
    const double part = tables.uncertainty_percent.value / 100;
    return {.kg_m2_h = kg_m2_h,
            .low_kg_m2_h = kg_m2_h * (1 - part),
            .high_kg_m2_h = kg_m2_h * (1 + part),
            .menzel_kg_m2_h = std::max(by_menzel(surface, tables.menzel), 0.0)};
}

const TypicalFigure& evaporation_precaution(bool silica_fume, const WeatherTables& weather) {
    const EvaporationTables& tables = weather.evaporation;
    return silica_fume ? tables.precaution_with_silica_fume_kg_m2_h : tables.precaution_kg_m2_h;
}

} // namespace boardmark::core
