#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/text/closest.hpp>

#include "../gate/files.hpp"
#include "../paper/job_reader.hpp"
#include "../reading/refuse.hpp"
#include "code_file.hpp"
#include "mix_context.hpp"
#include "mix_tree.hpp"
#include "own_line.hpp"
#include "strength_class.hpp"
#include "told_faults.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

/// Judges everything in a file of materials but the materials, which are read with the mix.
void judge_yard(const Node& yard, Diagnostics& diagnostics) {
    Node rest = yard;
    std::erase_if(rest.entries, [](const Entry& entry) { return entry.key.scalar == "materials"; });
    const Document document{rest, yard_fields(), diagnostics};
    const Node* first = nullptr;
    for (const Entry& entry : yard.entries) {
        if (entry.key.scalar != "materials") {
            continue;
        }
        if (first) {
            refuse(entry.key, "'materials' is given a second time",
                   "the first is on line " + std::to_string(first->spot.line + 1) + "; keep one",
                   diagnostics);
        }
        first = first ? first : &entry.key;
    }
    if (!first && !document.has({"materials"})) {
        Node top;
        top.source = yard.source;
        refuse(top, "the file has no 'materials'", "describe the materials under that key",
               diagnostics);
    }
}

/// The materials that a file of materials holds, or nothing where a fault has been told.
std::optional<Node> read_yard(const Node& asked, const std::string& name, Files& files,
                              const ReadOptions& options, Diagnostics& diagnostics) {
    const SourceText* source = fetch(asked, "materials", name, options.load, files, diagnostics);
    const auto yard = source ? read_tree(*source, diagnostics) : std::nullopt;
    if (!yard) {
        return std::nullopt;
    }
    judge_yard(*yard, diagnostics);
    const Entry* materials = yard->find("materials");
    return materials ? std::optional{materials->value} : std::nullopt;
}

/// Replaces `materials: from yard.yaml` by the materials of that file. Where that is not possible
/// the key is taken away, its fault told.
void fetch_yard(Node& root, Files& files, const ReadOptions& options, Diagnostics& diagnostics) {
    const auto entry = std::ranges::find_if(
        root.entries, [](const Entry& candidate) { return candidate.key.scalar == "materials"; });
    if (entry == root.entries.end() || entry->value.kind != Node::Kind::scalar) {
        return;
    }
    constexpr std::string_view from = "from ";
    const std::string& written = entry->value.scalar;
    std::optional<Node> materials;
    if (written.starts_with(from)) {
        materials =
            read_yard(entry->value, written.substr(from.size()), files, options, diagnostics);
    } else {
        const std::string name = written.substr(written.rfind(' ') + 1);
        refuse(entry->value,
               "materials: expected keys and values, or 'from' and the name of a file",
               name.ends_with(".yaml") ? "write 'from " + name + "'"
                                       : "write for example 'from yard.yaml'",
               diagnostics);
    }
    if (materials) {
        entry->value = std::move(*materials);
    } else {
        root.entries.erase(entry);
    }
}

core::UnitSystem read_system(const MixContext& context) {
    if (!context.has({"reporting"})) {
        context.missing({}, "reporting", "it selects units and tables",
                        "add 'reporting: us' or 'reporting: si'");
    }
    return context.document.text({"reporting"}) == "us" ? core::UnitSystem::us
                                                        : core::UnitSystem::si;
}

void demand_known_moistures(const MixContext& context, const Materials& materials) {
    std::vector<std::string_view> aggregates;
    for (const auto& [name, material] : materials) {
        const core::Role role = role_of(material.kind);
        if (role == core::Role::coarse || role == core::Role::fine) {
            aggregates.push_back(name);
        }
    }
    for (const auto& [name, moisture_percent] : context.options.moisture_percent) {
        if (std::ranges::count(aggregates, std::string_view{name}) > 0) {
            continue;
        }
        const auto near = text::closest(name, aggregates);
        context.diagnostics.push_back(
            {.file = context.root.source->file(),
             .message = "--moisture: '" + name + "' is not an aggregate of this file",
             .excerpt = {},
             .advice = near ? "did you mean '" + std::string{*near} + "'?"
                            : "use the names under 'materials'"});
    }
}

/// Which of the two kinds of mix the file holds.
enum class Content { mixture, proportions, neither };

Content content_of(const MixContext& context) {
    const Reading* mixture = context.document.find({"mixture"});
    const Reading* proportions = context.document.find({"proportions"});
    if (mixture && proportions) {
        context.refuse(*proportions->key,
                       "'mixture' and 'proportions' cannot both be given: amounts are either "
                       "selected or submitted",
                       "keep one of the two");
        return Content::neither;
    }
    if (mixture) {
        return Content::mixture;
    }
    if (!proportions) {
        if (!context.has({"mixture"}) && !context.has({"proportions"})) {
            context.missing({}, "mixture", "nor 'proportions'", context.add_example({"mixture"}));
        }
        return Content::neither;
    }
    if (context.options.purpose == Purpose::proportion || context.options.to_be_selected) {
        context.refuse(*proportions->key,
                       "'proportions' are submitted amounts; there is nothing to proportion",
                       "use 'boardmark check'");
    }
    if (const Reading* selections = context.document.find({"selections"})) {
        context.refuse(*selections->key, "'selections' do not go with submitted 'proportions'",
                       "delete them");
    }
    return Content::proportions;
}

std::optional<core::AnyMix> build(const MixContext& context, core::Scatter& scatter) {
    for (const char* key : {"title", "materials"}) {
        context.demand({key}, "");
    }
    const std::string title = context.document.text({"title"}).value_or("");
    const core::UnitSystem system = read_system(context);
    core::Requirements requirements = read_requirements(context, system);
    const Materials materials = read_materials(context);
    requirements.papers = read_papers(context, materials);
    ask_back_improbable(context, materials);
    if (context.options.purpose != Purpose::trial) { // the trial's reader holds its own names
        demand_known_moistures(context, materials);
    }

    scatter = read_scatter(context, materials);
    const auto supply = read_supply(context);
    switch (content_of(context)) {
    case Content::mixture: {
        core::Mix mix{.title = title,
                      .system = system,
                      .requirements = requirements,
                      .method = read_method(context),
                      .selections = read_selections(context)};
        mix.supply = supply;
        read_mixture(context, materials, mix);
        return mix;
    }
    case Content::proportions: {
        core::SubmittedMix mix{.title = title,
                               .system = system,
                               .requirements = requirements,
                               .air_percent = 0,
                               .amounts = {},
                               .nominal_max_size_mm = 0};
        mix.supply = supply;
        read_proportions(context, materials, mix);
        return mix;
    }
    case Content::neither:
        break;
    }
    return std::nullopt;
}

/// The mix past the door of `core`, or nothing; then its faults are told.
std::optional<core::AnyCompleteMix> enter(const MixContext& context, core::AnyMix mix) {
    auto entered = core::complete(std::move(mix), context.options.vocabulary);
    if (const auto* faults = std::get_if<core::Faults>(&entered)) {
        tell_remaining_faults(context, *faults);
        return std::nullopt;
    }
    return std::get<core::AnyCompleteMix>(std::move(entered));
}

} // namespace

std::optional<MixTree> mix_tree(const SourceText& source, Files& files, const ReadOptions& options,
                                Diagnostics& diagnostics) {
    auto root = read_tree(source, diagnostics);
    if (!root || refuse_other_kind(*root, FileKind::mix, diagnostics)) {
        return std::nullopt;
    }
    const bool had_materials = root->find("materials") != nullptr;
    fetch_yard(*root, files, options, diagnostics);
    return MixTree{*std::move(root), had_materials};
}

void make_mix(const MixContext& context, const std::optional<Node>& results,
              const KeySource& source, MixReading& reading) {
    auto mix = build(context, reading.scatter);
    auto own_line = read_own_line(context, results, source.files);
    if (mix) {
        reading.bounds = read_bounds(context, *mix);
    }
    if (mix) {
        std::visit([&](auto& either) { either.requirements.strength_line = std::move(own_line); },
                   *mix);
    }

    Diagnostics& diagnostics = reading.diagnostics;
    source.sort(diagnostics);
    // What was refused left values open that the door would refuse again.
    if (mix && !has_errors(diagnostics)) {
        std::visit(
            [&](auto& either) { either.requirements.improbable = improbable_figures(diagnostics); },
            *mix);
        reading.mix = enter(context, std::move(*mix));
        source.sort(diagnostics);
    }
}

MixReading mix_of(MixTree tree, const KeySource& source, const ReadOptions& options,
                  Diagnostics told) {
    MixReading reading;
    reading.diagnostics = std::move(told);
    Diagnostics& diagnostics = reading.diagnostics;
    const auto results = take_results(tree.root);
    const auto strength_class = take_strength_class(tree.root, options.vocabulary);
    const auto code_file = fetch_code(tree.root, source.files, options, diagnostics);
    Document document{tree.root, mix_field_tables(), diagnostics};
    if (tree.had_materials && !document.find({"materials"})) {
        document.mark_told({"materials"});
    }
    make_mix({{tree.root, document, mix_field_tables(), diagnostics},
              options,
              strength_class,
              code_file},
             results, source, reading);
    return reading;
}

MixReading read_mix(std::string text, std::string file, const ReadOptions& options) {
    Files files;
    const SourceText& source = files.add(std::move(file), std::move(text));
    Diagnostics diagnostics;
    auto tree = mix_tree(source, files, options, diagnostics);
    if (!tree) {
        return {std::nullopt, std::move(diagnostics)};
    }
    const auto sort = [&](Diagnostics& told) { files.sort(told); };
    return mix_of(*std::move(tree), {files, sort}, options, std::move(diagnostics));
}

} // namespace boardmark::input
