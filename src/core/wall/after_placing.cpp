#include <boardmark/core/concrete_temperatures.hpp>
#include <boardmark/core/proportion.hpp>
#include <boardmark/core/wall_plan.hpp>

#include "../phrases.hpp"
#include "../tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// "II" of "ASTM C150 II"; of several cements the one that is cured longest counts, so each is
/// asked.
std::string type_of(const std::string& standard) {
    return standard.substr(standard.rfind(' ') + 1);
}

TypicalFigure curing_of(const Proportions& proportions, const CuringRules& rules) {
    TypicalFigure longest = curing_time_d("", false, rules);
    for (const Ingredient* ingredient : of_role(proportions, Role::binder)) {
        const TypicalFigure own =
            curing_time_d(type_of(ingredient->material->standard), false, rules);
        longest = own.value > longest.value ? own : longest;
    }
    return longest;
}

/// The curve of the slowest cement: no paper of the mix says how fast its own is.
const EnStrengthGain& slowest(const CuringRules& rules) {
    return std::ranges::max_element(rules.en_strength_gain, {},
                                    [](const auto& gain) { return gain.second.s; })
        ->second;
}

/// Why the curve of strength by age does not hold for this concrete; nothing where it does.
std::optional<Phrase> why_no_curve(const Wall& wall, const Proportions& proportions,
                                   const Tables& tables) {
    constexpr double age_of_curve_d = 28;
    const FormCase pour = form_case(wall, proportions, 1, 1, tables);
    if (pour.cement != FormCement::portland) {
        return Phrase{"by strength: its curve holds for portland cement Type I to III alone", {}};
    }
    if (pour.retards != false) {
        return Phrase{"by strength: an admixture may delay setting ('retards' is not 'no')", {}};
    }
    if (requirements_of(wall.mix).strength_age_d > age_of_curve_d) {
        return Phrase{"by strength: its curve begins from the strength at 28 d", {}};
    }
    const ConcreteTemperatures known = concrete_temperatures(wall, proportions);
    if (!known.air || !known.concrete) {
        return Phrase{"by strength: the temperatures of air and concrete are not both stated", {}};
    }
    return std::nullopt;
}

/// The stated air, the colder of both files, is taken to last; the heat of the cement is left out.
StrippedLift stripped_lift(const ConcreteTemperatures& known) {
    constexpr double long_enough_h = 1000;
    StrippedLift lift;
    if (known.air) {
        lift.air = {{long_enough_h, known.air->colder.value_c}};
        lift.frost = known.air->colder.value_c <= 0;
    }
    return lift;
}

void add_strength(const Wall& wall, const ConcreteTemperatures& known, const CuringRules& rules,
                  StrippedLift& lift) {
    const double colder_c = std::min(known.air->colder.value_c, known.concrete->colder.value_c);
    lift.concrete = {{lift.air.front().hours, colder_c}};
    lift.strength_28d_mpa = requirements_of(wall.mix).strength_mpa;
    lift.gain = slowest(rules);
}

Argument needed(const StrippingAge& age) {
    return quantity("needed", {age.needed_mpa, Measure::strength});
}

Check not_told(Check check, const AfterPlacing& after) {
    check.message = {"no rule tells it; tests of strength decide", {}};
    for (const Phrase& open : after.strip_open) {
        check.message.text += "; " + open.text;
        check.message.arguments.insert(check.message.arguments.end(), open.arguments.begin(),
                                       open.arguments.end());
    }
    return check;
}

Check stripping_check(double stated_h, const AfterPlacing& after, const CuringRules& rules) {
    Check check{.id = "stripping.age",
                .verdict = Verdict::not_checked,
                .measure = Measure::duration,
                .requirement = "stripping",
                .source = rules.strip_after_h.source};
    const auto earliest_h = after.strip.earliest_h();
    if (!earliest_h) {
        return not_told(std::move(check), after);
    }
    const bool by_time = after.strip.by_time_h == earliest_h;
    const Verdict kept = by_time ? Verdict::holds : Verdict::watch;
    check.value = stated_h;
    check.limit = Limit{.low = *earliest_h, .high = std::nullopt};
    check.verdict = below(stated_h, *earliest_h) ? Verdict::fails : kept;
    check.source = by_time ? rules.strip_after_h.source : rules.strip_strength_mpa.source;
    check.message = {by_time ? "stripped after {value}, at least {limit} in air above {air}; one "
                               "age for every lift, or colours differ"
                             : "stripped after {value}; the face needs {needed}, expected from "
                               "{limit} on: an estimate on the slow side that tests of strength "
                               "must bear out; one age for every lift, or colours differ",
                     {quantity("value", {stated_h, Measure::duration}),
                      quantity("limit", {*earliest_h, Measure::duration}),
                      quantity("air", {rules.strip_air_c.value, Measure::temperature}),
                      needed(after.strip)}};
    return check;
}

} // namespace

AfterPlacing after_placing(const Wall& wall, const Proportions& proportions, const Tables& tables,
                           std::vector<Check>& checks) {
    const CuringRules& rules = tables.placing.curing;
    AfterPlacing after{.curing_d = curing_of(proportions, rules)};
    const ConcreteTemperatures known = concrete_temperatures(wall, proportions);
    StrippedLift lift = stripped_lift(known);
    const auto no_curve = why_no_curve(wall, proportions, tables);
    if (!no_curve) {
        add_strength(wall, known, rules, lift);
    }
    after.strip = stripping_age(lift, rules);
    if (!after.strip.by_time_h) {
        after.strip_open.push_back(
            {"by time: only hours in air above {air} count",
             {quantity("air", {rules.strip_air_c.value, Measure::temperature})}});
    }
    if (no_curve) {
        after.strip_open.push_back(*no_curve);
    }
    if (wall.placing.strip_after_h) {
        checks.push_back(stripping_check(*wall.placing.strip_after_h, after, rules));
    }
    return after;
}

} // namespace boardmark::core
