#include "trial_checks.hpp"

#include <boardmark/core/proportion.hpp>
#include <boardmark/core/yield.hpp>

#include <algorithm>
#include <iterator>

namespace boardmark::core {

std::vector<Check> assess(const Trial& trial, const Yield& yield, const Proportions& designed,
                          const Tables& tables) {
    std::vector<Check> all = assess(requirements_of(trial.mix), yield.found, tables);
    // What the volumes leave open is the air; it has its own check here.
    std::erase_if(all, [](const Check& check) { return check.id == "volume.closes"; });
    std::ranges::move(check_fresh_tests(trial, yield, tables), std::back_inserter(all));
    std::ranges::move(check_batching(trial, yield, designed, tables), std::back_inserter(all));
    return all;
}

} // namespace boardmark::core
