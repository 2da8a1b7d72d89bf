#include "starter_lines.hpp"

namespace boardmark::input {
namespace {

constexpr StarterLine mix_lines[] = {
    {"boardmark", "1"},
    {"title", "\"Name of the job and of the wall\""},
    {"reporting", "us", "si"},
    {"method", "ACI 211.1"},

    {"requirements"},
    {"requirements.code", "ACI 318-19"},
    {"requirements.exposure", "[F2, S0, W1, C1]"},
    {"requirements.reinforced", "yes"},
    {"requirements.strength", "4500 psi", "31 MPa"},
    {"requirements.strength_records",
     "{tests: 18, standard_deviation: 480 psi, strength: 4500 psi, age: 9 months}",
     "{tests: 18, standard_deviation: 3.3 MPa, strength: 31 MPa, age: 9 months}"},
    {"requirements.strength_curve", "{0.38: 6500 psi, 0.42: 5900 psi, 0.47: 5200 psi}",
     "{0.38: 45 MPa, 0.42: 41 MPa, 0.47: 36 MPa}"},
    {"requirements.slump", "4 in", "100 mm"},
    {"requirements.slump_window", "3 in to 5 in", "75 mm to 125 mm"},
    {"requirements.time_to_place", "60 min"},
    {"requirements.placing", "{haul: 25 min}"},
    {"requirements.finish", "board-marked"},
    {"requirements.section", "{thickness: 10 in, clear_bar_spacing: 5 in, clear_cover: 2 in}",
     "{thickness: 250 mm, clear_bar_spacing: 125 mm, clear_cover: 50 mm}"},

    {"materials"},
    {"materials.cement"},
    {"materials.cement.kind", "portland cement"},
    {"materials.cement.standard", "ASTM C150 II"},
    {"materials.cement.relative_density", "3.15"},
    {"materials.cement.chloride", "0.01 %"},
    {"materials.stone"},
    {"materials.stone.kind", "coarse aggregate"},
    {"materials.stone.nominal_max_size", "3/4 in", "20 mm"},
    {"materials.stone.relative_density", "2.68"},
    {"materials.stone.absorption", "0.5 %"},
    {"materials.stone.dry_rodded_density", "100 lb/ft3", "1600 kg/m3"},
    {"materials.stone.moisture", "2.0 %"},
    {"materials.stone.chloride", "0.002 %"},
    {"materials.sand"},
    {"materials.sand.kind", "fine aggregate"},
    {"materials.sand.relative_density", "2.64"},
    {"materials.sand.absorption", "0.7 %"},
    {"materials.sand.sieves",
     "{4.75 mm: 99%, 2.36 mm: 88%, 1.18 mm: 73%, 0.6 mm: 48%, 0.3 mm: 20%, 0.15 mm: 5%}"},
    {"materials.sand.moisture", "6.0 %"},
    {"materials.sand.chloride", "0.004 %"},
    {"materials.reducer"},
    {"materials.reducer.kind", "high-range water reducer"},
    {"materials.reducer.standard", "ASTM C494 F"},
    {"materials.reducer.relative_density", "1.07"},
    {"materials.reducer.solids", "35 %"},
    {"materials.reducer.water_reduction", "{4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}",
     "{260 mL/100 kg: 8 %, 520 mL/100 kg: 16 %}"},
    {"materials.reducer.maximum_dose", "12 fl oz/cwt", "780 mL/100 kg"},
    {"materials.reducer.retains", "{30 min: 95 %, 60 min: 80 %}"},
    {"materials.reducer.retards", "no"},
    {"materials.reducer.chloride", "0.05 %"},
    {"materials.air_agent"},
    {"materials.air_agent.kind", "air-entraining admixture"},
    {"materials.air_agent.relative_density", "1.01"},
    {"materials.air_agent.solids", "8 %"},
    {"materials.air_agent.retards", "no"},
    {"materials.air_agent.chloride", "0 %"},

    {"mixture"},
    {"mixture.binder", "{cement: 100 %}"},
    {"mixture.coarse", "{stone: 100 %}"},
    {"mixture.fine", "{sand: 100 %}"},
    {"mixture.admixtures", "{reducer: 6 fl oz/cwt, air_agent: as needed}",
     "{reducer: 390 mL/100 kg, air_agent: as needed}"},
};

constexpr std::string_view mix_heading =
    "# A mix file to begin with. Every figure is an example: replace it by your own papers'.\n"
    "#   boardmark check mix.yaml        holds the mix against the limits\n"
    "#   boardmark proportion mix.yaml   gives the amounts and their reasons\n";

} // namespace

StarterFile mix_starter() {
    return {mix_heading, mix_lines, mix_fields()};
}

} // namespace boardmark::input
