#pragma once

#include "arguments.hpp"
#include "exit_code.hpp"

#include <optional>
#include <string>

namespace boardmark::commands {

/// A computation that takes a while. It tells on a terminal how far it is, and from its beginning
/// to its end Ctrl-C, and whatever else asks the program to end, asks it to stop instead.
class LongRun {
public:
    /// @param what is being done: "batches"
    LongRun(std::string what, const Arguments& arguments);
    ~LongRun();
    LongRun(const LongRun&) = delete;
    LongRun& operator=(const LongRun&) = delete;

    /// Takes the share that is done; says no once it was asked to stop.
    bool goes_on(double share);

    bool was_interrupted() const { return stopped().has_value(); }

    /// How the program ends where it was asked to stop.
    std::optional<ExitCode> stopped() const;

private:
    void clear_line();

    std::string what_;
    bool is_shown_;
    int shown_percent_ = -1;
};

} // namespace boardmark::commands
