#include <boardmark/core/batch.hpp>
#include <boardmark/report/batch_report.hpp>

#include "batch_options.hpp"
#include "command.hpp"
#include "worked_mix.hpp"

namespace boardmark::commands {
namespace {

constexpr Option options[] = {
    {"volume", "Q", "volume of concrete, such as '2 ft3' or '0.05 m3'"},
    {"panel", "A x B x C", "a panel instead of a volume, such as '24 in x 24 in x 8 in'"},
    {"allowance", "P", "percent more than that, such as 10%"},
    {"moisture", "NAME=P,...", "today's moistures, in the file's basis: sand=5.2%,stone=1.4%"},
    {"resolution", "M", "weigh to whole steps of the scale, such as 0.1lb"},
};

constexpr std::string_view examples[] = {
    "boardmark batch --panel '24 in x 24 in x 8 in' --allowance 15% examples/quay-wall.yaml",
    "boardmark batch --volume 1.5ft3 --moisture sand=5.2% --resolution 0.1lb "
    "examples/quay-wall.yaml",
};

core::Batch batch_of(const WorkedMix& worked, const core::BatchOrder& order,
                     const Arguments& arguments) {
    try {
        return core::batch(worked.proportions, order, worked.tables.water_density_kg_m3);
    } catch (const core::Unresolved& unresolved) {
        throw no_mix_follows(unresolved, arguments, worked.origin.system);
    }
}

ExitCode run(const Arguments& arguments) {
    const BatchOptions asked = read_batch_options(arguments);
    const WorkedMix worked = open_mix(arguments, input::Purpose::batch, asked.moisture_percent);
    const core::Batch batch = batch_of(worked, asked.order, arguments);
    const auto checks = core::assess(worked.requirements, worked.proportions, batch, worked.tables);
    const report::BatchResult result{.title = worked.title,
                                     .requirements = worked.requirements,
                                     .batch = batch,
                                     .net_volume_m3 = asked.net_volume_m3,
                                     .allowance_percent = asked.allowance_percent,
                                     .proportions = worked.proportions,
                                     .checks = checks};
    deliver(result, arguments, worked.origin);
    return verdict(checks);
}

} // namespace

const Command batch_command{.name = "batch",
                            .summary = "batch weights for a volume at today's moistures",
                            .usage = "boardmark batch [OPTIONS] --volume Q MIX",
                            .reads = "MIX is a mix file",
                            .options = options,
                            .examples = examples,
                            .run = run};

} // namespace boardmark::commands
