#pragma once

// A law is a property that holds for every input: rapidcheck draws the inputs, Catch tells the
// tale.

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <cstdint>
#include <initializer_list>
#include <iostream>
#include <sstream>
#include <string>

namespace boardmark::test {

/// Tells once which cases this run draws: others each time, unless RC_PARAMS='seed=7' says which.
inline const rc::detail::TestParams& params_of_run() {
    static const rc::detail::TestParams params = [] {
        const auto drawn = rc::detail::configuration().testParams;
        std::cout << "laws are drawn with RC_PARAMS='seed=" << drawn.seed << "'\n";
        return drawn;
    }();
    return params;
}

/// Tries a property on the cases of one seed; where it breaks, the failure names the smallest
/// inputs found and the seed that draws them again.
template <class Property>
void hold_with(const Property& property, const rc::detail::TestParams& params) {
    const auto result = rc::detail::checkTestable(property, rc::detail::TestMetadata{}, params);
    if (!result.template is<rc::detail::SuccessResult>()) {
        std::ostringstream told;
        rc::detail::printResultMessage(result, told);
        told << "\ndraw it again with RC_PARAMS='seed=" << params.seed << "'\n";
        FAIL(told.str());
    }
    SUCCEED();
}

/// Tries a property on new cases, and on those of seeds that once broke it.
template <class Property>
void holds(const Property& property, std::initializer_list<std::uint64_t> kept_seeds = {}) {
    hold_with(property, params_of_run());
    for (const std::uint64_t seed : kept_seeds) {
        rc::detail::TestParams params = params_of_run();
        params.seed = seed;
        hold_with(property, params);
    }
}

/// A number of a range in ten thousand steps, ends included.
inline double between(double low, double high, const std::string& name) {
    return *rc::gen::map(rc::gen::inRange(0, 10001), [=](int step) {
                return low + (high - low) * step / 10000;
            }).as(name);
}

/// One of a list.
template <class T>
T one_of(const std::vector<T>& list, const std::string& name) {
    return *rc::gen::elementOf(list).as(name);
}

inline bool perhaps(const std::string& name) {
    return *rc::gen::arbitrary<bool>().as(name);
}

/// Fails the law where two numbers differ by more than a fraction of the larger.
inline void demand_same(double left, double right, double within, const std::string& what) {
    const double size = std::max(std::abs(left), std::abs(right));
    if (!(std::abs(left - right) <= within * std::max(size, 1e-12))) {
        std::ostringstream told;
        told.precision(17);
        told << what << ": " << left << " and " << right;
        RC_FAIL(told.str());
    }
}

/// Fails the law where the left number lies above the right one by more than rounding.
inline void demand_at_most(double left, double right, const std::string& what) {
    if (!(left <= right + 1e-9 * std::max(1.0, std::abs(right)))) {
        std::ostringstream told;
        told.precision(17);
        told << what << ": " << left << " is above " << right;
        RC_FAIL(told.str());
    }
}

} // namespace boardmark::test
