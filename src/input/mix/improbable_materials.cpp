#include <boardmark/core/basis/tables.hpp>
#include <boardmark/text/utf8.hpp>

#include "../trial/improbable_moistures.hpp"
#include "../values/field_values.hpp"
#include "../values/out_of_scope.hpp"
#include "improbable_doses.hpp"
#include "mix_context.hpp"

#include <fmt/format.h>

namespace boardmark::input {
namespace {

using core::Kind;
using core::Role;

// Bounds of slips of the hand; common practice, no source.
constexpr Range possible_voids{.low = 20, .high = 60}; // %
constexpr Range usual_voids{.low = 30, .high = 50};
constexpr double usual_reduction_percent = 15; // of a reducer that is not high-range
constexpr double water_kg_m3 = 1000;           // near enough to find a slip

bool outside(double number, const Range& range) {
    return number < range.low || number > range.high;
}

/// Relative densities that a kind hardly leaves.
Range usual_density(Kind kind) {
    switch (core::role_of(kind)) {
    case Role::binder:
        return core::is_cement(kind) ? Range{.low = 2.8, .high = 3.3}
                                     : Range{.low = 1.8, .high = 3.1};
    case Role::coarse:
    case Role::fine:
        return {.low = 2.2, .high = 3.05};
    default:
        return kind == Kind::pigment ? Range{.low = 1.5, .high = 5.5}
                                     : Range{.low = 0.95, .high = 1.6};
    }
}

class MaterialSlips {
public:
    MaterialSlips(const MixContext& context, const core::Material& material)
        : context_(context)
        , material_(material) {}

    void find() const {
        if (refuse_lightweight()) {
            return;
        }
        judge_density();
        judge_voids();
        judge_reduction();
        judge_doses();
        judge_absorption();
    }

private:
    Path path(std::string_view key) const { return {"materials", material_.name, key}; }

    /// An aggregate that is as light as lightweight ones are. Most are heavier than all of them,
    /// so that the tables are seldom asked.
    bool refuse_lightweight() const {
        const Role role = core::role_of(material_.kind);
        const Parsed* written = context_.document.value(path("relative_density"));
        if ((role != Role::coarse && role != Role::fine) || !written ||
            !outside(written->number, usual_density(material_.kind))) {
            return false;
        }
        const auto& figures = material_.aggregate;
        const double saturated =
            written->number * (figures.relative_density_is_oven_dry
                                   ? 1 + figures.absorption_percent.value_or(0) / 100
                                   : 1);
        const core::Tables& tables = context_.options.vocabulary.tables(core::UnitSystem::si);
        if (saturated > tables.practice.lightweight_relative_density.value) {
            return false;
        }
        const OutOfScope scope = lightweight_aggregate();
        context_.refuse(*written->node,
                        fmt::format("{}: {} is that of a lightweight aggregate: {}",
                                    dotted(path("relative_density")), written->text, scope.reason),
                        scope.advice);
        return true;
    }

    void judge_density() const {
        const Parsed* written = context_.document.value(path("relative_density"));
        if (!written || !outside(written->number, usual_density(material_.kind))) {
            return;
        }
        const Range usual = usual_density(material_.kind);
        context_.ask_back(*written->node,
                          fmt::format("{}: {} is unusual for {} (rarely outside {:.3g} to {:.3g})",
                                      dotted(path("relative_density")), written->text,
                                      core::name_of(material_.kind), usual.low, usual.high),
                          "check the figure; it is used as written");
    }

    /// The voids that a rodded density leaves tell a density of another state or unit.
    void judge_voids() const {
        const auto& figures = material_.aggregate;
        const Parsed* written = context_.document.value(path("dry_rodded_density"));
        if (!written || !material_.relative_density) {
            return;
        }
        const double dry =
            figures.relative_density_is_oven_dry
                ? *material_.relative_density
                : *material_.relative_density / (1 + figures.absorption_percent.value_or(0) / 100);
        const double voids_percent = 100 * (1 - written->number / (dry * water_kg_m3));
        const auto told = [&] {
            const std::string voids =
                voids_percent < 0 ? "no" : fmt::format("{:.0f} % of", voids_percent);
            return fmt::format("{}: {} leaves {} voids between stones of relative density {:.2f}",
                               dotted(path("dry_rodded_density")), written->text, voids,
                               *material_.relative_density);
        };
        if (outside(voids_percent, possible_voids)) {
            context_.refuse(*written->node, told() + ", which no rodded stone does",
                            "give the dry-rodded density of the aggregate test report, about 100 "
                            "lb/ft3 or 1600 kg/m3; 30 to 50 % of voids are usual");
        } else if (outside(voids_percent, usual_voids)) {
            context_.ask_back(*written->node, told() + "; 30 to 50 % are usual",
                              "check both densities; they are used as written");
        }
    }

    void judge_reduction() const {
        const Reading* curve = context_.document.find(path("water_reduction"));
        if (!curve || material_.kind != Kind::water_reducer) {
            return;
        }
        for (const Pair& pair : curve->pairs) {
            if (pair.value.number > usual_reduction_percent) {
                context_.ask_back(*pair.value.node,
                                  fmt::format("{}: {} is more than a water reducer that is not "
                                              "high-range usually saves, {:.0f} %",
                                              dotted(path("water_reduction")), pair.value.text,
                                              usual_reduction_percent),
                                  "check the data sheet and 'kind'");
            }
        }
    }

    /// Doses of the data sheet's curves, where they are written with their unit.
    void judge_doses() const {
        for (const char* key : {"water_reduction", "slump_gain"}) {
            const Reading* curve = context_.document.find(path(key));
            if (!curve) {
                continue;
            }
            for (const Pair& pair : curve->pairs) {
                if (pair.key.node && !pair.key.is_word) {
                    ask_back_dose(context_, pair.key, path(key), material_,
                                  dose_m3_kg(material_, dose_of(pair.key)));
                }
            }
        }
    }

    /// Dense rock takes up little water; common practice, no source.
    void judge_absorption() const {
        constexpr double dense = 2.5; // relative, saturated surface-dry
        constexpr double most_of_dense_percent = 3;
        constexpr double told_where_read_percent = 10;
        const auto& figures = material_.aggregate;
        const Parsed* written = context_.document.value(path("absorption"));
        if (!written || !material_.relative_density || written->number <= most_of_dense_percent ||
            written->number > told_where_read_percent) {
            return;
        }
        const double saturated =
            *material_.relative_density *
            (figures.relative_density_is_oven_dry ? 1 + written->number / 100 : 1);
        if (saturated > dense) {
            context_.ask_back(*written->node,
                              fmt::format("{}: {} is unusual for an aggregate of relative density "
                                          "{:.2f}, rarely above {:.0f} %",
                                          dotted(path("absorption")), written->text, saturated,
                                          most_of_dense_percent),
                              "check the test report; it is used as written");
        }
    }

    const MixContext& context_;
    const core::Material& material_;
};

/// Relative densities of two states in one file are more often a slip than two laboratories.
void judge_bases(const MixContext& context, const Materials& materials) {
    const Parsed* dry = nullptr;
    const core::Material* of_dry = nullptr;
    const core::Material* of_saturated = nullptr;
    for (const auto& [name, material] : materials) {
        const Role role = core::role_of(material.kind);
        if ((role != Role::coarse && role != Role::fine) || !material.relative_density) {
            continue;
        }
        if (material.aggregate.relative_density_is_oven_dry) {
            dry = context.document.value({"materials", name, "relative_density_basis"});
            of_dry = &material;
        } else {
            of_saturated = &material;
        }
    }
    if (dry && of_dry && of_saturated) {
        context.ask_back(
            *dry->node,
            fmt::format("{}: oven-dry {:.6g} is given while {} is {:.6g}, saturated surface-dry",
                        dotted({"materials", of_dry->name, "relative_density_basis"}),
                        *of_dry->relative_density, text::printable(of_saturated->name),
                        *of_saturated->relative_density),
            "check that the test reports state them so; they are used as written");
    }
}

/// The moistures of the file and of the command line; those of a trial stand in its own file.
void judge_moistures(const MixContext& context, const Materials& materials) {
    const auto& options = context.options.moisture_percent;
    std::vector<StatedMoisture> stated;
    for (const auto& [name, material] : materials) {
        if (!material.aggregate.moisture_percent) {
            continue;
        }
        const auto option = options.find(name);
        const Path place{"materials", name, "moisture"};
        const Parsed* written = context.document.value(place);
        if (option != options.end()) {
            stated.push_back(
                {&material,
                 fmt::format("--moisture: {}={:.6g} %", text::printable(name), option->second),
                 nullptr, option->second});
        } else if (written) {
            stated.push_back(
                {&material, dotted(place) + ": " + written->text, written->node, written->number});
        }
    }
    if (context.options.purpose != Purpose::trial) {
        ask_back_moistures(context, stated);
    }
}

} // namespace

void ask_back_improbable(const MixContext& context, const core::Material& material) {
    MaterialSlips{context, material}.find();
}

void ask_back_improbable(const MixContext& context, const Materials& materials) {
    for (const auto& [name, material] : materials) {
        if (!context.kept_material(name)) {
            ask_back_improbable(context, material);
        }
    }
    judge_bases(context, materials);
    judge_moistures(context, materials);
}

} // namespace boardmark::input
