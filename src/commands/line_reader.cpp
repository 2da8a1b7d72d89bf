#include "line_reader.hpp"

#include <boardmark/front/input_file.hpp>

#include "failure.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>

namespace boardmark::commands {
namespace {

constexpr std::size_t buffer_size = 256 * 1024;
constexpr std::size_t without_an_end = std::size_t{64} * 1024 * 1024; // no line of a table is as long

Failure not_read(const std::string& path, const std::string& reason) {
    return wrong_command_line(
        fmt::format("{} cannot be read: {}", front::shown_name(path), reason));
}

} // namespace

LineReader::LineReader(std::string path, std::function<bool()> goes_on)
    : path_{std::move(path)}
    , goes_on_{std::move(goes_on)}
    , descriptor_{path_ == "-" ? STDIN_FILENO : ::open(path_.c_str(), O_RDONLY | O_CLOEXEC)}
    , buffer_(buffer_size) {
    struct stat status {};
    if (descriptor_ < 0 || ::fstat(descriptor_, &status) != 0) {
        throw not_read(path_, std::strerror(errno));
    }
    if (S_ISDIR(status.st_mode)) {
        ::close(descriptor_);
        throw not_read(path_, "it is a directory");
    }
    size_ = S_ISREG(status.st_mode) ? static_cast<std::uint64_t>(status.st_size) : 0;
}

LineReader::~LineReader() {
    if (descriptor_ != STDIN_FILENO) {
        ::close(descriptor_);
    }
}

bool LineReader::fill() {
    while (!goes_on_ || goes_on_()) {
        const ssize_t count = front::read_some(descriptor_, buffer_.data(), buffer_.size());
        if (count >= 0) {
            at_ = 0;
            end_ = static_cast<std::size_t>(count);
            read_ += end_;
            return count > 0;
        }
        if (errno != EINTR) {
            throw not_read(path_, std::strerror(errno));
        }
    }
    return false;
}

bool LineReader::next(std::string& line, std::size_t longest) {
    line.clear();
    bool any = false;
    const std::uint64_t begin = read_ - (end_ - at_);
    while (at_ < end_ || fill()) {
        any = true;
        if (read_ - begin > without_an_end) {
            throw not_read(path_, "a line has no end");
        }
        const auto first = buffer_.begin() + static_cast<std::ptrdiff_t>(at_);
        const auto last = buffer_.begin() + static_cast<std::ptrdiff_t>(end_);
        const auto found = std::find(first, last, '\n');
        const auto room = longest + 1 - std::min(line.size(), longest + 1);
        line.append(first, first + std::min(found - first, static_cast<std::ptrdiff_t>(room)));
        at_ = static_cast<std::size_t>(found - buffer_.begin());
        if (found != last) {
            ++at_;
            break;
        }
    }
    if (!any || (goes_on_ && !goes_on_())) {
        return false; // what was read of a line may be half a figure
    }
    ++lines_;
    return true;
}

double LineReader::share() const {
    const std::uint64_t passed = read_ - (end_ - at_);
    return size_ > 0 ? std::min(1.0, static_cast<double>(passed) / static_cast<double>(size_)) : 0;
}

} // namespace boardmark::commands
