#include "proportion_set.hpp"

#include <boardmark/core/trial/trial_set.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/trial/trial_set_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "batch_options.hpp"
#include "failure.hpp"
#include "option_values.hpp"
#include "worked_mix.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

constexpr std::size_t fewest_ratios = 2;
constexpr std::size_t most_ratios = 9;

std::vector<double> read_ratios(const std::string& written) {
    constexpr Bounds bounds{.least = 0.15, .most = 1.5}; // of 'selections.w_cm'
    constexpr double told_apart = 0.005;
    std::vector<double> ratios;
    for (const std::string& part : split(written, ',')) {
        ratios.push_back(read_number_option({"w-cm", part}, bounds));
    }
    if (ratios.size() < fewest_ratios || ratios.size() > most_ratios) {
        throw wrong_command_line(fmt::format("--w-cm: {} ratio{}; a trial set has {} to {}",
                                             ratios.size(), ratios.size() == 1 ? "" : "s",
                                             fewest_ratios, most_ratios),
                                 "three are usual: --w-cm 0.36,0.40,0.45");
    }
    std::ranges::sort(ratios);
    const auto too_near = [](double left, double right) { return right - left < told_apart; };
    const auto twin = std::ranges::adjacent_find(ratios, too_near);
    if (twin != ratios.end()) {
        throw wrong_command_line(
            fmt::format("--w-cm: {:g} and {:g} are too near to tell apart", *twin, *(twin + 1)),
            "take ratios further apart");
    }
    return ratios;
}

std::optional<core::BatchOrder> order_of(const Arguments& arguments) {
    const auto volume = volume_m3(arguments);
    for (const char* option : {"moisture", "resolution"}) {
        if (!volume && arguments.has(option)) {
            throw wrong_command_line(fmt::format("--{} goes with --volume", option),
                                     "how much of each trial? add for example --volume 1.5ft3");
        }
    }
    if (!volume) {
        return std::nullopt;
    }
    return core::BatchOrder{.volume_m3 = *volume, .resolution_kg = resolution_kg(arguments)};
}

/// The mix, where a set can be made of it.
const core::CompleteMix& demand_free(const ReadMix& read, const std::string& file) {
    const core::CompleteMix& mix = std::get<core::CompleteMix>(read.mix);
    if (const auto fixed = core::fixed_for_a_set(mix->selections)) {
        throw wrong_command_line(
            fmt::format("--w-cm: {}: {}", file, report::words(fixed->what, mix->system)),
            report::words(fixed->ways_out.front(), mix->system) + ", or leave '--w-cm' out");
    }
    return mix;
}

/// Tells on standard error why a ratio has no mix.
ExitCode end_of(const core::TrialSet& set, const Arguments& arguments, core::UnitSystem system) {
    ExitCode worst = ExitCode::done;
    for (const core::TrialMix& mix : set.mixes) {
        if (const auto* unresolved = std::get_if<core::Unresolved>(&mix.outcome)) {
            return end_with(no_mix_follows(*unresolved, arguments, system));
        }
        if (core::any_fails(mix.solved()->checks)) {
            worst = ExitCode::requirement_not_met;
        }
    }
    return worst;
}

} // namespace

ExitCode run_trial_set(const Arguments& arguments) {
    const auto ratios = read_ratios(*arguments.value("w-cm"));
    const auto order = order_of(arguments);
    const ReadMix read = read_mix_file(
        arguments, {.purpose = order ? input::Purpose::batch : input::Purpose::proportion,
                    .moisture_percent = moistures(arguments),
                    .to_be_selected = true});
    const core::CompleteMix& mix = demand_free(read, front::shown_name(arguments.file()));
    const core::Tables tables = reference::tables_for(mix, mix->method);
    const core::TrialSet set = core::trial_set(mix, ratios, order, tables);
    const report::TrialSetResult result{.title = mix->title,
                                        .requirements = mix->requirements,
                                        .set = set,
                                        .batch_m3 =
                                            order ? std::optional{order->volume_m3} : std::nullopt,
                                        .inputs = read.origin.files_read.inputs};
    deliver(result, arguments, read.origin);
    return end_of(set, arguments, mix->system);
}

} // namespace boardmark::commands
