#include <boardmark/input/read_mix.hpp>

#include "gate.hpp"
#include "mix_context.hpp"

#include <algorithm>
#include <deque>

namespace boardmark::input {
namespace {

void refuse(const Node& node, std::string message, std::string advice, Diagnostics& diagnostics) {
    diagnostics.push_back(
        node.source->diagnostic(node.underline(), std::move(message), std::move(advice)));
}

bool demand_mapping(const Node& root, Diagnostics& diagnostics) {
    if (root.kind == Node::Kind::mapping) {
        return true;
    }
    refuse(root, "expected keys and values at top level, found " + std::string{describe(root.kind)},
           "begin with 'boardmark: 1'", diagnostics);
    return false;
}

/// The first line says which version of the format the file is in; each way to be wrong has its own
/// words.
void demand_version(const Node& root, Diagnostics& diagnostics) {
    const Entry* entry = root.find("boardmark");
    if (!entry) {
        Node top;
        top.source = root.source;
        refuse(top, "the file has no 'boardmark'; it says which version of the format follows",
               "begin with 'boardmark: 1'", diagnostics);
        return;
    }
    const Node& version = entry->value;
    if (version.kind != Node::Kind::scalar) {
        if (version.kind != Node::Kind::empty) {
            refuse(version, "boardmark: the version is a single number", "write 'boardmark: 1'",
                   diagnostics);
        }
    } else if (version.quoted) {
        refuse(version, "boardmark: the version is a bare number, not a text",
               "write 'boardmark: 1'", diagnostics);
    } else if (version.scalar == "1.0") {
        refuse(version, "boardmark: the version is a whole number", "write 'boardmark: 1'",
               diagnostics);
    } else if (version.scalar != "1") {
        refuse(version,
               "boardmark: version '" + version.scalar +
                   "' of the format is not known here; this program reads version 1",
               "write 'boardmark: 1', or use a newer program", diagnostics);
    }
}

/// A name that leaves the folder of the mix file.
bool leaves_folder(const std::string& name) {
    return name.empty() || name.front() == '/' || name.find("..") != std::string::npos ||
           name.find('\\') != std::string::npos;
}

/// The files of one reading; nodes point into them.
class Files {
public:
    const SourceText& add(std::string name, std::string text) {
        constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
        if (text.starts_with(byte_order_mark)) {
            text.erase(0, byte_order_mark.size());
        }
        return files_.emplace_back(std::move(name), std::move(text));
    }

    std::size_t order_of(const std::string& name) const {
        const auto found = std::ranges::find(files_, name, &SourceText::file);
        return static_cast<std::size_t>(found - files_.begin());
    }

private:
    std::deque<SourceText> files_;
};

/// Replaces `materials: from yard.yaml` by the materials of that file.
void fetch_yard(Node& root, Files& files, const ReadOptions& options, Diagnostics& diagnostics) {
    const auto entry = std::ranges::find_if(
        root.entries, [](const Entry& candidate) { return candidate.key.scalar == "materials"; });
    constexpr std::string_view from = "from ";
    if (entry == root.entries.end() || !entry->value.scalar.starts_with(from)) {
        return;
    }
    const Node asked = entry->value;
    const std::string name = asked.scalar.substr(from.size());
    root.entries.erase(entry);
    if (leaves_folder(name)) {
        refuse(asked, "materials: '" + name + "' lies outside the folder of this file",
               "name a file beside this one", diagnostics);
        return;
    }
    auto loaded = options.load(name);
    if (const auto* failure = std::get_if<LoadFailure>(&loaded)) {
        refuse(asked, "materials: '" + name + "' cannot be read: " + failure->reason,
               "check the name; it is relative to this file", diagnostics);
        return;
    }
    const SourceText& source = files.add(name, std::move(std::get<std::string>(loaded)));
    auto yard = pass_gate(source, diagnostics);
    if (!yard || !demand_mapping(*yard, diagnostics)) {
        return;
    }
    demand_version(*yard, diagnostics);
    Diagnostics of_yard;
    const Document document{*yard, yard_fields(), of_yard};
    const Entry* materials = yard->find("materials");
    if (!materials) {
        refuse(asked, "materials: '" + name + "' has no 'materials'", "", diagnostics);
        return;
    }
    // What stands under 'materials' is read again with the mix; only the rest is judged here.
    for (Diagnostic& diagnostic : of_yard) {
        if (diagnostic.line - 1 < materials->key.spot.line) {
            diagnostics.push_back(std::move(diagnostic));
        }
    }
    root.entries.push_back(*materials);
}

std::optional<core::UnitSystem> read_system(const MixContext& context) {
    if (!context.has({"reporting"})) {
        context.missing({}, "reporting", "it selects units and tables",
                        "add 'reporting: us' or 'reporting: si'");
    }
    const auto reporting = context.document.text({"reporting"});
    if (!reporting) {
        return std::nullopt;
    }
    return *reporting == "us" ? core::UnitSystem::us : core::UnitSystem::si;
}

void demand_known_moistures(const MixContext& context, const Materials& materials) {
    for (const auto& [name, moisture_percent] : context.options.moisture_percent) {
        const auto found = materials.find(name);
        const bool aggregate =
            found != materials.end() && (role_of(found->second.kind) == core::Role::coarse ||
                                         role_of(found->second.kind) == core::Role::fine);
        if (!aggregate) {
            context.diagnostics.push_back(
                {.file = context.root.source->file(),
                 .message = "--moisture: '" + name + "' is not an aggregate of this file",
                 .excerpt = {},
                 .advice = "use the names under 'materials'"});
        }
    }
}

/// Which of the two kinds of mix the file holds.
enum class Content { mixture, proportions, neither };

Content content_of(const MixContext& context) {
    const Reading* mixture = context.document.find({"mixture"});
    const Reading* proportions = context.document.find({"proportions"});
    if (mixture && proportions) {
        context.refuse(*proportions->key,
                       "'mixture' and 'proportions' exclude each other: amounts are either "
                       "selected or submitted",
                       "keep one of the two");
        return Content::neither;
    }
    if (mixture) {
        return Content::mixture;
    }
    if (!proportions) {
        context.missing({}, "mixture", "nor 'proportions'", context.add_example({"mixture"}));
        return Content::neither;
    }
    if (context.options.purpose == Purpose::proportion) {
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

std::optional<core::AnyMix> build(const MixContext& context) {
    for (const char* key : {"title", "materials"}) {
        if (!context.has({key})) {
            context.missing({}, key, "", context.add_example({key}));
        }
    }
    const std::string title = context.document.text({"title"}).value_or("");
    const auto system = read_system(context);
    const core::Requirements requirements = read_requirements(context);
    const Materials materials = read_materials(context);
    demand_known_moistures(context, materials);

    switch (content_of(context)) {
    case Content::mixture: {
        core::Mix mix{.title = title,
                      .system = system.value_or(core::UnitSystem::si),
                      .requirements = requirements,
                      .selections = read_selections(context)};
        read_mixture(context, materials, mix);
        return mix;
    }
    case Content::proportions: {
        core::SubmittedMix mix{.title = title,
                               .system = system.value_or(core::UnitSystem::si),
                               .requirements = requirements,
                               .air_percent = 0,
                               .amounts = {},
                               .nominal_max_size_mm = 0};
        read_proportions(context, materials, mix);
        return mix;
    }
    case Content::neither:
        break;
    }
    return std::nullopt;
}

} // namespace

MixReading read_mix(std::string text, std::string file, const ReadOptions& options) {
    MixReading reading;
    Diagnostics& diagnostics = reading.diagnostics;
    Files files;
    const SourceText& source = files.add(std::move(file), std::move(text));
    auto root = pass_gate(source, diagnostics);
    if (!root || !demand_mapping(*root, diagnostics)) {
        return reading;
    }
    demand_version(*root, diagnostics);
    const bool had_materials = root->find("materials") != nullptr;
    fetch_yard(*root, files, options, diagnostics);
    if (had_materials && !root->find("materials")) {
        return reading; // the materials' file could not be read: that alone is told
    }
    const Document document{*root, mix_fields(), diagnostics};
    const MixContext context{*root, document, options, diagnostics};
    auto mix = build(context);

    std::ranges::stable_sort(diagnostics, {}, [&](const Diagnostic& diagnostic) {
        return std::tuple{files.order_of(diagnostic.file), diagnostic.line, diagnostic.column};
    });
    if (!has_errors(diagnostics)) {
        reading.mix = std::move(mix);
    }
    return reading;
}

} // namespace boardmark::input
