#include "output_file.hpp"

#include "failure.hpp"
#include "part_file.hpp"

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

} // namespace

void write_results(const std::vector<NamedResult>& files, const Destination& common) {
    for (const NamedResult& file : files) {
        demand_free_name({file.path, common.overwrite, common.inputs});
    }
    const Uninterrupted until_placed;
    std::vector<PartFile> parts;
    for (const NamedResult& file : files) {
        parts.emplace_back(file.path);
        parts.back().write(file.result);
        parts.back().finish();
    }
    std::size_t placed = 0;
    try {
        for (; placed < parts.size(); ++placed) {
            parts[placed].place(common.overwrite);
        }
    } catch (...) {
        // What stood under a name that was replaced is gone; names that were free are free again.
        for (std::size_t file = 0; file < placed && !common.overwrite; ++file) {
            ::unlink(files[file].path.c_str());
        }
        throw;
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
    : destination_{std::move(destination)} {
    if (destination_.path != "-") {
        demand_free_name(destination_);
        file_.emplace(destination_.path);
    }
}

void ResultStream::write(const std::string& piece) {
    if (file_) {
        file_->write(piece);
    } else {
        write_result(piece, {});
    }
}

void ResultStream::end() {
    if (file_) {
        const Uninterrupted until_placed;
        file_->finish();
        file_->place(destination_.overwrite);
    }
}

} // namespace boardmark::commands
