#include "part_file.hpp"

#include "failure.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <utility>

namespace boardmark::commands {
namespace {

constexpr mode_t by_umask = 0666;

std::string folder_of(const std::string& path) {
    const std::string folder = std::filesystem::path{path}.parent_path().string();
    return folder.empty() ? "." : folder;
}

/// A file without a name vanishes with the program, however that ends. -1, with errno, where there is
/// none.
int open_unnamed(const std::string& folder) {
    if (::access("/proc/self/fd", X_OK) != 0) {
        errno = EOPNOTSUPP; // it could get no name later
        return -1;
    }
    return ::open(folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, by_umask);
}

/// Calls `make` with names that nobody else takes until one is free; gives that name, or an empty
/// one, with errno.
template <class Make>
std::string under_a_free_name(const std::string& folder, const Make& make) {
    constexpr int tries = 10000;
    for (int number = 0; number < tries; ++number) {
        std::string name = folder + "/.boardmark-" + std::to_string(::getpid()) + "-" +
                           std::to_string(number) + ".part";
        if (make(name)) {
            return name;
        }
        if (errno != EEXIST) {
            break;
        }
    }
    return "";
}

/// Whether a write that failed may be tried again: after a signal, and once a descriptor that somebody made
/// not to wait takes more.
bool may_go_on(int descriptor) {
    if (errno != EAGAIN) {
        return errno == EINTR;
    }
    pollfd room{.fd = descriptor, .events = POLLOUT, .revents = 0};
    return ::poll(&room, 1, -1) >= 0 || errno == EINTR;
}

Failure refused(const std::string& path) {
    return output_failed(path, errno == EEXIST ? "it exists; '--force' replaces it"
                                               : std::strerror(errno));
}

} // namespace

bool write_all(int descriptor, const std::string& bytes) {
    std::size_t written = 0;
    while (written < bytes.size()) {
        const ssize_t count = ::write(descriptor, bytes.data() + written, bytes.size() - written);
        if (count < 0 && !may_go_on(descriptor)) {
            return false;
        }
        written += static_cast<std::size_t>(std::max<ssize_t>(count, 0));
    }
    return true;
}

PartFile::PartFile(std::string path)
    : path_{std::move(path)} {
    const std::string folder = folder_of(path_);
    descriptor_ = open_unnamed(folder);
    const bool can_be_unnamed = errno != EOPNOTSUPP && errno != EISDIR && errno != EINVAL;
    if (descriptor_ < 0 && !can_be_unnamed) {
        own_name_ = under_a_free_name(folder, [&](const std::string& name) {
            descriptor_ = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, by_umask);
            return descriptor_ >= 0;
        });
    }
    if (descriptor_ < 0) {
        throw refused(path_);
    }
}

PartFile::~PartFile() {
    if (descriptor_ >= 0) {
        ::close(descriptor_);
    }
    if (!own_name_.empty()) {
        ::unlink(own_name_.c_str());
    }
}

PartFile::PartFile(PartFile&& other) noexcept
    : path_{std::move(other.path_)}
    , own_name_{std::exchange(other.own_name_, {})}
    , descriptor_{std::exchange(other.descriptor_, -1)} {}

void PartFile::write(const std::string& bytes) {
    if (!write_all(descriptor_, bytes)) {
        throw refused(path_);
    }
}

void PartFile::finish() {
    if (::fsync(descriptor_) != 0) {
        throw refused(path_);
    }
}

std::string PartFile::source() const {
    return own_name_.empty() ? "/proc/self/fd/" + std::to_string(descriptor_) : own_name_;
}

void PartFile::place(bool overwrite) {
    const auto give = [&](const std::string& name) {
        return ::linkat(AT_FDCWD, source().c_str(), AT_FDCWD, name.c_str(), AT_SYMLINK_FOLLOW) == 0;
    };
    // A link fails where the name was taken meanwhile; a rename, which needs a name, replaces it.
    bool given = false;
    if (!overwrite) {
        given = give(path_);
    } else {
        if (own_name_.empty()) {
            own_name_ = under_a_free_name(folder_of(path_), give);
        }
        given = !own_name_.empty() && std::rename(own_name_.c_str(), path_.c_str()) == 0;
        if (given) {
            own_name_.clear();
        }
    }
    if (!given) {
        throw refused(path_);
    }
}

} // namespace boardmark::commands
