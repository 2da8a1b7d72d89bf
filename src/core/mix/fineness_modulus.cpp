#include <boardmark/core/mix/fineness_modulus.hpp>

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double opening_tolerance = 0.02; // inch and metric names of one sieve differ by less

} // namespace

std::optional<double> standard_sieve(double opening_mm, std::span<const double> series_mm) {
    const auto found = std::ranges::find_if(series_mm, [&](double sieve_mm) {
        return std::abs(opening_mm - sieve_mm) <= opening_tolerance * sieve_mm;
    });
    return found == series_mm.end() ? std::nullopt : std::optional{*found};
}

std::optional<double> fineness_modulus(const std::vector<SievePassing>& sieves,
                                       std::span<const double> series_mm) {
    if (sieves.empty()) {
        return std::nullopt;
    }
    const double coarsest_mm =
        std::ranges::max_element(sieves, {}, &SievePassing::opening_mm)->opening_mm;
    double retained = 0;
    for (const double sieve_mm : series_mm) {
        const auto stated = std::ranges::find_if(sieves, [&](const SievePassing& sieve) {
            return standard_sieve(sieve.opening_mm, std::span{&sieve_mm, 1}).has_value();
        });
        if (stated != sieves.end()) {
            retained += 100 - stated->percent;
        } else if (sieve_mm < coarsest_mm) {
            return std::nullopt;
        }
    }
    return retained / 100;
}

} // namespace boardmark::core
