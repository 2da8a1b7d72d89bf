#include "british_target.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../../basis/phrases.hpp"
#include "../../basis/tolerance.hpp"
#include "../../code/required_strength.hpp"
#include "../cube_strength.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Below the strength where it becomes constant the assumed deviation falls in proportion.
double assumed_mpa(double cube_mpa, const BritishTables& tables) {
    return tables.deviation_mpa.value * std::min(cube_mpa / tables.deviation_from_mpa.value, 1.0);
}

/// A deviation, and whether it is the producer's own.
struct OwnOrAssumed {
    double mpa;
    bool own;
};

OwnOrAssumed deviation_of(const Requirements& asked, bool record_counts, double cube_mpa,
                          const BritishTables& tables) {
    if (record_counts) {
        const double least_mpa = tables.least_deviation_mpa.value *
                                 std::min(cube_mpa / tables.deviation_from_mpa.value, 1.0);
        return {std::max(asked.records->standard_deviation_mpa, least_mpa), true};
    }
    return {assumed_mpa(cube_mpa, tables), false};
}

const DefectiveFactor* factor_of(double percent, const BritishTables& tables) {
    const auto found = std::ranges::find_if(
        tables.defective, [&](const DefectiveFactor& row) { return same(row.percent, percent); });
    return found == tables.defective.end() ? nullptr : &*found;
}

Unresolved no_factor(double percent, const BritishTables& tables) {
    std::string printed;
    for (const DefectiveFactor& row : tables.defective) {
        const auto tenths = static_cast<int>(row.percent * 10 + 0.5);
        printed += (printed.empty() ? "" : ", ") + std::to_string(tenths / 10) +
                   (tenths % 10 ? "." + std::to_string(tenths % 10) : "") + " %";
    }
    return {{"the British method prints no factor for {share} defective results; it has {printed}",
             {percent_of("share", percent), word("printed", printed)}},
            {{"choose one of these as 'requirements.defective'", {}}}};
}

Phrase too_few_by_bre(const StrengthRecords& records, const BritishTables& tables) {
    return {"The British method counts a deviation of results from {least} tests on; the record "
            "has {tests}, and the deviation without results is taken.",
            {quantity("least", {tables.least_tests.value, Measure::count}),
             quantity("tests", {double(records.tests), Measure::count})}};
}

} // namespace

Outcome<double> british_target_mpa(const Mix& mix, double entrained_air_percent, const Tables& all,
                                   Worksheet& worksheet) {
    const BritishTables& tables = *all.method.british;
    const Requirements& asked = mix.requirements;
    const auto cube_mpa = specified_cube_mpa(asked, all.method.name);
    if (!cube_mpa) {
        return cube_mpa.why();
    }
    const DefectiveFactor* factor = factor_of(asked.defective_percent, tables);
    if (!factor) {
        return no_factor(asked.defective_percent, tables);
    }
    const AverageStrengthRules& rules = all.code->average_strength;
    const auto why_not = set_aside(asked, tables.least_tests.value, rules);
    const OwnOrAssumed deviation =
        deviation_of(asked, asked.records && !why_not, *cube_mpa, tables);
    const double margin_mpa = factor->factor * deviation.mpa;
    const double lost = tables.air_strength_share.value / 100 * entrained_air_percent;
    const double target_mpa = (*cube_mpa + margin_mpa) / (1 - lost);
    worksheet.record([&] {
        const Source& source = lost > 0
                                   ? tables.air_strength_share.source
                                   : (deviation.own ? factor->source : tables.deviation_mpa.source);
        std::string text = "cubes: the specified {strength} and {factor} times the deviation of "
                           "{deviation}, which is {whose}, for {share} defective";
        if (lost > 0) {
            text += "; over {left} for {air} of entrained air";
        }
        return Step{.quantity = "required_average_strength",
                    .value = target_mpa,
                    .measure = Measure::strength,
                    .provenance = Provenance::code,
                    .reason = {std::move(text),
                               {strength("strength", *cube_mpa),
                                quantity("factor", {factor->factor, Measure::ratio}),
                                strength("deviation", deviation.mpa),
                                word("whose", deviation.own ? "that of the records"
                                                            : "the one without results"),
                                percent_of("share", asked.defective_percent),
                                quantity("left", {1 - lost, Measure::ratio}),
                                percent_of("air", entrained_air_percent)}},
                    .source = source,
                    .marks = with_confidence({}, source)};
    });
    if (why_not) {
        worksheet.caution([&] {
            return *why_not == SetAside::too_few_tests ? too_few_by_bre(*asked.records, tables)
                                                       : why_set_aside(*why_not, asked, rules);
        });
    }
    return target_mpa;
}

} // namespace boardmark::core
