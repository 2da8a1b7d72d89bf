#include "long_run.hpp"

#include <fmt/format.h>
#include <signal.h>
#include <unistd.h>

#include <iostream>

namespace boardmark::commands {
namespace {

constexpr int signals[] = {SIGINT, SIGTERM, SIGHUP};

// A handler has nowhere else to leave word: the signal that came first.
volatile sig_atomic_t asked_to_stop = 0;

void note_signal(int signal) {
    asked_to_stop = asked_to_stop == 0 ? signal : static_cast<int>(asked_to_stop);
}

auto handler_of(int signal) {
    struct sigaction now = {};
    ::sigaction(signal, nullptr, &now);
    return now.sa_handler;
}

void handle(int signal, void (*handler)(int)) {
    struct sigaction action = {};
    action.sa_handler = handler;
    sigemptyset(&action.sa_mask);
    ::sigaction(signal, &action, nullptr);
}

} // namespace

LongRun::LongRun(std::string what, const Arguments& arguments)
    : what_{std::move(what)}
    , is_shown_{!arguments.has("quiet") && ::isatty(STDERR_FILENO) == 1} {
    asked_to_stop = 0;
    for (const int signal : signals) {
        // What is ignored stays so: Ctrl-C in a shell's background, a hangup under nohup.
        if (handler_of(signal) != SIG_IGN) {
            handle(signal, note_signal);
        }
    }
}

LongRun::~LongRun() {
    clear_line();
    for (const int signal : signals) {
        if (handler_of(signal) == note_signal) {
            handle(signal, SIG_DFL);
        }
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

std::optional<ExitCode> LongRun::stopped() const {
    constexpr int by_signal = 128;
    const int signal = asked_to_stop;
    return signal == 0 ? std::nullopt : std::optional{static_cast<ExitCode>(by_signal + signal)};
}

void LongRun::clear_line() {
    if (is_shown_ && shown_percent_ >= 0) {
        std::cerr << "\r\x1b[K" << std::flush;
    }
}

} // namespace boardmark::commands
