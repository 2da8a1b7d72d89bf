#include <boardmark/core/strength/strength_gain.hpp>

#include <cmath>

namespace boardmark::core {
namespace {

constexpr double standard_age_d = 28;

} // namespace

double strength_part(double age_d, const StrengthGain& gain) {
    return age_d / (gain.a_d + gain.b * age_d);
}

double strength_part(double age_d, const EnStrengthGain& gain) {
    return std::exp(gain.s * (1 - std::sqrt(standard_age_d / age_d)));
}

std::optional<double> age_for_part_d(double part, const StrengthGain& gain) {
    const double slope = 1 - part * gain.b;
    return slope > 0 ? std::optional{part * gain.a_d / slope} : std::nullopt;
}

std::optional<double> age_for_part_d(double part, const EnStrengthGain& gain) {
    const double root = 1 - std::log(part) / gain.s; // of 28 d over the age
    return root > 0 ? std::optional{standard_age_d / (root * root)} : std::nullopt;
}

} // namespace boardmark::core
