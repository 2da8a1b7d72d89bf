#include "economy_search.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../mix/fine_share.hpp"
#include "../mix/material_figures.hpp"
#include "study_base.hpp"
#include "variable_step.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr std::size_t samples_of_one = 512; // for each variable
constexpr std::size_t most_samples = 4096;
constexpr std::size_t most_starts = 6;
constexpr std::size_t front_mixes = 7; // with both ends

std::vector<Variable> variables_of(const EconomyOrder& order) {
    std::vector<Variable> variables;
    for (const VariableBound& bound : order.bounds) {
        variables.push_back(bound.variable);
    }
    return variables;
}

/// A dose that the file states in the other basis, in that of the variable; nothing where it doses
/// as needed.
std::optional<double> converted_dose(const Variable& variable, const Mix& mix,
                                     const Tables& tables) {
    const Dosage* found = dosage_of(mix, variable.material);
    if (!found || !found->dose) {
        return std::nullopt;
    }
    const double density_kg_m3 = product_density(found->material, tables).value;
    const double percent = dose_percent(*found->dose, density_kg_m3);
    return variable.basis == DoseBasis::percent ? percent : percent / (100 * density_kg_m3);
}

/// What the mix as written has where its file states none: what the method selects; nothing where
/// neither tells.
std::optional<double> selected(const Variable& variable, const Mix& mix,
                               const Proportions& written) {
    const Selection& selection = written.selection;
    const Selections& stated = mix.selections;
    switch (variable.figure) {
    case Varied::w_cm:
        return written.totals.w_cm;
    case Varied::water:
        return selection.water_kg_m3;
    case Varied::binder:
        return selection.binder_kg_m3;
    case Varied::air:
        return selection.air_percent;
    case Varied::coarse_volume:
        return selection.coarse_volume;
    case Varied::coarse_adjustment: // none of what the table tells, where the stone is the table's
        return stated.coarse_volume || stated.fine_share_percent ? std::nullopt
                                                                 : std::optional{0.0};
    case Varied::fine_share:
        return fine_share_percent(written);
    case Varied::share:
    case Varied::dose:
        break;
    }
    return std::nullopt;
}

} // namespace

EconomySearch::EconomySearch(const CompleteMix& mix, const EconomyOrder& order,
                             const Tables& tables)
    : mix_{mix}
    , order_{order}
    , tables_{tables}
    , varied_{study_base(mix, tables), variables_of(order)}
    , maker_{mix, varied_, tables} {
    const auto written = proportion(mix, tables);
    for (std::size_t i = 0; i < order.bounds.size(); ++i) {
        const Variable& variable = order.bounds[i].variable;
        auto value = varied_.written(i);
        if (!value && variable.figure == Varied::dose) {
            value = converted_dose(variable, *mix, tables);
        }
        written_.push_back(value     ? value
                           : written ? selected(variable, *mix, *written)
                                     : std::nullopt);
    }
}

std::vector<double> EconomySearch::values_at(const std::vector<double>& place) const {
    std::vector<double> values;
    for (std::size_t i = 0; i < place.size(); ++i) {
        const VariableBound& bound = order_.bounds[i];
        values.push_back(bound.low + place[i] * (bound.high - bound.low));
    }
    return values;
}

std::vector<double> EconomySearch::at_its_ratio(std::vector<double> values) {
    if (!mix_->requirements.minimum_binder_kg_m3) {
        return values;
    }
    maker_.make(values);
    const Selection& selection = maker_.selection();
    for (std::size_t i = 0; i < values.size(); ++i) {
        const VariableBound& bound = order_.bounds[i];
        if (bound.variable.figure == Varied::w_cm &&
            selection.w_cm_governed_by == Governor::minimum_binder) {
            values[i] = std::max(bound.low, std::min(values[i], selection.w_cm));
        }
    }
    return values;
}

bool EconomySearch::knows_written() const {
    return std::ranges::all_of(written_, [](const auto& value) { return value.has_value(); });
}

bool EconomySearch::holds_written() const {
    for (std::size_t i = 0; i < written_.size(); ++i) {
        const VariableBound& bound = order_.bounds[i];
        const double little = 1e-9 * (bound.high - bound.low);
        if (!written_[i] || *written_[i] < bound.low - little ||
            *written_[i] > bound.high + little) {
            return false;
        }
    }
    return true;
}

SearchRating EconomySearch::rating(Objective objective, const Relaxed& relaxed) {
    return [this, objective, relaxed](SearchPlace& place) {
        const Candidate candidate = maker_.make(values_at(place.at), relaxed);
        place.excess = candidate.excess;
        place.value = candidate.is_feasible() ? candidate.figures.of(objective) : HUGE_VAL;
    };
}

void EconomySearch::take_samples() {
    const std::size_t dimensions = order_.bounds.size();
    const std::size_t count = std::min(samples_of_one * dimensions, most_samples);
    std::vector<double> as_written;
    for (std::size_t i = 0; i < dimensions; ++i) {
        const VariableBound& bound = order_.bounds[i];
        const double value = written_[i].value_or((bound.low + bound.high) / 2);
        as_written.push_back(std::clamp((value - bound.low) / (bound.high - bound.low), 0.0, 1.0));
    }
    for (std::size_t i = 0; i <= count; ++i) {
        std::vector<double> at = i == 0 ? as_written : even_place(i - 1, dimensions);
        const Candidate candidate = maker_.make(values_at(at));
        samples_.push_back({std::move(at), candidate.excess, candidate.figures});
    }
}

/// The best samples, no two of them near each other.
std::vector<SearchPlace> EconomySearch::best_samples(Objective objective, double most_carbon,
                                                     std::size_t count) const {
    std::vector<SearchPlace> places;
    for (const Sample& sample : samples_) {
        const double more = sample.figures.carbon_kg_m3.value_or(0) - most_carbon;
        const bool feasible = sample.excess <= 0 && more <= 0;
        places.push_back({sample.at, sample.excess + (sample.excess <= 0 ? std::max(0.0, more) : 0),
                          feasible ? sample.figures.of(objective) : HUGE_VAL});
    }
    std::ranges::stable_sort(places, [](const SearchPlace& one, const SearchPlace& other) {
        return one.is_better_than(other);
    });
    constexpr double apart = 0.1;
    std::vector<SearchPlace> kept;
    for (SearchPlace& place : places) {
        const bool is_near = std::ranges::any_of(kept, [&](const SearchPlace& other) {
            double farthest = 0;
            for (std::size_t i = 0; i < place.at.size(); ++i) {
                farthest = std::max(farthest, std::abs(place.at[i] - other.at[i]));
            }
            return farthest < apart;
        });
        if (!is_near) {
            kept.push_back(std::move(place));
        }
        if (kept.size() == count) {
            break;
        }
    }
    return kept;
}

std::vector<SearchPlace> EconomySearch::ends(Objective objective) {
    if (samples_.empty()) {
        take_samples();
    }
    std::vector<SearchPlace> places = best_samples(objective, HUGE_VAL, most_starts);
    for (std::size_t i = 0; i < places.size(); ++i) {
        places[i] = pattern_search(std::move(places[i]), rating(objective), i);
    }
    std::ranges::stable_sort(places, [](const SearchPlace& one, const SearchPlace& other) {
        return one.is_better_than(other);
    });
    const bool any = places.front().excess <= 0;
    std::erase_if(places, [&](const SearchPlace& place) { return any && place.excess > 0; });
    return places;
}

std::string EconomySearch::worst_check(const SearchPlace& place) const {
    maker_.make(values_at(place.at));
    return std::string{maker_.broken()};
}

double EconomySearch::price_of_check(const SearchPlace& best, CheckId id) {
    const SearchPlace relaxed = pattern_search(best, rating(order_.objective, {id}), 0);
    return std::max(0.0, best.value - relaxed.value);
}

/// Beyond one end of a bound by its own step.
double EconomySearch::price_of_bound(const SearchPlace& best, std::size_t variable, bool high) {
    EconomyOrder wider = order_;
    VariableBound& bound = wider.bounds[variable];
    const double step = step_of(bound.variable, tables_.system);
    (high ? bound.high : bound.low) += high ? step : -step;
    EconomySearch search{mix_, wider, tables_};
    search.maker_.as_written();
    SearchPlace from = best;
    const VariableBound& narrow = order_.bounds[variable];
    const double value = narrow.low + best.at[variable] * (narrow.high - narrow.low);
    from.at[variable] = (value - bound.low) / (bound.high - bound.low);
    const SearchPlace found = pattern_search(from, search.rating(order_.objective), 0);
    return std::max(0.0, best.value - found.value);
}

void EconomySearch::find_prices(const SearchPlace& best, Economy& found) {
    maker_.make(values_at(best.at));
    const std::vector<Finding> findings = maker_.findings();
    constexpr double near = 1e-3;            // of the limit
    constexpr double worth_something = 1e-6; // of the objective: else it holds nothing back
    const auto add = [&](const std::string& id, Quantity step, double saves) {
        const bool told = std::ranges::count(found.active, id) > 0;
        if (!told && saves > worth_something * best.value) {
            found.active.push_back(id);
            found.prices.push_back({id, step, saves});
        }
    };
    for (const Finding& finding : findings) {
        if (!finding.value || !finding.limit.is_any()) {
            continue;
        }
        const auto at_end = [&](OptionalNumber end) {
            return end && std::abs(*finding.value - *end) <= near * std::max(std::abs(*end), near);
        };
        if (at_end(finding.limit.high) || at_end(finding.limit.low)) {
            add(std::string{finding.id.name()},
                {precision_of(finding, tables_.system), finding.measure},
                price_of_check(best, finding.id));
        }
    }
    for (std::size_t i = 0; i < order_.bounds.size(); ++i) {
        const bool low = best.at[i] <= near;
        const bool high = best.at[i] >= 1 - near;
        const Variable& variable = order_.bounds[i].variable;
        if (low || high) {
            add("bounds." + key_of(variable),
                {shown_value(variable, step_of(variable, tables_.system)), measure_of(variable)},
                price_of_bound(best, i, high));
        }
    }
}

/// The cheapest with no more carbon than a limit.
SearchPlace EconomySearch::least_cost_within(double most_carbon_kg_m3) {
    const SearchRating rate = [&](SearchPlace& place) {
        const Candidate candidate = maker_.make(values_at(place.at));
        const double more = candidate.figures.carbon_kg_m3.value_or(0) - most_carbon_kg_m3;
        place.excess = candidate.excess > 0 ? candidate.excess + 1 : std::max(0.0, more);
        place.value = place.excess <= 0 ? *candidate.figures.cost_per_m3 : HUGE_VAL;
    };
    constexpr std::size_t starts = 2;
    std::vector<SearchPlace> places = best_samples(Objective::cost, most_carbon_kg_m3, starts);
    for (std::size_t i = 0; i < places.size(); ++i) {
        places[i] = pattern_search(std::move(places[i]), rate, i);
    }
    return *std::ranges::min_element(places, [](const SearchPlace& one, const SearchPlace& other) {
        return one.is_better_than(other);
    });
}

void EconomySearch::find_front(Economy& found) {
    const Proportions& proportions = found.proportions;
    if (why_no_objective(proportions, Objective::cost) ||
        why_no_objective(proportions, Objective::carbon)) {
        return;
    }
    const auto mix_at = [&](std::string name, const SearchPlace& place) {
        std::vector<double> at = values_at(place.at);
        const EconomyFigures figures = maker_.make(at).figures;
        return FrontMix{std::move(name), std::move(at), figures};
    };
    const FrontMix cheapest = mix_at("least cost", ends(Objective::cost).front());
    const FrontMix cleanest = mix_at("least carbon", ends(Objective::carbon).front());
    const double most = *cheapest.figures.carbon_kg_m3;
    const double least = *cleanest.figures.carbon_kg_m3;
    found.front.push_back(cheapest);
    constexpr double alike = 1e-3;
    if (most - least <= alike * most) {
        found.front.front().name = "least cost and carbon";
        return;
    }
    for (std::size_t i = 1; i + 1 < front_mixes; ++i) {
        const double limit =
            most - (most - least) * static_cast<double>(i) / static_cast<double>(front_mixes - 1);
        const SearchPlace place = least_cost_within(limit);
        if (place.excess <= 0) {
            found.front.push_back(mix_at("between, " + std::to_string(i), place));
        }
    }
    found.front.push_back(cleanest);
}

} // namespace boardmark::core
