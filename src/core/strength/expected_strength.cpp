#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/strength/expected_strength.hpp>

#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../method/strength_table_age.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

namespace boardmark::core {
namespace {

/// Two points that have a ratio between them; one point twice where it is on it.
template <class Point>
struct Between {
    const Point* lower;
    const Point* upper;
    double fraction;

    bool is_between() const { return fraction != 0; }
    double at(double low, double high) const { return low + fraction * (high - low); }
};

/// Where a ratio lies among points that come by increasing ratio; nothing outside them.
///
/// @param ratio_of the ratio of a point; nothing leaves it out
template <class Iterator, class RatioOf>
auto locate_ratio(Iterator first, Iterator last, double w_cm, RatioOf ratio_of) {
    using Point = typename std::iterator_traits<Iterator>::value_type;
    using Found = std::optional<Between<Point>>;
    const Point* lower = nullptr;
    for (; first != last; ++first) {
        const std::optional<double> ratio = ratio_of(*first);
        if (!ratio) {
            continue;
        }
        if (same(*ratio, w_cm)) {
            return Found{{&*first, &*first, 0}};
        }
        if (w_cm < *ratio) {
            if (!lower) {
                return Found{};
            }
            const double low = *ratio_of(*lower);
            return Found{{lower, &*first, (w_cm - low) / (*ratio - low)}};
        }
        lower = &*first;
    }
    return Found{};
}

/// Between two own trials the logarithm of strength is linear in w/cm.
std::optional<ExpectedStrength> by_curve(const std::vector<CurvePoint>& curve, double w_cm) {
    static const Source source{"strength curve of the mix file", Confidence::read};
    const auto found = locate_ratio(curve.begin(), curve.end(), w_cm, [](const CurvePoint& point) {
        return std::optional{point.w_cm};
    });
    if (!found) {
        return std::nullopt;
    }
    const double logarithm =
        found->at(std::log(found->lower->strength_mpa), std::log(found->upper->strength_mpa));
    return ExpectedStrength{
        .mpa = std::exp(logarithm), .source = &source, .interpolated = found->is_between()};
}

const std::optional<double>& ratio_of(const StrengthRow& row, bool air_entrained) {
    return air_entrained ? row.w_cm_air_entrained : row.w_cm_plain;
}

std::optional<ExpectedStrength> by_table(double w_cm, bool air_entrained, const Tables& tables) {
    const auto& rows = tables.method.strength; // ratios increase as strengths fall
    const auto found = locate_ratio(rows.rbegin(), rows.rend(), w_cm, [&](const StrengthRow& row) {
        return ratio_of(row, air_entrained);
    });
    if (!found) {
        return std::nullopt;
    }
    return ExpectedStrength{.mpa =
                                found->at(found->lower->strength_mpa, found->upper->strength_mpa),
                            .source = &found->lower->source,
                            .interpolated = found->is_between(),
                            .continued = found->lower->continues};
}

/// Inside the range of the own results, from the side that the mix file reads them.
std::optional<ExpectedStrength> by_line(const OwnLine& own, double w_cm) {
    if (use_of(own.line) == LineUse::none || below(w_cm, own.line.lowest_w_cm) ||
        above(w_cm, own.line.highest_w_cm)) {
        return std::nullopt;
    }
    static const Source source{"strength results of the mix file", Confidence::read};
    return ExpectedStrength{.mpa = strength_at(own.line, w_cm, own.side), .source = &source};
}

/// By own data where there are any, else by the table.
/// The method's table is of cylinders at 28 d, which serves for later ages as well.
bool suits_table(const Requirements& requirements) {
    return requirements.specimen == Specimen::cylinder &&
           !below(requirements.strength_age_d, strength_table_age_d);
}

std::optional<ExpectedStrength> at_ratio(const Requirements& requirements, double w_cm,
                                         bool air_entrained, const Tables& tables) {
    if (requirements.strength_line) {
        return by_line(*requirements.strength_line, w_cm);
    }
    if (!requirements.strength_curve.empty()) {
        return by_curve(requirements.strength_curve, w_cm);
    }
    if (!suits_table(requirements)) {
        return std::nullopt;
    }
    return by_table(w_cm, air_entrained, tables);
}

/// Whether the strength is that of air-entrained concrete, the lower one. So it is where the size
/// of the stone does not tell how much air is entrapped.
bool reads_entrained(const Selection& selection) {
    return selection.air_entrained || !selection.entrainment_known;
}

/// The ratios that the table's column reaches.
struct TableEnds {
    double lowest_w_cm = std::numeric_limits<double>::infinity();
    double highest_w_cm = -std::numeric_limits<double>::infinity();
};

TableEnds table_ends(bool air_entrained, const Tables& tables) {
    TableEnds ends;
    for (const StrengthRow& row : tables.method.strength) {
        if (const auto& ratio = ratio_of(row, air_entrained)) {
            ends.lowest_w_cm = std::min(ends.lowest_w_cm, *ratio);
            ends.highest_w_cm = std::max(ends.highest_w_cm, *ratio);
        }
    }
    return ends;
}

/// The lowest ratio from which strength falls in curve, line or table.
double first_ratio(const Requirements& requirements, bool air_entrained, const Tables& tables) {
    if (const auto& own = requirements.strength_line) {
        return strongest_w_cm(own->line, own->side);
    }
    if (!requirements.strength_curve.empty()) {
        return requirements.strength_curve.front().w_cm;
    }
    return table_ends(air_entrained, tables).lowest_w_cm;
}

/// The highest ratio that curve, line or table reach.
double last_ratio(const Requirements& requirements, bool air_entrained, const Tables& tables) {
    if (requirements.strength_line) {
        return requirements.strength_line->line.highest_w_cm;
    }
    if (!requirements.strength_curve.empty()) {
        return requirements.strength_curve.back().w_cm;
    }
    return table_ends(air_entrained, tables).highest_w_cm;
}

} // namespace

Marks ExpectedStrength::marks() const {
    Marks marks{Mark::estimate};
    if (interpolated) {
        marks.push_back(Mark::interpolated);
    }
    if (continued) {
        marks.push_back(Mark::continued);
    }
    return marks;
}

std::optional<ExpectedStrength> expected_strength(const Requirements& requirements,
                                                  const Proportions& proportions,
                                                  const Tables& tables) {
    const double w_cm = proportions.totals.w_cm;
    const bool entrained = reads_entrained(proportions.selection);
    const auto read = at_ratio(requirements, w_cm, entrained, tables);
    if (read || !has_own_strengths(requirements) || !suits_table(requirements)) {
        return read;
    }
    auto stand_in = by_table(w_cm, entrained, tables);
    if (!stand_in) {
        return std::nullopt;
    }
    const double specified_mpa = requirements.strength_mpa;
    const auto most = strength_bound(requirements, proportions, tables);
    const auto least = strength_floor(requirements, proportions, tables);
    // A ratio that rounds to the last trial's is told by that trial.
    const bool rounds_to_last =
        most && !above(w_cm, last_ratio(requirements, entrained, tables) + w_cm_precision / 2);
    const bool at_most_tells_more = most && (rounds_to_last || below(most->mpa, stand_in->mpa) ||
                                             below(most->mpa, specified_mpa));
    const bool at_least_tells_more =
        least && above(least->mpa, stand_in->mpa) && !below(least->mpa, specified_mpa);
    if (at_most_tells_more || at_least_tells_more) {
        return std::nullopt;
    }
    stand_in->in_place_of_own = true;
    return stand_in;
}

std::optional<ExpectedStrength> strength_bound(const Requirements& requirements,
                                               const Proportions& proportions,
                                               const Tables& tables) {
    const bool entrained = reads_entrained(proportions.selection);
    const double last_w_cm = last_ratio(requirements, entrained, tables);
    return above(proportions.totals.w_cm, last_w_cm)
               ? at_ratio(requirements, last_w_cm, entrained, tables)
               : std::nullopt;
}

std::optional<ExpectedStrength> strength_floor(const Requirements& requirements,
                                               const Proportions& proportions,
                                               const Tables& tables) {
    if (requirements.strength_line && use_of(requirements.strength_line->line) == LineUse::none) {
        return std::nullopt;
    }
    const bool entrained = reads_entrained(proportions.selection);
    const double first_w_cm = first_ratio(requirements, entrained, tables);
    return below(proportions.totals.w_cm, first_w_cm)
               ? at_ratio(requirements, first_w_cm, entrained, tables)
               : std::nullopt;
}

StrengthOverRatio strength_over_ratio(const Requirements& requirements,
                                      const Proportions& proportions, const Tables& tables) {
    constexpr int lowest_percent = 20;
    constexpr int highest_percent = 100;
    const bool entrained = reads_entrained(proportions.selection);
    StrengthOverRatio found;
    for (int percent = lowest_percent; percent <= highest_percent; ++percent) {
        const double ratio = percent / 100.0;
        if (const auto expected = at_ratio(requirements, ratio, entrained, tables)) {
            found.points.push_back({ratio, expected->mpa});
            found.source = *expected->source;
        }
    }
    if (const auto chosen = expected_strength(requirements, proportions, tables);
        chosen && !chosen->in_place_of_own) {
        found.chosen_mpa = chosen->mpa;
    }
    return found;
}

} // namespace boardmark::core
