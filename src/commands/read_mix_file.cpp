#include "read_mix_file.hpp"

#include "delivery.hpp"
#include "opened_file.hpp"

namespace boardmark::commands {

ReadMix read_mix_file(const Arguments& arguments, input::Purpose purpose,
                      const std::map<std::string, double>& moisture_percent) {
    std::vector<std::string> files_read{arguments.file()};
    OpenedFile file = open_file(arguments);
    input::MixReading reading =
        input::read_mix(std::move(file.text), file.name,
                        {.purpose = purpose,
                         .vocabulary = vocabulary(),
                         .load = loader_beside(arguments.file(), files_read),
                         .moisture_percent = moisture_percent});
    demand_sound(reading.mix.has_value(), reading.diagnostics, arguments);
    return {std::move(*reading.mix), files_read};
}

} // namespace boardmark::commands
