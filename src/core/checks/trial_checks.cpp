#include "trial_checks.hpp"

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/trial/yield.hpp>

#include "../basis/phrases.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {

namespace {

/// Air that only follows from the density cannot show that a range is kept: the density test alone
/// is uncertain by as much as the whole tolerance.
void leave_unmetered_air_open(const Yield& yield, std::vector<Check>& checks) {
    for (Check& check : checks) {
        const bool open = (check.is(check_ids::air_exposure) || check.is(check_ids::air_stated)) &&
                          !yield.measured_air_percent && check.verdict != Verdict::fails;
        if (open) {
            check.verdict = Verdict::not_checked;
            check.value = std::nullopt;
            check.limit = std::nullopt;
            check.message = {"air follows from the density alone, {gravimetric}: measure it by "
                             "meter",
                             {percent_of("gravimetric", yield.air_percent)}};
        }
    }
}

} // namespace

std::vector<Check> assess(const CompleteTrial& complete_trial, const Yield& yield,
                          const Proportions& designed, const Tables& tables) {
    const Trial& trial = *complete_trial;
    std::vector<Check> all = assess(trial.mix, yield.found, tables);
    // What the volumes leave open is the air; it has its own check here.
    std::erase_if(all, [](const Check& check) { return check.is(check_ids::volume_closes); });
    const std::vector<Check> fresh = check_fresh_tests(trial, yield, all, tables);
    leave_unmetered_air_open(yield, all);
    std::ranges::copy(fresh, std::back_inserter(all));
    std::ranges::move(check_measure(trial, designed, tables), std::back_inserter(all));
    std::ranges::move(check_batching(trial, yield, designed, tables), std::back_inserter(all));
    return all;
}

} // namespace boardmark::core
