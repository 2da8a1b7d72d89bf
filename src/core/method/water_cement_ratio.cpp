#include "water_cement_ratio.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../strength/own_line.hpp"
#include "strength_table_age.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

const Phrase own_curve{"a strength curve of your own trials, at the age of the strength, that "
                       "reaches this average ('requirements.strength_curve')",
                       {}};
const Phrase first_trial{"for a first trial the exposure limit itself ('selections.w_cm: by "
                         "exposure'); the strength is then proven by that trial",
                         {}};

std::vector<Phrase> ways_to_a_ratio() {
    return {
        {"records of strength tests of this class of concrete ('requirements.strength_records'): "
         "15 or more lower the required average",
         {}},
        own_curve,
        {"an average strength with its basis ('requirements.average_strength', "
         "'average_strength_basis')",
         {}},
        first_trial,
    };
}

std::vector<Phrase> ways_from_a_flat_line() {
    return {
        {"trials over a wider range of w/cm, so that the fall of strength stands out from the "
         "scatter",
         {}},
        {"without 'requirements.strength_curve' the table of the method gives the ratio", {}},
        first_trial,
    };
}

Unresolved curve_too_weak(const std::vector<CurvePoint>& curve, double average_mpa) {
    return {{"the strength curve reaches {strongest} at w/cm {w_cm}; the required average "
             "strength is {average}",
             {quantity("strongest", {curve.front().strength_mpa, Measure::strength}),
              quantity("w_cm", {curve.front().w_cm, Measure::w_cm}),
              quantity("average", {average_mpa, Measure::strength})}},
            ways_to_a_ratio()};
}

Step curve_step(double w_cm, Phrase reason, Marks marks) {
    return {.quantity = "w_cm_by_strength",
            .value = w_cm,
            .measure = Measure::w_cm,
            .provenance = Provenance::computed,
            .reason = std::move(reason),
            .source = {"strength curve of the mix file", Confidence::read},
            .marks = std::move(marks)};
}

/// Between two trials the logarithm of strength is taken as linear in w/cm (Abrams' relation).
double between(const CurvePoint& stronger, const CurvePoint& weaker, double average_mpa) {
    const double fraction = std::log(stronger.strength_mpa / average_mpa) /
                            std::log(stronger.strength_mpa / weaker.strength_mpa);
    return stronger.w_cm + fraction * (weaker.w_cm - stronger.w_cm);
}

Outcome<double> by_curve(const std::vector<CurvePoint>& curve, double average_mpa,
                         Worksheet& worksheet) {
    const auto average = [&] { return quantity("average", {average_mpa, Measure::strength}); };
    if (above(average_mpa, curve.front().strength_mpa)) {
        return curve_too_weak(curve, average_mpa);
    }
    if (below(average_mpa, curve.back().strength_mpa)) {
        worksheet.record([&] {
            return curve_step(
                curve.back().w_cm,
                {"the curve's weakest trial, {weakest}, is stronger than the required {average}; "
                 "its "
                 "ratio is used, not a higher one",
                 {quantity("weakest", {curve.back().strength_mpa, Measure::strength}), average()}},
                {Mark::continued});
        });
        return curve.back().w_cm;
    }
    for (std::size_t i = 0; i < curve.size(); ++i) {
        if (same(curve[i].strength_mpa, average_mpa)) {
            worksheet.record([&] {
                return curve_step(curve[i].w_cm, {"own trial at {average}", {average()}}, {});
            });
            return curve[i].w_cm;
        }
    }
    const auto weaker = std::ranges::find_if(
        curve, [&](const CurvePoint& point) { return point.strength_mpa < average_mpa; });
    const CurvePoint& stronger = *(weaker - 1);
    const double w_cm = between(stronger, *weaker, average_mpa);
    worksheet.record([&] {
        return curve_step(
            w_cm,
            {"own trials, for {average}: between {strong} at {low} and {weak} at {high}, "
             "log strength linear in w/cm",
             {average(), quantity("strong", {stronger.strength_mpa, Measure::strength}),
              quantity("low", {stronger.w_cm, Measure::w_cm}),
              quantity("weak", {weaker->strength_mpa, Measure::strength}),
              quantity("high", {weaker->w_cm, Measure::w_cm})}},
            {Mark::interpolated});
    });
    return w_cm;
}

Outcome<double> by_line(const OwnLine& own, double average_mpa, Worksheet& worksheet) {
    auto found = ratio_by_own_line(own, average_mpa);
    if (auto* why_none = std::get_if<Phrase>(&found)) {
        const bool unread = use_of(own.line) == LineUse::none;
        return Unresolved{std::move(*why_none),
                          unread ? ways_from_a_flat_line() : ways_to_a_ratio()};
    }
    const OwnRatio& ratio = std::get<OwnRatio>(found);
    worksheet.record([&] { return own_line_step(ratio, own, average_mpa); });
    return ratio.w_cm;
}

std::string_view column_name(bool air_entrained) {
    return air_entrained ? "air-entrained" : "non-air-entrained";
}

Unresolved table_too_weak(const StrengthRow& last, StrengthDemand demand) {
    return {
        {"the table of w/c by strength ({source}) reaches {strongest} for {column} concrete; the "
         "required average strength is {average}",
         {word("source", last.source.citation),
          quantity("strongest", {last.strength_mpa, Measure::strength}),
          word("column", column_name(demand.air_entrained)),
          quantity("average", {demand.average_mpa, Measure::strength})}},
        ways_to_a_ratio()};
}

const std::optional<double>& ratio_of(const StrengthRow& row, bool air_entrained) {
    return air_entrained ? row.w_cm_air_entrained : row.w_cm_plain;
}

/// The rows of a column at or beside a strength, and how far it lies from the first to the second.
struct StrengthPosition {
    const StrengthRow* weaker;
    const StrengthRow* stronger;
    double fraction;
    bool below_table; ///< weaker than its weakest row, which is used
};

/// Gaps of the column are left out.
Outcome<StrengthPosition> locate_strength(StrengthDemand demand,
                                          const std::vector<StrengthRow>& rows) {
    const StrengthRow* weaker = nullptr;
    for (const StrengthRow& row : rows) {
        if (!ratio_of(row, demand.air_entrained)) {
            continue;
        }
        if (same(row.strength_mpa, demand.average_mpa)) {
            return StrengthPosition{&row, &row, 0, false};
        }
        if (row.strength_mpa > demand.average_mpa) {
            if (!weaker) {
                return StrengthPosition{&row, &row, 0, true};
            }
            const double span = row.strength_mpa - weaker->strength_mpa;
            return StrengthPosition{weaker, &row,
                                    (demand.average_mpa - weaker->strength_mpa) / span, false};
        }
        weaker = &row;
    }
    return table_too_weak(*weaker, demand);
}

Outcome<double> by_table(StrengthDemand demand, double age_d, const Tables& tables,
                         Worksheet& worksheet) {
    const auto position = locate_strength(demand, tables.method.strength);
    if (!position) {
        return position.why();
    }
    const double of_weaker = *ratio_of(*position->weaker, demand.air_entrained);
    const double of_stronger = *ratio_of(*position->stronger, demand.air_entrained);
    const double w_cm = of_weaker + position->fraction * (of_stronger - of_weaker);
    worksheet.record([&] {
        const StrengthRow& row = *position->stronger;
        Marks marks;
        if (position->fraction != 0) {
            marks.push_back(Mark::interpolated);
        }
        if (position->below_table || row.continues) {
            marks.push_back(Mark::continued);
        }
        std::string text = "{column} concrete, average strength {average}";
        std::vector<Argument> figures{word("column", column_name(demand.air_entrained)),
                                      quantity("average", {demand.average_mpa, Measure::strength}),
                                      quantity("age", {age_d, Measure::age})};
        if (position->fraction != 0) {
            text += ", between {weaker} at {higher} and {stronger} at {lower}";
            figures.push_back(
                quantity("weaker", {position->weaker->strength_mpa, Measure::strength}));
            figures.push_back(quantity("higher", {of_weaker, Measure::w_cm}));
            figures.push_back(quantity("stronger", {row.strength_mpa, Measure::strength}));
            figures.push_back(quantity("lower", {of_stronger, Measure::w_cm}));
        }
        if (position->below_table) {
            text += "; below the table's lowest strength its lowest row is used";
        }
        if (age_d > strength_table_age_d) {
            text += "; the 28-day table used for {age} is conservative";
        }
        return Step{.quantity = "w_cm_by_strength",
                    .value = w_cm,
                    .measure = Measure::w_cm,
                    .provenance = Provenance::table,
                    .reason = {std::move(text), std::move(figures)},
                    .source = row.source,
                    .marks = with_confidence(std::move(marks), row.source)};
    });
    return w_cm;
}

} // namespace

Outcome<double> w_cm_by_strength(const Requirements& requirements, StrengthDemand demand,
                                 const Tables& tables, Worksheet& worksheet) {
    if (requirements.strength_line) {
        return by_line(*requirements.strength_line, demand.average_mpa, worksheet);
    }
    if (!requirements.strength_curve.empty()) {
        return by_curve(requirements.strength_curve, demand.average_mpa, worksheet);
    }
    if (requirements.specimen == Specimen::cube) {
        return Unresolved{{"the strength is of cubes; the method's table is of cylinders", {}},
                          {own_curve, first_trial}};
    }
    if (below(requirements.strength_age_d, strength_table_age_d)) {
        return Unresolved{{"the strength is specified at {age}; the method's table holds for 28 d "
                           "and later",
                           {quantity("age", {requirements.strength_age_d, Measure::age})}},
                          {own_curve, first_trial}};
    }
    return by_table(demand, requirements.strength_age_d, tables, worksheet);
}

std::optional<ExposureRatio> w_cm_by_exposure(const StatedClasses& classes) {
    std::optional<ExposureRatio> lowest;
    for (const StatedClass& stated : classes) {
        const auto& most = stated.limits->max_w_cm;
        if (most && (!lowest || *most < lowest->w_cm)) {
            lowest = ExposureRatio{*most, &stated.limits->source};
        }
    }
    return lowest;
}

std::string classes_at(const ExposureRatio& lowest, const StatedClasses& classes) {
    std::string names;
    for (const StatedClass& stated : classes) {
        if (stated.limits->max_w_cm == lowest.w_cm) {
            names += (names.empty() ? "" : ", ") + stated.exposure->name;
        }
    }
    return names;
}

} // namespace boardmark::core
