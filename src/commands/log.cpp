#include "log.hpp"

#include <boardmark/text/utf8.hpp>

#include <spdlog/sinks/stdout_sinks.h>
#include <spdlog/spdlog.h>

#include <memory>

namespace boardmark::commands {
namespace {

// Made only on demand: a run without `--verbose` does not pay for it.
std::unique_ptr<spdlog::logger>& logger() {
    static std::unique_ptr<spdlog::logger> instance;
    return instance;
}

} // namespace

void start_log() {
    auto sink = std::make_shared<spdlog::sinks::stderr_sink_st>();
    logger() = std::make_unique<spdlog::logger>("boardmark", std::move(sink));
    logger()->set_pattern("%n: %v");
}

void log(const std::string& line) {
    if (logger()) {
        logger()->info(text::printable(line));
    }
}

} // namespace boardmark::commands
