#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../code/required_strength.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

/// Results from which the ratio is read are judged as tests of production are.
Check accepted_results(const OwnLine& own) {
    const JudgedResults& judged = *own.judged;
    const bool accepted = judged.broken.empty();
    return {.id = "strength.records",
            .verdict = accepted ? Verdict::holds : Verdict::watch,
            .requirement = "acceptance of the results",
            .message = {accepted ? "the {tests} tests of production in {file} meet the rules of "
                                   "acceptance"
                                 : "the results in {file} are NOT ACCEPTED: {ids}; 'boardmark "
                                   "strength' says why",
                        {quantity("tests", {double(judged.tests), Measure::count}),
                         word("file", own.file), word("ids", joined(judged.broken))}}};
}

/// A record counts by the strength of its concrete and by its age. One that is silent on either may
/// be one that does not count, and then the average is higher.
Check silent_record(const CheckContext& context, const CodeAverage& by_code) {
    const AverageStrengthRules& rules = context.tables.code.average_strength;
    Requirements without = context.requirements;
    without.records = std::nullopt;
    return {
        .id = "strength.records",
        .verdict = Verdict::not_checked,
        .requirement = "whether the record counts",
        .source = by_code.source,
        .message = {
            "the strength record counts if its concrete is within {distance} of the "
            "specified strength and it is not older than {oldest}: "
            "'requirements.strength_records' does not state {keys}; without a record "
            "the average is {without}, with it {with}",
            {quantity("distance", {rules.record_strength_distance_mpa, Measure::strength}),
             quantity("oldest", {rules.oldest_record_d, Measure::age}),
             word("keys", joined(by_code.record_lacks)),
             quantity("without", {code_average(without, rules).strength_mpa, Measure::strength}),
             quantity("with", {by_code.strength_mpa, Measure::strength})}}};
}

/// Two findings on the records are one check.
void join(Check further, Check& check) {
    check.verdict = worse(check.verdict, further.verdict);
    check.requirement += ", " + further.requirement;
    check.source = further.source;
    check.message.text += "; " + further.message.text;
    std::ranges::move(further.message.arguments, std::back_inserter(check.message.arguments));
}

} // namespace

Checks check_strength_records(const CheckContext& context) {
    const auto& own = context.requirements.strength_line;
    const CodeAverage by_code =
        code_average(context.requirements, context.tables.code.average_strength);
    Checks checks;
    if (own && own->judged) {
        checks.push_back(accepted_results(*own));
    }
    if (by_code.record_lacks.empty()) {
        return checks;
    }
    Check silent = silent_record(context, by_code);
    if (checks.empty()) {
        return {std::move(silent)};
    }
    join(std::move(silent), checks.front());
    return checks;
}

} // namespace boardmark::core
