#include <boardmark/core/wall/soffit.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {

double soffit_days(const Soffit& soffit, const SoffitRules& rules) {
    const bool much = soffit.live_load_kpa && above(*soffit.live_load_kpa, soffit.dead_load_kpa);
    const auto found = std::ranges::find_if(
        rules.rows, [&](const SoffitRow& row) { return below(*soffit.span_m, row.below_m); });
    const SoffitRow& row = found == rules.rows.end() ? rules.rows.back() : *found;
    if (soffit.kind == SoffitKind::slab) {
        return much ? row.slab_more_d : row.slab_less_d;
    }
    return much ? row.beam_more_d : row.beam_less_d;
}

SoffitAge soffit_age(const Soffit& soffit, const StrippedLift& lift,
                     std::optional<double> needed_mpa, const CuringRules& rules) {
    constexpr double hours_in_day = 24;
    SoffitAge age{.soffit = soffit, .needed_mpa = needed_mpa};
    if (soffit.span_m) {
        age.days = soffit_days(soffit, rules.soffits);
        age.by_time_h = age_of_counted_h(lift.air, hours_in_day * *age.days, rules);
    }
    if (needed_mpa && lift.strength_28d_mpa && lift.gain && !lift.concrete.empty()) {
        age.not_before_h =
            age_of_part_h(lift.concrete, *needed_mpa / *lift.strength_28d_mpa, *lift.gain, rules);
        age.by_strength_h = lift.gain_is_its_own ? age.not_before_h : std::nullopt;
    }
    return age;
}

std::optional<double> SoffitAge::earliest_h() const {
    const bool too_cold = soffit.span_m && !by_time_h;
    const bool unproven = needed_mpa ? !by_strength_h : soffit.stands_out;
    if (soffit.is_open() || too_cold || unproven) {
        return std::nullopt;
    }
    return std::max(by_time_h.value_or(0), by_strength_h.value_or(0));
}

} // namespace boardmark::core
