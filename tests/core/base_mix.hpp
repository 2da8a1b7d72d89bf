#pragma once

#include <string>

namespace boardmark::test {

/// A plain mix text with places to fill: what else is required, how the reducer is dosed, what is
/// selected. Figures are those of the terrace example.
struct BaseMix {
    std::string requirements = ""; ///< further keys under `requirements`, each "  key: value\n"
    std::string reducer = "water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}";
    std::string dose = "8 fl oz/cwt";
    std::string binder = "{cement: 100 %}";
    std::string selections = "{}"; ///< a flow mapping
    std::string strength = "5000 psi";
    std::string slump = "4 in";
    std::string size = "3/4 in";
    std::string modulus = "2.8";
    std::string reporting = "us";
};

inline std::string text(const BaseMix& mix) {
    return "boardmark: 1\ntitle: Base\nreporting: " + mix.reporting +
           "\nrequirements:\n  code: ACI 318-19\n  strength: " + mix.strength +
           "\n  slump: " + mix.slump + "\n" + mix.requirements +
           "materials:\n"
           "  cement: {kind: portland cement, standard: ASTM C150 II, relative_density: 3.15}\n"
           "  slag: {kind: slag cement, relative_density: 2.90}\n"
           "  stone: {kind: coarse aggregate, nominal_max_size: " +
           mix.size +
           ", relative_density: 2.68, absorption: 0.5 %, dry_rodded_density: 100 lb/ft3, "
           "moisture: 2.0 %}\n"
           "  sand: {kind: fine aggregate, relative_density: 2.64, absorption: 0.7 %, "
           "fineness_modulus: " +
           mix.modulus +
           ", moisture: 6.0 %}\n"
           "  reducer: {kind: high-range water reducer, standard: ASTM C494 F, "
           "relative_density: 1.07, solids: 35 %" +
           (mix.reducer.empty() ? "" : ", " + mix.reducer) +
           "}\n"
           "  agent: {kind: air-entraining admixture}\n"
           "mixture:\n  binder: " +
           mix.binder +
           "\n  coarse: {stone: 100 %}\n  fine: {sand: 100 %}\n  admixtures: {reducer: " +
           mix.dose + ", agent: as needed}\n" +
           (mix.selections == "{}" ? "" : "selections: " + mix.selections + "\n");
}

} // namespace boardmark::test
