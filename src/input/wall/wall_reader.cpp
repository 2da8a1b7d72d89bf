#include <boardmark/input/wall/read_wall.hpp>

#include "../gate/files.hpp"
#include "wall_sections.hpp"

namespace boardmark::input {
namespace {

/// The mix of the wall. Nothing where it cannot be read; then its faults are told.
std::optional<core::AnyMix> read_wall_mix(const FileContext& context, const std::string& name,
                                          Files& files, const WallOptions& options) {
    const Node& asked = *context.document.value({"mix"})->node;
    const SourceText* source = fetch(asked, "mix", name, options.load, files, context.diagnostics);
    if (!source) {
        return std::nullopt;
    }
    if (const auto kind = other_kind(*source, FileKind::mix)) {
        context.refuse(asked, "mix: '" + name + "' is " + *kind,
                       "name the mix file of the wall's concrete");
        return std::nullopt;
    }
    auto reading = read_mix(source->text(), source->file(),
                            {.purpose = Purpose::check,
                             .vocabulary = options.vocabulary,
                             .load = loader_of(options.load, name)});
    for (Diagnostic& diagnostic : reading.diagnostics) {
        context.diagnostics.push_back(std::move(diagnostic));
    }
    return std::move(reading.mix);
}

core::UnitSystem system_of(const FileContext& context, const core::AnyMix& mix) {
    const auto stated = context.document.text({"reporting"});
    return stated ? (*stated == "us" ? core::UnitSystem::us : core::UnitSystem::si)
                  : std::visit([](const auto& either) { return either.system; }, mix);
}

std::optional<WallRecord> build(const FileContext& context, Files& files,
                                const WallOptions& options) {
    context.demand({"title"}, "");
    context.demand({"mix"}, "the wall is of that concrete");
    core::Wall wall{.title = context.document.text({"title"}).value_or(""),
                    .system = core::UnitSystem::si,
                    .mix = {},
                    .runs = read_runs(context)};
    read_parts(context, wall);
    if (!context.has({"planters"}) && !context.has({"benches"})) {
        context.demand({"walls"}, "planters or benches would do as well");
    }
    read_forms(context, wall);
    wall.reinforcement = read_reinforcement(context, options.vocabulary.bars, wall);
    wall.placing = read_placing(context);
    wall.mockup = read_mockup(context);
    wall.order = read_order(context);
    wall.prices = read_prices(context);
    const auto mix_file = context.document.text({"mix"});
    auto mix = mix_file ? read_wall_mix(context, *mix_file, files, options) : std::nullopt;
    if (!mix) {
        return std::nullopt;
    }
    wall.mix = std::move(*mix);
    wall.system = system_of(context, wall.mix);
    hold_flow_class(context, wall, options.vocabulary.flow_classes);
    return WallRecord{std::move(wall), *mix_file};
}

} // namespace

WallReading read_wall(std::string text, std::string file, const WallOptions& options) {
    WallReading reading;
    Diagnostics& diagnostics = reading.diagnostics;
    Files files;
    const SourceText& source = files.add(std::move(file), std::move(text));
    const auto root = read_tree(source, diagnostics);
    if (!root || refuse_other_kind(*root, FileKind::wall, diagnostics)) {
        return reading;
    }
    const Document document{*root, wall_fields(), diagnostics};
    auto record = build({*root, document, wall_fields(), diagnostics}, files, options);
    files.sort(diagnostics);
    if (!has_errors(diagnostics)) {
        reading.record = std::move(record);
    }
    return reading;
}

} // namespace boardmark::input
