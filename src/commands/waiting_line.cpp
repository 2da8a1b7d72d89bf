#include "waiting_line.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <chrono>
#include <condition_variable>
#include <iostream>
#include <mutex>
#include <stop_token>
#include <thread>

namespace boardmark::commands {
namespace {

void tell_of(const std::string& what, const std::stop_token& end) {
    std::mutex alone;
    std::unique_lock held{alone};
    std::condition_variable_any wake;
    const auto ended_within = [&](std::chrono::milliseconds pause) {
        return wake.wait_for(held, end, pause, [] { return false; }) || end.stop_requested();
    };
    if (ended_within(std::chrono::milliseconds{500})) {
        return;
    }
    std::cerr << fmt::format("\r{} ...", what) << std::flush;
    for (int seconds = 1; !ended_within(std::chrono::seconds{1}); ++seconds) {
        std::cerr << fmt::format("\r{} ... {} s", what, seconds) << std::flush;
    }
    std::cerr << "\r\x1b[K" << std::flush;
}

} // namespace

struct WaitingLine::Telling {
    std::jthread teller; // is asked to stop and waited for at its end
};

WaitingLine::WaitingLine(std::string what, const Arguments& arguments) {
    if (!arguments.has("quiet") && ::isatty(STDERR_FILENO) == 1) {
        telling_ = std::make_unique<Telling>();
        telling_->teller = std::jthread{
            [what = std::move(what)](const std::stop_token& end) { tell_of(what, end); }};
    }
}

WaitingLine::~WaitingLine() = default;

} // namespace boardmark::commands
