#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>

#include <vector>

namespace boardmark::core {

/// How the next trial corrects what this one showed.
struct TrialAdjustments {
    double water_kg_m3_per_mm;        ///< of slump
    double water_kg_m3_per_air_point; ///< more air, less water at the same slump
    Source source;
    TypicalFigure slump_reading_mm;  ///< the step to which slump is reported
    TypicalFigure dose_step_percent; ///< of the dose, where no slump gain is known
};

/// How far what is weighed may be from what was to be weighed, percent.
struct BatchingTolerances {
    TypicalFigure binder_percent;
    TypicalFigure small_batch_over_percent; ///< binder of a small batch, over only
    TypicalFigure aggregate_percent;
    TypicalFigure water_percent;
    TypicalFigure admixture_percent;
};

/// How much the moisture of a stockpile scatters from load to load, one standard deviation, points.
struct MoistureScatter {
    TypicalFigure fine_points;
    TypicalFigure coarse_points;
};

/// Tolerance of slumps up to a nominal one.
struct SlumpTolerance {
    double up_to_mm;
    TypicalFigure within_mm;
};

/// Least measure of the density test up to a nominal maximum size.
struct DensityMeasure {
    double size_mm;
    TypicalFigure least_m3;
};

/// What a trial batch is held against and corrected by.
struct TrialTables {
    TrialAdjustments adjustments;
    BatchingTolerances batching;
    MoistureScatter moisture_scatter;
    std::vector<SlumpTolerance> slump;       ///< increasing
    std::vector<DensityMeasure> measures;    ///< increasing sizes
    TypicalFigure measure_shortfall_percent; ///< that a measure may hold less than nominal
    TypicalFigure density_difference_kg_m3;  ///< within which two operators agree
    TypicalFigure air_gap_watch_percent;     ///< between gravimetric and metered air
    TypicalFigure air_gap_most_percent;      ///< beyond which a figure of the trial is wrong
    TypicalFigure yield_off_most_percent;    ///< likewise, of the relative yield
};

} // namespace boardmark::core
