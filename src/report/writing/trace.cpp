#include "trace.hpp"

#include <boardmark/text/utf8.hpp>

namespace boardmark::report {
namespace {

constexpr std::size_t digits_shown = 12; // of 64: enough to tell versions of a file apart

} // namespace

std::string program_text() {
    return std::string{"boardmark "} + BOARDMARK_VERSION;
}

std::string shown_name(const InputFile& input) {
    return input.name == "-" ? "standard input" : text::printable(input.name);
}

Flow file_line(const InputFiles& inputs) {
    if (inputs.empty()) {
        return {};
    }
    std::string names;
    for (const InputFile& input : inputs) {
        names += (names.empty() ? "" : ", ") + shown_name(input);
    }
    return paragraph((inputs.size() == 1 ? "File: " : "Files: ") + names, {});
}

Flow trace_line(const InputFiles& inputs) {
    std::string trace = "Written by " + program_text();
    const char* separator = " from ";
    for (const InputFile& input : inputs) {
        trace += separator + shown_name(input) + " (SHA-256 " +
                 input.sha256.substr(0, digits_shown) + ")";
        separator = ", ";
    }
    return paragraph(trace, {});
}

} // namespace boardmark::report
