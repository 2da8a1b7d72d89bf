#include <boardmark/core/wall/cast_part.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "stripping_checks.hpp"
#include "wall_checks.hpp"

namespace boardmark::core {
namespace {

Argument face_time(const char* name, double hours) {
    return quantity(name, {hours, Measure::duration});
}

void append_clauses(const std::vector<Phrase>& more, Phrase& message) {
    for (const Phrase& one : more) {
        append_clause(one, message);
    }
}

/// One part's faces at the age that the file states.
struct StrippedFace {
    const Wall& wall;
    const YoungConcrete& young;
    const AfterPlacing& after;
    const CuringRules& rules;
    double stated_h;
};

/// A strength that was measured decides; it must also do where frost may come unforeseen.
void judge_measured(const StrippedFace& face, Check& check) {
    const double measured_mpa = *face.wall.placing.strip_strength_mpa;
    const double needed_mpa = face.after.strip.needed_mpa;
    const bool enough = !below(measured_mpa, needed_mpa);
    const bool in_any_weather =
        !below(measured_mpa, face.rules.strip_strength_in_frost_mpa.value) ||
        (face.young.forecast && face.young.placing_air_c);
    const bool early = below(face.stated_h, face.rules.strip_after_h.value);
    check.measure = Measure::strength;
    check.value = measured_mpa;
    check.limit = Limit{.low = needed_mpa, .high = std::nullopt};
    check.source = face.rules.strip_strength_mpa.source;
    check.verdict = !enough                    ? Verdict::fails
                    : early || !in_any_weather ? Verdict::watch
                                               : Verdict::holds;
    check.message = {"{value} measured when stripped after {age}; the face needs {limit}",
                     {quantity("value", {measured_mpa, Measure::strength}),
                      face_time("age", face.stated_h),
                      quantity("limit", {needed_mpa, Measure::strength})}};
    if (enough && early) {
        append_clauses({{"sooner than the {rule} of the rule",
                         {face_time("rule", face.rules.strip_after_h.value)}}},
                       check.message);
    }
    if (enough && !in_any_weather) {
        append_clauses(
            {{face.young.forecast
                  ? "in frost the face needs {frost}, and 'air_temperature' is not stated"
                  : "in frost the face needs {frost}, and 'lowest_air' is not stated",
              {quantity("frost",
                        {face.rules.strip_strength_in_frost_mpa.value, Measure::strength})}}},
            check.message);
    }
}

void judge_too_soon(const StrippedFace& face, Check& check) {
    const auto earliest_h = face.after.strip.earliest_h();
    check.verdict = Verdict::fails;
    check.value = face.stated_h;
    if (earliest_h) {
        check.limit = Limit{.low = earliest_h, .high = std::nullopt};
    }
    check.message =
        earliest_h
            ? Phrase{"stripped after {value}, not before {limit}: {rule} in air above {air}, and "
                     "{needed} that the face needs",
                     {no_less_than("limit", {*earliest_h, Measure::duration})}}
            : Phrase{"stripped after {value}; {counted} of it in air above {air} count, and {rule} "
                     "are needed; the {needed} that the face needs is neither measured "
                     "('strip_strength') nor expected: keep it warmer, or longer",
                     {face_time("counted",
                                counted_hours(face.young.lift.air, face.stated_h, face.rules))}};
    check.message.arguments.insert(
        check.message.arguments.end(),
        {face_time("value", face.stated_h), face_time("rule", face.rules.strip_after_h.value),
         quantity("air", {face.rules.strip_air_c.value, Measure::temperature}),
         quantity("needed", {face.after.strip.needed_mpa, Measure::strength})});
    if (!earliest_h) {
        append_clauses(face.after.strip_open, check.message);
    }
}

void judge_by_rules(const StrippedFace& face, Check& check) {
    const double counted_h = counted_hours(face.young.lift.air, face.stated_h, face.rules);
    const bool by_time = !below(counted_h, face.rules.strip_after_h.value);
    const bool surely = !below(counted_h, face.rules.strip_surely_after_h.value);
    std::vector<Phrase> doubts = doubts_of_time(face.young, face.rules);
    if (!surely) {
        doubts.push_back(
            {"after {sure} such hours time alone is enough; until then strength tests decide",
             {face_time("sure", face.rules.strip_surely_after_h.value)}});
    }
    if (face.young.lift.frost) { // the hours are a rule of mild weather
        doubts.push_back(
            {"in frost the face needs {needed}, which hours do not show: 'placing.strip_strength', "
             "measured when it is stripped, is not stated",
             {}});
    }
    check.value = face.stated_h;
    check.limit = Limit{.low = face.after.strip.earliest_h(), .high = std::nullopt};
    check.verdict = doubts.empty() ? Verdict::holds : Verdict::watch;
    check.message = {by_time ? "stripped after {value}, {counted} of it in air above {air}; one "
                               "age for every face, or colours differ"
                             : "stripped after {value}; the {needed} that the face needs is "
                               "expected by then, an estimate on the slow side that strength tests "
                               "must confirm; one age for every face, or colours differ",
                     {face_time("value", face.stated_h), face_time("counted", counted_h),
                      quantity("air", {face.rules.strip_air_c.value, Measure::temperature}),
                      quantity("needed", {face.after.strip.needed_mpa, Measure::strength})}};
    if (by_time) {
        check.source = (surely ? face.rules.strip_surely_after_h : face.rules.strip_after_h).source;
        append_clauses(doubts, check.message);
    } else {
        check.source = face.rules.strip_strength_mpa.source;
    }
}

/// At whatever age: a strength below what the face needs is too little.
void judge_without_age(const Wall& wall, const AfterPlacing& after, const CuringRules& rules,
                       Check& check) {
    const auto& measured_mpa = wall.placing.strip_strength_mpa;
    const double needed_mpa = after.strip.needed_mpa;
    if (!measured_mpa || !below(*measured_mpa, needed_mpa)) {
        check.message = {"'placing.strip_after' is not stated, the one age of every face", {}};
        return;
    }
    check.verdict = Verdict::fails;
    check.measure = Measure::strength;
    check.value = measured_mpa;
    check.limit = Limit{.low = needed_mpa, .high = std::nullopt};
    check.source = rules.strip_strength_mpa.source;
    check.message = {"{value} measured when stripped; the face needs {limit}",
                     {quantity("value", {*measured_mpa, Measure::strength}),
                      quantity("limit", {needed_mpa, Measure::strength})}};
}

Check face_check(const Wall& wall, const YoungConcrete& young, const AfterPlacing& after,
                 const CuringRules& rules) {
    Check check{.id = check_ids::stripping_age,
                .verdict = Verdict::not_checked,
                .measure = Measure::duration,
                .requirement = "stripping",
                .source = rules.strip_after_h.source};
    if (!wall.placing.strip_after_h) {
        judge_without_age(wall, after, rules, check);
        return check;
    }
    const StrippedFace face{wall, young, after, rules, *wall.placing.strip_after_h};
    const auto earliest_h = after.strip.earliest_h();
    if (wall.placing.strip_strength_mpa) {
        judge_measured(face, check);
    } else if (young.lift.air.empty()) {
        check.message = {"the air after placing is not stated ('placing.air_temperature', "
                         "'placing.lowest_air'); strength tests decide",
                         {}};
    } else if (!young.concrete_c && !below(counted_hours(young.lift.air, face.stated_h, rules),
                                           rules.strip_after_h.value)) {
        check.message = {"'placing.concrete_temperature' is not stated, and cold concrete gains "
                         "strength slowly; strength tests decide",
                         {}};
    } else if (!earliest_h || below(face.stated_h, *earliest_h)) {
        judge_too_soon(face, check);
    } else {
        judge_by_rules(face, check);
    }
    return check;
}

} // namespace

bool measured_by(const WallPlacing& placing, double needed_mpa, double age_h) {
    return placing.strip_strength_mpa && placing.strip_after_h &&
           !below(*placing.strip_strength_mpa, needed_mpa) && !above(*placing.strip_after_h, age_h);
}

void append_clause(const Phrase& clause, Phrase& message) {
    message.text += "; " + clause.text;
    message.arguments.insert(message.arguments.end(), clause.arguments.begin(),
                             clause.arguments.end());
}

void add_face_checks(const Wall& wall, const YoungConcrete& young, const AfterPlacing& after,
                     const CuringRules& rules, std::vector<Check>& checks) {
    const Check check = face_check(wall, young, after, rules);
    for (const CastPart& part : cast_parts(wall)) {
        checks.push_back(of_wall(part.name, check));
    }
}

} // namespace boardmark::core
