#include <boardmark/core/basis/blocks.hpp>

#include "risk_run.hpp"
#include "sensitivity.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace boardmark::core {
namespace {

constexpr std::size_t most_driver_samples = 16384;
constexpr std::size_t pairs_in_block = 128;

/// Values at two independent sets of samples, and at the first with each input of the second.
struct DriverValues {
    RiskValues first;
    RiskValues second;
    std::vector<RiskValues> exchanged; ///< by input
};

void resize(RiskValues& values, std::size_t size) {
    for (auto& one : values) {
        one.resize(size);
    }
}

/// What one thread works with.
class PairMaker {
public:
    explicit PairMaker(const RiskSubject& subject)
        : subject_{subject}
        , batch_{subject.scattered()}
        , first_(subject.plan.dimensions.size())
        , second_(first_)
        , exchanged_(first_) {}

    void make(std::size_t sample, const std::vector<std::size_t>& inputs, DriverValues& values) {
        subject_.random.fill(0, sample, first_);
        subject_.random.fill(1, sample, second_);
        put(first_, sample, values.first);
        put(second_, sample, values.second);
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            exchange(inputs[i]);
            put(exchanged_, sample, values.exchanged[i]);
        }
    }

private:
    /// The first sample, with all numbers of one input out of the second.
    void exchange(std::size_t input) {
        const auto& dimensions = subject_.plan.dimensions;
        for (std::size_t i = 0; i < dimensions.size(); ++i) {
            const bool is_of_input = i != exact_figure && dimensions[i].input == input;
            exchanged_[i] = is_of_input ? second_[i] : first_[i];
        }
    }

    void put(const std::vector<double>& normals, std::size_t sample, RiskValues& values) {
        const RiskFigures figures = batch_.make(normals);
        for (std::size_t i = 0; i < figures.size(); ++i) {
            values[i][sample] = figures[i];
        }
    }

    const RiskSubject& subject_;
    ScatteredBatch batch_;
    std::vector<double> first_;
    std::vector<double> second_;
    std::vector<double> exchanged_;
};

std::vector<std::size_t> inputs_that_scatter(const ScatterPlan& plan) {
    std::vector<std::size_t> inputs;
    for (std::size_t i = 0; i < plan.inputs.size(); ++i) {
        if (plan.inputs[i].deviation > 0) {
            inputs.push_back(i);
        }
    }
    return inputs;
}

/// A strength that is not known has no variance: its samples are left out.
VarianceShares shares_of(const std::vector<double>& first, const std::vector<double>& second,
                         const std::vector<double>& exchanged, std::size_t samples) {
    std::vector<double> kept[3];
    for (std::size_t i = 0; i < samples; ++i) {
        if (!std::isnan(first[i]) && !std::isnan(second[i]) && !std::isnan(exchanged[i])) {
            kept[0].push_back(first[i]);
            kept[1].push_back(second[i]);
            kept[2].push_back(exchanged[i]);
        }
    }
    return kept[0].size() < 2 ? VarianceShares{0, 0} : variance_shares({kept[0], kept[1], kept[2]});
}

} // namespace

DriversFound find_drivers(const RiskSubject& subject, const RiskOrder& order) {
    const std::vector<std::size_t> inputs = inputs_that_scatter(subject.plan);
    const std::size_t asked = std::min(order.samples, most_driver_samples);
    DriverValues values;
    resize(values.first, asked);
    resize(values.second, asked);
    values.exchanged.resize(inputs.size());
    for (RiskValues& exchanged : values.exchanged) {
        resize(exchanged, asked);
    }
    DriversFound found{};
    found.samples = do_in_blocks({.count = asked,
                                  .in_block = pairs_in_block,
                                  .threads = order.threads,
                                  .goes_on = order.goes_on},
                                 [&]() -> BlockWork {
                                     return [maker = PairMaker{subject}, &inputs,
                                             &values](std::size_t first, std::size_t last) mutable {
                                         for (std::size_t sample = first; sample < last; ++sample) {
                                             maker.make(sample, inputs, values);
                                         }
                                     };
                                 });
    for (std::size_t quantity = 0; quantity < risk_quantities.size(); ++quantity) {
        std::vector<Driver> drivers;
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            const VarianceShares shares = shares_of(values.first[quantity], values.second[quantity],
                                                    values.exchanged[i][quantity], found.samples);
            if (shares.total > 0) {
                drivers.push_back({.quantity = risk_quantities[quantity],
                                   .input = inputs[i],
                                   .first_order = shares.first_order,
                                   .total = shares.total});
            }
        }
        std::ranges::stable_sort(drivers, std::ranges::greater{}, &Driver::total);
        found.drivers.insert(found.drivers.end(), drivers.begin(), drivers.end());
    }
    return found;
}

} // namespace boardmark::core
