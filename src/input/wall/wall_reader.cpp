#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/input/wall/read_wall.hpp>

#include "../mix/named_mix.hpp"
#include "../paper/job_reader.hpp"
#include "../reading/read_record.hpp"
#include "wall_sections.hpp"

namespace boardmark::input {
namespace {

core::UnitSystem stated_system(const FileContext& context, const core::AnyCompleteMix& mix) {
    const auto stated = context.document.text({"reporting"});
    return stated ? (*stated == "us" ? core::UnitSystem::us : core::UnitSystem::si)
                  : core::system_of(mix);
}

/// The mixes of sample panels; the wall's own is not read again.
std::vector<PanelMixFile> read_panel_mixes(const FileContext& context, Files& files,
                                           const WallOptions& options,
                                           const core::AnyCompleteMix& of_wall) {
    context.demand({"panels"}, "nothing says which panels are wanted");
    const std::string own = context.document.text({"mix"}).value_or("");
    const Reading* named = context.document.find({"panels", "factors", "mix"});
    if (!named) {
        return {{own, of_wall}};
    }
    std::vector<PanelMixFile> mixes;
    for (const Parsed& item : named->items) {
        auto mix = item.text == own ? std::optional{of_wall}
                                    : read_named_mix({context, item, "panels.factors.mix"}, files,
                                                     {.purpose = Purpose::check,
                                                      .vocabulary = options.vocabulary,
                                                      .load = options.load},
                                                     "name mix files");
        if (mix) {
            mixes.push_back({item.text, std::move(*mix)});
        }
    }
    return mixes;
}

/// The wall past the door of `core`, or nothing; then its faults are told.
std::optional<core::CompleteWall> enter(const FileContext& context, core::Wall wall) {
    if (has_errors(context.diagnostics)) {
        return std::nullopt; // what was refused left values open that the door would refuse again
    }
    auto entered = core::complete(std::move(wall));
    if (const auto* faults = std::get_if<core::Faults>(&entered)) {
        for (const core::Fault& fault : *faults) {
            context.refuse(*context.document.find({"boardmark"})->key, fault.message,
                           "check the figure and its unit");
        }
        return std::nullopt;
    }
    return std::get<core::CompleteWall>(std::move(entered));
}

std::optional<WallRecord> build(const FileContext& context, Files& files,
                                const WallOptions& options) {
    context.demand({"title"}, "");
    context.demand({"mix"}, "the wall is of that concrete");
    core::WallWork work{.runs = read_runs(context)};
    read_parts(context, work);
    if (!context.has({"planters"}) && !context.has({"benches"})) {
        context.demand({"walls"}, "planters or benches would do as well");
    }
    read_forms(context, work);
    work.reinforcement =
        read_reinforcement(context, options.vocabulary.tables(core::UnitSystem::si).bars, work);
    work.placing = read_placing(context);
    work.mockup = read_mockup(context);
    work.panels = read_panels(context);
    work.order = read_order(context);
    work.prices = read_prices(context);
    work.papers = read_job(context);
    auto mix = read_named_mix(
        context, files,
        {.purpose = Purpose::check, .vocabulary = options.vocabulary, .load = options.load},
        "name the mix file of the wall's concrete");
    if (!mix) {
        return std::nullopt;
    }
    const core::UnitSystem system = stated_system(context, *mix);
    auto panel_mixes = options.with_panels ? read_panel_mixes(context, files, options, *mix)
                                           : std::vector<PanelMixFile>{};
    core::Wall wall{std::move(work), context.document.text({"title"}).value_or(""), system,
                    std::move(*mix)};
    hold_flow_class(context, wall, options.vocabulary.flow_classes);
    auto complete = enter(context, std::move(wall));
    if (!complete) {
        return std::nullopt;
    }
    return WallRecord{*std::move(complete), context.document.text({"mix"}).value_or(""),
                      std::move(panel_mixes)};
}

} // namespace

WallReading read_wall(std::string text, std::string file, const WallOptions& options) {
    return read_record<WallReading>(
        std::move(text), std::move(file), {FileKind::wall, wall_fields()},
        [&](const FileContext& context, Files& files) { return build(context, files, options); });
}

} // namespace boardmark::input
