#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/trial/trial_set.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/door/complete_again.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

std::variant<SolvedTrial, Unresolved> solve(const CompleteMix& asked, double w_cm,
                                            const std::optional<BatchOrder>& order,
                                            const Tables& tables) {
    Mix mix = *asked;
    mix.selections.w_cm = w_cm;
    mix.requirements.minimum_binder_kg_m3.reset(); // it would move the ratio; its check stays
    const auto at_ratio = complete_again(std::move(mix), tables);
    if (!at_ratio) {
        return at_ratio.why();
    }
    auto proportions = proportion(*at_ratio, tables);
    if (!proportions) {
        return std::move(proportions).why();
    }
    SolvedTrial solved{.proportions = *std::move(proportions), .batch = std::nullopt, .checks = {}};
    if (order) {
        auto weighed = batch(solved.proportions, *order, tables.water_density_kg_m3);
        if (!weighed) {
            return std::move(weighed).why();
        }
        solved.batch = *std::move(weighed);
        solved.checks = assess(asked, solved.proportions, *solved.batch, tables);
    } else {
        solved.checks = assess(asked, solved.proportions, tables);
    }
    return solved;
}

/// Whether the limits of the code leave one of the ratios on either side of what may be selected.
bool reaches(const std::vector<double>& ratios, double limit) {
    return !above(ratios.front(), limit) && !below(ratios.back(), limit);
}

void advise_on_range(const TrialSet& set, const std::vector<double>& ratios,
                     std::vector<Phrase>& advice) {
    for (const TrialMix& mix : set.mixes) {
        const SolvedTrial* solved = mix.solved();
        const auto limit = solved ? solved->proportions.selection.w_cm_by_exposure : std::nullopt;
        if (limit && !reaches(ratios, *limit)) {
            advice.push_back({"The exposure limit of {limit} lies outside these ratios: the line "
                              "is read inside its trials only, so take one on either side of it.",
                              {quantity("limit", {*limit, Measure::w_cm})}});
        }
        if (solved) {
            return;
        }
    }
}

std::vector<Phrase> advice_of(const TrialSet& set, const std::vector<double>& ratios,
                              bool has_batches) {
    constexpr std::size_t usual_trials = 3; // common practice, no source
    std::vector<Phrase> advice{
        {"Batch each one. The water is the same in all, and so nearly is the slump: bring the "
         "slump to its target with the reducer where there is one, and the air with its agent, not "
         "with water. Measure slump, air, density and temperature of each.",
         {}},
        {"From each, cast the cylinders that the code requires for each age of test. A trial with "
         "less air or less slump than the wall will have shows more strength than the wall will "
         "have.",
         {}},
        {"Write the averages into the mix file as 'requirements.strength_curve', from the lowest "
         "ratio to the highest: 'boardmark proportion' then selects w/cm by your own line instead "
         "of the handbook's.",
         {}}};
    if (ratios.size() < usual_trials) {
        advice.push_back(
            {"Two trials draw a line but cannot show whether it is straight: three are "
             "usual.",
             {}});
    }
    advise_on_range(set, ratios, advice);
    if (!has_batches) {
        advice.push_back(
            {"'--volume' adds the batch weights of each, with today's moistures.", {}});
    }
    return advice;
}

} // namespace

std::optional<Unresolved> fixed_for_a_set(const Selections& selections) {
    const Phrase deleted{"delete it from a copy of the file", {}};
    if (selections.w_cm || selections.w_cm_by_exposure) {
        return Unresolved{{"the file fixes 'selections.w_cm', which the set varies", {}},
                          {deleted}};
    }
    if (selections.binder_kg_m3) {
        return Unresolved{{"the file fixes 'selections.binder': water, and with it the slump, "
                           "would change with the ratio",
                           {}},
                          {deleted}};
    }
    if (selections.fine_share_by_mass_percent) { // BRE: its Figure 6 is entered with the ratio
        return Unresolved{{"the file gives 'selections.fine_share_by_mass', a chart's reading at "
                           "one w/cm alone",
                           {}},
                          {{"a mix file of its own for each ratio, with its reading and "
                            "'selections.w_cm'",
                            {}}}};
    }
    return std::nullopt;
}

TrialSet trial_set(const CompleteMix& mix, const std::vector<double>& ratios,
                   const std::optional<BatchOrder>& order, const Tables& tables) {
    TrialSet set{.method = tables.method.name,
                 .procedure = tables.method.procedure,
                 .mixes = {},
                 .advice = {}};
    std::ranges::transform(ratios, std::back_inserter(set.mixes), [&](double w_cm) {
        return TrialMix{w_cm, solve(mix, w_cm, order, tables)};
    });
    set.advice = advice_of(set, ratios, order.has_value());
    return set;
}

} // namespace boardmark::core
