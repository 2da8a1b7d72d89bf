#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/checks/check_id.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/risk/scatter.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

struct Tables;

/// What is followed through the batches.
enum class RiskQuantity {
    w_cm,
    slump_water,    ///< mixing water over what the reducers leave of it: as much without them
    relative_yield, ///< concrete that the weights give, over what was ordered
    air,            ///< at placing
    strength,       ///< of one test: expected at the ratio, and the scatter of tests
};

inline constexpr std::array risk_quantities{RiskQuantity::w_cm, RiskQuantity::slump_water,
                                            RiskQuantity::relative_yield, RiskQuantity::air,
                                            RiskQuantity::strength};

/// As results print it, "relative_yield".
std::string_view name_of(RiskQuantity quantity);
Measure measure_of(RiskQuantity quantity);

/// One source of scatter. What is weighed several times, or of several materials, scatters
/// independently within it.
struct ScatteredInput {
    std::string key; ///< below `scatter` in the mix file, "moisture.sand"
    double deviation;
    Measure measure;
    bool assumed;       ///< not stated in the file
    Source source = {}; ///< of what is assumed
};

/// How often values fell between equally wide steps. What lies outside is counted in the outer
/// ones.
struct Histogram {
    double from;
    double to;
    std::vector<std::size_t> counts;
};

/// A value that a quantity is held against.
struct DistributionLimit {
    std::optional<CheckId> by; ///< absent: the specified strength
    double value;
};

struct Distribution {
    RiskQuantity quantity;
    std::size_t samples; ///< that have the quantity
    double mean;
    double standard_deviation; ///< of the samples
    double p05;                ///< 5 % lie below it
    double p50;
    double p95;
    Histogram histogram;
    std::vector<DistributionLimit> limits = {}; ///< that the checks hold it against
};

/// How often a check failed. The shares are of all samples, 0–1.
struct LimitRisk {
    CheckId id;
    double probability;
    double low;         ///< of the probability, at 95 % confidence (Clopper and Pearson)
    double high;        ///< likewise
    double watch;       ///< share in which it was to be watched
    double not_checked; ///< share in which it could not be checked
};

/// The part of a quantity's variance that an input is the reason for.
struct Driver {
    RiskQuantity quantity;
    std::size_t input;  ///< of Risk::inputs
    double first_order; ///< by itself, 0–1
    double total;       ///< with all that it does together with others, 0–1
};

/// Where many batches of one mix end, each with its own errors.
struct Risk {
    std::size_t samples;
    std::size_t samples_asked; ///< more where the run was stopped
    std::uint64_t seed;
    std::size_t driver_samples; ///< from which the drivers were found
    std::vector<ScatteredInput> inputs;
    std::vector<Distribution> quantities;
    std::vector<LimitRisk> limits; ///< that scatter can break, or that are broken
    std::vector<Driver> drivers;   ///< by quantity, the strongest first
    std::vector<Phrase> cautions;

    bool was_stopped() const { return samples < samples_asked; }
};

/// What is to be run.
struct RiskOrder {
    std::size_t samples = 100000; ///< from least_risk_samples to most_risk_samples
    std::uint64_t seed = 1;
    unsigned threads = 1; ///< ≥ 1; it never changes a result
    /// Asked now and then with the share that is done; the run stops where it says no. May be
    /// empty.
    std::function<bool(double)> goes_on = {};
};

inline constexpr std::size_t least_risk_samples = 1000;
inline constexpr std::size_t most_risk_samples = 5'000'000; // 40 bytes each

/// Batches a mix many times, the masses as weighed fixed by the mix while everything of `scatter`
/// varies around it, and judges each batch as the concrete that it really became.
///
/// @param designed the mix as it was proportioned or accepted; its aggregates state their moisture
/// Unresolved where a deviation is no number ≥ 0, where the aggregates carry more water than the
/// mix has room for, and where the run was stopped before least_risk_samples.
Outcome<Risk> risk_of(const AnyCompleteMix& mix, const Proportions& designed,
                      const Scatter& scatter, const RiskOrder& order, const Tables& tables);

} // namespace boardmark::core
