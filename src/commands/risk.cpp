#include <boardmark/core/risk/risk.hpp>
#include <boardmark/report/risk/risk_report.hpp>

#include "batch_options.hpp"
#include "command.hpp"
#include "long_run.hpp"
#include "option_values.hpp"
#include "table_options.hpp"
#include "worked_mix.hpp"

namespace boardmark::commands {
namespace of_risk {
namespace {

constexpr Option options[] = {
    all_option,
    {"samples", "N", "how many batches are made, 1000 to 5000000 (default 100000)"},
    {"seed", "N", "another row of random numbers (default 1)"},
    {"threads", "N", "threads at work (default: those of the machine); changes no result"},
    {"moisture", "NAME=P,...", "today's moistures, in the file's basis: sand=5.2%,stone=1.4%"},
};

constexpr std::string_view examples[] = {
    "boardmark risk --samples 20000 examples/quay-wall.yaml",
    "boardmark risk --samples 20000 --seed 7 --format html examples/quay-wall.yaml",
};

/// The whole number of an option.
double count_of(const Arguments& arguments, const std::string& option, Bounds bounds,
                double otherwise) {
    const auto written = arguments.value(option);
    return written ? read_whole_option({option, *written}, bounds) : otherwise;
}

core::RiskOrder order_of(const Arguments& arguments) {
    constexpr double largest_whole = 9007199254740992; // 2^53: beyond, doubles leave some out
    const core::RiskOrder usual;
    return {.samples = static_cast<std::size_t>(
                count_of(arguments, "samples", {core::least_risk_samples, core::most_risk_samples},
                         static_cast<double>(usual.samples))),
            .seed = static_cast<std::uint64_t>(
                count_of(arguments, "seed", {0, largest_whole}, static_cast<double>(usual.seed))),
            .threads = threads_asked(arguments)};
}

ExitCode run(const Arguments& arguments) {
    core::RiskOrder order = order_of(arguments);
    const auto opened = open_mix(arguments, {input::Purpose::batch, moistures(arguments)});
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const WorkedMix& mix = std::get<WorkedMix>(opened);
    std::optional<ExitCode> stopped;
    const auto risk = [&] {
        LongRun long_run{"batches", arguments};
        order.goes_on = [&](double share) { return long_run.goes_on(share); };
        auto found = core::risk_of(mix.mix, mix.proportions, mix.scatter, order, mix.tables);
        stopped = long_run.stopped();
        return found;
    }();
    if (!risk) {
        const Failure failure = no_mix_follows(risk.why(), arguments, mix.origin.system);
        return stopped ? *stopped : end_with(failure);
    }
    deliver(report::RiskResult{mix.title, *risk, mix.checks, mix.proportions.worksheet.cautions,
                               mix.origin.files_read.inputs},
            arguments, mix.origin);
    return stopped.value_or(verdict(mix.checks));
}

} // namespace
} // namespace of_risk

const Command risk_command{.name = "risk",
                           .summary = "how often real batching breaks a limit, and what drives it",
                           .usage = "boardmark risk [OPTIONS] MIX",
                           .reads = "MIX is a mix file",
                           .kind = input::FileKind::mix,
                           .options = of_risk::options,
                           .examples = of_risk::examples,
                           .run = of_risk::run,
                           .notes = "Ctrl-C ends it with the batches made so far, exit code 130."};

} // namespace boardmark::commands
