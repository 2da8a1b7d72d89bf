#include <boardmark/core/concrete_temperatures.hpp>
#include <boardmark/core/proportion.hpp>

namespace boardmark::core {
namespace {

std::optional<TwoTemperatures> of_two_files(std::optional<double> wall_c,
                                            std::optional<double> mix_c) {
    if (!wall_c && !mix_c) {
        return std::nullopt;
    }
    const KnownTemperature of_mix{mix_c.value_or(0), TemperatureOrigin::mix_file};
    const KnownTemperature of_wall{wall_c.value_or(0), TemperatureOrigin::wall_file};
    if (!wall_c || !mix_c) {
        const KnownTemperature& one = wall_c ? of_wall : of_mix;
        return TwoTemperatures{one, one};
    }
    return *mix_c < *wall_c ? TwoTemperatures{of_mix, of_wall} : TwoTemperatures{of_wall, of_mix};
}

} // namespace

ConcreteTemperatures concrete_temperatures(const Wall& wall, const Proportions& proportions) {
    const auto& mixture = proportions.temperature;
    const auto placed_c = mixture ? mixture->placed_c : std::nullopt;
    const auto mixed_c = mixture ? mixture->mixed_c : std::nullopt;
    return {.concrete = of_two_files(wall.placing.concrete_c, placed_c ? placed_c : mixed_c),
            .air = of_two_files(wall.placing.air_c, requirements_of(wall.mix).placing.air_c),
            .concrete_stated = wall.placing.concrete_c.has_value(),
            .after_haul = placed_c.has_value()};
}

} // namespace boardmark::core
