#include "improbable_doses.hpp"

#include <boardmark/units/unit.hpp>

#include "../values/field_values.hpp"

#include <fmt/format.h>

#include <cmath>

namespace boardmark::input {
namespace {

using core::Kind;

/// Doses that a kind hardly leaves, m3/kg; common practice, no source.
Range usual_dose(Kind kind) {
    const Range any = dose().usual;
    switch (kind) {
    case Kind::water_reducer:
    case Kind::high_range_water_reducer:
        return {.low = 1e-6, .high = any.high}; // 100 mL/100 kg, 1.5 fl oz/cwt
    case Kind::air_entraining_admixture:
        return {.low = any.low, .high = 4e-6}; // 10 to 400 mL/100 kg
    default:
        return any;
    }
}

/// Three digits, without an exponent.
std::string dose_in(std::string_view unit, double m3_kg) {
    const double amount = units::unit(unit).from_inside(m3_kg);
    constexpr double whole_from = 100;
    return amount < whole_from ? fmt::format("{:.3g}", amount) : fmt::format("{:.0f}", amount);
}

/// Whether the reading of the value itself has asked it back.
bool is_told(const Parsed& written) {
    const Value value = dose();
    const bool percent = written.dimension == units::Dimension::percentage;
    const bool by_volume = written.dimension == units::Dimension::dose;
    const Range& usual = percent ? value.second_usual : value.usual;
    return (percent || by_volume) && (written.number < usual.low || written.number > usual.high);
}

} // namespace

void ask_back_dose(const FileContext& context, const Parsed& written, const Path& place,
                   const core::Material& admixture, double dose_m3_kg) {
    const Range usual = usual_dose(admixture.kind);
    constexpr double rounding = 1e-9;
    const bool low = dose_m3_kg < usual.low * (1 - rounding);
    const bool high = dose_m3_kg > usual.high * (1 + rounding);
    if (admixture.kind == Kind::pigment || dose_m3_kg <= 0 || is_told(written) || !(low || high)) {
        return;
    }
    const double bound = low ? usual.low : usual.high;
    context.ask_back(*written.node,
                     fmt::format("{}: {} is a dose of {} fl oz/cwt ({} mL/100 kg), which is "
                                 "unusual for {}, rarely {} {} fl oz/cwt ({} mL/100 kg)",
                                 dotted(place), written.text, dose_in("fl oz/cwt", dose_m3_kg),
                                 dose_in("mL/100 kg", dose_m3_kg), core::name_of(admixture.kind),
                                 low ? "below" : "above", dose_in("fl oz/cwt", bound),
                                 dose_in("mL/100 kg", bound)),
                     "check the amount and its unit; it is used as written");
}

double dose_m3_kg(const core::Material& admixture, const core::Dose& dose) {
    constexpr double water = 1000; // kg/m3, near enough to find a slip
    return dose.basis == core::DoseBasis::volume
               ? dose.amount
               : dose.amount / 100 / (admixture.relative_density.value_or(1) * water);
}

} // namespace boardmark::input
