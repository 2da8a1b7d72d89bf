#pragma once

// A law is a property that holds for every input: rapidcheck draws the inputs, Catch tells the
// tale.

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <cstdlib>
#include <sstream>
#include <string>

namespace boardmark::test {

/// The same hundred cases in each run, so that a red law stays red;
/// RC_PARAMS='seed=7 max_success=1000' draws others.
inline void use_fixed_seed_unless_told_otherwise() {
    constexpr int keep_what_the_user_set = 0;
    setenv("RC_PARAMS", "seed=1911", keep_what_the_user_set);
}

/// Tries a property; where it breaks, the failure names the smallest inputs found.
template <class Property>
void holds(Property&& property) {
    use_fixed_seed_unless_told_otherwise();
    const auto result = rc::detail::checkTestable(std::forward<Property>(property));
    if (!result.template is<rc::detail::SuccessResult>()) {
        std::ostringstream told;
        rc::detail::printResultMessage(result, told);
        FAIL(told.str());
    }
    SUCCEED();
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
