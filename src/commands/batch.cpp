#include <boardmark/report/batch/batch_report.hpp>

#include "batch_options.hpp"
#include "batch_work.hpp"
#include "command.hpp"
#include "worked_mix.hpp"

namespace boardmark::commands {
namespace of_batch {
namespace {

constexpr Option options[] = {
    all_option,
    {"volume", "Q", "volume of concrete, such as '2 ft3' or '0.05 m3'"},
    {"panel", "A x B x C", "a panel instead of a volume, such as '30 in x 36 in x 8 in'"},
    {"allowance", "P", "percent more than that, such as 10%"},
    {"moisture", "NAME=P,...", "today's moistures, in the file's basis: sand=5.2%,stone=1.4%"},
    {"resolution", "M", "round to the steps of the scale, such as 0.1lb"},
    {"mixer", "Q", "equal charges for a mixer of this rated capacity, such as 6ft3"},
    {"truck", "Q", "equal loads for trucks that carry this much, such as 9yd3"},
    {"sacks", "M|NAME=M,...", "round up to whole sacks of the main cement, such as 94lb"},
    {"hold-back", "P|M|Q",
     "water held back for the site: 10%, 2lb or 2gal; 0% only asks how much may be added"},
};

constexpr std::string_view examples[] = {
    "boardmark batch --panel '30 in x 36 in x 8 in' --allowance 15% examples/quay-wall.yaml",
    "boardmark batch --volume 1.5ft3 --moisture sand=5.2% --resolution 0.1lb "
    "examples/quay-wall.yaml",
    "boardmark batch --volume 1yd3 --mixer 9ft3 --sacks 94lb examples/quay-wall.yaml",
    "boardmark batch --volume 14yd3 --truck 9yd3 --hold-back 10% examples/quay-wall.yaml",
};

/// What the supplier charges for loads that are too small; nothing where the concrete is not
/// delivered but mixed on site or cast as a panel.
std::optional<core::ShortLoad> short_load_of(const WorkedMix& mix, const core::Charging& charging,
                                             const Arguments& arguments) {
    const bool delivered =
        !arguments.has("mixer") && !arguments.has("panel") && !arguments.has("sacks");
    return mix.supply && delivered ? std::optional{core::short_load(*mix.supply, charging)}
                                   : std::nullopt;
}

ExitCode run(const Arguments& arguments) {
    const BatchOptions asked = read_batch_options(arguments);
    const auto opened = open_mix(arguments, {input::Purpose::batch, asked.moisture_percent});
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const WorkedMix& mix = std::get<WorkedMix>(opened);
    const auto outcome = work(mix, asked);
    if (!outcome) {
        return end_with(no_mix_follows(outcome.why(), arguments, mix.origin.system));
    }
    const BatchWork& worked = *outcome;
    tell(worked.improbable, arguments, mix.origin.system);
    const report::BatchResult result{.title = mix.title,
                                     .requirements = mix.requirements(),
                                     .batch = worked.whole,
                                     .each = worked.each,
                                     .charging = worked.charging,
                                     .net_volume_m3 = asked.net_volume_m3,
                                     .allowance_percent = asked.allowance_percent,
                                     .ordered_m3 = asked.volume_m3,
                                     .sacks = worked.sacks,
                                     .site_water = worked.site_water,
                                     .short_load = short_load_of(mix, worked.charging, arguments),
                                     .proportions = mix.proportions,
                                     .tolerances = mix.tables.trial->batching,
                                     .checks = worked.checks,
                                     .inputs = mix.origin.files_read.inputs};
    deliver(result, arguments, mix.origin);
    return verdict(worked.checks);
}

} // namespace
} // namespace of_batch

const Command batch_command{.name = "batch",
                            .summary = "batch weights for a volume at today's moistures",
                            .usage = "boardmark batch [OPTIONS] --volume Q MIX",
                            .reads = "MIX is a mix file",
                            .kind = input::FileKind::mix,
                            .options = of_batch::options,
                            .examples = of_batch::examples,
                            .run = of_batch::run};

} // namespace boardmark::commands
