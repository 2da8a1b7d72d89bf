#include "worked_mix.hpp"

#include <boardmark/core/proportion.hpp>
#include <boardmark/reference/tables.hpp>

#include "log.hpp"
#include "opened_file.hpp"

#include <fmt/format.h>

namespace boardmark::commands {
namespace {

core::AnyMix read(const Arguments& arguments, const input::ReadOptions& options) {
    OpenedFile file = open_file(arguments);
    input::MixReading reading = input::read_mix(std::move(file.text), file.name, options);
    demand_sound(reading.mix.has_value(), reading.diagnostics, arguments);
    return std::move(*reading.mix);
}

} // namespace

WorkedMix open_mix(const Arguments& arguments, input::Purpose purpose,
                   const std::map<std::string, double>& moisture_percent) {
    std::vector<std::string> files_read{arguments.file()};
    const core::AnyMix mix = read(arguments, {.purpose = purpose,
                                              .vocabulary = vocabulary(),
                                              .load = loader_beside(arguments.file(), files_read),
                                              .moisture_percent = moisture_percent});
    return std::visit(
        [&](const auto& either) {
            WorkedMix worked{.title = either.title,
                             .requirements = either.requirements,
                             .tables = reference::tables(either.system),
                             .proportions = {},
                             .checks = {},
                             .origin = {either.system, files_read}};
            log("calculating '" + worked.title + "'");
            try {
                worked.proportions = core::proportions_of(mix, worked.tables);
            } catch (const core::Unresolved& unresolved) {
                throw no_mix_follows(unresolved, arguments, either.system);
            }
            worked.checks = core::assess(worked.requirements, worked.proportions, worked.tables);
            log(fmt::format("{} steps, {} checks", worked.proportions.worksheet.steps.size(),
                            worked.checks.size()));
            return worked;
        },
        mix);
}

} // namespace boardmark::commands
