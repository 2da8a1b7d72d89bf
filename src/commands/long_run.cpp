#include "long_run.hpp"

#include <fmt/format.h>
#include <signal.h>
#include <unistd.h>

#include <iostream>

namespace boardmark::commands {
namespace {

// A handler has nowhere else to leave word.
volatile sig_atomic_t interrupted = 0;

void note_interrupt(int /*signal*/) {
    interrupted = 1;
}

void handle_interrupt(void (*handler)(int)) {
    struct sigaction action = {};
    action.sa_handler = handler;
    sigemptyset(&action.sa_mask);
    ::sigaction(SIGINT, &action, nullptr);
}

} // namespace

LongRun::LongRun(std::string what, const Arguments& arguments)
    : what_{std::move(what)}
    , is_shown_{!arguments.has("quiet") && ::isatty(STDERR_FILENO) == 1} {
    interrupted = 0;
    struct sigaction now = {};
    ::sigaction(SIGINT, nullptr, &now);
    if (now.sa_handler != SIG_IGN) { // a shell's background jobs are not to be stopped by Ctrl-C
        handle_interrupt(note_interrupt);
    }
}

LongRun::~LongRun() {
    clear_line();
    struct sigaction now = {};
    ::sigaction(SIGINT, nullptr, &now);
    if (now.sa_handler == note_interrupt) {
        handle_interrupt(SIG_DFL);
    }
}

bool LongRun::goes_on(double share) {
    const int percent = static_cast<int>(100 * share);
    if (is_shown_ && percent != shown_percent_) {
        std::cerr << fmt::format("\r{}: {} %", what_, percent) << std::flush;
        shown_percent_ = percent;
    }
    return !was_interrupted();
}

bool LongRun::was_interrupted() const {
    return interrupted != 0;
}

void LongRun::clear_line() {
    if (is_shown_ && shown_percent_ >= 0) {
        std::cerr << "\r\x1b[K" << std::flush;
    }
}

} // namespace boardmark::commands
