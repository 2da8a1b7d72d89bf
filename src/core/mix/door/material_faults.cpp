#include <boardmark/core/mix/kind_and_standard.hpp>

#include "faults.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr Bounds possible_sieve_mm{.low = 0, .high = 1000, .low_itself = false};

void find_binder_faults(const BinderFigures& figures, const FaultList& list) {
    list.hold(Field::c3a, figures.c3a_percent, {.low = 0, .high = 20});
    list.hold(Field::strength_class, figures.strength_class, {.low = 10, .high = 100});
    double sum_percent = 0;
    for (const Constituent& part : figures.contains) {
        if (!is_kind(part.kind) || role_of(part.kind) != Role::binder) {
            list.impossible(Field::contains, "names a kind that is not cementitious");
        }
        if (list.hold(Field::contains, part.percent, some_share)) {
            sum_percent += part.percent;
        }
    }
    if (sum_percent > 100 * (1 + 1e-6)) {
        list.impossible(Field::contains, "adds up to more than 100 %");
    }
}

/// Sieves in any order: no opening twice, and never more passing a finer one.
void find_sieve_faults(std::vector<SievePassing> sieves, const FaultList& list) {
    bool sound = true;
    for (const SievePassing& sieve : sieves) {
        sound = list.hold(Field::sieves, sieve.opening_mm, possible_sieve_mm) &&
                list.hold(Field::sieves, sieve.percent, whole_share) && sound;
    }
    if (!sound) {
        return; // numbers that are none have no order
    }
    std::ranges::sort(sieves, std::greater{}, &SievePassing::opening_mm);
    for (std::size_t i = 1; i < sieves.size(); ++i) {
        if (sieves[i].opening_mm == sieves[i - 1].opening_mm) {
            list.impossible(Field::sieves, "states one opening twice");
        } else if (sieves[i].percent > sieves[i - 1].percent) {
            list.impossible(Field::sieves, "lets more pass a finer sieve than a coarser one");
        }
    }
}

void find_aggregate_faults(const AggregateFigures& figures, const FaultList& list) {
    list.hold(Field::absorption, figures.absorption_percent, {.low = 0, .high = 40});
    list.hold(Field::moisture, figures.moisture_percent, whole_share);
    list.hold(Field::nominal_max_size, figures.nominal_max_size_mm, {.low = 4, .high = 160});
    list.hold(Field::dry_rodded_density, figures.dry_rodded_density_kg_m3,
              {.low = 300, .high = 3500});
    list.hold(Field::fineness_modulus, figures.fineness_modulus, {.low = 1, .high = 5});
    find_sieve_faults(figures.sieves, list);
    if (figures.zone) {
        list.hold(Field::zone, *figures.zone, {.low = 1, .high = 4});
    }
    if (figures.shape &&
        (*figures.shape < StoneShape::angular || *figures.shape > StoneShape::rounded)) {
        list.unknown(Field::shape, std::to_string(static_cast<int>(*figures.shape)));
    }
    if (figures.surface && *figures.surface != Surface::crushed &&
        *figures.surface != Surface::uncrushed) {
        list.unknown(Field::surface, std::to_string(static_cast<int>(*figures.surface)));
    }
    list.hold(Field::passing_600um, figures.passing_600um_percent, whole_share);
}

/// Doses of one basis that increase, and an effect that never falls.
template <class Point>
void find_curve_faults(Field field, const std::vector<Point>& curve, double Point::*effect,
                       const Bounds& bounds, const FaultList& list) {
    for (const Point& point : curve) {
        find_dose_faults(field, point.dose, list);
        list.hold(field, point.*effect, bounds);
    }
    for (std::size_t i = 1; i < curve.size(); ++i) {
        if (curve[i].dose.basis != curve[0].dose.basis) {
            list.impossible(field, "has doses of two bases");
        } else if (!(curve[i].dose.amount > curve[i - 1].dose.amount)) {
            list.impossible(field, "has doses that do not increase");
        } else if (curve[i].*effect < curve[i - 1].*effect) {
            list.impossible(field, "falls with a higher dose");
        }
    }
}

void find_retention_faults(const std::vector<RetentionPoint>& retains, const FaultList& list) {
    for (std::size_t i = 0; i < retains.size(); ++i) {
        list.hold(Field::retains, retains[i].minutes, {.low = 0, .high = 1440});
        list.hold(Field::retains, retains[i].percent, some_share);
        if (retains[i].minutes == 0 && retains[i].percent != 100) {
            list.impossible(Field::retains, "leaves less than all at 0 min");
        }
        if (i > 0 && !(retains[i].minutes > retains[i - 1].minutes)) {
            list.impossible(Field::retains, "has times that do not increase");
        } else if (i > 0 && retains[i].percent > retains[i - 1].percent) {
            list.impossible(Field::retains, "leaves more slump later than before");
        }
    }
}

void find_admixture_faults(const AdmixtureFigures& figures, const FaultList& list) {
    list.hold(Field::solids, figures.solids_percent, whole_share);
    find_curve_faults(Field::water_reduction, figures.water_reduction,
                      &WaterReductionPoint::percent, {.low = 0, .high = 60}, list);
    find_curve_faults(Field::slump_gain, figures.slump_gain, &SlumpGainPoint::mm,
                      {.low = 0, .high = 305}, list);
    if (figures.maximum_dose) {
        find_dose_faults(Field::maximum_dose, *figures.maximum_dose, list);
    }
    find_retention_faults(figures.retains, list);
    list.hold(Field::added_water, figures.added_water_percent, {.low = 0, .high = 30});
}

/// What the standard of a material says against its kind and its figures.
void find_standard_faults(const Material& material, const FaultList& list) {
    const auto standard = [&] { return "'" + material.standard + "'"; };
    if (is_standard_of_another_kind(material)) {
        list.impossible(Field::kind, "is " + std::string{name_of(material.kind)} +
                                         ", and its standard, " + standard() + ", is of another");
    }
    const Role role = role_of(material.kind);
    if (role == Role::binder && part_mismatch(material)) {
        list.impossible(Field::contains, "is not what its standard, " + standard() + ", says");
    }
    if (role == Role::admixture && denies_retarding(material)) {
        list.impossible(Field::kind, "or standard delays setting, and `retards` says no");
    }
    if ((role == Role::coarse || role == Role::fine) && is_lightweight(material)) {
        list.impossible(Field::kind, "is lightweight by its standard, " + standard() +
                                         ", which no method here knows");
    }
}

} // namespace

void find_dose_faults(Field field, const Dose& dose, const FaultList& list, bool none_itself) {
    const bool by_volume = dose.basis == DoseBasis::volume;
    list.hold(field, dose.amount,
              {.low = 0, .high = by_volume ? 2e-4 : 20, .low_itself = none_itself});
}

bool find_material_faults(const Material& material, const FaultList& list) {
    if (material.name.empty()) {
        list.missing(Field::name, "results speak of the material by it");
    }
    if (material.name == name_of(Role::water) || material.name == name_of(Role::air)) {
        list.impossible(Field::name, "is that of another ingredient: results could not tell them "
                                     "apart");
    }
    if (!is_kind(material.kind)) {
        list.unknown(Field::kind, std::to_string(static_cast<int>(material.kind)));
        return false;
    }
    list.hold(Field::relative_density, material.relative_density, {.low = 0.8, .high = 8});
    list.hold(Field::chloride, material.chloride_percent, {.low = 0, .high = 50});
    list.hold(Field::alkali, material.alkali_percent, {.low = 0, .high = 10});
    list.hold(Field::carbon, material.carbon_kg_kg, {.low = -10, .high = 100});
    list.hold(Field::temperature, material.temperature_c, {.low = -30, .high = 120});
    list.hold(Field::waste, material.waste_percent, {.low = 0, .high = 50});
    if (material.price) {
        constexpr double dearest = 1e15; // a price by the piece, over the least of pieces
        list.hold(Field::price, material.price->amount, {.low = 0, .high = dearest});
    }
    find_standard_faults(material, list);
    switch (role_of(material.kind)) {
    case Role::binder:
        find_binder_faults(material.binder, list);
        break;
    case Role::coarse:
    case Role::fine:
        find_aggregate_faults(material.aggregate, list);
        break;
    default:
        find_admixture_faults(material.admixture, list);
        break;
    }
    return true;
}

} // namespace boardmark::core
