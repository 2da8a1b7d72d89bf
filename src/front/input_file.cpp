#include <boardmark/front/input_file.hpp>
#include <boardmark/input/csv/read_rows.hpp>

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>

namespace boardmark::front {
namespace {

std::variant<std::string, ReadFailure> read_all(int descriptor, std::size_t largest_accepted) {
    std::string bytes;
    std::array<char, 16384> buffer{};
    while (bytes.size() <= largest_accepted) {
        const ssize_t count = read_some(descriptor, buffer.data(), buffer.size());
        if (count < 0 && errno == EINTR) {
            continue;
        }
        if (count < 0) {
            return ReadFailure{std::strerror(errno)};
        }
        if (count == 0) {
            break;
        }
        bytes.append(buffer.data(), static_cast<std::size_t>(count));
    }
    return bytes;
}

/// The path of a file that another file names.
std::string beside(const std::string& path, const std::string& name) {
    return path == "-" ? name : (std::filesystem::path{path}.parent_path() / name).string();
}

/// Whether a file that another file names is, once links are followed, outside that file's folder.
/// A file that is not there is not outside: reading it tells what is wrong.
bool links_out_of_folder(const std::string& path, const std::string& name) {
    namespace fs = std::filesystem;
    std::error_code absent;
    const fs::path folder = fs::canonical(fs::path{beside(path, ".")}, absent);
    const fs::path file = absent ? fs::path{} : fs::canonical(beside(path, name), absent);
    return !absent && std::ranges::mismatch(folder, file).in1 != folder.end();
}

/// Whether a file that another file names is a pipe or a device, which may never end or never
/// begin.
bool is_pipe_or_device(const std::string& path, const std::string& name) {
    namespace fs = std::filesystem;
    std::error_code absent;
    const fs::file_status status = fs::status(beside(path, name), absent);
    return !absent && fs::exists(status) && !fs::is_regular_file(status) &&
           !fs::is_directory(status);
}

} // namespace

ssize_t read_some(int descriptor, char* buffer, std::size_t size) {
    ssize_t count = ::read(descriptor, buffer, size);
    while (count < 0 && errno == EAGAIN) {
        pollfd more{.fd = descriptor, .events = POLLIN, .revents = 0};
        if (::poll(&more, 1, -1) < 0) {
            break;
        }
        count = ::read(descriptor, buffer, size);
    }
    return count;
}

std::variant<std::string, ReadFailure> read_bytes(const std::string& path,
                                                  std::size_t largest_accepted) {
    if (path == "-") {
        return read_all(STDIN_FILENO, largest_accepted);
    }
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        return ReadFailure{std::strerror(errno)};
    }
    struct stat status {};
    std::variant<std::string, ReadFailure> bytes;
    if (::fstat(descriptor, &status) == 0 && S_ISDIR(status.st_mode)) {
        bytes = ReadFailure{"it is a directory"};
    } else {
        bytes = read_all(descriptor, largest_accepted);
    }
    ::close(descriptor);
    return bytes;
}

bool is_there(const std::string& path) {
    std::error_code ignored;
    return path == "-" || std::filesystem::exists(path, ignored);
}

input::Loader loader_beside(const std::string& path,
                            std::function<void(const std::string&)> on_read) {
    return [path, on_read = std::move(on_read)](
               const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        if (links_out_of_folder(path, name)) {
            return input::LoadFailure{"it is a link to a place outside the folder",
                                      "put the file itself beside the one that you name"};
        }
        if (is_pipe_or_device(path, name)) {
            return input::LoadFailure{"it is a pipe or a device", "name a plain file"};
        }
        const std::string found = beside(path, name);
        if (on_read) {
            on_read(found);
        }
        // A table of specimens may be larger than a file of keys; its reader tells where it is not.
        const bool is_table = name.ends_with(".csv");
        auto bytes = read_bytes(found, is_table ? input::largest_csv_file : largest_yaml_file);
        if (const auto* failure = std::get_if<ReadFailure>(&bytes)) {
            return input::LoadFailure{failure->reason};
        }
        return std::get<std::string>(std::move(bytes));
    };
}

} // namespace boardmark::front
