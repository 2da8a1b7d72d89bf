#pragma once

#include <boardmark/core/basis/optional_number.hpp>
#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include "../code/stated_classes.hpp"

namespace boardmark::core {

struct Tables;

/// What the paste must serve.
struct PasteDemand {
    double average_mpa;
    double size_mm;
    bool air_entrained;
};

/// Water and cementitious material, and the ratios they came from.
struct Paste {
    OptionalNumber w_cm_by_strength;
    OptionalNumber w_cm_by_exposure;
    Governor governed_by;
    OptionalNumber table_water_kg_m3;
    OptionalNumber water_reduction_percent;
    double water_kg_m3;
    bool water_is_stated;                ///< not the method's
    OptionalNumber water_of_slump_kg_m3; ///< then: what the method gives, as far as it reaches
    double binder_kg_m3;

    double w_cm() const { return water_kg_m3 / binder_kg_m3; }
};

/// Selects w/cm, mixing water and cementitious material, each recorded with its reason.
/// Unresolved where a table or a curve that is needed does not reach.
Outcome<Paste> select_paste(const Mix& mix, const StatedClasses& classes, const PasteDemand& demand,
                            const Tables& tables, Worksheet& worksheet);

} // namespace boardmark::core
