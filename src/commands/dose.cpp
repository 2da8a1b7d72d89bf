#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/dose_response.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/study/dose_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "reducer_mix.hpp"

namespace boardmark::commands {
namespace of_dose {
namespace {

constexpr Option options[] = {all_option};

constexpr std::string_view examples[] = {
    "boardmark dose examples/flowing-wall.yaml",
    "boardmark dose --reporting si --format csv examples/flowing-wall.yaml",
};

ExitCode run(const Arguments& arguments) {
    const ReadMix read = read_mix_file(arguments, {input::Purpose::check});
    const core::CompleteMix& mix = mix_with_reducer(read, arguments.file());
    const core::Tables tables = reference::tables_for(mix, mix->method);
    const auto written = core::proportion(mix, tables);
    if (!written) {
        return end_with(no_mix_follows(written.why(), arguments, mix->system));
    }
    const auto checks = core::assess(mix, *written, tables);
    const auto response = core::dose_response(mix, tables);
    if (!response) {
        return end_with(no_mix_follows(response.why(), arguments, mix->system));
    }
    deliver(report::DoseResult{mix->title, *response, checks, written->worksheet.cautions,
                               read.origin.files_read.inputs},
            arguments, read.origin);
    return verdict(checks);
}

} // namespace
} // namespace of_dose

const Command dose_command{.name = "dose",
                           .summary =
                               "the response of a mix to the dose of its high-range water reducer",
                           .usage = "boardmark dose [OPTIONS] MIX",
                           .reads = "MIX is a mix file",
                           .kind = input::FileKind::mix,
                           .options = of_dose::options,
                           .examples = of_dose::examples,
                           .run = of_dose::run};

} // namespace boardmark::commands
