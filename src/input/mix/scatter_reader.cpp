#include "mix_context.hpp"

#include <functional>
#include <string_view>

namespace boardmark::input {
namespace {

/// Which materials a figure can be stated of, and how they are called.
struct Scattering {
    std::string_view key;
    std::function<bool(const core::Material&)> is_of;
    std::string_view kinds;
};

bool is_of_aggregate(const core::Material& material) {
    const core::Role role = role_of(material.kind);
    return role == core::Role::coarse || role == core::Role::fine;
}

bool has_relative_density(const core::Material& material) {
    return is_of_aggregate(material) || role_of(material.kind) == core::Role::binder;
}

bool is_reducer(const core::Material& material) {
    return reduces_water(material.kind);
}

std::vector<core::ScatterOfMaterial> read_by_material(const MixContext& context,
                                                      const Materials& materials,
                                                      const Scattering& scattering) {
    std::vector<core::ScatterOfMaterial> deviations;
    const Reading* table = context.document.find({"scatter", scattering.key});
    if (!table) {
        return deviations;
    }
    for (const Pair& pair : table->pairs) {
        const core::Material* material = find_material(context, materials, pair.key);
        if (material && !scattering.is_of(*material)) {
            context.refuse(*pair.key.node,
                           "scatter." + std::string{scattering.key} + ": '" + pair.key.text +
                               "' is no " + std::string{scattering.kinds},
                           "delete it, or write the name of one");
        }
        deviations.push_back({pair.key.text, pair.value.number});
    }
    return deviations;
}

} // namespace

core::Scatter read_scatter(const MixContext& context, const Materials& materials) {
    const auto number = [&](std::string_view name) {
        return context.document.number({"scatter", name});
    };
    const auto by_material = [&](const Scattering& scattering) {
        return read_by_material(context, materials, scattering);
    };
    return {.water_percent = number("water"),
            .binder_percent = number("binder"),
            .aggregate_percent = number("aggregate"),
            .admixture_percent = number("admixture"),
            .air_points = number("air"),
            .strength_mpa = number("strength"),
            .moisture_points = by_material({"moisture", is_of_aggregate, "aggregate"}),
            .absorption_points = by_material({"absorption", is_of_aggregate, "aggregate"}),
            .relative_density = by_material(
                {"relative_density", has_relative_density, "aggregate or cementitious material"}),
            .water_reduction_points =
                by_material({"water_reduction", is_reducer, "water reducer"})};
}

} // namespace boardmark::input
