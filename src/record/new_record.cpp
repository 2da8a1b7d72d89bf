#include "new_record.hpp"

#include <boardmark/record/record.hpp>

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>

namespace boardmark::record {
namespace {

namespace fs = std::filesystem;

fs::path folder_of(const std::string& path) {
    const fs::path folder = fs::path{path}.parent_path();
    return folder.empty() ? "." : folder;
}

/// A name is on disk when its folder is.
void keep(const fs::path& folder) {
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor >= 0) {
        ::fsync(descriptor);
        ::close(descriptor);
    }
}

} // namespace

NewRecord::NewRecord(const std::string& path)
    : path_{path}
    , own_name_{folder_of(path) / (".boardmark-" + std::to_string(::getpid()) + ".record-part")} {
    // Only a program with this number, which has ended, can have left one.
    ::unlink(own_name_.c_str());
}

NewRecord::~NewRecord() {
    ::unlink(own_name_.c_str());
    ::unlink((own_name_ + "-journal").c_str());
}

bool NewRecord::place() {
    if (::link(own_name_.c_str(), path_.c_str()) == 0) {
        keep(folder_of(path_));
        return true;
    }
    if (errno == EEXIST) {
        return false;
    }
    throw Failure{Fault::cannot_write, std::strerror(errno)};
}

} // namespace boardmark::record
