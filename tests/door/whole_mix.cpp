#include "mutators.hpp"

namespace boardmark::test {
namespace {

using core::Dose;
using core::DoseBasis;
using core::Kind;
using core::Material;

Material cement() {
    Material material{.name = "cement", .kind = Kind::portland_cement, .standard = "ASTM C150 II"};
    material.relative_density = 3.15;
    material.chloride_percent = 0.01;
    material.price = core::Price{"USD", 0.18, core::PriceBasis::mass};
    material.carbon_kg_kg = 0.9;
    material.temperature_c = 20;
    material.waste_percent = 2;
    material.binder.c3a_percent = 7;
    material.alkali_percent = 0.5;
    return material;
}

Material slag() {
    Material material{.name = "slag", .kind = Kind::blended_cement};
    material.relative_density = 2.95;
    material.binder.contains = {{Kind::slag_cement, 30}};
    return material;
}

Material stone() {
    Material material{.name = "stone", .kind = Kind::coarse_aggregate};
    material.relative_density = 2.68;
    material.aggregate.absorption_percent = 0.5;
    material.aggregate.moisture_percent = 2;
    material.aggregate.nominal_max_size_mm = 19;
    material.aggregate.dry_rodded_density_kg_m3 = 1600;
    material.aggregate.sieves = {{25, 100}, {19, 95}, {4.75, 5}};
    return material;
}

Material sand() {
    Material material{.name = "sand", .kind = Kind::fine_aggregate};
    material.relative_density = 2.64;
    material.aggregate.absorption_percent = 0.7;
    material.aggregate.moisture_percent = 6;
    material.aggregate.fineness_modulus = 2.8;
    return material;
}

Material reducer() {
    Material material{.name = "reducer", .kind = Kind::high_range_water_reducer};
    material.relative_density = 1.07;
    material.admixture.solids_percent = 35;
    material.admixture.water_reduction = {{{2e-6, DoseBasis::volume}, 8},
                                          {{8e-6, DoseBasis::volume}, 20}};
    material.admixture.slump_gain = {{{2e-6, DoseBasis::volume}, 40},
                                     {{8e-6, DoseBasis::volume}, 110}};
    material.admixture.maximum_dose = Dose{9e-6, DoseBasis::volume};
    material.admixture.retains = {{0, 100}, {30, 85}};
    return material;
}

core::Requirements requirements() {
    core::Requirements asked{.strength_mpa = 30, .slump_mm = 100};
    asked.code = "ACI 318-19";
    asked.exposure = {"F2", "S1", "W1", "C2"};
    asked.exposure_by_code = {{"EN 206", {"XC4", "XS3"}}};
    asked.twin_strength_mpa = 37;
    asked.site = core::Site{true, true, true, core::Sea::spray, 0.15};
    asked.records = core::StrengthRecords{20, 3, 30, 90};
    asked.slump_window = core::SlumpWindow{75, 125};
    asked.time_to_place_min = 60;
    asked.air_loss_percent = 0.5;
    asked.section = {200, 60, 50};
    asked.minimum_binder_kg_m3 = 300;
    asked.board_marked = true;
    asked.placing = {.air_c = 25, .wind_km_h = 15, .humidity_percent = 60, .haul_h = 0.5};
    asked.alkali_level = "X";
    return asked;
}

} // namespace

core::Mix whole_mix() {
    core::Mix mix{
        .title = "Quay terrace", .system = core::UnitSystem::si, .requirements = requirements()};
    mix.binder = {{cement(), 70}, {slag(), 30}};
    mix.coarse = {{stone(), 100}};
    mix.fine = {{sand(), 100}};
    mix.admixtures = {
        {reducer(), Dose{6e-6, DoseBasis::volume}},
        {Material{.name = "entrainer", .kind = Kind::air_entraining_admixture}, std::nullopt}};
    mix.batched_water = {15, 5};
    mix.supply = core::Supply{3, core::Charge{"USD", 40}};
    return mix;
}

core::SubmittedMix whole_submittal() {
    core::SubmittedMix mix{.title = "Quay terrace",
                           .system = core::UnitSystem::si,
                           .requirements = requirements(),
                           .air_percent = 6,
                           .amounts = {},
                           .nominal_max_size_mm = 19};
    mix.water_kg_m3 = 150;
    mix.amounts = {
        {cement(), 350}, {stone(), 1000}, {sand(), 750}, {reducer(), std::nullopt, 0.002}};
    return mix;
}

} // namespace boardmark::test
