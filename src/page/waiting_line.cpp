#include "../commands/waiting_line.hpp"

// A page has no terminal, and nobody waits in it.

namespace boardmark::commands {

struct WaitingLine::Telling {};

WaitingLine::WaitingLine(std::string, const Arguments&) {}

WaitingLine::~WaitingLine() = default;

} // namespace boardmark::commands
