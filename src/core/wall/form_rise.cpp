#include <boardmark/core/wall/form_rise.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"

#include <algorithm>
#include <string>

namespace boardmark::core {
namespace {

Check missing_rise(const char* what) {
    return {.id = check_ids::placing_rise,
            .verdict = Verdict::not_checked,
            .measure = Measure::rate_of_rise,
            .requirement = "rate of rise",
            .message = {what, {}}};
}

/// What follows the comparison, by its verdict.
const char* consequence(Verdict verdict) {
    switch (verdict) {
    case Verdict::holds:
        return "; {limit} is stated";
    case Verdict::watch:
        return ", a little more than the stated {limit}: {keeps} an hour would keep to it";
    default:
        return ", faster than the stated {limit}; the pressure counts with this faster rise: place "
               "no more than {keeps} an hour, or state the faster rise and have forms and ties "
               "made for it";
    }
}

} // namespace

std::string_view name_of(RiseBy by) {
    return by == RiseBy::stated ? "stated" : "output";
}

std::optional<double> FormRise::by_output_m_h() const {
    return output_m3_h ? std::optional{*output_m3_h / smallest_plan_m2} : std::nullopt;
}

std::optional<double> FormRise::alone_m_h() const {
    if (!smallest_part_m2 || !output_m3_h) {
        return std::nullopt;
    }
    const double alone_m_h = *output_m3_h / *smallest_part_m2;
    return above(alone_m_h, *fastest_m_h()) ? std::optional{alone_m_h} : std::nullopt;
}

std::optional<double> FormRise::fastest_m_h() const {
    const auto filled_m_h = by_output_m_h();
    return stated_m_h && filled_m_h ? std::max(stated_m_h, filled_m_h)
           : stated_m_h             ? stated_m_h
                                    : filled_m_h;
}

std::optional<RiseBy> FormRise::by() const {
    const auto fastest = fastest_m_h();
    return !fastest ? std::nullopt
                    : std::optional{fastest == stated_m_h ? RiseBy::stated : RiseBy::output};
}

std::optional<double> FormRise::keeps_m3_h() const {
    return stated_m_h ? std::optional{*stated_m_h * smallest_plan_m2} : std::nullopt;
}

std::optional<Check> rise_check(const FormRise& rise, UnitSystem system) {
    if (!rise.stated_m_h) {
        return rise.output_m3_h
                   ? std::nullopt
                   : std::optional{missing_rise("neither 'placing.rise' nor 'placing.output' is "
                                                "stated: it is not known how fast the form fills")};
    }
    if (!rise.output_m3_h) {
        return missing_rise("'placing.output' is not stated: it is not known whether the crew "
                            "keeps the stated rise");
    }
    Check check = missing_rise("");
    check.value = rise.by_output_m_h();
    check.limit = Limit{.low = std::nullopt, .high = rise.stated_m_h};
    check.verdict = at_most({*check.value, *rise.stated_m_h, rise_precision_m_h(system)});
    check.message = {
        std::string{
            "{output} an hour into {area}, the smallest plan area of the form, rises at {value}"} +
            consequence(check.verdict),
        {quantity("output", {*rise.output_m3_h, Measure::volume}),
         quantity("area", {rise.smallest_plan_m2, Measure::area}),
         quantity("value", {*check.value, Measure::rate_of_rise}),
         quantity("limit", {*rise.stated_m_h, Measure::rate_of_rise}),
         quantity("keeps", {*rise.keeps_m3_h(), Measure::volume})}};
    return check;
}

} // namespace boardmark::core
