#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/concrete_temperatures.hpp>

#include <algorithm>

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

/// What the mix file leaves out of a temperature that it begins to tell: one of its materials or
/// its water is measured.
std::vector<std::string> missing_of(const Proportions& proportions) {
    const auto& mixture = proportions.temperature;
    if (!mixture || mixture->mixed_c) {
        return {};
    }
    const bool material = std::ranges::any_of(proportions.ingredients, [](const Ingredient& one) {
        return one.material && one.material->temperature_c;
    });
    const bool water = std::ranges::none_of(mixture->missing, [](const std::string& key) {
        return key.ends_with(".water_temperature");
    });
    return material || water ? mixture->missing : std::vector<std::string>{};
}

} // namespace

ConcreteTemperatures concrete_temperatures(const Wall& wall, const Proportions& proportions) {
    const auto& mixture = proportions.temperature;
    const auto placed_c = mixture ? mixture->placed_c : std::nullopt;
    const auto mixed_c = mixture ? mixture->mixed_c : std::nullopt;
    return {.concrete = of_two_files(wall.placing.concrete_c, placed_c ? placed_c : mixed_c),
            .air = of_two_files(wall.placing.air_c, requirements_of(wall.mix).placing.air_c),
            .concrete_stated = wall.placing.concrete_c.has_value(),
            .missing_of_mix = missing_of(proportions),
            .after_haul = placed_c.has_value()};
}

} // namespace boardmark::core
