#include <boardmark/core/study/comparison.hpp>

#include "../basis/phrases.hpp"
#include "../checks/exposure_limits.hpp"

#include <algorithm>
#include <set>

namespace boardmark::core {
namespace {

using Columns = std::vector<const ComparedMix*>;

std::string labels_of(const Columns& columns) {
    std::string labels;
    for (const ComparedMix* column : columns) {
        labels += (labels.empty() ? "" : ", ") + column->label;
    }
    return labels;
}

Columns select(const std::vector<ComparedMix>& columns, bool (*wanted)(const ComparedMix&)) {
    Columns selected;
    for (const ComparedMix& column : columns) {
        if (wanted(column)) {
            selected.push_back(&column);
        }
    }
    return selected;
}

bool is_made(const ComparedMix& column) {
    return column.proportions.has_value();
}

bool is_made_and_fails(const ComparedMix& column) {
    return is_made(column) && any_fails(column.checks);
}

bool is_sound(const ComparedMix& column) {
    return is_made(column) && !any_fails(column.checks);
}

/// Whether its figures are those of 1 m3 at the slump that is shown.
bool is_comparable(const ComparedMix* column) {
    return column->is_whole && !column->may_miss_slump;
}

bool may_be_chosen(const ComparedMix& column) {
    return column.may_be_chosen();
}

/// The columns within a precision of the least of a figure; none where a figure is missing or only
/// "at least".
template <class FigureOf>
Columns least(const Columns& columns, double precision, FigureOf figure_of) {
    std::optional<double> lowest;
    for (const ComparedMix* column : columns) {
        const std::optional<double> figure = figure_of(*column);
        if (!figure) {
            return {};
        }
        lowest = std::min(lowest.value_or(*figure), *figure);
    }
    Columns best;
    for (const ComparedMix* column : columns) {
        if (*figure_of(*column) <= *lowest + precision) {
            best.push_back(column);
        }
    }
    return best;
}

const PartialSum* cost_sum(const ComparedMix& column) {
    return column.cost ? &column.cost->sum : nullptr;
}

const PartialSum* carbon_sum(const ComparedMix& column) {
    return column.carbon ? &*column.carbon : nullptr;
}

std::optional<double> whole(const PartialSum* sum) {
    return sum && sum->is_whole() ? std::optional{sum->per_m3} : std::nullopt;
}

/// Whether every sum is there, and what it lacks is the amount of what is dosed as needed.
bool lack_only_doses(const Columns& columns, const PartialSum* (*sum_of)(const ComparedMix&)) {
    return std::ranges::all_of(columns, [&](const ComparedMix* column) {
        const PartialSum* sum = sum_of(*column);
        return sum && sum->missing.size() == sum->undosed.size();
    });
}

bool of_one_currency(const Columns& columns) {
    return std::ranges::all_of(columns, [&](const ComparedMix* column) {
        return column->cost && column->cost->currency == columns.front()->cost->currency;
    });
}

/// Whether costs are known, but not in one currency.
bool in_several_currencies(const Columns& columns) {
    std::set<std::string> currencies;
    for (const ComparedMix* column : columns) {
        if (column->proportions) {
            currencies.merge(currencies_of(*column->proportions));
        }
    }
    return currencies.size() > 1;
}

/// In what the first differs from any other: "strength, slump"; empty where all ask the same.
std::string different_demands(const Columns& columns) {
    std::vector<std::string> found;
    for (const ComparedMix* column : columns) {
        for (const std::string& name : differences(columns.front()->asked, column->asked)) {
            if (std::ranges::find(found, name) == found.end()) {
                found.push_back(name);
            }
        }
    }
    return joined(found);
}

void tell(std::vector<Phrase>& summary, const Columns& columns, std::string text) {
    if (!columns.empty()) {
        summary.push_back({std::move(text), {word("labels", labels_of(columns))}});
    }
}

void tell_incomparable(const Columns& left, std::vector<Phrase>& summary) {
    Columns of_doubtful_slump;
    Columns of_doubtful_volume;
    for (const ComparedMix* column : left) {
        if (column->may_miss_slump) {
            of_doubtful_slump.push_back(column);
        }
        if (!column->is_whole) {
            of_doubtful_volume.push_back(column);
        }
    }
    tell(summary, of_doubtful_slump,
         "Cost and carbon do not decide between them: that water or dose bring the slump is not "
         "shown for {labels} (water.slump).");
    tell(summary, of_doubtful_volume,
         "Cost and carbon do not decide between them: that the amounts make the whole volume is "
         "not shown for {labels} (volume.closes).");
}

} // namespace

std::vector<Phrase> summary_of(const std::vector<ComparedMix>& columns) {
    std::vector<Phrase> summary;
    tell(summary, select(columns, [](const ComparedMix& column) { return !is_made(column); }),
         "Cannot be made as it stands: {labels}.");
    tell(summary, select(columns, is_made_and_fails),
         "Ruled out, because a check fails: {labels}.");
    tell(summary,
         select(
             columns,
             [](const ComparedMix& column) { return is_sound(column) && !column.proves_strength; }),
         "Strength not proven, expected short of the required average or not known at that w/cm: "
         "{labels}.");
    tell(summary,
         select(columns,
                [](const ComparedMix& column) { return is_sound(column) && !column.gives_slump; }),
         "Not at the target slump: {labels}.");
    tell(summary,
         select(columns,
                [](const ComparedMix& column) {
                    return is_made(column) && column.proportions->estimate;
                }),
         "Estimates, not to be batched: {labels}.");
    tell(summary,
         select(
             columns,
             [](const ComparedMix& column) { return is_sound(column) && !column.states_volume(); }),
         "Not known to make the whole volume, as amounts or relative densities of aggregates are "
         "missing (volume.closes): {labels}.");
    const Columns left = select(columns, may_be_chosen);
    tell(summary, left, "May be chosen, as far as the checks can tell: {labels}.");
    if (left.size() < 2) {
        return summary;
    }
    if (const std::string what = different_demands(left); !what.empty()) {
        summary.push_back({"These have different requirements ({what}): cost and carbon do not "
                           "decide between them.",
                           {word("what", what)}});
        return summary;
    }
    if (!std::ranges::all_of(left, is_comparable)) {
        tell_incomparable(left, summary);
        return summary;
    }
    constexpr double cent = 0.01;
    constexpr double half_a_kg = 0.5;
    const auto whole_cost = [](const ComparedMix& column) { return whole(cost_sum(column)); };
    const auto whole_carbon = [](const ComparedMix& column) { return whole(carbon_sum(column)); };
    const Columns cheapest = of_one_currency(left) ? least(left, cent, whole_cost) : Columns{};
    tell(summary, cheapest, "Cheapest of these: {labels}.");
    if (cheapest.empty()) {
        summary.push_back(
            {in_several_currencies(left)
                 ? "It is not known which of these is cheapest: prices are in different currencies."
             : lack_only_doses(left, cost_sum)
                 ? "It is not known which of these is cheapest: what is dosed as needed has no "
                   "amount."
                 : "It is not known which of these is cheapest: prices are missing.",
             {}});
    }
    const Columns cleanest = least(left, half_a_kg, whole_carbon);
    tell(summary, cleanest, "Least embodied carbon of these: {labels}.");
    if (cleanest.empty()) {
        summary.push_back({lack_only_doses(left, carbon_sum)
                               ? "It is not known which of these has the least carbon: what is "
                                 "dosed as needed has no amount."
                               : "It is not known which of these has the least carbon: figures are "
                                 "missing.",
                           {}});
    }
    summary.push_back(
        {"The finish decides last: cast the mock-up panel with the mix that is chosen, "
         "and keep w/cm, slump and materials the same from load to load.",
         {}});
    return summary;
}

} // namespace boardmark::core
