#include "own_line_checks.hpp"

#include "../own_line.hpp"
#include "../phrases.hpp"
#include "checks.hpp"
#include "exposure_limits.hpp"

namespace boardmark::core {
namespace {

/// What to say behind the fall of a line.
std::string doubt_of(const StrengthLine& line) {
    if (use_of(line) == LineUse::none) {
        return line.slope < 0 ? ": the fall may be chance, and no ratio is read from this line; "
                                "trials over a wider range of w/cm settle it"
                              : ": that is no fall, and no ratio is read from this line; check the "
                                "results, and test trials over a wider range of w/cm";
    }
    std::string doubt;
    if (!surely_falls(line)) {
        doubt = ": with so few results the fall may be chance; trials over a wider range of w/cm "
                "settle it";
    }
    if (line.r_squared < least_r_squared) {
        doubt +=
            (doubt.empty() ? ": " : "; ") + std::string{"the scatter hides most of what w/cm does"};
    }
    return doubt;
}

Check records_check(const OwnLine& own) {
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

} // namespace

Check line_check(const StrengthLine& line) {
    Check check{.id = "strength.line",
                .verdict = use_of(line) == LineUse::read ? Verdict::holds : Verdict::watch,
                .measure = Measure::ratio,
                .requirement = "strength against w/cm",
                .source = {},
                .message = fall_of(line)};
    check.message.text += doubt_of(line);
    return check;
}

Checks check_own_line(const CheckContext& context) {
    const auto& own = context.requirements.strength_line;
    if (!own) {
        return {};
    }
    Checks checks{line_check(own->line)};
    if (own->judged) {
        checks.push_back(records_check(*own));
    }
    return checks;
}

} // namespace boardmark::core
