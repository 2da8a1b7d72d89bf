// As if the reader wrote a report.
#include <boardmark/report/writing/words.hpp>

std::string writes() {
    return boardmark::report::words({}, boardmark::core::UnitSystem::si);
}
