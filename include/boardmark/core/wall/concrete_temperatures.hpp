#pragma once

#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Which file a temperature comes from.
enum class TemperatureOrigin {
    wall_file, ///< stated there
    mix_file,  ///< of the air: stated there; of the concrete: computed from it
};

struct KnownTemperature {
    double value_c;
    TemperatureOrigin from;
};

/// One temperature as the two files have it. Where only one of them knows it, both are that one.
struct TwoTemperatures {
    KnownTemperature colder;
    KnownTemperature warmer;

    bool is_of_both_files() const { return colder.from != warmer.from; }
    double apart_k() const { return warmer.value_c - colder.value_c; }
};

/// Concrete and air of one wall by its own file and by its mix file: one concrete has one
/// temperature, and until the files agree what is harmed by cold goes by the colder (pressure,
/// stripping, the lower limit), what is harmed by heat by the warmer (upper limit, evaporation,
/// setting).
struct ConcreteTemperatures {
    std::optional<TwoTemperatures> concrete =
        {}; ///< in the form; of the mix: as placed, else mixed
    std::optional<TwoTemperatures> air = {};
    bool concrete_stated = false; ///< in the wall file: no formula of pressure goes without it
    std::vector<std::string> missing_of_mix =
        {}; ///< keys without which the mix file's own is not known, where it states others of them
    bool after_haul = false; ///< the mix's own counts what is lost on the way
};

ConcreteTemperatures concrete_temperatures(const Wall& wall, const Proportions& proportions);

} // namespace boardmark::core
