#pragma once

#include "arguments.hpp"

#include <memory>
#include <string>

namespace boardmark::commands {

/// Tells on a terminal that work goes on and for how long, from the first half second on. Nothing
/// of it is left at its end, so that what is written next stands alone.
class WaitingLine {
public:
    /// @param what is being done: "planning the walls"
    WaitingLine(std::string what, const Arguments& arguments);
    ~WaitingLine();
    WaitingLine(const WaitingLine&) = delete;
    WaitingLine& operator=(const WaitingLine&) = delete;

private:
    struct Telling;
    std::unique_ptr<Telling> telling_; ///< nothing where nobody looks
};

/// What the work gives, done behind a line that tells of it.
template <class Work>
auto while_waiting(const std::string& what, const Arguments& arguments, const Work& work) {
    const WaitingLine line{what, arguments};
    return work();
}

} // namespace boardmark::commands
