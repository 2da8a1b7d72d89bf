#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/trial/yield.hpp>

#include <optional>

namespace boardmark::core {

struct Tables;

/// The dose of a high-range reducer for the next trial.
struct NextDose {
    double percent; ///< of the cementitious material
    Phrase reason;
    Phrase advice;
};

/// A reducer as it was dosed in a trial.
struct FoundDose {
    const Material& reducer;
    double percent;     ///< of the cementitious material
    double by_water_mm; ///< slump that the corrected water brings; negative: takes
};

/// The highest dose that any data of an admixture know, percent of the cementitious material;
/// nothing where there are none.
std::optional<double> last_known_percent(const Material& admixture, double density_kg_m3);

/// Corrects a dose for the slump of a trial: by the reducer's own slump gain where it is known,
/// else by one small step in the right direction. Never above its highest dose.
NextDose next_dose(FoundDose found, const Yield& yield, const Tables& tables);

} // namespace boardmark::core
