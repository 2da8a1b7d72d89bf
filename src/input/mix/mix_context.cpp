#include "mix_context.hpp"

#include <boardmark/text/closest.hpp>

#include <algorithm>

namespace boardmark::input {

core::Dose dose_of(const Parsed& parsed) {
    return {parsed.number, parsed.dimension == units::Dimension::percentage
                               ? core::DoseBasis::percent
                               : core::DoseBasis::volume};
}

const core::Material* find_material(const MixContext& context, const Materials& materials,
                                    const Parsed& name) {
    const auto found = materials.find(name.text);
    if (found != materials.end()) {
        return &found->second;
    }
    const Reading* section = context.document.find({"materials"});
    if (!section || section->node->kind != Node::Kind::mapping ||
        context.has({"materials", name.text})) {
        return nullptr; // the fault that keeps it away has been told
    }
    const auto names = context.document.names({"materials"});
    const std::vector<std::string_view> known(names.begin(), names.end());
    const auto near = text::closest(name.text, known);
    context.refuse(*name.node, "'" + name.text + "' is not among the materials",
                   near ? "did you mean '" + std::string{*near} + "'?"
                        : "describe it under 'materials'");
    return nullptr;
}

void demand_aggregate_figures(const MixContext& context, const core::Material& aggregate) {
    if (aggregate.aggregate.typical) {
        return;
    }
    for (const char* key : {"relative_density", "absorption"}) {
        context.demand({"materials", aggregate.name, key}, "the aggregate test report has it");
    }
}

void demand_batch_figures(const MixContext& context, const core::Material& aggregate) {
    const Path path{"materials", aggregate.name};
    if (aggregate.aggregate.typical) {
        const Reading* typical = context.document.find({"materials", aggregate.name, "typical"});
        context.refuse(*typical->key,
                       dotted(path) + " has usual figures only: an estimate must not be batched",
                       "enter the figures of the aggregate test report and delete 'typical'");
    }
    if (context.options.purpose == Purpose::trial) {
        return;
    }
    Path moisture = path;
    moisture.push_back("moisture");
    if (!aggregate.aggregate.moisture_percent && !context.has(moisture)) {
        context.missing(path, "moisture", "batch weights need the moisture of today's stockpile",
                        "measure it and add for example 'moisture: 6.0 %', or give '--moisture " +
                            aggregate.name + "=6.0%'");
    }
}

} // namespace boardmark::input
