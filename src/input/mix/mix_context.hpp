#pragma once

#include <boardmark/core/many/economy.hpp>
#include <boardmark/core/mix/material.hpp>
#include <boardmark/core/risk/scatter.hpp>
#include <boardmark/input/mix/read_mix.hpp>

#include "../reading/file_context.hpp"

#include <map>
#include <memory>
#include <optional>
#include <string>

namespace boardmark::input {

/// Materials by the user's names. A material whose kind is unknown is left out; its fault is told.
using Materials = std::map<std::string, core::Material>;

/// A file that is being turned into a mix, and what it is read for.
struct MixContext : FileContext {
    const ReadOptions& options;
    std::optional<core::StrengthName> strength_class = {};  ///< by which the strength is stated
    std::shared_ptr<const core::CodeTables> code_file = {}; ///< the user's own, where one is named
    /// Materials that were read before and are as they were, what is to be said of each by itself
    /// said; for a row of a table. What is missing is then told by who reads the whole again.
    const Materials* kept = nullptr;

    const core::Material* kept_material(const std::string& name) const {
        const auto found = kept ? kept->find(name) : Materials::const_iterator{};
        return kept && found != kept->end() ? &found->second : nullptr;
    }
};

Materials read_materials(const MixContext& context);

/// Asks back figures of materials that are possible each by itself but hardly true together, and
/// refuses those that no material has.
void ask_back_improbable(const MixContext& context, const Materials& materials);

/// The same of one material by itself.
void ask_back_improbable(const MixContext& context, const core::Material& material);

/// Requirements; where a key is missing or wrong its fault is told and the value is not to be used.
///
/// @param system  in which the code's limits are taken
core::Requirements read_requirements(const MixContext& context, core::UnitSystem system);

/// The site, where the file has one.
std::optional<core::Site> read_site(const MixContext& context);

core::Method read_method(const MixContext& context);
core::Selections read_selections(const MixContext& context);

/// The terms of supply, where the file has some.
std::optional<core::Supply> read_supply(const MixContext& context);

/// How much what goes into a batch scatters, as far as the file states it.
core::Scatter read_scatter(const MixContext& context, const Materials& materials);

/// Between which values figures of the mix may be sought, as far as the file states it.
std::vector<core::VariableBound> read_bounds(const MixContext& context, const core::AnyMix& mix);

void read_mixture(const MixContext& context, const Materials& materials, core::Mix& mix);

void read_proportions(const MixContext& context, const Materials& materials,
                      core::SubmittedMix& mix);

/// A dose that was read.
core::Dose dose_of(const Parsed& parsed);

/// Demands that a name stands for a material of that role. Nothing where it does not.
const core::Material* find_material(const MixContext& context, const Materials& materials,
                                    const Parsed& name);

/// Demands the figures of an aggregate that every calculation by volume needs.
void demand_aggregate_figures(const MixContext& context, const core::Material& aggregate);

/// Whether the mix is weighed: its aggregates need moistures.
constexpr bool is_batched(Purpose purpose) {
    return purpose == Purpose::batch || purpose == Purpose::trial;
}

/// Demands what a batch needs of an aggregate. The moistures of a trial may stand in its own file.
void demand_batch_figures(const MixContext& context, const core::Material& aggregate);

} // namespace boardmark::input
