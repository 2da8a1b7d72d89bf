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

ReadMix read_mix_file(const Arguments& arguments, const MixDemand& demand) {
    std::vector<std::string> files_read{arguments.file()};
    core::AnyMix mix = read(arguments, {.purpose = demand.purpose,
                                        .vocabulary = vocabulary(),
                                        .load = loader_beside(arguments.file(), files_read),
                                        .moisture_percent = demand.moisture_percent,
                                        .to_be_selected = demand.to_be_selected});
    const auto system = std::visit([](const auto& either) { return either.system; }, mix);
    return {std::move(mix), {system, std::move(files_read)}};
}

WorkedMix open_mix(const Arguments& arguments, input::Purpose purpose,
                   const std::map<std::string, double>& moisture_percent) {
    const auto [mix, origin] = read_mix_file(arguments, {purpose, moisture_percent});
    return std::visit(
        [&, &mix = mix, &origin = origin](const auto& either) {
            WorkedMix worked{.title = either.title,
                             .requirements = either.requirements,
                             .tables = reference::tables(either.system),
                             .proportions = {},
                             .checks = {},
                             .origin = origin};
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
