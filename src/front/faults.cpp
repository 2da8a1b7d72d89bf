#include "faults.hpp"

#include <boardmark/text/utf8.hpp>

namespace boardmark::front {

std::vector<Fault> faults_of(const input::Diagnostics& diagnostics) {
    std::vector<Fault> faults;
    for (const input::Diagnostic& found : diagnostics) {
        faults.push_back({.file = found.file,
                          .line = found.line,
                          .column = found.column,
                          .message = found.message,
                          .advice = found.advice,
                          .is_warning = found.severity == input::Severity::warning});
    }
    return faults;
}

std::string lines_of(const std::vector<Fault>& faults) {
    std::string told;
    for (const Fault& fault : faults) {
        told += text::printable(fault.file + ": " + fault.message) + "\n";
    }
    return told;
}

} // namespace boardmark::front
