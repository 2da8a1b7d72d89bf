// As if the tables wrote a report.
#include <boardmark/report/writing/words.hpp>

std::string writes() {
    return boardmark::report::words({}, boardmark::core::UnitSystem::us);
}
