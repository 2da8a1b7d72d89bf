#include "figure_demands.hpp"

#include <boardmark/core/mix/fineness_modulus.hpp>

namespace boardmark::core {

bool FigureDemands::selects_bulk_volume() const {
    return mix_.method == Method::aci_211_1 && !mix_.selections.fine_share_percent &&
           !mix_.selections.coarse_dry_kg_m3;
}

void FigureDemands::demand_figures(const Material& material, const FaultList& list) const {
    const AggregateFigures& figures = material.aggregate;
    const Role role = role_of(material.kind);
    if (role == Role::binder) {
        return; // the tables have a usual figure for what a binder needs
    }
    if (role == Role::coarse && !figures.nominal_max_size_mm) {
        list.missing(Field::nominal_max_size, "water and air are found by it");
    }
    if (figures.typical) {
        return;
    }
    if (role == Role::coarse && selects_bulk_volume() && !figures.dry_rodded_density_kg_m3 &&
        !mix_.blend_dry_rodded_density_kg_m3) {
        list.missing(Field::dry_rodded_density, "the bulk volume is weighed by it");
    }
    if (role == Role::fine && selects_bulk_volume() && !mix_.selections.coarse_volume &&
        !figures.fineness_modulus && !fineness_modulus(figures.sieves, fineness_sieves_mm_)) {
        list.missing(Field::fineness_modulus, "the bulk volume of the stone is found by it");
    }
    if (!material.relative_density) {
        list.missing(Field::relative_density, "the volumes need it");
    }
    if (!figures.absorption_percent) {
        list.missing(Field::absorption, "the oven-dry amounts need it");
    }
}

void FigureDemands::demand_reduction(const Dosage& dosage, const FaultList& list) const {
    if (!dosage.dose || dosage.is_none()) {
        return;
    }
    const Material& reducer = dosage.material;
    const Selections& given = mix_.selections;
    const bool enters_table = !given.water_kg_m3 && !(given.w_cm && given.binder_kg_m3);
    const bool works_for_flow =
        reducer.kind == Kind::high_range_water_reducer && mix_.requirements.slump_before_reducer_mm;
    if (reduces_water(reducer.kind) && enters_table && !works_for_flow &&
        !reducer.admixture.standard_minimum_reduction &&
        reducer.admixture.water_reduction.empty()) {
        list.missing(Field::water_reduction, "the water of the table is lowered by it");
    }
}

} // namespace boardmark::core
