#pragma once

#include "arguments.hpp"

#include <string>

namespace boardmark::commands {

/// A computation that takes a while. It tells on a terminal how far it is, and from its beginning
/// to its end Ctrl-C asks it to stop instead of ending the program.
class LongRun {
public:
    /// @param what is being done: "batches"
    LongRun(std::string what, const Arguments& arguments);
    ~LongRun();
    LongRun(const LongRun&) = delete;
    LongRun& operator=(const LongRun&) = delete;

    /// Takes the share that is done; says no once Ctrl-C was pressed.
    bool goes_on(double share);

    bool was_interrupted() const;

private:
    void clear_line();

    std::string what_;
    bool is_shown_;
    int shown_percent_ = -1;
};

} // namespace boardmark::commands
