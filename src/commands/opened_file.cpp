#include "opened_file.hpp"

#include <boardmark/front/input_file.hpp>
#include <boardmark/front/noted_files.hpp>

#include "failure.hpp"
#include "log.hpp"

#include <fmt/format.h>

namespace boardmark::commands {

OpenedFile open_file(const Arguments& arguments, FilesRead& files_read) {
    if (arguments.has("verbose")) {
        start_log();
    }
    const std::string& path = arguments.file();
    return open_file(path, front::largest_yaml_file, files_read,
                     front::is_there(path) ? "" : arguments.where_to_see_one());
}

OpenedFile open_file(const std::string& path, std::size_t largest_accepted, FilesRead& files_read,
                     const std::string& advice) {
    const std::string name = front::shown_name(path);
    log("reading " + name);
    files_read.paths.push_back(path);
    auto bytes = front::read_bytes(path, largest_accepted);
    if (const auto* failure = std::get_if<front::ReadFailure>(&bytes)) {
        throw wrong_command_line(fmt::format("{} cannot be read: {}", name, failure->reason),
                                 advice);
    }
    OpenedFile file{name, std::get<std::string>(std::move(bytes))};
    front::note(path, file.text, files_read.inputs);
    return file;
}

input::Loader loader_beside(const std::string& path, FilesRead& files_read) {
    return front::noting(
        front::loader_beside(
            path, [&files_read](const std::string& read) { files_read.paths.push_back(read); }),
        files_read.inputs);
}

} // namespace boardmark::commands
