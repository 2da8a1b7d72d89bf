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

Verdict verdict_on(const JudgedResults& judged) {
    return !judged.broken.empty()   ? Verdict::watch
           : !judged.open.empty()   ? Verdict::not_checked
           : judged.watched.empty() ? Verdict::holds
                                    : Verdict::watch;
}

/// Results from which the ratio is read are judged as tests of production are.
void tell_results(const OwnLine& own, Check& told) {
    const JudgedResults& judged = *own.judged;
    told.requirement = "acceptance of the results";
    told.message = {
        "", {quantity("tests", {double(judged.tests), Measure::count}), word("file", own.file)}};
    const auto tell = [&](const char* text, const std::vector<std::string>& ids) {
        told.message.text = text;
        told.message.arguments.push_back(word("ids", joined(ids)));
    };
    if (!judged.broken.empty()) {
        tell("the results in {file} are NOT ACCEPTED: {ids}; 'boardmark strength' says why",
             judged.broken);
    } else if (!judged.open.empty()) {
        tell("whether the results of production in {file} are accepted is open: {ids}; 'boardmark "
             "strength' says why",
             judged.open);
    } else if (!judged.watched.empty()) {
        tell("the {tests} tests of production in {file} are accepted with a doubt: {ids}; "
             "'boardmark strength' says which",
             judged.watched);
    } else {
        tell("the {tests} tests of production in {file} meet the rules of acceptance", {});
    }
}

/// A record counts by the strength of its concrete and by its age. One that is silent on either may
/// be one that does not count, and then the average is higher.
Phrase silent_message(const CheckContext& context, const CodeAverage& by_code) {
    const AverageStrengthRules& rules = context.code.average_strength;
    Requirements without = context.requirements;
    without.records = std::nullopt;
    return {"the strength record counts if its concrete is within {distance} of the "
            "specified strength and it is not older than {oldest}: "
            "'requirements.strength_records' does not state {keys}; without a record "
            "the average is {without}, with it {with}",
            {quantity("distance", {rules.record_strength_distance_mpa, Measure::strength}),
             quantity("oldest", {rules.oldest_record_d, Measure::age}),
             word("keys", joined(by_code.record_lacks())),
             quantity("without", {code_average(without, rules).strength_mpa, Measure::strength}),
             quantity("with", {by_code.strength_mpa, Measure::strength})}};
}

/// Behind what was said of the results, where something was: two findings on the records are one
/// check.
void append_silent(const CheckContext& context, const CodeAverage& by_code, Check& told) {
    Phrase silent = silent_message(context, by_code);
    const bool alone = told.message.text.empty();
    told.requirement += std::string{alone ? "" : ", "} + "whether the record counts";
    told.source = by_code.source;
    told.message.text += (alone ? "" : "; ") + silent.text;
    std::ranges::move(silent.arguments, std::back_inserter(told.message.arguments));
}

} // namespace

void check_strength_records(const CheckContext& context, Findings& findings) {
    const auto& own = context.requirements.strength_line;
    const bool judged = own && own->judged;
    const CodeAverage by_code = code_average(context.requirements, context.code.average_strength);
    const bool silent = by_code.record_is_silent();
    if (!judged && !silent) {
        return;
    }
    const Verdict of_results = judged ? verdict_on(*own->judged) : Verdict::holds;
    findings.add({.id = check_ids::strength_records,
                  .verdict = silent ? worse(of_results, Verdict::not_checked) : of_results},
                 [&](Check& told) {
                     if (judged) {
                         tell_results(*own, told);
                     }
                     if (silent) {
                         append_silent(context, by_code, told);
                     }
                 });
}

} // namespace boardmark::core
