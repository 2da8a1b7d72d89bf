#include "acceptance_luck.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace boardmark::core {
namespace {

constexpr int averaged_together = 3;

/// The standard normal distribution up to a value.
double normal_below(double z) {
    return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

/// Tests on a grid of cells, from the least of a single one up; in standard deviations.
class TestGrid {
public:
    TestGrid(double least, double average_least)
        : least_{least}
        , three_{averaged_together * average_least} {
        constexpr double width = 0.025;
        constexpr double beyond_all = 7;
        const auto cells =
            static_cast<std::size_t>(std::ceil(std::max(1.0, beyond_all - least) / width));
        step_ = width;
        for (std::size_t i = 0; i < cells; ++i) {
            const double low = least + step_ * static_cast<double>(i);
            middle_.push_back(low + step_ / 2);
            weight_.push_back(normal_below(low + step_) - normal_below(low));
        }
    }

    std::size_t cells() const { return middle_.size(); }
    double weight(std::size_t cell) const { return weight_[cell]; }

    /// The first cell, with its fraction, from which on a test makes up three with two others.
    double first_enough(std::size_t second, std::size_t third) const {
        const double needed = three_ - middle_[second] - middle_[third];
        return std::clamp((needed - least_) / step_, 0.0, static_cast<double>(cells()));
    }

private:
    double least_;
    double three_;
    double step_;
    std::vector<double> middle_;
    std::vector<double> weight_;
};

/// Probabilities of the last two tests of jobs in which nothing was low so far.
using LastTwo = std::vector<double>;

/// The sum over a row from a cell on, the part of that cell counted.
double from_cell(const std::vector<double>& sums, double cell) {
    const auto whole = static_cast<std::size_t>(cell);
    if (whole + 1 >= sums.size()) {
        return 0;
    }
    const double part = cell - static_cast<double>(whole);
    return sums[whole] + part * (sums[whole + 1] - sums[whole]);
}

LastTwo after_one_more(const LastTwo& before, const TestGrid& grid) {
    const std::size_t cells = grid.cells();
    LastTwo after(cells * cells);
    std::vector<double> sums(cells + 1); // of first tests from a cell on, beside one second test
    for (std::size_t second = 0; second < cells; ++second) {
        sums[cells] = 0;
        for (std::size_t first = cells; first > 0; --first) {
            sums[first - 1] = sums[first] + before[(first - 1) * cells + second];
        }
        for (std::size_t third = 0; third < cells; ++third) {
            after[second * cells + third] =
                grid.weight(third) * from_cell(sums, grid.first_enough(second, third));
        }
    }
    return after;
}

double sum_of(const LastTwo& probabilities) {
    double sum = 0;
    for (const double one : probabilities) {
        sum += one;
    }
    return sum;
}

} // namespace

double low_test_probability(const StrengthSpread& spread, const JobRule& rule) {
    return normal_below((rule.single_least_mpa - spread.mean_mpa) / spread.deviation_mpa);
}

double low_average_probability(const StrengthSpread& spread, const JobRule& rule) {
    return normal_below((rule.average_least_mpa - spread.mean_mpa) *
                        std::sqrt(double{averaged_together}) / spread.deviation_mpa);
}

double job_fails_probability(const StrengthSpread& spread, const JobRule& rule, int tests) {
    assert(tests >= 1 && spread.deviation_mpa > 0);
    if (tests < averaged_together) {
        return 1 - std::pow(1 - low_test_probability(spread, rule), tests);
    }
    const TestGrid grid{(rule.single_least_mpa - spread.mean_mpa) / spread.deviation_mpa,
                        (rule.average_least_mpa - spread.mean_mpa) / spread.deviation_mpa};
    const std::size_t cells = grid.cells();
    LastTwo last(cells * cells);
    for (std::size_t first = 0; first < cells; ++first) {
        for (std::size_t second = 0; second < cells; ++second) {
            last[first * cells + second] = grid.weight(first) * grid.weight(second);
        }
    }
    for (int test = averaged_together; test <= tests; ++test) {
        last = after_one_more(last, grid);
    }
    return std::clamp(1 - sum_of(last), 0.0, 1.0);
}

double identity_fails_probability(const StrengthSpread& spread, const IdentityRule& rule,
                                  int tests) {
    assert(tests >= 1 && spread.deviation_mpa > 0);
    constexpr double width = 0.01;
    constexpr double beyond_all = 7;
    const double least = (rule.single_least_mpa - spread.mean_mpa) / spread.deviation_mpa;
    const double mean = (rule.mean_least_mpa - spread.mean_mpa) / spread.deviation_mpa;
    const auto cells =
        static_cast<std::size_t>(std::ceil(std::max(1.0, beyond_all - least) / width));
    std::vector<double> one(cells);
    for (std::size_t i = 0; i < cells; ++i) {
        const double low = least + width * static_cast<double>(i);
        one[i] = normal_below(low + width) - normal_below(low);
    }
    std::vector<double> sums = one; // of tests so far, each cell's middle added up
    for (int test = 2; test <= tests; ++test) {
        std::vector<double> more(sums.size() + cells - 1);
        for (std::size_t i = 0; i < sums.size(); ++i) {
            for (std::size_t j = 0; j < cells; ++j) {
                more[i + j] += sums[i] * one[j];
            }
        }
        sums = std::move(more);
    }
    const double count = tests;
    const double first_middle = count * (least + width / 2);
    double passes = 0;
    for (std::size_t i = 0; i < sums.size(); ++i) {
        const double middle = first_middle + width * static_cast<double>(i);
        passes += sums[i] * std::clamp((middle + width / 2 - count * mean) / width, 0.0, 1.0);
    }
    return std::clamp(1 - passes, 0.0, 1.0);
}

} // namespace boardmark::core
