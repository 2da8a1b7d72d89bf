#include "mix_context.hpp"

#include <boardmark/text/closest.hpp>

#include <algorithm>

namespace boardmark::input {

void MixContext::refuse(const Node& node, std::string message, std::string advice) const {
    diagnostics.push_back(
        node.source->diagnostic(node.underline(), std::move(message), std::move(advice)));
}

void MixContext::missing(const Path& parent, const std::string& key, const std::string& why,
                         const std::string& advice) const {
    const Reading* reading = document.find(parent);
    const bool parent_is_told =
        !parent.empty() && (!reading || reading->node->kind != Node::Kind::mapping);
    if (parent_is_told) {
        return; // the parent's own fault says enough
    }
    const std::string what = (parent.empty() ? "the file" : dotted(parent)) + " has no '" + key +
                             "'" + (why.empty() ? "" : "; " + why);
    if (reading) {
        refuse(*reading->key, what, advice);
    } else {
        Node top;
        top.source = root.source;
        refuse(top, what, advice);
    }
}

std::string MixContext::add_example(const Path& path) const {
    const auto matches = [&](const Field& field) {
        Path pattern = path;
        if (pattern.front() == "materials" && pattern.size() > 1) {
            pattern[1] = "*";
        }
        return field.path == dotted(pattern);
    };
    const auto fields = mix_fields();
    const auto field = std::ranges::find_if(fields, matches);
    return "add for example '" + std::string{field->example} + "'";
}

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
    const Path path{"materials", aggregate.name};
    const auto demand = [&](const std::string& key, const std::string& why) {
        Path longer = path;
        longer.push_back(key);
        if (!context.has(longer) && !aggregate.aggregate.typical) {
            context.missing(path, key, why, context.add_example(longer));
        }
    };
    demand("relative_density", "the aggregate test report has it");
    demand("absorption", "the aggregate test report has it");
}

void demand_batch_figures(const MixContext& context, const core::Material& aggregate) {
    const Path path{"materials", aggregate.name};
    if (aggregate.aggregate.typical) {
        const Reading* typical = context.document.find({"materials", aggregate.name, "typical"});
        context.refuse(*typical->key,
                       dotted(path) + " has usual figures only: an estimate must not be batched",
                       "enter the figures of the aggregate test report and delete 'typical'");
    }
    Path moisture = path;
    moisture.push_back("moisture");
    if (!aggregate.aggregate.moisture_percent && !context.has(moisture)) {
        context.missing(path, "moisture", "a batch is weighed at the moisture of today's stockpile",
                        "measure it and add for example 'moisture: 6.0 %', or give '--moisture " +
                            aggregate.name + "=6.0%'");
    }
}

} // namespace boardmark::input
