#include "worked_mix.hpp"

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/reference/tables.hpp>

#include "log.hpp"

#include <fmt/format.h>

namespace boardmark::commands {

std::variant<WorkedMix, Failure> open_mix(const Arguments& arguments, const MixDemand& demand) {
    const ReadMix read = read_mix_file(arguments, demand);
    return std::visit(
        [&](const auto& either) -> std::variant<WorkedMix, Failure> {
            WorkedMix worked{.title = either->title,
                             .mix = read.mix,
                             .tables = reference::tables(either->system),
                             .proportions = {},
                             .checks = {},
                             .origin = read.origin,
                             .supply = either->supply,
                             .scatter = read.scatter,
                             .bounds = read.bounds};
            log("calculating '" + worked.title + "'");
            auto proportions = core::proportions_of(worked.mix, worked.tables);
            if (!proportions) {
                return no_mix_follows(proportions.why(), arguments, either->system);
            }
            worked.proportions = *std::move(proportions);
            worked.checks = core::assess(worked.mix, worked.proportions, worked.tables);
            log(fmt::format("{} steps, {} checks", worked.proportions.worksheet.steps.size(),
                            worked.checks.size()));
            return worked;
        },
        read.mix);
}

} // namespace boardmark::commands
