#include "told_faults.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::input {
namespace {

using core::Fault;

/// The key of a figure that a material lacks, and where one finds it.
struct MissingFigure {
    core::Field field;
    const char* key;
    const char* why;
};

constexpr MissingFigure missing_figures[] = {
    {core::Field::nominal_max_size, "nominal_max_size", "the water table needs it"},
    {core::Field::dry_rodded_density, "dry_rodded_density", "the aggregate test report has it"},
    {core::Field::relative_density, "relative_density", "the aggregate test report has it"},
    {core::Field::absorption, "absorption", "the aggregate test report has it"},
};

void tell_missing_modulus(const MixContext& context, const std::string& sand) {
    if (!context.has({"materials", sand, "fineness_modulus"}) &&
        !context.has({"materials", sand, "sieves"})) {
        context.missing(
            {"materials", sand}, "fineness_modulus", "the sieve analysis of the sand has it",
            "add for example 'fineness_modulus: 2.8', or 'sieves' with percent passing");
    }
}

/// A slump before the reducer that stands there and is wrong leaves open what the reducer is for.
void tell_missing_reduction(const MixContext& context, const std::string& reducer,
                            const core::Mix& mix) {
    const bool purpose_is_open = context.has({"requirements", "slump_before_reducer"}) &&
                                 !mix.requirements.slump_before_reducer_mm;
    if (!purpose_is_open && !context.has({"materials", reducer, "water_reduction"})) {
        context.missing({"materials", reducer}, "water_reduction",
                        "the product data sheet or the supplier has it",
                        "add it by dose, or 'water_reduction: standard minimum'");
    }
}

/// The section that holds a field, as far as the field's own name tells it.
const Reading* section_of(const MixContext& context, const Fault& fault) {
    if (!fault.material.empty()) {
        if (const Reading* material = context.document.find({"materials", fault.material})) {
            return material;
        }
    }
    const std::string_view member = core::name_of(fault.field);
    for (const char* section : {"requirements", "selections", "supply"}) {
        if (member.starts_with(section)) {
            return context.document.find({section});
        }
    }
    const Reading* mixture = context.document.find({"mixture"});
    return mixture ? mixture : context.document.find({"proportions"});
}

} // namespace

void tell_missing_figures(const MixContext& context, const core::Mix& mix) {
    for (const Fault& fault : core::faults_of(mix, context.options.vocabulary)) {
        if (fault.problem != core::Problem::missing || fault.material.empty()) {
            continue;
        }
        const auto* figure = std::ranges::find(missing_figures, fault.field, &MissingFigure::field);
        if (figure != std::end(missing_figures)) {
            context.demand({"materials", fault.material, figure->key}, figure->why);
        } else if (fault.field == core::Field::fineness_modulus) {
            tell_missing_modulus(context, fault.material);
        } else if (fault.field == core::Field::water_reduction) {
            tell_missing_reduction(context, fault.material, mix);
        }
    }
}

void tell_remaining_faults(const MixContext& context, const core::Faults& faults) {
    for (const Fault& fault : faults) {
        if (const Reading* section = section_of(context, fault)) {
            context.refuse(*section->key, fault.message, "check the figure and its unit");
        } else {
            Node top;
            top.source = context.root.source;
            context.refuse(top, fault.message, "check the figure and its unit");
        }
    }
}

} // namespace boardmark::input
