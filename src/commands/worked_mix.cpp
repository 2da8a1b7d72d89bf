#include "worked_mix.hpp"

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/reference/tables.hpp>

#include "log.hpp"

#include <fmt/format.h>

namespace boardmark::commands {

namespace {

std::variant<WorkedMix, Failure> worked(const ReadMix& read, const Arguments& arguments) {
    return std::visit(
        [&](const auto& either) -> std::variant<WorkedMix, Failure> {
            WorkedMix result{.title = either->title,
                             .mix = read.mix,
                             .tables = reference::tables_for(read.mix),
                             .proportions = {},
                             .checks = {},
                             .origin = read.origin,
                             .supply = either->supply,
                             .scatter = read.scatter,
                             .bounds = read.bounds};
            log("calculating '" + result.title + "'");
            auto proportions = core::proportions_of(result.mix, result.tables);
            if (!proportions) {
                return no_mix_follows(proportions.why(), arguments, either->system);
            }
            result.proportions = *std::move(proportions);
            result.checks = core::assess(result.mix, result.proportions, result.tables);
            log(fmt::format("{} steps, {} checks", result.proportions.worksheet.steps.size(),
                            result.checks.size()));
            return result;
        },
        read.mix);
}

} // namespace

std::variant<WorkedMix, Failure> open_mix(const Arguments& arguments, const MixDemand& demand) {
    return worked(read_mix_file(arguments, demand), arguments);
}

std::variant<WorkedMix, Failure> open_mix(const Arguments& arguments, const MixDemand& demand,
                                          OpenedFile file, FilesRead files_read) {
    return worked(read_mix_file(arguments, demand, std::move(file), std::move(files_read)),
                  arguments);
}

} // namespace boardmark::commands
