#include "mutators.hpp"

namespace boardmark::test {
namespace {

using core::Field;
using core::Material;
using core::Mix;

/// The material of one place, to be changed.
using Place = std::function<Material&(Mix&)>;

Material& cement_of(Mix& mix) {
    return mix.binder[0].material.edit();
}
Material& blend_of(Mix& mix) {
    return mix.binder[1].material.edit();
}
Material& stone_of(Mix& mix) {
    return mix.coarse[0].material.edit();
}
Material& sand_of(Mix& mix) {
    return mix.fine[0].material.edit();
}
Material& reducer_of(Mix& mix) {
    return mix.admixtures[0].material.edit();
}

/// Where a number stands: a plain one, or one that may be left out.
template <class Number>
using Access = std::function<Number&(Mix&)>;

NumberField plain(Field field, std::string place, Access<double> access) {
    return {
        field, std::move(place), [access](Mix& mix, double number) { access(mix) = number; }, {}};
}

NumberField optional(Field field, std::string place, Access<std::optional<double>> access) {
    return {field, std::move(place), [access](Mix& mix, double number) { access(mix) = number; },
            [access](Mix& mix) { access(mix).reset(); }};
}

void add_requirements(std::vector<NumberField>& fields) {
    const auto add = [&](Field field, std::string place, auto member) {
        fields.push_back(optional(
            field,
            std::move(place), [member](Mix & mix) -> auto& { return member(mix.requirements); }));
    };
    fields.push_back(plain(Field::strength, "strength",
                           [](Mix& mix) -> double& { return mix.requirements.strength_mpa; }));
    fields.push_back(plain(Field::strength_age, "strength age",
                           [](Mix& mix) -> double& { return mix.requirements.strength_age_d; }));
    fields.push_back(plain(Field::slump, "slump",
                           [](Mix& mix) -> double& { return mix.requirements.slump_mm; }));
    fields.push_back(plain(Field::air_loss, "air loss",
                           [](Mix& mix) -> double& { return mix.requirements.air_loss_percent; }));
    fields.push_back(plain(Field::records_deviation, "deviation", [](Mix& mix) -> double& {
        return mix.requirements.records->standard_deviation_mpa;
    }));
    fields.push_back(plain(Field::slump_window, "window's end", [](Mix& mix) -> double& {
        return mix.requirements.slump_window->high_mm;
    }));
    fields.push_back({Field::average, "average",
                      [](Mix& mix, double mpa) {
                          mix.requirements.average = core::StatedAverage{mpa, "own"};
                      },
                      [](Mix& mix) { mix.requirements.average.reset(); }});
    fields.push_back({Field::air,
                      "stated air",
                      [](Mix& mix, double percent) {
                          mix.requirements.air = {core::AirBasis::stated, percent};
                      },
                      {}});
    fields.push_back({Field::strength_curve, "curve's strength",
                      [](Mix& mix, double mpa) {
                          mix.requirements.strength_curve = {{0.4, 45}, {0.5, mpa}};
                      },
                      [](Mix& mix) { mix.requirements.strength_curve.clear(); }});
    fields.push_back({Field::strength_curve,
                      "curve's ratio",
                      [](Mix& mix, double ratio) {
                          mix.requirements.strength_curve = {{0.4, 45}, {ratio, 30}};
                      },
                      {}});
    using Asked = core::Requirements;
    add(
        Field::twin_strength, "strength of cubes",
        [](Asked & asked) -> auto& { return asked.twin_strength_mpa; });
    add(
        Field::records_strength, "records' strength",
        [](Asked & asked) -> auto& { return asked.records->strength_mpa; });
    add(
        Field::records_age, "records' age",
        [](Asked & asked) -> auto& { return asked.records->age_d; });
    add(
        Field::slump_before_reducer, "slump before",
        [](Asked & asked) -> auto& { return asked.slump_before_reducer_mm; });
    add(
        Field::time_to_place, "time to place",
        [](Asked & asked) -> auto& { return asked.time_to_place_min; });
    add(
        Field::thickness, "thickness",
        [](Asked & asked) -> auto& { return asked.section.thickness_mm; });
    add(
        Field::clear_bar_spacing, "bar spacing",
        [](Asked & asked) -> auto& { return asked.section.clear_bar_spacing_mm; });
    add(
        Field::clear_cover, "cover",
        [](Asked & asked) -> auto& { return asked.section.clear_cover_mm; });
    add(
        Field::minimum_binder, "minimum binder",
        [](Asked & asked) -> auto& { return asked.minimum_binder_kg_m3; });
    add(
        Field::air_temperature, "weather",
        [](Asked & asked) -> auto& { return asked.placing.air_c; });
    add(
        Field::wind, "wind", [](Asked & asked) -> auto& { return asked.placing.wind_km_h; });
    add(
        Field::humidity, "humidity",
        [](Asked & asked) -> auto& { return asked.placing.humidity_percent; });
    add(
        Field::haul, "haul", [](Asked & asked) -> auto& { return asked.placing.haul_h; });
    add(
        Field::soil_sulfate, "soil",
        [](Asked & asked) -> auto& { return asked.site->soil_sulfate_percent; });
}

void add_selections(std::vector<NumberField>& fields) {
    const auto add = [&](Field field, std::string place,
                         std::optional<double> core::Selections::*member) {
        fields.push_back(optional(
            field,
            std::move(place), [member](Mix & mix) -> auto& { return mix.selections.*member; }));
    };
    add(Field::selected_w_cm, "w/cm", &core::Selections::w_cm);
    add(Field::selected_water, "water", &core::Selections::water_kg_m3);
    add(Field::selected_binder, "binder", &core::Selections::binder_kg_m3);
    add(Field::selected_air, "air", &core::Selections::air_percent);
    add(Field::coarse_volume, "coarse volume", &core::Selections::coarse_volume);
    add(Field::coarse_adjustment, "adjustment", &core::Selections::coarse_adjustment_percent);
    add(Field::fine_share, "fine share", &core::Selections::fine_share_percent);
    add(Field::coarse_dry, "coarse dry", &core::Selections::coarse_dry_kg_m3);
    add(Field::fresh_density, "fresh density", &core::Selections::fresh_density_kg_m3);
    add(Field::fine_share_by_mass, "share by mass", &core::Selections::fine_share_by_mass_percent);
}

/// Figures that any material may state, at each of them.
void add_materials(std::vector<NumberField>& fields) {
    const std::pair<std::string, Place> places[] = {
        {"cement", cement_of}, {"stone", stone_of}, {"sand", sand_of}, {"reducer", reducer_of}};
    for (const auto& [name, place] : places) {
        const auto add = [&, name = name, place = place](Field field, std::string what,
                                                         std::optional<double> Material::*member) {
            fields.push_back(optional(
                field, name + "'s " + what,
                [ place, member ](Mix & mix) -> auto& { return place(mix).*member; }));
        };
        add(Field::relative_density, "density", &Material::relative_density);
        add(Field::chloride, "chloride", &Material::chloride_percent);
        add(Field::carbon, "carbon", &Material::carbon_kg_kg);
        add(Field::temperature, "temperature", &Material::temperature_c);
        fields.push_back(
            plain(Field::waste, name + "'s waste",
                  [place = place](Mix& mix) -> double& { return place(mix).waste_percent; }));
    }
    const std::pair<std::string, Place> aggregates[] = {{"stone", stone_of}, {"sand", sand_of}};
    for (const auto& [name, place] : aggregates) {
        const auto add = [&, name = name, place = place](Field field, std::string what,
                                                         auto member) {
            fields.push_back(optional(
                field, name + "'s " + what,
                [ place, member ](Mix & mix) -> auto& { return place(mix).aggregate.*member; }));
        };
        using Figures = core::AggregateFigures;
        add(Field::absorption, "absorption", &Figures::absorption_percent);
        add(Field::moisture, "moisture", &Figures::moisture_percent);
        add(Field::nominal_max_size, "size", &Figures::nominal_max_size_mm);
        add(Field::dry_rodded_density, "rodded density", &Figures::dry_rodded_density_kg_m3);
        add(Field::fineness_modulus, "modulus", &Figures::fineness_modulus);
        add(Field::passing_600um, "passing 600 um", &Figures::passing_600um_percent);
    }
}

void add_single_figures(std::vector<NumberField>& fields) {
    fields.push_back(optional(
        Field::c3a, "c3a", [](Mix & mix) -> auto& { return cement_of(mix).binder.c3a_percent; }));
    fields.push_back(optional(
        Field::alkali, "alkali", [](Mix & mix) -> auto& { return cement_of(mix).alkali_percent; }));
    fields.push_back(optional(
        Field::strength_class, "strength class",
        [](Mix & mix) -> auto& { return cement_of(mix).binder.strength_class; }));
    fields.push_back(plain(Field::defective, "defective",
                           [](Mix& mix) -> double& { return mix.requirements.defective_percent; }));
    fields.push_back(optional(
        Field::solids, "solids",
        [](Mix & mix) -> auto& { return reducer_of(mix).admixture.solids_percent; }));
    fields.push_back(optional(
        Field::added_water, "added water",
        [](Mix & mix) -> auto& { return reducer_of(mix).admixture.added_water_percent; }));
    fields.push_back(optional(
        Field::blend_dry_rodded_density, "blend",
        [](Mix & mix) -> auto& { return mix.blend_dry_rodded_density_kg_m3; }));
    fields.push_back(optional(
        Field::batched_water_temperature, "water's temperature",
        [](Mix & mix) -> auto& { return mix.batched_water.temperature_c; }));
    const auto add = [&](Field field, std::string place, Access<double> access) {
        fields.push_back(plain(field, std::move(place), std::move(access)));
    };
    add(Field::price, "price", [](Mix& mix) -> double& { return cement_of(mix).price->amount; });
    add(Field::contains, "content",
        [](Mix& mix) -> double& { return blend_of(mix).binder.contains[0].percent; });
    add(Field::sieves, "opening",
        [](Mix& mix) -> double& { return stone_of(mix).aggregate.sieves[1].opening_mm; });
    add(Field::sieves, "passing",
        [](Mix& mix) -> double& { return stone_of(mix).aggregate.sieves[1].percent; });
    add(Field::share, "cement's share", [](Mix& mix) -> double& { return mix.binder[0].percent; });
    add(Field::share, "stone's share", [](Mix& mix) -> double& { return mix.coarse[0].percent; });
    add(Field::dose, "dose", [](Mix& mix) -> double& { return mix.admixtures[0].dose->amount; });
    add(Field::water_reduction, "curve's dose", [](Mix& mix) -> double& {
        return reducer_of(mix).admixture.water_reduction[1].dose.amount;
    });
    add(Field::water_reduction, "curve's reduction",
        [](Mix& mix) -> double& { return reducer_of(mix).admixture.water_reduction[1].percent; });
    add(Field::slump_gain, "gain",
        [](Mix& mix) -> double& { return reducer_of(mix).admixture.slump_gain[1].mm; });
    add(Field::maximum_dose, "maximum",
        [](Mix& mix) -> double& { return reducer_of(mix).admixture.maximum_dose->amount; });
    add(Field::retains, "retention",
        [](Mix& mix) -> double& { return reducer_of(mix).admixture.retains[1].percent; });
    add(Field::ice, "ice", [](Mix& mix) -> double& { return mix.batched_water.ice_kg_m3; });
    add(Field::minimum_load, "load",
        [](Mix& mix) -> double& { return mix.supply->minimum_load_m3; });
    add(Field::short_load_charge, "charge",
        [](Mix& mix) -> double& { return mix.supply->short_load_charge->per_m3; });
}

} // namespace

std::vector<NumberField> number_fields() {
    std::vector<NumberField> fields;
    add_requirements(fields);
    add_selections(fields);
    add_materials(fields);
    add_single_figures(fields);
    return fields;
}

} // namespace boardmark::test
