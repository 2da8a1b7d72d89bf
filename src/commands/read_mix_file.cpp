#include "read_mix_file.hpp"

#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/reference/tables.hpp>

#include "opened_file.hpp"

namespace boardmark::commands {

ReadMix read_mix_file(const Arguments& arguments, const MixDemand& demand) {
    FilesRead files_read;
    OpenedFile file = open_file(arguments, files_read);
    return read_mix_file(arguments, demand, std::move(file), std::move(files_read));
}

ReadMix read_mix_file(const Arguments& arguments, const MixDemand& demand, OpenedFile file,
                      FilesRead files_read) {
    input::MixReading reading =
        input::read_mix(std::move(file.text), file.name,
                        {.purpose = demand.purpose,
                         .vocabulary = reference::vocabulary(),
                         .load = loader_beside(arguments.file(), files_read),
                         .moisture_percent = demand.moisture_percent,
                         .to_be_selected = demand.to_be_selected});
    demand_sound(reading.mix.has_value(), reading.diagnostics, arguments);
    const core::UnitSystem system = core::system_of(*reading.mix);
    return {std::move(*reading.mix),
            {system, std::move(files_read)},
            std::move(reading.scatter),
            std::move(reading.bounds)};
}

} // namespace boardmark::commands
