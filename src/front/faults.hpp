#pragma once

#include <boardmark/front/opened.hpp>
#include <boardmark/input/gate/diagnostic.hpp>

#include <vector>

namespace boardmark::front {

/// What the reader found, without the excerpts of the file.
std::vector<Fault> faults_of(const input::Diagnostics& diagnostics);

/// A line for each: the file, the message.
std::string lines_of(const std::vector<Fault>& faults);

/// A file that cannot be read at all.
template <class Result>
Opened<Result> unreadable(const std::string& file, const std::string& reason) {
    const std::string message = "cannot be read: " + reason;
    return {std::vector<Fault>{{.file = file, .message = message}}, file + " " + message + "\n"};
}

} // namespace boardmark::front
