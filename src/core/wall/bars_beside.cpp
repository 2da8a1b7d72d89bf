#include "bars_beside.hpp"

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"

namespace boardmark::core {

void hold_cover_at_grooves(const JointLayout& joints, const Reinforcement& bars, Check& cover) {
    if (joints.positions_m.empty() || !bars.cover_mm || !cover.limit || !cover.limit->low) {
        return;
    }
    const double groove_mm = joints.groove_mm / 2; // of one face
    const double left_mm = *bars.cover_mm - groove_mm;
    if (!below(left_mm, *cover.limit->low) || cover.verdict == Verdict::fails) {
        return;
    }
    const bool reached = !above(left_mm, 0);
    cover.verdict = worse(cover.verdict, reached ? Verdict::fails : Verdict::watch);
    cover.message.text += reached ? "; the grooves of the contraction joints, {groove} deep in "
                                    "each face, reach the bars"
                                  : "; at the grooves of the contraction joints, {groove} deep in "
                                    "each face, {left} is left: the bars stop or move there, and "
                                    "the drawings must show how";
    cover.message.arguments.push_back(quantity("groove", {groove_mm, Measure::length}));
    cover.message.arguments.push_back(quantity("left", {left_mm, Measure::length}));
}

void watch_rule_of_another_code(const CodeTables& code, Check& check) {
    const bool own_rule = code.name.starts_with("ACI ") && !code.of_user;
    if (own_rule || check.verdict != Verdict::holds) {
        return;
    }
    check.verdict = Verdict::watch;
    check.message.text += "; by {rule} in place of the rule of {code}, which is not known here and "
                          "may ask more";
    check.message.arguments.push_back(word("rule", check.source.citation));
    check.message.arguments.push_back(word("code", code.name));
}

} // namespace boardmark::core
