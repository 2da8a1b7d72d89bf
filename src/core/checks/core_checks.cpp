#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../strength/cored_tests.hpp"
#include "compare.hpp"
#include "strength_record_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Argument core_strength(const char* name, double mpa) {
    return quantity(name, {mpa, Measure::strength});
}

Check check_of_cores(CheckId id, const std::string& batch, const Source& source) {
    return {.id = id,
            .verdict = Verdict::not_checked,
            .requirement = "cores of a low test",
            .source = source,
            .message = {},
            .part = batch};
}

Check number_check(const CoredTest& test, const CoreRules& rules) {
    Check check = check_of_cores(check_ids::cores_number, test.batch, rules.cores.source);
    check.measure = Measure::count;
    check.value = double(test.cores.size());
    check.limit = Limit{.low = rules.cores.value, .high = std::nullopt};
    check.verdict = below(*check.value, rules.cores.value) ? Verdict::fails : Verdict::holds;
    check.message = {"{batch}: {value} cores, {limit} are asked of each low test",
                     {word("batch", test.batch), quantity("value", {*check.value, Measure::count}),
                      quantity("limit", {rules.cores.value, Measure::count})}};
    return check;
}

bool is_short(const JudgedCore& core, const CoreRules& rules) {
    return below(core.ratio, rules.least_ratio.value);
}

/// A factor that nobody read again; empty where all were read.
Source remembered_factor(const CoredTest& test, const CoreRules& rules) {
    for (const JudgedCore& core : test.cores) {
        const Source source = length_correction(core.ratio, rules).source;
        if (source.confidence == Confidence::from_memory) {
            return source;
        }
    }
    return {};
}

/// Too few cores, or some too short for a factor: an average of them is none.
Phrase why_no_average(const CoredTest& test, const CoreRules& rules) {
    if (below(double(test.cores.size()), rules.cores.value)) {
        return {"{batch}: an average is judged of {cores} cores; {found} are entered",
                {word("batch", test.batch), quantity("cores", {rules.cores.value, Measure::count}),
                 quantity("found", {double(test.cores.size()), Measure::count})}};
    }
    const auto found = std::ranges::find_if(
        test.cores, [&](const JudgedCore& core) { return is_short(core, rules); });
    return found == test.cores.end()
               ? Phrase{}
               : Phrase{"{batch}: {core} is shorter than it is wide, no factor is printed for it",
                        {word("batch", test.batch), word("core", found->core.name)}};
}

Check core_average_check(const StrengthRecord& record, const CoredTest& test,
                         const CoreRules& rules) {
    Check check =
        check_of_cores(check_ids::cores_average, test.batch, rules.average_fraction.source);
    check.measure = Measure::strength;
    check.message = why_no_average(test, rules);
    if (!check.message.text.empty()) {
        return check;
    }
    const double least_mpa = rules.average_fraction.value * record.specified_mpa;
    const double rounded_mpa = rules.rounded_fraction.value * record.specified_mpa;
    const Source remembered = remembered_factor(test, rules);
    check.value = test.average_mpa;
    check.limit = Limit{.low = least_mpa, .high = std::nullopt};
    check.message = {"{batch}: the cores average {value}, {share} of the specified strength; "
                     "{limit} are asked",
                     {word("batch", test.batch), core_strength("value", test.average_mpa),
                      percent_of("share", 100 * test.average_mpa / record.specified_mpa),
                      percent_of("share_limit", 100 * rules.rounded_fraction.value),
                      core_strength("limit", least_mpa)}};
    if (below(test.average_mpa, rounded_mpa)) {
        check.verdict = Verdict::fails;
    } else if (below(test.average_mpa, least_mpa)) {
        check.verdict = Verdict::watch;
        check.message.text += "; by one answer of the publisher {rounded} counts as met "
                              "[{answer}], and the licensed engineer decides";
        check.message.arguments.push_back(core_strength("rounded", rounded_mpa));
        check.message.arguments.push_back(word("answer", rules.rounded_fraction.source.citation));
    } else if (!remembered.citation.empty()) {
        check.verdict = Verdict::watch;
        check.message.text += "; a factor for the length is from memory [{factor}]: read it again";
        check.message.arguments.push_back(word("factor", remembered.citation));
    } else {
        check.verdict = Verdict::holds;
    }
    return check;
}

Check core_single_check(const StrengthRecord& record, const CoredTest& test,
                        const CoreRules& rules) {
    Check check = check_of_cores(check_ids::cores_single, test.batch, rules.single_fraction.source);
    const double least_mpa = rules.single_fraction.value * record.specified_mpa;
    const JudgedCore& weakest =
        *std::ranges::min_element(test.cores, {}, &JudgedCore::strength_mpa);
    const Source remembered = remembered_factor(test, rules);
    check.measure = Measure::strength;
    check.value = weakest.strength_mpa;
    check.limit = Limit{.low = least_mpa, .high = std::nullopt};
    const bool low = below(weakest.strength_mpa, least_mpa);
    const bool open = is_short(weakest, rules) || !remembered.citation.empty();
    check.verdict = low ? Verdict::fails : open ? Verdict::watch : Verdict::holds;
    check.message = {"{batch}: the weakest core, {core}, has {value}; none may have less than "
                     "{limit}",
                     {word("batch", test.batch), word("core", weakest.core.name),
                      core_strength("value", weakest.strength_mpa),
                      core_strength("limit", least_mpa)}};
    if (!low && open) {
        check.message.text += "; the factor for its length is not certain";
    }
    return check;
}

/// What is wrong with a core's size; empty where nothing is.
Phrase fault_of_size(const JudgedCore& core, const StrengthRecord& record, const CoreRules& rules) {
    if (is_short(core, rules)) {
        return {"{core} is {length} long and {diameter} wide: too short",
                {quantity("length", {core.core.length_mm, Measure::length}),
                 quantity("diameter", {core.core.diameter_mm, Measure::length})}};
    }
    const double by_stone_mm = rules.least_in_sizes.value * record.nominal_size_mm.value_or(0);
    const double least_mm = std::max(rules.least_diameter_mm.value, by_stone_mm);
    if (below(core.core.diameter_mm, least_mm)) {
        return {"{core} is {diameter} wide, {least} are wanted: the licensed engineer says whether "
                "it counts",
                {quantity("diameter", {core.core.diameter_mm, Measure::length}),
                 quantity("least", {least_mm, Measure::length})}};
    }
    return {};
}

Check core_size_check(const StrengthRecord& record, const CoredTest& test, const CoreRules& rules) {
    Check check = check_of_cores(check_ids::cores_size, test.batch, rules.least_diameter_mm.source);
    check.measure = Measure::length;
    for (const bool short_ones : {true, false}) {
        for (const JudgedCore& core : test.cores) {
            Phrase fault = fault_of_size(core, record, rules);
            if (fault.text.empty() || is_short(core, rules) != short_ones) {
                continue;
            }
            check.verdict = short_ones ? Verdict::fails : Verdict::watch;
            check.source = short_ones ? rules.least_ratio.source : check.source;
            check.message = std::move(fault);
            check.message.text = "{batch}: " + check.message.text;
            check.message.arguments.push_back(word("batch", test.batch));
            check.message.arguments.push_back(word("core", core.core.name));
            return check;
        }
    }
    if (!record.nominal_size_mm) {
        check.message = {"{batch}: 'nominal_max_size' of the stone is not stated, by which the "
                         "least diameter goes",
                         {word("batch", test.batch)}};
        return check;
    }
    check.verdict = Verdict::holds;
    check.message = {"{batch}: every core is wide enough for the stone, and no shorter than it is "
                     "wide",
                     {word("batch", test.batch)}};
    return check;
}

/// A figure of a core that nobody wrote down.
std::string unwritten(const DrilledCore& core) {
    return !core.drilled          ? "drilled"
           : !core.bagged_after_h ? "bagged_after"
           : !core.last_wetted    ? "last_wetted"
           : !core.tested         ? "tested"
                                  : "";
}

struct StorageFault {
    Verdict verdict = Verdict::holds;
    Phrase text = {};
    Source source = {};
};

/// The days from one day to another, where both are written down.
std::optional<double> days_between(const std::optional<int>& from, const std::optional<int>& to) {
    return from && to ? std::optional{double(*to - *from)} : std::nullopt;
}

/// The worst that is known of a core; a figure that is missing hides no fault that shows without
/// it.
StorageFault fault_of_storage(const DrilledCore& core, const CoreRules& rules) {
    const auto wet_d = days_between(core.drilled, core.last_wetted);
    const auto rest_d = days_between(core.last_wetted, core.tested);
    const auto after_d = days_between(core.drilled, core.tested);
    const auto days = [](const char* name, double d) { return quantity(name, {d, Measure::age}); };
    if (core.bagged_after_h && above(*core.bagged_after_h, rules.bagged_h.value)) {
        return {Verdict::fails,
                {"{core} came into its bag after {value}, not within {limit}",
                 {quantity("value", {*core.bagged_after_h, Measure::duration}),
                  quantity("limit", {rules.bagged_h.value, Measure::duration})}},
                rules.bagged_h.source};
    }
    if (wet_d && above(*wet_d, rules.wet_work_d.value)) {
        return {Verdict::fails,
                {"{core} was wetted {value} after drilling; wet cutting and grinding end within "
                 "{limit}",
                 {days("value", *wet_d), days("limit", rules.wet_work_d.value)}},
                rules.wet_work_d.source};
    }
    if (const std::string key = unwritten(core); !key.empty()) {
        return {Verdict::not_checked,
                {"'{key}' of {core} is not stated; wet or dried cores show another strength",
                 {word("key", key)}},
                rules.least_rest_d.source};
    }
    if (below(*rest_d, rules.least_rest_d.value)) {
        return {Verdict::watch,
                {"{core} was tested {value} after it was last wet, {limit} are asked unless the "
                 "licensed engineer agrees",
                 {days("value", *rest_d), days("limit", rules.least_rest_d.value)}},
                rules.least_rest_d.source};
    }
    if (above(*after_d, rules.latest_test_d.value)) {
        return {Verdict::watch,
                {"{core} was tested {value} after drilling, {limit} at most are asked unless the "
                 "licensed engineer agrees",
                 {days("value", *after_d), days("limit", rules.latest_test_d.value)}},
                rules.latest_test_d.source};
    }
    return {};
}

Check conditioning_check(const CoredTest& test, const CoreRules& rules) {
    Check check =
        check_of_cores(check_ids::cores_conditioning, test.batch, rules.least_rest_d.source);
    check.measure = Measure::age;
    StorageFault worst;
    std::string worst_core;
    for (const JudgedCore& judged : test.cores) {
        StorageFault fault = fault_of_storage(judged.core, rules);
        if (severity(fault.verdict) > severity(worst.verdict)) {
            worst = std::move(fault);
            worst_core = judged.core.name;
        }
    }
    check.verdict = worst.verdict;
    if (worst.verdict == Verdict::holds) {
        check.message = {"{batch}: every core was bagged, rested and tested in its time",
                         {word("batch", test.batch)}};
        return check;
    }
    check.source = worst.source;
    check.message = std::move(worst.text);
    check.message.text = "{batch}: " + check.message.text;
    check.message.arguments.push_back(word("batch", test.batch));
    check.message.arguments.push_back(word("core", worst_core));
    return check;
}

/// Low tests of which no core is entered: the steps before come first.
std::vector<Check> without_cores(const StrengthFindings& findings, const CoreRules& rules) {
    std::vector<Check> checks;
    for (const JudgedTest& judged : findings.tests) {
        const std::string& batch = judged.test.batch.name;
        if (judged.verdict == Verdict::fails &&
            std::ranges::count(findings.cores, batch, &CoredTest::batch) == 0) {
            Check check = check_of_cores(check_ids::cores_number, batch, rules.cores.source);
            check.measure = Measure::count;
            check.message = {"{batch}: no cores are entered ('cores'); the steps before them come "
                             "first",
                             {word("batch", batch)}};
            checks.push_back(std::move(check));
        }
    }
    return checks;
}

} // namespace

std::vector<Check> check_cores(const StrengthRecord& record, const StrengthFindings& findings,
                               const CoreRules& rules) {
    std::vector<Check> checks;
    if (record.code != AcceptanceCode::aci_318) {
        for (const CoredTest& test : findings.cores) {
            Check check = check_of_cores(check_ids::cores_average, test.batch, {});
            check.measure = Measure::strength;
            check.message = {"{batch}: cores are judged by EN 13791, which is not built here",
                             {word("batch", test.batch)}};
            checks.push_back(std::move(check));
        }
        return checks;
    }
    checks = without_cores(findings, rules);
    for (const CoredTest& test : findings.cores) {
        checks.push_back(number_check(test, rules));
        checks.push_back(core_average_check(record, test, rules));
        checks.push_back(core_single_check(record, test, rules));
        checks.push_back(core_size_check(record, test, rules));
        checks.push_back(conditioning_check(test, rules));
    }
    return checks;
}

} // namespace boardmark::core
