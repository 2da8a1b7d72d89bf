#include "worked_mix.hpp"

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/reference/tables.hpp>

#include "log.hpp"

#include <fmt/format.h>

namespace boardmark::commands {

WorkedMix open_mix(const Arguments& arguments, const MixDemand& demand) {
    const ReadMix read = read_mix_file(arguments, demand);
    return std::visit(
        [&](const auto& either) {
            WorkedMix worked{.title = either.title,
                             .requirements = either.requirements,
                             .tables = reference::tables(either.system),
                             .proportions = {},
                             .checks = {},
                             .origin = read.origin,
                             .supply = either.supply};
            log("calculating '" + worked.title + "'");
            try {
                worked.proportions = core::proportions_of(read.mix, worked.tables);
            } catch (const core::Unresolved& unresolved) {
                throw no_mix_follows(unresolved, arguments, either.system);
            }
            worked.checks = core::assess(worked.requirements, worked.proportions, worked.tables);
            log(fmt::format("{} steps, {} checks", worked.proportions.worksheet.steps.size(),
                            worked.checks.size()));
            return worked;
        },
        read.mix);
}

} // namespace boardmark::commands
