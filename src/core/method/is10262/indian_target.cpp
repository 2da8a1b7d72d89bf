#include "indian_target.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../../basis/phrases.hpp"
#include "../../basis/tolerance.hpp"
#include "../../code/required_strength.hpp"
#include "../cube_strength.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The row of a grade, or nothing beyond the last.
const GradeRow* row_of(double strength_mpa, const std::vector<GradeRow>& rows) {
    const auto found = std::ranges::find_if(
        rows, [&](const GradeRow& row) { return !above(strength_mpa, row.highest_mpa); });
    return found == rows.end() ? nullptr : &*found;
}

/// A deviation, and whether it is the site's own.
struct Deviation {
    double mpa;
    bool own;
    Source source;
};

Deviation deviation_of(const Requirements& asked, bool record_counts, const GradeRow& assumed,
                       const IndianTables& tables) {
    if (record_counts) {
        return {asked.records->standard_deviation_mpa, true, tables.deviations.source};
    }
    const bool fair = asked.site_control == SiteControl::fair;
    return {assumed.value + (fair ? tables.fair_control_mpa.value : 0), false, assumed.source};
}

Phrase too_few_by_is(const StrengthRecords& records, const MethodTables& method) {
    return {"{method} counts a deviation of its own from {least} tests on; the record "
            "has {tests}, and the grade's deviation is taken.",
            {word("method", method.name),
             quantity("least", {method.indian->least_tests.value, Measure::count}),
             quantity("tests", {double(records.tests), Measure::count})}};
}

} // namespace

Outcome<double> indian_target_mpa(const Mix& mix, const Tables& all, Worksheet& worksheet) {
    const MethodTables& method = all.method;
    const IndianTables& tables = *method.indian;
    const auto cube_mpa = specified_cube_mpa(mix.requirements, method.name);
    if (!cube_mpa) {
        return cube_mpa.why();
    }
    const GradeRow* assumed = row_of(*cube_mpa, tables.deviation_mpa);
    if (!assumed) {
        return Unresolved{{"{method} has no grade of {strength}",
                           {word("method", method.name), strength("strength", *cube_mpa)}},
                          {{"state the average to reach and why "
                            "('requirements.average_strength', 'average_strength_basis')",
                            {}}}};
    }
    const AverageStrengthRules& rules = all.code->average_strength;
    const auto why_not = set_aside(mix.requirements, tables.least_tests.value, rules);
    const bool record_counts = mix.requirements.records && !why_not;
    const Deviation deviation = deviation_of(mix.requirements, record_counts, *assumed, tables);
    const double by_deviation_mpa = *cube_mpa + tables.deviations.value * deviation.mpa;
    const GradeRow* margin = row_of(*cube_mpa, tables.least_margin_mpa);
    const double by_margin_mpa = margin ? *cube_mpa + margin->value : 0;
    const double target_mpa = std::max(by_deviation_mpa, by_margin_mpa);
    worksheet.record([&] {
        const bool by_margin = above(by_margin_mpa, by_deviation_mpa);
        const Source& source = by_margin ? margin->source : deviation.source;
        return Step{
            .quantity = "required_average_strength",
            .value = target_mpa,
            .measure = Measure::strength,
            .provenance = Provenance::code,
            .reason = {by_margin ? "cubes: the specified {strength} and the least margin {margin} "
                                   "of its grade, more than {factor} deviations of {deviation} ask"
                                 : "cubes: the specified {strength} and {factor} times the "
                                   "deviation of {deviation}, which is {whose}",
                       {strength("strength", *cube_mpa),
                        strength("margin", margin ? margin->value : 0),
                        quantity("factor", {tables.deviations.value, Measure::ratio}),
                        strength("deviation", deviation.mpa),
                        word("whose",
                             deviation.own ? "that of the records" : "assumed for its grade")}},
            .source = source,
            .marks = with_confidence({}, source)};
    });
    if (!deviation.own && !mix.requirements.site_control) {
        worksheet.caution([&] {
            return Phrase{
                "The deviation is that of good site control, because 'site_control' is not stated: "
                "cement weighed, aggregate by mass and moisture, sampling and supervision as "
                "{method} asks for; otherwise state 'site_control: fair', and the target rises by "
                "{more}.",
                {word("method", method.name),
                 strength("more", tables.deviations.value * tables.fair_control_mpa.value)}};
        });
    }
    if (why_not) {
        worksheet.caution([&] {
            return *why_not == SetAside::too_few_tests
                       ? too_few_by_is(*mix.requirements.records, method)
                       : why_set_aside(*why_not, mix.requirements, rules);
        });
    }
    return target_mpa;
}

Unresolved no_indian_ratio(double target_mpa, const MethodTables& method) {
    return {
        {"{method} takes w/cm for the target of {target} from trials with the materials, or as a "
         "reading of its Figure 1",
         {word("method", method.name), strength("target", target_mpa)}},
        {{"a strength curve of your own trials, at the age of the strength, that reaches this "
          "average ('requirements.strength_curve')",
          {}},
         {"the reading itself, for example 'selections.w_cm: 0.40'", {}}}};
}

} // namespace boardmark::core
