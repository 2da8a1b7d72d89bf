#include <boardmark/input/read_mix.hpp>
#include <boardmark/text/closest.hpp>

#include "gate.hpp"
#include "mix_context.hpp"

#include <algorithm>
#include <deque>
#include <filesystem>

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
        return; // told with the other keys: it is not a value
    }
    if (version.quoted) {
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
    const std::filesystem::path path{name};
    return name.empty() || path.is_absolute() || name.find('\\') != std::string::npos ||
           std::ranges::count(path, std::filesystem::path{".."}) > 0;
}

/// How messages name a file that another file names: with the folder of that other file.
std::string shown_beside(const std::string& file, const std::string& name) {
    const std::size_t slash = file.rfind('/');
    return slash == std::string::npos ? name : file.substr(0, slash + 1) + name;
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

/// Judges everything in a file of materials but the materials, which are read with the mix.
void judge_yard(const Node& yard, Diagnostics& diagnostics) {
    demand_version(yard, diagnostics);
    Node rest = yard;
    std::erase_if(rest.entries, [](const Entry& entry) { return entry.key.scalar == "materials"; });
    const Document document{rest, yard_fields(), diagnostics};
    const Node* first = nullptr;
    for (const Entry& entry : yard.entries) {
        if (entry.key.scalar != "materials") {
            continue;
        }
        if (first) {
            refuse(entry.key, "'materials' stands here a second time",
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
    if (leaves_folder(name)) {
        refuse(asked, "materials: '" + name + "' lies outside the folder of this file",
               "name a file beside this one", diagnostics);
        return std::nullopt;
    }
    auto loaded = options.load(name);
    if (const auto* failure = std::get_if<LoadFailure>(&loaded)) {
        refuse(asked, "materials: '" + name + "' cannot be read: " + failure->reason,
               "check the name; it is relative to this file", diagnostics);
        return std::nullopt;
    }
    const SourceText& source = files.add(shown_beside(asked.source->file(), name),
                                         std::move(std::get<std::string>(loaded)));
    const auto yard = pass_gate(source, diagnostics);
    if (!yard || !demand_mapping(*yard, diagnostics)) {
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
                       "'mixture' and 'proportions' exclude each other: amounts are either "
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
    Document document{*root, mix_fields(), diagnostics};
    if (had_materials && !document.find({"materials"})) {
        document.mark_told({"materials"});
    }
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
