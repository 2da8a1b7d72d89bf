#include "../basis/tolerance.hpp"
#include "../checks/exposure_limits.hpp"
#include "clause_words.hpp"
#include "fresh_windows.hpp"
#include "review_case.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::core {
namespace {

const Source designers_file{"the designer's file"};

Check of_submittal(CheckId id, Verdict verdict, const char* requirement, Phrase message) {
    return {.id = id,
            .verdict = verdict,
            .requirement = requirement,
            .source = designers_file,
            .message = std::move(message)};
}

void review_code(const ReviewCase& review, std::vector<Check>& checks) {
    const std::string& asked = review.designer.asked.code;
    const std::string& own = review.submitted.requirements.code;
    if (asked.empty()) {
        return;
    }
    const Verdict verdict = own.empty()    ? Verdict::watch
                            : own == asked ? Verdict::holds
                                           : Verdict::fails;
    checks.push_back(of_submittal(
        check_ids::submittal_code, verdict, "code",
        {own.empty()    ? "the mix does not say by which code it was made, {asked} is asked: add "
                          "'requirements.code'"
         : own == asked ? "made by {asked}, as asked"
                        : "made by {own}, {asked} is asked",
         {word("own", own), word("asked", asked)}}));
}

/// Whether one of the stated classes is as severe as a class, in its category.
bool covers(const std::vector<std::string>& own, const ExposureClass& asked,
            const CodeTables& code) {
    return std::ranges::any_of(own, [&](const std::string& name) {
        const ExposureClass* one = code.find_class(name);
        return one && one->category == asked.category && one >= &asked; // mildest stand first
    });
}

void review_exposure(const ReviewCase& review, std::vector<Check>& checks) {
    const CodeTables& code = review.designer.tables.code;
    const auto& own = review.submitted.requirements.exposure;
    const auto& asked = review.designer.asked.exposure;
    if (asked.empty()) {
        return;
    }
    std::vector<std::string> lacking;
    for (const std::string& name : asked) {
        const ExposureClass* one = code.find_class(name);
        if (one && !covers(own, *one, code)) {
            lacking.push_back(name);
        }
    }
    const Verdict verdict = own.empty()       ? Verdict::watch
                            : lacking.empty() ? Verdict::holds
                                              : Verdict::fails;
    checks.push_back(of_submittal(
        check_ids::submittal_exposure, verdict, "exposure classes",
        {own.empty()       ? "the mix names no exposure class, {asked} are asked and were checked: "
                             "add 'requirements.exposure'"
         : lacking.empty() ? "made for {own}, asked are {asked}"
                           : "made for {own}; it lacks {lacking} or a more severe class",
         {word("own", joined(own)), word("asked", joined(asked)),
          word("lacking", joined(lacking))}}));
}

void review_strength(const ReviewCase& review, std::vector<Check>& checks) {
    const Requirements& own = review.submitted.requirements;
    const Requirements& asked = review.designer.asked;
    const auto own_mpa = strength_by(asked.specimen, own);
    if (!own_mpa) {
        checks.push_back(of_submittal(
            check_ids::submittal_strength, Verdict::fails, "specified strength",
            {"the mix is offered for {value} of {own_specimen}, asked are {limit} of {specimen}, "
             "and no class pairs the two: state the strength by 'requirements.specimen', or a "
             "class that names both",
             {as_strength("value", own.strength_mpa), word("own_specimen", plural_of(own.specimen)),
              as_strength("limit", asked.strength_mpa),
              word("specimen", plural_of(asked.specimen))}}));
        return;
    }
    const bool low = below(*own_mpa, asked.strength_mpa * (1 - 1e-6));
    const bool late = above(own.strength_age_d, asked.strength_age_d);
    const Verdict verdict = low || late ? Verdict::fails : Verdict::holds;
    Check check = of_submittal(
        check_ids::submittal_strength, verdict, "specified strength",
        {low || late ? "the mix is offered for {value} at {own_age}, asked are {limit} at {age}"
                     : "the mix is offered for {value} at {own_age}, at least the {limit} asked",
         {as_strength("value", *own_mpa), as_days("own_age", own.strength_age_d),
          as_strength("limit", asked.strength_mpa), as_days("age", asked.strength_age_d)}});
    check.value = *own_mpa;
    check.limit = Limit{asked.strength_mpa, std::nullopt};
    check.measure = Measure::strength;
    checks.push_back(std::move(check));
}

void review_slump(const ReviewCase& review, std::vector<Check>& checks) {
    const TestWindow window = slump_window_of(review.designer.asked, review.designer.tables);
    const double own_mm = review.submitted.requirements.slump_mm;
    const bool outside = below(own_mm, *window.low) || above(own_mm, *window.high);
    const auto& own_window = review.submitted.requirements.slump_window;
    const bool wider =
        !outside && own_window &&
        (below(own_window->low_mm, *window.low) || above(own_window->high_mm, *window.high));
    Check check = of_submittal(
        check_ids::submittal_slump,
        outside ? Verdict::fails
        : wider ? Verdict::watch
                : Verdict::holds,
        "slump",
        {outside ? "offered with a slump of {value}, outside {low} to {high} at placing"
                 : "offered with a slump of {value}, within {low} to {high} at placing",
         {quantity("value", {own_mm, Measure::slump}),
          quantity("low", {*window.low, Measure::slump}),
          quantity("high", {*window.high, Measure::slump})}});
    if (wider) {
        check.message.text += "; its own window, {own_low} to {own_high}, lets loads come that are "
                              "sent back";
        check.message.arguments.push_back(
            quantity("own_low", {own_window->low_mm, Measure::slump}));
        check.message.arguments.push_back(
            quantity("own_high", {own_window->high_mm, Measure::slump}));
    }
    check.value = own_mm;
    check.limit = Limit{*window.low, *window.high};
    check.measure = Measure::slump;
    checks.push_back(std::move(check));
}

void review_size(const ReviewCase& review, std::vector<Check>& checks) {
    constexpr double same_size = 0.07; // names of one size in two systems differ by less
    const double own_mm = review.submitted.nominal_max_size_mm;
    const double asked_mm = review.designer.mix.selection.nominal_max_size_mm;
    const bool larger = own_mm > asked_mm * (1 + same_size);
    const bool smaller = own_mm < asked_mm * (1 - same_size);
    Check check = of_submittal(
        check_ids::submittal_size,
        larger    ? Verdict::fails
        : smaller ? Verdict::watch
                  : Verdict::holds,
        "size of the stone",
        {larger    ? "stone of {value}, {limit} is asked at most"
         : smaller ? "stone of {value}, {limit} is asked: more paste, another face; try it on the "
                     "mock-up"
                   : "stone of {value}, as asked",
         {quantity("value", {own_mm, Measure::aggregate_size}),
          quantity("limit", {asked_mm, Measure::aggregate_size})}});
    check.value = own_mm;
    check.limit = Limit{std::nullopt, asked_mm};
    check.measure = Measure::aggregate_size;
    checks.push_back(std::move(check));
}

} // namespace

bool needs_a_figure(const Check& check) {
    constexpr std::string_view ids[] = {"chloride.exposure", "chloride.sulfate", "cement.sulfate",
                                        "volume.closes",     "strength.average", "alkali.loading",
                                        "air.agent",         "w_cm.exposure"};
    return check.verdict == Verdict::not_checked &&
           (std::ranges::count(ids, std::string_view{check.id}) > 0 ||
            check.id.starts_with("scm."));
}

void review_purpose(const ReviewCase& review, std::vector<Check>& checks) {
    review_code(review, checks);
    review_exposure(review, checks);
    review_strength(review, checks);
    review_slump(review, checks);
    review_size(review, checks);
}

void review_figures(const std::vector<Check>& demands, std::vector<Check>& checks) {
    bool any = false;
    for (const Check& check : demands) {
        if (needs_a_figure(check)) {
            Check missing = of_submittal(check_ids::submittal_figures, Verdict::fails,
                                         "figures of the submittal", check.message);
            missing.source = check.source;
            checks.push_back(std::move(missing));
            any = true;
        }
    }
    if (!any) {
        checks.push_back(of_submittal(check_ids::submittal_figures, Verdict::holds,
                                      "figures of the submittal",
                                      {"every figure that the demands need is stated", {}}));
    }
}

} // namespace boardmark::core
