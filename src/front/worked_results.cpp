#include <boardmark/front/worked_results.hpp>

namespace boardmark {

std::string WorkedResults::text(bool explain) const {
    return report::text(result(), {.system = record_.system, .explain = explain});
}

std::string WorkedResults::json() const {
    return report::json(result());
}

std::string WorkedResults::csv() const {
    return report::csv(result(), record_.system);
}

std::string WorkedResults::html() const {
    return report::html(result(), {.system = record_.system});
}

} // namespace boardmark
