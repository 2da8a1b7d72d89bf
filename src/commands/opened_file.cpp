#include "opened_file.hpp"

#include <boardmark/input/csv/read_rows.hpp>

#include "failure.hpp"
#include "input_file.hpp"
#include "log.hpp"

#include <fmt/format.h>

namespace boardmark::commands {

OpenedFile open_file(const Arguments& arguments) {
    if (arguments.has("verbose")) {
        start_log();
    }
    return open_file(arguments.file(), largest_yaml_file);
}

OpenedFile open_file(const std::string& path, std::size_t largest_accepted) {
    const std::string name = shown_name(path);
    log("reading " + name);
    auto bytes = read_bytes(path, largest_accepted);
    if (const auto* failure = std::get_if<ReadFailure>(&bytes)) {
        throw wrong_command_line(fmt::format("{} cannot be read: {}", name, failure->reason));
    }
    return {name, std::get<std::string>(std::move(bytes))};
}

input::Loader loader_beside(const std::string& path, std::vector<std::string>& files_read) {
    return [path,
            &files_read](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        if (links_out_of_folder(path, name)) {
            return input::LoadFailure{"it is a link out of the folder",
                                      "lay the file itself beside the one that you name"};
        }
        if (is_pipe_or_device(path, name)) {
            return input::LoadFailure{"it is a pipe or a device", "name a plain file"};
        }
        files_read.push_back(beside(path, name));
        // A table of specimens may be larger than a file of keys; its reader tells where it is not.
        const bool is_table = name.ends_with(".csv");
        auto bytes =
            read_bytes(files_read.back(), is_table ? input::largest_csv_file : largest_yaml_file);
        if (const auto* failure = std::get_if<ReadFailure>(&bytes)) {
            return input::LoadFailure{failure->reason};
        }
        return std::get<std::string>(std::move(bytes));
    };
}

} // namespace boardmark::commands
