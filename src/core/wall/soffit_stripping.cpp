#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "stripping_checks.hpp"
#include "wall_checks.hpp"

namespace boardmark::core {
namespace {

Argument soffit_time(const char* name, double hours) {
    return quantity(name, {hours, Measure::duration});
}

std::optional<double> struck_h(const WallPlacing& placing) {
    return placing.soffit_strip_after_h ? placing.soffit_strip_after_h : placing.strip_after_h;
}

/// What is still owed before a soffit's verdict may be `holds`.
struct Owed {
    Verdict verdict = Verdict::holds;
    std::vector<Phrase> why = {};

    void add(Verdict found, Phrase phrase) {
        verdict = worse(verdict, found);
        why.push_back(std::move(phrase));
    }
};

struct StruckSoffit {
    const Wall& wall;
    const YoungConcrete& young;
    const SoffitAge& age;
    const CuringRules& rules;
    double stated_h;
};

void hold_against_time(const StruckSoffit& struck, Owed& owed) {
    const Soffit& soffit = struck.age.soffit;
    const std::vector<Argument> rule{
        quantity("days", {*struck.age.days, Measure::age}),
        quantity("span", {*soffit.span_m, Measure::line_length}),
        quantity("air", {struck.rules.strip_air_c.value, Measure::temperature}),
        soffit_time("counted",
                    counted_hours(struck.young.lift.air, struck.stated_h, struck.rules))};
    if (struck.young.lift.air.empty()) {
        owed.add(Verdict::not_checked,
                 {"{days} in air above {air} are needed for a clear span of {span}: the air after "
                  "placing is not stated ('placing.air_temperature', 'placing.lowest_air')",
                  rule});
        return;
    }
    const bool long_enough = struck.age.by_time_h && !below(struck.stated_h, *struck.age.by_time_h);
    owed.add(long_enough ? Verdict::holds : Verdict::fails,
             {long_enough ? "{days} in air above {air} are needed for a clear span of {span}, and "
                            "{counted} count"
                          : "{days} in air above {air} are needed for a clear span of {span}, and "
                            "only {counted} count",
              rule});
    if (!soffit.live_load_kpa && soffit.kind == SoffitKind::slab) {
        owed.add(Verdict::holds, {"'live_load' is not stated: the longer time is taken", {}});
    }
    if (struck.age.needed_mpa && struck.young.forecast && struck.young.placing_air_c) {
        return; // the strength settles what the concrete is made of
    }
    for (const Phrase& doubt : doubts_of_time(struck.young, struck.rules)) {
        owed.add(Verdict::watch, doubt);
    }
}

/// Whether air or concrete is known to be no warmer than the hours that the rule by time counts.
bool in_cold(const YoungConcrete& young, const CuringRules& rules) {
    const double counts_above_c = rules.strip_air_c.value;
    const auto slows = [&](std::optional<double> known_c) {
        return known_c && !above(*known_c, counts_above_c);
    };
    return slows(young.coldest_air_c) || slows(young.concrete_c);
}

/// Without a strength that the engineer asks, days decide, where there is a rule and no cold.
void hold_without_strength(const StruckSoffit& struck, Owed& owed) {
    if (struck.age.soffit.stands_out) {
        owed.add(Verdict::not_checked,
                 {"it is a cantilever, for which no rule by time exists: the engineer states "
                  "the strength ('placing.soffit_strength')",
                  {}});
    } else if (in_cold(struck.young, struck.rules)) {
        owed.add(Verdict::watch,
                 {"in cold the strength comes slower than days tell: the engineer states what the "
                  "concrete needs ('placing.soffit_strength'), and tests show it",
                  {}});
    }
}

void hold_against_strength(const StruckSoffit& struck, Owed& owed) {
    if (!struck.age.needed_mpa) {
        hold_without_strength(struck, owed);
        return;
    }
    const Argument needed = quantity("needed", {*struck.age.needed_mpa, Measure::strength});
    if (measured_by(struck.wall.placing, *struck.age.needed_mpa, struck.stated_h)) {
        owed.add(Verdict::holds, {"the {needed} that the engineer requires is measured", {needed}});
    } else if (struck.young.lift.concrete.empty()) {
        owed.add(Verdict::not_checked,
                 {"the {needed} that the engineer requires: 'placing.concrete_temperature' or the "
                  "air is not stated; strength tests decide",
                  {needed}});
    } else if (!struck.age.not_before_h || below(struck.stated_h, *struck.age.not_before_h)) {
        owed.add(
            Verdict::fails,
            struck.age.not_before_h
                ? Phrase{"the {needed} that the engineer requires is not expected before {reached}",
                         {needed, soffit_time("reached", *struck.age.not_before_h)}}
                : Phrase{"the {needed} that the engineer requires is never expected in such cold",
                         {needed}});
    } else if (!struck.age.by_strength_h) {
        owed.add(Verdict::not_checked,
                 {"the {needed} that the engineer requires: no curve gives its age for this "
                  "concrete, strength tests decide ('strip_strength')",
                  {needed}});
    } else {
        owed.add(Verdict::watch, {"the {needed} that the engineer requires is expected from "
                                  "{reached} on, an estimate that strength tests must confirm",
                                  {needed, soffit_time("reached", *struck.age.by_strength_h)}});
    }
}

Check soffit_check(const Wall& wall, const YoungConcrete& young, const SoffitAge& age,
                   const CuringRules& rules) {
    Check check{.id = check_ids::stripping_soffit,
                .verdict = Verdict::not_checked,
                .measure = Measure::duration,
                .requirement = "stripping",
                .source = rules.soffits.source};
    const auto stated_h = struck_h(wall.placing);
    const Phrase open_support{"'span' is not stated: the clear span between supports, 0 where it "
                              "rests on its whole underside",
                              {}};
    if (age.soffit.is_open() && !age.needed_mpa) {
        check.message = open_support;
        return check;
    }
    if (!stated_h) {
        check.message = {"'placing.soffit_strip_after' is not stated: when form and props of the "
                         "soffit are removed",
                         {}};
        return check;
    }
    const StruckSoffit struck{wall, young, age, rules, *stated_h};
    Owed owed;
    if (age.soffit.span_m) {
        hold_against_time(struck, owed);
    } else if (age.soffit.is_open()) {
        owed.add(Verdict::not_checked, open_support);
    }
    hold_against_strength(struck, owed);
    check.verdict = owed.verdict;
    if (owed.verdict != Verdict::not_checked) {
        check.value = *stated_h;
        if (const auto earliest_h = age.earliest_h()) { // none is where no hour counts
            check.limit = Limit{.low = earliest_h, .high = std::nullopt};
        }
    }
    check.message = {age.soffit.opening.empty() ? "soffit stripped after {value}"
                                                : "head of {opening} stripped after {value}",
                     {soffit_time("value", *stated_h), word("opening", age.soffit.opening)}};
    if (!wall.placing.soffit_strip_after_h) {
        check.message.text += ", the age of the faces, because 'soffit_strip_after' is not stated";
    }
    for (const Phrase& why : owed.why) {
        append_clause(why, check.message);
    }
    return check;
}

} // namespace

void add_soffit_checks(const Wall& wall, const YoungConcrete& young, const AfterPlacing& after,
                       const CuringRules& rules, std::vector<Check>& checks) {
    for (const SoffitAge& age : after.soffits) {
        checks.push_back(of_wall(age.soffit.part, soffit_check(wall, young, age, rules)));
    }
}

} // namespace boardmark::core
