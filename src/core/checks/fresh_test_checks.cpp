#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "air_at_placing.hpp"
#include "assumed_density.hpp"
#include "compare.hpp"
#include "remembered_limit.hpp"
#include "trial_checks.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

Verdict between_ends(double value, const Limit& limit) {
    return above(value, *limit.high) || below(value, *limit.low) ? Verdict::fails : Verdict::holds;
}

/// The slump nearest to placing, held against a limit.
Check slump_check(const Yield& yield, const Limit& limit, CheckId id, std::string why,
                  std::string requirement, Source source) {
    std::string text = "slump {value}, {low} to {high} " + std::move(why);
    if (yield.slump.minutes > 0) {
        text += "; measured {minutes} min after mixing, the last and nearest to placing";
    }
    return {.id = id,
            .verdict = between_ends(yield.slump.mm, limit),
            .value = yield.slump.mm,
            .limit = limit,
            .measure = Measure::slump,
            .requirement = std::move(requirement),
            .source = std::move(source),
            .message = {std::move(text),
                        {quantity("value", {yield.slump.mm, Measure::slump}),
                         quantity("low", {*limit.low, Measure::slump}),
                         quantity("high", {*limit.high, Measure::slump}),
                         quantity("target", {yield.target.slump_mm, Measure::slump}),
                         quantity("minutes", {yield.slump.minutes, Measure::count})}}};
}

/// What the last slump test says of placing.
enum class Timing { at_placing, assumed, too_early };

Timing timing_of(const TimedSlump& slump, const std::optional<double>& time_to_place_min) {
    if (!slump.timed) {
        return Timing::assumed;
    }
    if (!time_to_place_min) {
        return slump.minutes > 0 ? Timing::assumed : Timing::too_early;
    }
    return below(slump.minutes, *time_to_place_min) ? Timing::too_early : Timing::at_placing;
}

/// A slump is lost and does not come back: what is too low early is too low at placing, and
/// anything else is not known before.
Check as_of_placing(Check check, const TimedSlump& slump, const Requirements& requirements) {
    const auto& minutes = requirements.time_to_place_min;
    const Timing timing = timing_of(slump, minutes);
    const bool too_low = below(slump.mm, *check.limit->low);
    if (timing == Timing::too_early && !too_low) {
        check.verdict = Verdict::not_checked;
        check.value = std::nullopt;
        check.message.text =
            "slump {value} {minutes} min after mixing; {low} to {high} is permitted at placing, ";
        check.message.text +=
            minutes ? "{placing} min after it: 'trial.slump_after' lacks a test of then"
                    : "and nobody states when that is ('requirements.time_to_place')";
        check.message.arguments.push_back(
            quantity("placing", {minutes.value_or(0), Measure::count}));
    } else if (timing == Timing::assumed && check.verdict == Verdict::holds) {
        check.verdict = Verdict::watch;
        check.message.text +=
            slump.timed ? "; nobody states how long that is ('requirements.time_to_place')"
                        : "; when it was measured is not stated ('trial.slump_after')";
    }
    return check;
}

/// The window of the mix file always counts; a target of the trial's own has its tolerance besides.
std::vector<Check> slump_checks(const Trial& trial, const Yield& yield, const Tables& tables) {
    std::vector<Check> checks;
    const Requirements& requirements = requirements_of(trial.mix);
    const auto& window = requirements.slump_window;
    if (window) {
        checks.push_back(as_of_placing(
            slump_check(yield, {window->low_mm, window->high_mm}, check_ids::slump_window,
                        "is permitted at placing", "requirements.slump_window", {}),
            yield.slump, requirements));
    }
    if (!window || trial.target_slump_mm) {
        const SlumpTolerance& tolerance = slump_tolerance(yield.target.slump_mm, tables);
        const double within_mm = tolerance.within_mm.value;
        Check check = slump_check(
            yield,
            {std::max(yield.target.slump_mm - within_mm, 0.0), yield.target.slump_mm + within_mm},
            check_ids::slump_tolerance, "for a nominal {target}", "target slump",
            tolerance.within_mm.source);
        // A target of the trial's own is one of the mixer; that of the mix file is one of placing.
        checks.push_back(trial.target_slump_mm
                             ? std::move(check)
                             : as_of_placing(std::move(check), yield.slump, requirements));
        watch_what_is_from_memory(checks.back());
    }
    return checks;
}

Check air_check(const Yield& yield, const Tables& tables) {
    const double tolerance = tables.code->air.tolerance_percent;
    const double target = yield.target.air_percent;
    Check check{.id = check_ids::air_tolerance,
                .verdict = Verdict::not_checked,
                .measure = Measure::percent,
                .requirement = "target air",
                .source = tables.code->air.tolerance_source,
                .message = {"air was not measured by meter; the gravimetric air {gravimetric} is "
                            "used meanwhile",
                            {percent_of("gravimetric", yield.air_percent)}}};
    if (!yield.measured_air_percent) {
        return check;
    }
    const double measured = *yield.measured_air_percent;
    const Limit limit{std::max(target - tolerance, 0.0), target + tolerance};
    check.verdict = worse(at_least({measured, *limit.low, percent_precision}),
                          at_most({measured, *limit.high, percent_precision}));
    check.value = measured;
    check.limit = limit;
    check.message = {"air {value} by meter, {low} to {high}: target {target}, within {tolerance} "
                     "points",
                     {percent_of("value", measured), percent_of("low", *limit.low),
                      percent_of("high", *limit.high), percent_of("target", target),
                      quantity("tolerance", {tolerance, Measure::ratio})}};
    return check;
}

/// What a gap between the two airs points to.
std::string meaning_of_gap(double gap_points) {
    return gap_points > 0
               ? "more than the meter shows: the concrete is lighter than its data say. Look for "
                 "water that was not counted or a moisture taken too low (then w/cm is higher than "
                 "shown), a relative density taken too high, a measure not filled to its rim"
               : "less than the meter shows: the concrete is heavier than its data say. Look for a "
                 "moisture taken too high, a relative density taken too low, a measure filled "
                 "above its rim, an aggregate correction that was not taken off the meter";
}

/// A deviation that is only watched up to a point and fails beyond it.
Verdict graded(double deviation, double watched, double most) {
    return above(deviation, most)      ? Verdict::fails
           : above(deviation, watched) ? Verdict::watch
                                       : Verdict::holds;
}

/// Which of the two airs is missing.
Phrase why_no_gap(const Yield& yield) {
    if (!yield.measured_air_percent) {
        return {"air was not measured by meter ('trial.air')", {}};
    }
    return {"an aggregate states no relative density ('relative_density'): there is no air by "
            "weight",
            {}};
}

Check gap_check(const Yield& yield, const Tables& tables) {
    const TypicalFigure& most = tables.trial->air_gap_watch_percent;
    Check check{.id = check_ids::air_gap,
                .verdict = Verdict::not_checked,
                .measure = Measure::percent,
                .requirement = "gravimetric air against the meter",
                .source = most.source,
                .message = {}};
    if (!yield.measured_air_percent || !yield.gravimetric_air_percent) {
        check.message = why_no_gap(yield);
        return check;
    }
    const double gap = *yield.gravimetric_air_percent - *yield.measured_air_percent;
    check.value = gap;
    check.limit = Limit{-most.value, most.value};
    check.verdict = graded(std::abs(gap), most.value, tables.trial->air_gap_most_percent.value);
    check.message = {
        "gravimetric air {gravimetric}, meter {measured}: " +
            (check.verdict == Verdict::holds ? std::string{"they agree"} : meaning_of_gap(gap)),
        {percent_of("gravimetric", *yield.gravimetric_air_percent),
         percent_of("measured", *yield.measured_air_percent)}};
    if (density_is_assumed(yield.found)) {
        check.verdict = worse(check.verdict, Verdict::watch);
        append_assumed_densities(yield.found, check.message);
    }
    return check;
}

/// One density test cannot prove more than its own precision; far off, a figure must be wrong.
Check yield_check(const Yield& yield, const Tables& tables) {
    const TypicalFigure& precision = tables.trial->density_difference_kg_m3;
    const double noise_percent = 100 * precision.value / yield.density_kg_m3;
    const double off_percent = 100 * std::abs(yield.relative_yield - 1);
    const Verdict verdict =
        graded(off_percent, noise_percent, tables.trial->yield_off_most_percent.value);
    std::string text = "relative yield {value}: {off} off, of which one density test may explain "
                       "{noise} (two operators differ by up to {precision})";
    text += verdict == Verdict::watch   ? ". Test three samples before you change the batch sheet"
            : verdict == Verdict::fails ? ". Check the intended volume, the weights and the "
                                          "measure: until then trust no figure per volume"
                                        : "";
    Check check{.id = check_ids::yield_relative,
                .verdict = verdict,
                .value = yield.relative_yield,
                .limit = Limit{1 - noise_percent / 100, 1 + noise_percent / 100},
                .measure = Measure::ratio,
                .requirement = "intended volume",
                .source = precision.source,
                .message = {std::move(text),
                            {quantity("value", {yield.relative_yield, Measure::ratio}),
                             percent_of("off", off_percent), percent_of("noise", noise_percent),
                             quantity("precision", {precision.value, Measure::fresh_density})}}};
    watch_what_is_from_memory(check);
    return check;
}

Check temperature_check(const Trial& trial, const Tables& tables) {
    // Without a thickness the least temperature of the thinnest section.
    const TypicalFigure& least =
        tables.weather->section(requirements_of(trial.mix).section.thickness_mm.value_or(0))
            .least_placed_c;
    const TypicalFigure& hottest = tables.weather->hottest_c;
    Check check{.id = check_ids::temperature,
                .verdict = Verdict::not_checked,
                .measure = Measure::temperature,
                .requirement = "fresh concrete",
                .source = hottest.source,
                .message = {"the temperature of the concrete was not measured", {}}};
    if (!trial.tests.temperature_c) {
        return check;
    }
    const double value = *trial.tests.temperature_c;
    const std::vector<Argument> figures{quantity("value", {value, Measure::temperature}),
                                        quantity("low", {least.value, Measure::temperature}),
                                        quantity("high", {hottest.value, Measure::temperature})};
    check.value = value;
    check.limit = Limit{least.value, hottest.value};
    constexpr double freezing_c = 0;
    if (!above(value, freezing_c)) {
        check.verdict = Verdict::fails;
        check.source = least.source;
        check.message = {"concrete at {value} freezes: it never gains its strength; {low} or above",
                         figures};
    } else if (above(value, hottest.value)) {
        check.verdict = Verdict::fails;
        check.message = {"concrete at {value}, at most {high}", figures};
    } else if (below(value, least.value)) {
        check.verdict = Verdict::watch;
        check.source = least.source;
        check.message = {"concrete at {value}; in cold weather a section like this is placed and "
                         "kept at {low} or above",
                         figures};
    } else {
        check.verdict = Verdict::holds;
        check.message = {"concrete at {value}, {low} to {high}", figures};
    }
    return check;
}

} // namespace

const SlumpTolerance& slump_tolerance(double target_mm, const Tables& tables) {
    const auto& rows = tables.trial->slump;
    const auto found = std::ranges::find_if(
        rows, [&](const SlumpTolerance& row) { return !above(target_mm, row.up_to_mm); });
    return found == rows.end() ? rows.back() : *found;
}

std::vector<Check> check_fresh_tests(const Trial& trial, const Yield& yield,
                                     std::span<const Check> of_mix, const Tables& tables) {
    std::vector<Check> checks = slump_checks(trial, yield, tables);
    const bool class_holds_air =
        tables.code->air.states_least() && !trial.target_air_percent && air_of_class(of_mix);
    if (!class_holds_air) {
        checks.push_back(air_check(yield, tables));
    }
    checks.push_back(gap_check(yield, tables));
    checks.push_back(temperature_check(trial, tables));
    checks.push_back(yield_check(yield, tables));
    return checks;
}

} // namespace boardmark::core
