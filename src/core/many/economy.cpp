#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/many/economy.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/footprint.hpp>

#include "../basis/phrases.hpp"
#include "../mix/door/complete_again.hpp"
#include "economy_search.hpp"
#include "share_doubt.hpp"
#include "study_base.hpp"
#include "variable_step.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// The steps between which a value lies, and one beyond on either side, within its bounds; beside
/// them the value as written, which can be ordered as it was before.
std::vector<double> rounded_values(double value, const std::optional<double>& written,
                                   const VariableBound& bound, UnitSystem system) {
    const double step = step_of(bound.variable, system);
    std::vector<double> values;
    const double below = std::floor(value / step + 1e-9);
    for (const double steps : {below - 1, below, below + 1, below + 2}) {
        const double rounded = steps * step;
        if (rounded >= bound.low - 1e-9 * step && rounded <= bound.high + 1e-9 * step) {
            values.push_back(std::clamp(rounded, bound.low, bound.high));
        }
    }
    if (values.empty()) {
        values.push_back(value);
    }
    if (written && *written >= bound.low && *written <= bound.high &&
        std::ranges::find(values, *written) == values.end()) {
        values.push_back(*written);
    }
    return values;
}

/// A place with its objective.
struct Choice {
    std::vector<double> at;
    double value;
};

/// The feasible places around the best one whose values are whole steps, the best first.
std::vector<Choice> rounded_choices(EconomySearch& search, const std::vector<double>& best) {
    const auto& bounds = search.order().bounds;
    std::vector<std::vector<double>> values;
    std::size_t count = 1;
    for (std::size_t i = 0; i < best.size(); ++i) {
        values.push_back(
            rounded_values(best[i], search.written_values()[i], bounds[i], search.tables().system));
        count *= values.back().size();
    }
    std::vector<Choice> choices;
    for (std::size_t index = 0; index < count; ++index) {
        std::vector<double> at;
        std::size_t rest = index;
        for (const auto& of_one : values) {
            at.push_back(of_one[rest % of_one.size()]);
            rest /= of_one.size();
        }
        const Candidate candidate = search.maker().make(at);
        if (candidate.is_feasible()) {
            choices.push_back({std::move(at), candidate.figures.of(search.order().objective)});
        }
    }
    std::ranges::stable_sort(choices, {}, &Choice::value);
    return choices;
}

bool can_be_weighed(const Proportions& proportions) {
    return std::ranges::all_of(proportions.ingredients, [](const Ingredient& one) {
        const bool aggregate = one.role == Role::coarse || one.role == Role::fine;
        return !aggregate || (one.material->aggregate.moisture_percent &&
                              one.material->aggregate.absorption_percent);
    });
}

/// A mix, worked out with its reasons and checked, as it is and as it is weighed.
struct Finished {
    Proportions proportions;
    std::vector<Check> checks;
    bool as_weighed;
};

/// Weights to half a kilogram, or a pound, of a cubic metre: as plants weigh.
BatchOrder order_of_plant(UnitSystem system) {
    constexpr double pound_kg = 0.45359237;
    constexpr double half_a_kilogram = 0.5;
    return {.volume_m3 = 1, .resolution_kg = system == UnitSystem::us ? pound_kg : half_a_kilogram};
}

std::optional<Finished> finished(const CompleteMix& asked, const CompleteMix& mix,
                                 const Tables& tables) {
    auto proportions = proportion(mix, tables);
    if (!proportions) {
        return std::nullopt;
    }
    Finished result{*std::move(proportions), {}, false};
    if (auto caution = leaves_blend_density(*asked, *mix)) {
        result.proportions.worksheet.cautions.push_back(*std::move(caution));
    }
    result.checks = assess(asked, result.proportions, tables);
    if (const LeftStrengths left = OwnStrengths{asked, tables}.left_by(*mix); left.any()) {
        watch_own_strengths(result.checks, left);
    }
    if (any_fails(result.checks)) {
        return std::nullopt;
    }
    if (can_be_weighed(result.proportions)) {
        const auto weighed =
            batch(result.proportions, order_of_plant(tables.system), tables.water_density_kg_m3);
        if (!weighed || any_fails(assess(asked, result.proportions, *weighed, tables))) {
            return std::nullopt;
        }
        result.as_weighed = true;
    }
    return result;
}

Unresolved nothing_holds(const EconomySearch& search, const SearchPlace& nearest) {
    const std::string id = search.worst_check(nearest);
    Unresolved why{{"of {mixes} mixes within the bounds none holds every limit",
                    {quantity("mixes", {double(search.mixes()), Measure::count})}},
                   {}};
    if (!id.empty()) {
        why.what.text += "; nearest to it is one that breaks {id}";
        why.what.arguments.push_back(word("id", id));
    }
    why.ways_out = {{"widen 'bounds', or lower what is required", {}},
                    {"'boardmark sweep' shows which limit stands in the way", {}}};
    return why;
}

/// Where the readings of charts are those of the mix as written and no mix of the search has them,
/// why none follows.
std::optional<Unresolved> no_reading(const EconomySearch& search, const SearchPlace& best) {
    const Mix mix = search.varied().at(search.values_at(best.at));
    if (!mix.selections.fresh_density_kg_m3) {
        return std::nullopt;
    }
    const auto edited = complete_again(mix, search.tables());
    const auto found =
        edited ? proportion(*edited, search.tables()) : Outcome<Proportions>{edited.why()};
    return found ? std::nullopt : std::optional{found.why()};
}

} // namespace

std::vector<VariableBound> usual_bounds(const CompleteMix& mix, const Proportions& written) {
    constexpr double around = 0.05; // of the w/cm as written, common practice, no source
    const double w_cm = written.totals.w_cm;
    std::vector<VariableBound> bounds;
    const Variable ratio{Varied::w_cm};
    if (!why_not_varied(ratio, *mix)) {
        bounds.push_back({ratio, w_cm - around, w_cm + around});
    }
    for (const Dosage& dosage : mix->admixtures) {
        const AdmixtureFigures& figures = dosage.material->admixture;
        const bool has_data = dosage.dose && !figures.water_reduction.empty() &&
                              !figures.reduction_dose_assumed &&
                              figures.water_reduction.back().dose.basis == dosage.dose->basis;
        if (has_data && bounds.size() < most_economy_variables) {
            const auto& most = figures.maximum_dose;
            const double last = figures.water_reduction.back().dose.amount;
            const bool is_capped = most && most->basis == dosage.dose->basis;
            bounds.push_back({{Varied::dose, dosage.material->name, dosage.dose->basis},
                              0,
                              is_capped ? std::min(last, most->amount) : last});
        }
    }
    return bounds;
}

std::optional<Phrase> why_no_objective(const Proportions& written, Objective objective) {
    if (objective == Objective::binder) {
        return std::nullopt;
    }
    const auto cost = objective == Objective::cost ? cost_of(written) : std::nullopt;
    if (objective == Objective::cost && !cost) {
        return why_no_cost(written);
    }
    const auto carbon = carbon_of(written);
    if (objective == Objective::carbon && !carbon) {
        return Phrase{"no material states its carbon", {}};
    }
    std::string names;
    for (const std::string& name :
         objective == Objective::cost ? cost->sum.missing : carbon->missing) {
        const auto found = std::ranges::find(written.ingredients, name, &Ingredient::name);
        const bool by_trial = found != written.ingredients.end() && found->by_trial;
        names += by_trial ? "" : (names.empty() ? "" : ", ") + name;
    }
    return names.empty() ? std::nullopt
                         : std::optional{Phrase{objective == Objective::cost
                                                    ? "no price that can be counted is stated for "
                                                      "{materials}"
                                                    : "no carbon is stated for {materials}",
                                                {word("materials", names)}}};
}

Outcome<Economy> economy(const CompleteMix& mix, const EconomyOrder& order, const Tables& tables) {
    EconomySearch search{mix, order, tables};
    const auto written = search.maker().as_written();
    const std::vector<SearchPlace> ends = search.ends(order.objective);
    const SearchPlace& best = ends.front();
    if (auto why = no_reading(search, best)) {
        return *std::move(why);
    }
    Economy found{.objective = order.objective,
                  .bounds = order.bounds,
                  .currency = {},
                  .file = written ? std::optional{written->figures} : std::nullopt,
                  .file_fails = written && !written->is_feasible(),
                  .file_within_bounds =
                      search.knows_written() ? std::optional{search.holds_written()} : std::nullopt,
                  .at = {},
                  .proportions = {},
                  .checks = {},
                  .figures = {},
                  .unrounded_at = search.at_its_ratio(search.values_at(best.at)),
                  .unrounded = {},
                  .starts = ends.size(),
                  .worst_start = best.excess <= 0 ? std::optional{ends.back().value} : std::nullopt,
                  .mixes = 0,
                  .active = {},
                  .prices = {},
                  .front = {},
                  .by_trial = {}};
    const bool written_counts = written && written->is_feasible() && search.holds_written();
    if (best.excess > 0 && !written_counts) {
        return nothing_holds(search, best);
    }
    std::vector<Choice> choices;
    if (best.excess <= 0) {
        found.unrounded = search.maker().make(found.unrounded_at).figures;
        choices = rounded_choices(search, found.unrounded_at);
    }
    const double written_value = written_counts ? written->figures.of(order.objective) : HUGE_VAL;
    std::optional<Finished> finish;
    for (const Choice& choice : choices) {
        if (choice.value >= written_value) {
            break;
        }
        const auto edited = complete_again(search.varied().at(choice.at), tables);
        finish = edited ? finished(mix, *edited, tables) : std::nullopt;
        if (finish) {
            found.at = choice.at;
            found.figures = search.maker().make(choice.at).figures;
            break;
        }
    }
    if (!finish) {
        finish = written_counts ? finished(mix, mix, tables) : std::nullopt;
        if (!finish) {
            return nothing_holds(search, best);
        }
        found.is_as_written = true;
        for (const auto& value : search.written_values()) {
            found.at.push_back(*value); // all are known: they lie within the bounds
        }
        found.figures = written->figures;
    }
    found.proportions = std::move(finish->proportions);
    found.checks = std::move(finish->checks);
    found.checked_as_weighed = finish->as_weighed;
    const auto cost = cost_of(found.proportions);
    found.currency = cost ? cost->currency : "";
    for (const Ingredient& ingredient : found.proportions.ingredients) {
        if (ingredient.by_trial) {
            found.by_trial.emplace_back(ingredient.name);
        }
    }
    if (best.excess <= 0) {
        search.find_prices(best, found);
        search.find_front(found);
    }
    found.mixes = search.mixes();
    return found;
}

} // namespace boardmark::core
