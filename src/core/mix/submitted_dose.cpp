#include <boardmark/core/mix/submitted_dose.hpp>

namespace boardmark::core {
namespace {

constexpr double of_water_kg_m3 = 1000; // within half a percent, however warm a plant is

/// The amount in the kind of unit in which the highest dose is; nothing where the relative density
/// that leads from one to the other is not stated.
std::optional<double> amount_by(DoseBasis basis, const SubmittedAmount& amount) {
    const bool by_volume = basis == DoseBasis::volume;
    const auto& as_submitted = by_volume ? amount.m3_m3 : amount.kg_m3;
    const auto& other = by_volume ? amount.kg_m3 : amount.m3_m3;
    const auto& density = amount.material->relative_density;
    if (as_submitted || !other || !density) {
        return as_submitted;
    }
    const double kg_m3 = *density * of_water_kg_m3;
    return by_volume ? *other / kg_m3 : *other * kg_m3;
}

} // namespace

HeldDose held_to_maximum(const SubmittedAmount& amount, const Dose& maximum, double binder_kg_m3) {
    const bool by_volume = maximum.basis == DoseBasis::volume;
    const double most_per_m3 = maximum.amount * binder_kg_m3 / (by_volume ? 1 : 100);
    const auto submitted = amount_by(maximum.basis, amount);
    const bool is_converted = !(by_volume ? amount.m3_m3 : amount.kg_m3);
    const double within = is_converted ? 0.005 : 1e-9; // as far as the density of water goes
    if (!submitted) {
        return amount.m3_m3 || amount.kg_m3 ? HeldDose::not_comparable : HeldDose::within;
    }
    return *submitted > most_per_m3 * (1 + within) ? HeldDose::above : HeldDose::within;
}

} // namespace boardmark::core
