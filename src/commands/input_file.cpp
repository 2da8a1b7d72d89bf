#include "input_file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>

namespace boardmark::commands {
namespace {

std::variant<std::string, ReadFailure> read_all(int descriptor, std::size_t largest_accepted) {
    std::string bytes;
    std::array<char, 16384> buffer{};
    while (bytes.size() <= largest_accepted) {
        const ssize_t count = ::read(descriptor, buffer.data(), buffer.size());
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

} // namespace

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

std::string shown_name(const std::string& path) {
    return path == "-" ? "<stdin>" : path.empty() ? "''" : path;
}

std::string beside(const std::string& path, const std::string& name) {
    return path == "-" ? name : (std::filesystem::path{path}.parent_path() / name).string();
}

bool links_out_of_folder(const std::string& path, const std::string& name) {
    namespace fs = std::filesystem;
    std::error_code absent;
    const fs::path folder = fs::canonical(fs::path{beside(path, ".")}, absent);
    const fs::path file = absent ? fs::path{} : fs::canonical(beside(path, name), absent);
    return !absent && std::ranges::mismatch(folder, file).in1 != folder.end();
}

bool is_pipe_or_device(const std::string& path, const std::string& name) {
    namespace fs = std::filesystem;
    std::error_code absent;
    const fs::file_status status = fs::status(beside(path, name), absent);
    return !absent && fs::exists(status) && !fs::is_regular_file(status) &&
           !fs::is_directory(status);
}

} // namespace boardmark::commands
