#include <boardmark/core/basis/tables.hpp>

#include "../basis/conversions.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../checks/remembered_limit.hpp"
#include "stripping_checks.hpp"

namespace boardmark::core {
namespace {

/// Findings in the order in which they are told.
struct ColdFindings {
    Verdict verdict = Verdict::holds;
    Phrase message = {};

    void add(Verdict found, const Phrase& phrase) {
        verdict = worse(verdict, found);
        message.text += (message.text.empty() ? "" : "; ") + phrase.text;
        message.arguments.insert(message.arguments.end(), phrase.arguments.begin(),
                                 phrase.arguments.end());
    }
};

Argument cold_degrees(const char* name, double celsius) {
    return quantity(name, {celsius, Measure::temperature});
}

Argument cold_hours(const char* name, double value) {
    return quantity(name, {value, Measure::duration});
}

void find_days(const Wall& wall, const ColdPlan& plan, ColdFindings& found) {
    const double until_h = *wall.placing.protected_until_h;
    const std::vector<Argument> figures{cold_hours("until", until_h),
                                        quantity("days", {plan.days, Measure::age}),
                                        quantity("loaded", {plan.days_if_loaded, Measure::age})};
    if (below(until_h, hours_of_day * plan.days)) {
        found.add(Verdict::fails, {"protected for {until}; {days} are needed", figures});
    } else if (!plan.loaded && below(until_h, hours_of_day * plan.days_if_loaded)) {
        found.add(Verdict::watch,
                  {"protected for {until}; {days} are needed without a load, {loaded} where "
                   "backfill or a load comes on it early, and 'loaded_after' is not stated",
                   figures});
    } else {
        found.add(Verdict::holds, {"protected for {until}; {days} are needed", figures});
    }
}

void find_warmth(const Wall& wall, const ColdPlan& plan, ColdFindings& found) {
    const double held_c = *wall.placing.held_at_c;
    if (below(held_c, plan.least_c.value)) {
        found.add(Verdict::fails,
                  {"held at {held}, at least {least} for the thinnest section",
                   {cold_degrees("held", held_c), cold_degrees("least", plan.least_c.value)}});
    }
    if (plan.fall_k && above(*plan.fall_k, plan.most_fall_k.value)) {
        found.add(Verdict::watch,
                  {"from {warm} to {coldest} is a fall of more than {fall}: let it cool slowly, by "
                   "no more than that in the first 24 h after the protection ends",
                   {cold_degrees("warm", held_c), cold_degrees("coldest", plan.coldest_c),
                    quantity("fall", {plan.most_fall_k.value, Measure::temperature_difference})}});
    }
}

/// Before it first freezes it must bear that; where the forecast is not stated, frost may come.
void find_frost(const Wall& wall, const YoungConcrete& young, const ColdPlan& plan,
                ColdFindings& found) {
    const double until_h = *wall.placing.protected_until_h;
    const Argument needed = quantity("frost", {plan.frost_strength_mpa, Measure::strength});
    if ((!plan.freezes && young.forecast) ||
        measured_by(wall.placing, plan.frost_strength_mpa, until_h)) {
        return;
    }
    if (!plan.frost_strength_h) {
        found.add(Verdict::watch, {"it is not known when it has the {frost} that the concrete "
                                   "needs before it freezes: strength tests decide",
                                   {needed}});
        return;
    }
    const bool reached = !below(until_h, *plan.frost_strength_h);
    found.add(reached ? Verdict::watch : Verdict::fails,
              {reached ? "the {frost} that the concrete needs before it freezes is expected after "
                         "{frost_age} at the temperature held, an estimate: strength tests decide"
                       : "the {frost} that the concrete needs before it freezes is not expected "
                         "before {frost_age} at the temperature held",
               {needed, cold_hours("frost_age", *plan.frost_strength_h)}});
}

void find_slowness(const YoungConcrete& young, ColdFindings& found) {
    const bool slow = !young.binder_known || *young.pour.slag_percent > 0 ||
                      *young.pour.fly_ash_percent > 0 || young.pour.retards != false;
    if (slow) {
        found.add(Verdict::watch, {"slag, ash, or an admixture that delays or may delay setting "
                                   "needs more days: strength tests decide",
                                   {}});
    }
}

/// What is not known of the air, or contradicts itself: a forecast of the lowest is no warmer than
/// the air that is there.
void find_open_air(const Wall& wall, const YoungConcrete& young, ColdFindings& found) {
    if (!young.forecast) {
        found.add(Verdict::watch, {"'lowest_air', the forecast, is not stated", {}});
        return;
    }
    if (!young.placing_air_c) {
        found.add(Verdict::watch, {"'air_temperature', the air at placing, is not stated", {}});
        return;
    }
    if (above(*wall.placing.lowest_air_c, *young.placing_air_c)) {
        found.add(Verdict::watch,
                  {"'lowest_air' of {forecast} is warmer than the {at_placing} at placing, which "
                   "contradicts it: the colder counts",
                   {cold_degrees("forecast", *wall.placing.lowest_air_c),
                    cold_degrees("at_placing", *young.placing_air_c)}});
    }
}

/// Half a plan is not checked either, and fails where its half breaks a limit; where it freezes
/// none would do.
void find_no_protection(const Wall& wall, const ColdPlan& plan, double cold_c,
                        ColdFindings& found) {
    const char* missing = wall.placing.held_at_c           ? "'protected_until' is not stated"
                          : wall.placing.protected_until_h ? "'held_at' is not stated"
                                                           : "no protection is stated";
    found.add(plan.freezes ? Verdict::fails : Verdict::not_checked,
              {"air of {value}, below {limit}, and {missing} ('held_at', 'protected_until'): "
               "{least} or more is needed for {days}",
               {cold_degrees("value", plan.coldest_c), cold_degrees("limit", cold_c),
                word("missing", missing), cold_degrees("least", plan.least_c.value),
                quantity("days", {plan.days, Measure::age})}});
}

Check open_weather(const YoungConcrete& young, Check check) {
    check.verdict = Verdict::not_checked;
    check.message = {young.forecast
                         ? "'placing.air_temperature' is not stated: whether it is placed below "
                           "{cold} is not known"
                     : young.coldest_air_c
                         ? "'placing.lowest_air' is not stated: no forecast says whether it stays "
                           "above {cold} after placing"
                         : "neither 'placing.air_temperature' nor 'placing.lowest_air' is stated: "
                           "whether it is placed or hardens below {cold} is not known",
                     {cold_degrees("cold", check.limit->low.value_or(0))}};
    check.limit = std::nullopt;
    return check;
}

} // namespace

void add_cold_check(const Wall& wall, const YoungConcrete& young, const AfterPlacing& after,
                    const Tables& tables, std::vector<Check>& checks) {
    const double cold_c = tables.weather->cold_air_c.value;
    Check check{.id = check_ids::cold_protection,
                .verdict = Verdict::holds,
                .limit = Limit{.low = cold_c, .high = std::nullopt},
                .measure = Measure::temperature,
                .requirement = "cold",
                .source = tables.weather->cold_air_c.source};
    if (!after.cold) {
        if (!young.forecast || !young.placing_air_c) {
            checks.push_back(open_weather(young, std::move(check)));
            return;
        }
        check.value = young.coldest_air_c;
        ColdFindings found;
        found.add(Verdict::holds,
                  {"no air below {cold} at placing, nor forecast: at least {value}",
                   {cold_degrees("cold", cold_c), cold_degrees("value", *young.coldest_air_c)}});
        find_open_air(wall, young, found);
        check.verdict = found.verdict;
        check.message = std::move(found.message);
        watch_what_is_from_memory(check);
        checks.push_back(std::move(check));
        return;
    }
    ColdFindings found;
    if (young.is_protected) {
        find_days(wall, *after.cold, found);
        find_warmth(wall, *after.cold, found);
        find_frost(wall, young, *after.cold, found);
        find_slowness(young, found);
        find_open_air(wall, young, found);
        check.measure = Measure::duration;
        check.value = wall.placing.protected_until_h;
        check.limit = Limit{.low = hours_of_day * after.cold->days, .high = std::nullopt};
    } else {
        find_no_protection(wall, *after.cold, cold_c, found);
        if (wall.placing.protected_until_h) {
            find_days(wall, *after.cold, found);
        }
        if (wall.placing.held_at_c) {
            find_warmth(wall, *after.cold, found);
        }
        find_open_air(wall, young, found);
        check.value = after.cold->coldest_c;
    }
    check.source = tables.placing->curing.protection.source;
    check.verdict = found.verdict;
    check.message = std::move(found.message);
    watch_what_is_from_memory(check);
    checks.push_back(std::move(check));
}

} // namespace boardmark::core
