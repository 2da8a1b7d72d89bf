#include "own_line_checks.hpp"

#include "../basis/phrases.hpp"
#include "../strength/own_line.hpp"
#include "checks.hpp"

namespace boardmark::core {
namespace {

/// What to say behind the fall of a line.
std::string doubt_of(const StrengthLine& line) {
    if (use_of(line) == LineUse::none) {
        return line.slope < 0
                   ? ": the fall may be chance, and no ratio is read from this line; "
                     "trials over a wider range of w/cm settle it"
                   : ": strength must fall as w/cm rises, so no ratio is read from this line; "
                     "check the results, and test trials over a wider range of w/cm";
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

} // namespace

void check_fall(const StrengthLine& line, Findings& findings) {
    findings.add({.id = check_ids::strength_line,
                  .verdict = use_of(line) == LineUse::read ? Verdict::holds : Verdict::watch,
                  .measure = Measure::ratio},
                 [&](Check& told) {
                     told.requirement = "strength against w/cm";
                     told.message = fall_of(line);
                     told.message.text += doubt_of(line);
                 });
}

void check_own_line(const CheckContext& context, Findings& findings) {
    if (const auto& own = context.requirements.strength_line) {
        check_fall(own->line, findings);
    }
}

} // namespace boardmark::core
