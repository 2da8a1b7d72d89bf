#pragma once

#include <boardmark/core/mix/fault.hpp>

#include <optional>
#include <string>

namespace boardmark::core {

/// Bounds that a number must keep. They only say what is possible at all; common practice, no
/// source.
struct Bounds {
    double low;
    double high;
    bool low_itself = true; ///< whether the lower bound is possible
};

constexpr Bounds whole_share{.low = 0, .high = 100};
constexpr Bounds some_share{.low = 0, .high = 100, .low_itself = false};

/// Beyond it a bound only guards the arithmetic.
constexpr double out_of_all_reach = 1e7;
constexpr Bounds nothing_or_more{.low = 0, .high = out_of_all_reach};

/// Gathers the faults of one part of a mix: "coarse[0] stone".
class FaultList {
public:
    FaultList(Faults& faults, std::string place, std::string material)
        : faults_{faults}
        , place_{std::move(place)}
        , material_{std::move(material)} {}

    /// The part that belongs to no material.
    explicit FaultList(Faults& faults)
        : FaultList{faults, "", ""} {}

    void missing(Field field, const std::string& why) const;
    void impossible(Field field, const std::string& why) const;
    void unknown(Field field, const std::string& word) const;

    /// Holds a number against its bounds; true where it keeps them.
    bool hold(Field field, double number, const Bounds& bounds) const;
    void hold(Field field, const std::optional<double>& number, const Bounds& bounds) const;

private:
    void add(Field field, Problem problem, const std::string& what) const;

    Faults& faults_;
    std::string place_;
    std::string material_;
};

} // namespace boardmark::core
