#include "water_cement_ratio.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../strength/own_line.hpp"
#include "strength_column.hpp"

#include <algorithm>
#include <cmath>
#include <span>

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

[[noreturn]] void curve_too_weak(const std::vector<CurvePoint>& curve, double average_mpa) {
    throw Unresolved{{"the strength curve reaches {strongest} at w/cm {w_cm}; the required average "
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

double by_curve(const std::vector<CurvePoint>& curve, double average_mpa, Worksheet& worksheet) {
    const Argument average = quantity("average", {average_mpa, Measure::strength});
    if (above(average_mpa, curve.front().strength_mpa)) {
        curve_too_weak(curve, average_mpa);
    }
    if (below(average_mpa, curve.back().strength_mpa)) {
        worksheet.steps.push_back(curve_step(
            curve.back().w_cm,
            {"the curve's weakest trial, {weakest}, is stronger than the required {average}; its "
             "ratio is used, not a higher one",
             {quantity("weakest", {curve.back().strength_mpa, Measure::strength}), average}},
            {Mark::continued}));
        return curve.back().w_cm;
    }
    for (std::size_t i = 0; i < curve.size(); ++i) {
        if (same(curve[i].strength_mpa, average_mpa)) {
            worksheet.steps.push_back(
                curve_step(curve[i].w_cm, {"own trial at {average}", {average}}, {}));
            return curve[i].w_cm;
        }
    }
    const auto weaker = std::ranges::find_if(
        curve, [&](const CurvePoint& point) { return point.strength_mpa < average_mpa; });
    const CurvePoint& stronger = *(weaker - 1);
    const double w_cm = between(stronger, *weaker, average_mpa);
    worksheet.steps.push_back(
        curve_step(w_cm,
                   {"own trials, for {average}: between {strong} at {low} and {weak} at {high}, "
                    "log strength linear in w/cm",
                    {average, quantity("strong", {stronger.strength_mpa, Measure::strength}),
                     quantity("low", {stronger.w_cm, Measure::w_cm}),
                     quantity("weak", {weaker->strength_mpa, Measure::strength}),
                     quantity("high", {weaker->w_cm, Measure::w_cm})}},
                   {Mark::interpolated}));
    return w_cm;
}

double by_line(const OwnLine& own, double average_mpa, Worksheet& worksheet) {
    auto found = ratio_by_own_line(own, average_mpa);
    if (auto* why_none = std::get_if<Phrase>(&found)) {
        const bool unread = use_of(own.line) == LineUse::none;
        throw Unresolved{std::move(*why_none),
                         unread ? ways_from_a_flat_line() : ways_to_a_ratio()};
    }
    worksheet.steps.push_back(std::get<Step>(std::move(found)));
    return *worksheet.steps.back().value;
}

std::string_view column_name(bool air_entrained) {
    return air_entrained ? "air-entrained" : "non-air-entrained";
}

[[noreturn]] void table_too_weak(const std::vector<StrengthPoint>& points, StrengthDemand demand) {
    throw Unresolved{
        {"the table of w/c by strength ({source}) reaches {strongest} for {column} concrete; the "
         "required average strength is {average}",
         {word("source", points.back().source->citation),
          quantity("strongest", {points.back().strength_mpa, Measure::strength}),
          word("column", std::string{column_name(demand.air_entrained)}),
          quantity("average", {demand.average_mpa, Measure::strength})}},
        ways_to_a_ratio()};
}

double by_table(StrengthDemand demand, double age_d, const Tables& tables, Worksheet& worksheet) {
    const auto points = strength_column(tables.method.strength, demand.air_entrained);
    std::vector<double> strengths_mpa;
    std::vector<double> ratios;
    for (const StrengthPoint& point : points) {
        strengths_mpa.push_back(point.strength_mpa);
        ratios.push_back(point.w_cm);
    }
    const bool weaker = below(demand.average_mpa, strengths_mpa.front());
    const auto position = weaker ? Position{0, 0, 0} : locate(strengths_mpa, demand.average_mpa);
    if (!position) {
        table_too_weak(points, demand);
    }
    const StrengthPoint& upper = points[position->upper];
    Marks marks;
    if (position->between()) {
        marks.push_back(Mark::interpolated);
    }
    if (weaker || upper.continues) {
        marks.push_back(Mark::continued);
    }
    std::string text = "{column} concrete, average strength {average}";
    if (weaker) {
        text += "; below the table's lowest strength its lowest row is used";
    }
    if (age_d > strength_table_age_d) {
        text += "; the 28-day table used for {age} is conservative";
    }
    const double w_cm = interpolate(ratios, *position);
    worksheet.steps.push_back(
        {.quantity = "w_cm_by_strength",
         .value = w_cm,
         .measure = Measure::w_cm,
         .provenance = Provenance::table,
         .reason = {std::move(text),
                    {word("column", std::string{column_name(demand.air_entrained)}),
                     quantity("average", {demand.average_mpa, Measure::strength}),
                     quantity("age", {age_d, Measure::age})}},
         .source = *upper.source,
         .marks = with_confidence(std::move(marks), *upper.source)});
    return w_cm;
}

} // namespace

double w_cm_by_strength(const Requirements& requirements, StrengthDemand demand,
                        const Tables& tables, Worksheet& worksheet) {
    if (requirements.strength_line) {
        return by_line(*requirements.strength_line, demand.average_mpa, worksheet);
    }
    if (!requirements.strength_curve.empty()) {
        return by_curve(requirements.strength_curve, demand.average_mpa, worksheet);
    }
    if (below(requirements.strength_age_d, strength_table_age_d)) {
        throw Unresolved{{"the strength is specified at {age}; the method's table holds for 28 d "
                          "and later",
                          {quantity("age", {requirements.strength_age_d, Measure::age})}},
                         {own_curve, first_trial}};
    }
    return by_table(demand, requirements.strength_age_d, tables, worksheet);
}

const ClassLimits& applicable_limits(const ExposureClass& exposure, bool reinforced,
                                     bool has_pozzolan_or_slag) {
    if (!reinforced && exposure.plain_limits) {
        return *exposure.plain_limits;
    }
    if (has_pozzolan_or_slag && exposure.pozzolanic_limits) {
        return *exposure.pozzolanic_limits;
    }
    return exposure.limits;
}

std::optional<ExposureRatio> w_cm_by_exposure(const Requirements& requirements,
                                              bool has_pozzolan_or_slag, const Tables& tables) {
    std::optional<ExposureRatio> lowest;
    for (const std::string& name : requirements.exposure) {
        const ExposureClass& exposure = tables.exposure_class(name);
        const ClassLimits& limits =
            applicable_limits(exposure, requirements.reinforced, has_pozzolan_or_slag);
        if (!limits.max_w_cm) {
            continue;
        }
        if (!lowest || *limits.max_w_cm < lowest->w_cm) {
            lowest = ExposureRatio{*limits.max_w_cm, {}, limits.source};
        }
        if (*limits.max_w_cm == lowest->w_cm) {
            lowest->classes.push_back(&exposure);
        }
    }
    return lowest;
}

bool has_pozzolan_or_slag(const std::vector<const Material*>& binder) {
    const auto is_one = [](Kind kind) {
        return kind == Kind::slag_cement || kind == Kind::fly_ash || kind == Kind::silica_fume ||
               kind == Kind::natural_pozzolan || kind == Kind::metakaolin;
    };
    return std::ranges::any_of(binder, [&](const Material* material) {
        return is_one(material->kind) ||
               std::ranges::any_of(material->binder.contains, [&](const Constituent& part) {
                   return is_one(part.kind) && part.percent > 0;
               });
    });
}

} // namespace boardmark::core
