#include "opened_file.hpp"

#include <boardmark/front/input_file.hpp>

#include "failure.hpp"
#include "log.hpp"

#include <fmt/format.h>

#include <filesystem>
#include <system_error>

namespace boardmark::commands {

OpenedFile open_file(const Arguments& arguments) {
    if (arguments.has("verbose")) {
        start_log();
    }
    const std::string& path = arguments.file();
    std::error_code ignored;
    const bool is_there = path == "-" || std::filesystem::exists(path, ignored);
    return open_file(path, front::largest_yaml_file, is_there ? "" : arguments.where_to_see_one());
}

OpenedFile open_file(const std::string& path, std::size_t largest_accepted,
                     const std::string& advice) {
    const std::string name = front::shown_name(path);
    log("reading " + name);
    auto bytes = front::read_bytes(path, largest_accepted);
    if (const auto* failure = std::get_if<front::ReadFailure>(&bytes)) {
        throw wrong_command_line(fmt::format("{} cannot be read: {}", name, failure->reason),
                                 advice);
    }
    return {name, std::get<std::string>(std::move(bytes))};
}

input::Loader loader_beside(const std::string& path, std::vector<std::string>& files_read) {
    return front::loader_beside(
        path, [&files_read](const std::string& read) { files_read.push_back(read); });
}

} // namespace boardmark::commands
