#include <boardmark/core/many/sweep.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/many/sweep_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "long_run.hpp"
#include "read_mix_file.hpp"
#include "vary_option.hpp"

#include <variant>

namespace boardmark::commands {
namespace of_sweep {
namespace {

constexpr Option options[] = {
    all_option,
    {.name = "vary",
     .value = "KEY=FROM..TO/N",
     .meaning = "a figure and N values of it; a second one varies two together",
     .may_repeat = true},
};

constexpr std::string_view examples[] = {
    "boardmark sweep --vary w_cm=0.36..0.45/10 examples/quay-wall.yaml",
    "boardmark sweep --vary w_cm=0.36..0.45/4 --vary 'share.slag=0 %..50 %/6' "
    "examples/quay-wall.yaml",
};

ExitCode run(const Arguments& arguments) {
    const ReadMix read =
        read_mix_file(arguments, {.purpose = input::Purpose::proportion, .to_be_selected = true});
    const core::CompleteMix& mix = std::get<core::CompleteMix>(read.mix);
    const auto axes = sweep_axes(arguments.all_values("vary"), *mix);
    const core::Tables tables = reference::tables_for(mix, mix->method);
    const auto written = core::proportion(mix, tables);
    if (!written) {
        return end_with(no_mix_follows(written.why(), arguments, mix->system));
    }
    const auto checks = core::assess(mix, *written, tables);
    std::optional<ExitCode> stopped;
    const core::Sweep found = [&] {
        LongRun long_run{"points", arguments};
        auto points = core::sweep(mix, axes, tables, reference::vocabulary(),
                                  [&](double share) { return long_run.goes_on(share); });
        stopped = long_run.stopped();
        return points;
    }();
    std::vector<core::Phrase> cautions = written->worksheet.cautions;
    cautions.insert(cautions.end(), found.cautions.begin(), found.cautions.end());
    deliver(report::SweepResult{mix->title, found, checks, std::move(cautions),
                                read.origin.files_read.inputs},
            arguments, read.origin);
    return stopped.value_or(verdict(checks));
}

} // namespace
} // namespace of_sweep

const Command sweep_command{
    .name = "sweep",
    .summary = "what follows where one or two figures of a mix take other values, each checked",
    .usage = "boardmark sweep [OPTIONS] --vary KEY=FROM..TO/N MIX",
    .reads = "MIX is a mix file",
    .kind = input::FileKind::mix,
    .options = of_sweep::options,
    .examples = of_sweep::examples,
    .run = of_sweep::run,
    .notes = "KEY is a key of 'selections' (w_cm, water, binder, air, coarse_volume, ...), a share "
             "of a\nblend or a dose: 'share.slag=0 %..50 %/11', 'dose.reducer=0 fl oz/cwt..12 fl "
             "oz/cwt/7'.\nThe other shares of the blend keep their proportions. The exit code is "
             "that of the mix\nas written; Ctrl-C ends it with the points made so far, exit code "
             "130."};

} // namespace boardmark::commands
