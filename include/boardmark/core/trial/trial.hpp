#pragma once

#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/material.hpp>

#include <optional>
#include <variant>
#include <vector>

namespace boardmark::core {

/// What was read off a scale, a measure or a sheet.
struct Reading {
    double value;
    double step = 0; ///< the last digit that was written down; 0: not known
};

/// An amount that went into the mixer: a mass as weighed, or a volume of a liquid.
struct Charged {
    std::optional<Reading> kg;
    std::optional<Reading> m3;
};

/// A material of the mix and what of it went into the mixer, aggregates wet.
struct BatchedMaterial {
    Material material; ///< an aggregate with the moisture it was batched at
    Charged amount;
    bool moisture_of_the_day = true; ///< otherwise that of the mix file stands in, an assumption
};

/// The filled measure of the density test.
struct FilledMeasure {
    Reading full_kg;
    Reading empty_kg; ///< < full
    Reading volume_m3;
};

/// The density itself in kg/m3, or the measure it follows from.
using DensityTest = std::variant<Reading, FilledMeasure>;

/// A slump and when it was measured.
struct TimedSlump {
    double minutes; ///< since the end of mixing
    double mm;
    bool timed = true; ///< otherwise nobody wrote down when
};

/// Tests of the fresh concrete.
struct FreshTests {
    DensityTest density;
    std::vector<TimedSlump> slump;                      ///< increasing time, at least one
    std::optional<double> slump_before_reducer_mm = {}; ///< of the water alone
    std::optional<double> air_percent = {};             ///< by meter
    std::optional<double> temperature_c = {};           ///< of the concrete

    /// The slump that counts: the last one, nearest to the time of placing.
    const TimedSlump& at_placing() const { return slump.back(); }
};

/// What the trial was to reach.
struct TrialTarget {
    double slump_mm;
    double air_percent;
};

/// What the coarse aggregate of the next trial follows.
enum class CoarseBasis {
    as_selected, ///< the mix file
    as_trial,    ///< the amount that this trial really held per volume
};

/// A trial batch: the mix it was to be, what was weighed and what was measured.
struct Trial {
    AnyCompleteMix mix;
    Charged water; ///< added at the mixer
    std::vector<BatchedMaterial> batched;
    FreshTests tests;
    std::optional<double> target_slump_mm = {};
    std::optional<double> target_air_percent = {};
    std::optional<double> intended_volume_m3 = {};
    CoarseBasis coarse = CoarseBasis::as_selected;
};

} // namespace boardmark::core
