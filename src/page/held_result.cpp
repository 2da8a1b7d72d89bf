#include "held_result.hpp"

#include "../commands/log.hpp"
#include "../commands/output_file.hpp"
#include "../commands/terminal.hpp"

#include <utility>

// The page has no terminal: what the commands write is kept for it.

namespace boardmark::page {
namespace {

std::string& result() {
    static std::string kept;
    return kept;
}

} // namespace

std::string take_result() {
    return std::exchange(result(), {});
}

} // namespace boardmark::page

namespace boardmark::commands {

void write_result(const std::string& written, const Destination&) {
    page::result() = written;
}

void write_results(const std::vector<NamedResult>& files, const Destination&) {
    for (const NamedResult& file : files) {
        page::result() += file.result;
    }
}

std::optional<std::size_t> terminal_width(int) {
    return std::nullopt;
}

std::string for_standard_error(const std::string& text) {
    return text;
}

void start_log() {}

void log(const std::string&) {}

} // namespace boardmark::commands
