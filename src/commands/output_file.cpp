#include "output_file.hpp"

#include "failure.hpp"

#include <fcntl.h>
#include <signal.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <utility>

namespace boardmark::commands {
namespace {

namespace fs = std::filesystem;

bool write_all(int descriptor, const std::string& bytes) {
    std::size_t written = 0;
    while (written < bytes.size()) {
        const ssize_t count = ::write(descriptor, bytes.data() + written, bytes.size() - written);
        if (count < 0 && errno == EINTR) {
            continue;
        }
        if (count < 0) {
            return false;
        }
        written += static_cast<std::size_t>(count);
    }
    return true;
}

bool same_file(const std::string& left, const std::string& right) {
    std::error_code ignored;
    return left != "-" && fs::equivalent(left, right, ignored);
}

void demand_free_name(const Destination& destination) {
    struct stat status {};
    if (::lstat(destination.path.c_str(), &status) != 0) {
        return;
    }
    if (S_ISDIR(status.st_mode)) {
        throw output_failed(destination.path, "it is a directory");
    }
    for (const std::string& input : destination.inputs) {
        if (same_file(input, destination.path)) {
            throw output_failed(destination.path, "it is an input");
        }
    }
    if (S_ISLNK(status.st_mode)) {
        throw output_failed(destination.path, "it is a symbolic link");
    }
    if (!S_ISREG(status.st_mode)) {
        throw output_failed(destination.path, "it is not a regular file");
    }
    if (!destination.overwrite) {
        throw output_failed(destination.path, "it exists; '--force' replaces it");
    }
}

/// While it lives, what asks the program to end waits: no part of a file is left behind.
class Uninterrupted {
public:
    Uninterrupted() {
        sigset_t asking{};
        ::sigemptyset(&asking);
        for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
            ::sigaddset(&asking, signal);
        }
        ::sigprocmask(SIG_BLOCK, &asking, &before_);
    }
    ~Uninterrupted() { ::sigprocmask(SIG_SETMASK, &before_, nullptr); }
    Uninterrupted(const Uninterrupted&) = delete;
    Uninterrupted& operator=(const Uninterrupted&) = delete;

private:
    sigset_t before_{};
};

/// A file of its own in the same folder. A part that an earlier run left behind when it was killed
/// is taken over.
int open_part(const fs::path& part, const std::string& name) {
    ::unlink(part.c_str());
    const int descriptor = ::open(part.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (descriptor < 0) {
        throw output_failed(name, std::strerror(errno));
    }
    return descriptor;
}

/// The whole result under such a name.
void write_part(const fs::path& part, const std::string& result, const std::string& name) {
    const int descriptor = open_part(part, name);
    const bool complete = write_all(descriptor, result) && ::fsync(descriptor) == 0;
    const int reason = errno;
    const bool closed = ::close(descriptor) == 0;
    if (!complete || !closed) {
        ::unlink(part.c_str());
        throw output_failed(name, std::strerror(complete ? errno : reason));
    }
}

fs::path part_of(const std::string& path) {
    const fs::path target{path};
    return target.parent_path() / ("." + target.filename().string() + ".boardmark-part");
}

/// Gives a whole part its name.
void place(const std::string& path, bool overwrite) {
    const fs::path part = part_of(path);
    // A hard link fails where the name was taken meanwhile; a rename would replace it.
    const int outcome =
        overwrite ? ::rename(part.c_str(), path.c_str()) : ::link(part.c_str(), path.c_str());
    const int reason = errno;
    if (outcome != 0) {
        throw output_failed(path, std::strerror(reason));
    }
}

} // namespace

void write_results(const std::vector<NamedResult>& files, const Destination& common) {
    for (const NamedResult& file : files) {
        demand_free_name({file.path, common.overwrite, common.inputs});
    }
    const Uninterrupted until_placed;
    std::size_t written = 0;
    std::size_t placed = 0;
    try {
        for (; written < files.size(); ++written) {
            write_part(part_of(files[written].path), files[written].result, files[written].path);
        }
        for (; placed < files.size(); ++placed) {
            place(files[placed].path, common.overwrite);
        }
    } catch (...) {
        for (std::size_t file = 0; file < written; ++file) {
            ::unlink(part_of(files[file].path).c_str());
        }
        // What stood under a name that was replaced is gone; names that were free are free again.
        for (std::size_t file = 0; file < placed && !common.overwrite; ++file) {
            ::unlink(files[file].path.c_str());
        }
        throw;
    }
    for (const NamedResult& file : files) {
        if (!common.overwrite) {
            ::unlink(part_of(file.path).c_str());
        }
    }
}

void write_result(const std::string& result, const Destination& destination) {
    if (destination.path != "-") {
        write_results({{destination.path, result}}, destination);
    } else if (!write_all(STDOUT_FILENO, result)) {
        throw output_failed("standard output", std::strerror(errno));
    }
}

ResultStream::ResultStream(Destination destination)
    : destination_{std::move(destination)}
    , descriptor_{STDOUT_FILENO} {
    if (destination_.path != "-") {
        demand_free_name(destination_);
        descriptor_ = open_part(part_of(destination_.path), destination_.path);
    }
}

ResultStream::~ResultStream() {
    if (destination_.path != "-" && descriptor_ >= 0) {
        ::close(descriptor_);
        ::unlink(part_of(destination_.path).c_str());
    }
}

void ResultStream::write(const std::string& piece) {
    if (!write_all(descriptor_, piece)) {
        throw output_failed(destination_.path == "-" ? "standard output" : destination_.path,
                            std::strerror(errno));
    }
}

void ResultStream::end() {
    if (destination_.path == "-") {
        return;
    }
    const Uninterrupted until_placed;
    if (::fsync(descriptor_) != 0) {
        throw output_failed(destination_.path, std::strerror(errno));
    }
    place(destination_.path, destination_.overwrite);
    ::close(std::exchange(descriptor_, -1));
    if (!destination_.overwrite) {
        ::unlink(part_of(destination_.path).c_str());
    }
}

} // namespace boardmark::commands
