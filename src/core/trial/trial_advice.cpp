#include "trial_advice.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/high_range_reducer.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

using Advice = std::vector<Phrase>;

/// Words for an amount of air-entraining admixture that no rule can give.
void advise_on_air(const Yield& yield, const Tables& tables, Advice& advice) {
    const double difference = yield.air_percent - yield.target.air_percent;
    const bool agent = std::ranges::any_of(yield.found.ingredients, [](const Ingredient& part) {
        return part.material && part.material->kind == Kind::air_entraining_admixture;
    });
    const AirRules& rules = tables.code->air;
    const double worth_a_change = rules.states_least() && difference > 0
                                      ? rules.above_percent // no more than the class permits
                                      : rules.tolerance_percent / 2;
    if (agent && yield.measured_air_percent && above(std::abs(difference), worth_a_change)) {
        advice.push_back(
            {"Air {air} against {target}: " + std::string{difference > 0 ? "lower" : "raise"} +
                 " the air-entraining admixture a little and measure again; its dose "
                 "in the next trial is only that of this one.",
             {percent_of("air", yield.air_percent),
              percent_of("target", yield.target.air_percent)}});
    }
}

/// A slump that falls between mixer and form is not mended by more of the same.
void advise_on_slump_loss(const Trial& trial, const Tables& tables, Advice& advice) {
    const TimedSlump& first = trial.tests.slump.front();
    const TimedSlump& last = trial.tests.at_placing();
    const double loss_mm = first.mm - last.mm;
    const double much_mm = tables.trial->slump.back().within_mm.value;
    if (!above(loss_mm, much_mm)) {
        return;
    }
    advice.push_back(
        {"The slump fell from {first} to {last} in {minutes} min. Before more reducer: "
         "one that holds its slump, a retarder, cooler concrete, a shorter haul, or "
         "the reducer added at the form.",
         {quantity("first", {first.mm, Measure::slump}),
          quantity("last", {last.mm, Measure::slump}),
          quantity("minutes", {last.minutes - first.minutes, Measure::count})}});
}

void advise_on_slump_before_reducer(const Trial& trial, const Proportions& designed,
                                    Advice& advice) {
    if (trial.tests.slump_before_reducer_mm && !designed.selection.slump_before_reducer_mm) {
        advice.push_back({"The slump before the reducer was measured, but the mix states no target "
                          "for it ('requirements.slump_before_reducer'): it corrects nothing here.",
                          {}});
    }
}

/// Admixtures that the mix doses and the trial did not hold.
void advise_on_what_was_left_out(const Yield& yield, const Proportions& designed, Advice& advice) {
    for (const Ingredient* asked : of_role(designed, Role::admixture)) {
        const auto found =
            std::ranges::find(yield.found.ingredients, asked->name, &Ingredient::name);
        const bool left_out = asked->goes_in() && found->kg_m3 <= 0;
        if (left_out) {
            advice.push_back({"{name} was left out of this trial; the next one doses it as the mix "
                              "file says. What was measured is of the concrete without it.",
                              {word("name", asked->name)}});
        }
    }
}

void advise_on_further_reducers(const Yield& yield, Advice& advice) {
    std::vector<std::string> reducers;
    for (const Ingredient* reducer : high_range_reducers(yield.found)) {
        if (reducer->kg_m3 > 0) {
            reducers.emplace_back(reducer->name);
        }
    }
    if (reducers.size() > 1) {
        advice.push_back({"Two high-range reducers are in the mix: only the dose of {name} is "
                          "corrected, the others stay.",
                          {word("name", reducers.front())}});
    }
}

} // namespace

std::vector<Phrase> advice_on_tests(const Trial& trial, const Yield& yield,
                                    const Proportions& designed, const Tables& tables) {
    Advice advice;
    advise_on_what_was_left_out(yield, designed, advice);
    advise_on_further_reducers(yield, advice);
    advise_on_slump_before_reducer(trial, designed, advice);
    advise_on_slump_loss(trial, tables, advice);
    advise_on_air(yield, tables, advice);
    return advice;
}

} // namespace boardmark::core
